using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Views;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Documents.Shop.Dispatch;

/// <summary>
/// A packed carton to scale: each layer seen from above, then across in section, with its walls, packs behind
/// their spacers, and the heat pack under the lid. Cups carry the numbers of the list, packs letters.
/// </summary>
public static class PackingPicture
{
    private const double Points = 9;
    private const double Between = 7;
    private const double Caption = 6.5;
    private const double Millimeter = 1000;
    private const int FewViews = 3;

    /// <summary>Numbers of the kinds of cups in a plan, by what lives in them.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<string> Keys(PackingPlan plan) =>
        [.. plan.Cups.Select(c => c.Name.Split(" (", 2)[0]).Distinct(StringComparer.Ordinal)];

    /// <summary>Draws it at the largest usual scale that fits a room, in one row or in two.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="width">Room, mm.</param>
    /// <param name="height">Room, mm.</param>
    public static Drawing Draw(PackingPlan plan, double width, double height)
    {
        var views = Views(plan);
        var rows = new[] { 1, 2 }
            .Select(count => Rows(views, count))
            .MaxBy(rows => Scale(rows, width, height))!;
        var scale = Scale(rows, width, height);
        var sketch = new Sketch();
        var y = 0.0;
        foreach (var row in rows)
        {
            var (x, tall) = (0.0, row.Max(v => v.Height) * Millimeter * scale);
            foreach (var view in row)
            {
                view.Draw(sketch, new(x, y), scale, tall);
                x += view.Across(scale) + Between;
            }

            y += tall + Caption;
        }

        return Legible.Whole(Legible.Of(sketch.Done(width, y, scale)));
    }

    private static View[][] Rows(List<View> views, int count) =>
        [.. views.Chunk((int)Math.Ceiling(views.Count / (double)count))];

    private static double Scale(View[][] rows, double width, double height)
    {
        // Captions do not shrink with the drawing: the widest of all usual scales at which all have room.
        var tall = ViewScale.Fitting(rows.Sum(r => r.Max(v => v.Height)), height - (Caption * rows.Length));
        var wide = rows.Min(r => ViewScale.Fitting(r.Sum(v => v.Width), width - (Between * (r.Length - 1))));
        return Math.Min(tall, wide);
    }

    /// <summary>"scale 1 : 5".</summary>
    /// <param name="drawing">The drawing.</param>
    public static string Scale(Drawing drawing) => ViewScale.Words(drawing.Scale);

    private static List<View> Views(PackingPlan plan)
    {
        var keys = Keys(plan);
        var cups = plan.Places.Where(p => p.Kind is "cup" or "pot").ToList();
        var packs = plan.Places.Where(p => p.Kind == "pack").ToList();
        var heat = plan.Places.Where(p => p.Kind == "heat").ToList();
        var layers = cups.Select(c => c.Layer).Distinct().Order().ToList();
        // Layers that look alike are drawn once.
        var views = layers
            .GroupBy(
                l => string.Join(';', cups.Where(c => c.Layer == l).Select(Spot)),
                StringComparer.Ordinal
            )
            .Select(same =>
                Above(
                    plan,
                    keys,
                    [.. packs, .. cups.Where(c => c.Layer == same.First())],
                    Named([.. same])
                ) with
                {
                    Below = [.. Rising(cups, same.First())],
                }
            )
            .ToList();
        // The section shows it too: among many layers its own view is left out.
        if (heat.Count > 0 && views.Count < FewViews)
        {
            views.Add(Above(plan, keys, heat, "Under the lid"));
        }

        views.Add(Across(plan, keys, cups));
        return views;
    }

    /// <summary>What stands in a layer below and rises into this one.</summary>
    private static IEnumerable<PlacedThing> Rising(List<PlacedThing> cups, int layer)
    {
        var floor = cups.Where(c => c.Layer == layer).Max(c => c.ZMeters);
        return cups.Where(c => c.Layer < layer && c.ZMeters + c.HeightMeters > floor + 1e-6);
    }

    private static string Named(List<int> layers) =>
        layers.Count == 1
            ? string.Create(CultureInfo.InvariantCulture, $"Layer {layers[0] + 1}")
            : string.Create(CultureInfo.InvariantCulture, $"Layers {layers[0] + 1}–{layers[^1] + 1}");

    private static string Spot(PlacedThing thing) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{thing.Label} {thing.XMeters:0.000} {thing.YMeters:0.000} {thing.LengthMeters:0.000}"
        );

    private static View Above(
        PackingPlan plan,
        ImmutableArray<string> keys,
        IReadOnlyList<PlacedThing> things,
        string title
    ) =>
        new(plan.Carton.LengthMeters, plan.Carton.WidthMeters, plan.Carton.WallMeters, title)
        {
            Shapes =
            [
                .. things.Select(t => new Shape(
                    t,
                    Key(t, keys),
                    t.XMeters,
                    plan.Carton.WidthMeters - t.YMeters - t.WidthMeters,
                    t.LengthMeters,
                    t.WidthMeters
                )
                {
                    IsRound = t.IsRound,
                }),
            ],
        };

    /// <summary>Across the carton through the middle of the first cup: what the cut meets.</summary>
    private static View Across(PackingPlan plan, ImmutableArray<string> keys, List<PlacedThing> cups)
    {
        var cut =
            cups.Count > 0 ? cups[0].XMeters + (cups[0].LengthMeters / 2) : plan.Carton.LengthMeters / 2;
        return new(plan.Carton.WidthMeters, plan.Carton.HeightMeters, plan.Carton.WallMeters, "In section")
        {
            Shapes =
            [
                // Packs and the heat pack are shown though they may end before the cut.
                .. plan
                    .Places.Where(t =>
                        t.Kind is "pack" or "heat" || (t.XMeters <= cut && t.XMeters + t.LengthMeters >= cut)
                    )
                    .Select(t => new Shape(
                        t,
                        Key(t, keys),
                        t.YMeters,
                        plan.Carton.HeightMeters - t.ZMeters - t.HeightMeters,
                        t.WidthMeters,
                        t.HeightMeters
                    ))
                    .DistinctBy(s => (s.Key, s.X, s.Y)),
            ],
        };
    }

    private static string Key(PlacedThing thing, ImmutableArray<string> keys) =>
        thing.Kind switch
        {
            "heat" => "H",
            "pack" => "P",
            _ => (keys.IndexOf(thing.Label) + 1).ToString(CultureInfo.InvariantCulture),
        };

    private sealed record Shape(
        PlacedThing Thing,
        string Key,
        double X,
        double Y,
        double Length,
        double Width
    )
    {
        public bool IsRound { get; init; }
    }

    /// <summary>One view: inside of the carton with what lies in it, its wall around.</summary>
    private sealed record View(double InsideLength, double InsideWidth, double Wall, string Title)
    {
        public required ImmutableArray<Shape> Shapes { get; init; }

        public ImmutableArray<PlacedThing> Below { get; init; } = [];

        public double Width => InsideLength + (2 * Wall);

        public double Height => InsideWidth + (2 * Wall);

        /// <summary>Room on paper with its caption, mm.</summary>
        public double Across(double scale) =>
            Math.Max(Width * Millimeter * scale, Lettering.Width(Title, Points));

        public void Draw(Sketch sketch, Spot at, double scale, double tall)
        {
            var mm = scale * Millimeter;
            // All views stand on one line.
            var top = at.Moved(0, tall - (Height * mm));
            sketch.Rectangle(top, Width * mm, Height * mm, Pen.Strong, Tone.Field);
            var inside = top.Moved(Wall * mm, Wall * mm);
            sketch.Rectangle(inside, InsideLength * mm, InsideWidth * mm, Pen.Thin, Tone.Paper);
            foreach (var thing in Below)
            {
                var center = inside.Moved(
                    (thing.XMeters + (thing.LengthMeters / 2)) * mm,
                    (InsideWidth - thing.YMeters - (thing.WidthMeters / 2)) * mm
                );
                sketch.Rings([new Ring(center, thing.LengthMeters / 2 * mm)], Pen.Hidden);
            }

            foreach (var shape in Shapes)
            {
                One(sketch, shape, inside, mm);
            }

            sketch.Text(at.Moved(0, tall + 4), Title, Points);
        }

        private static void One(Sketch sketch, Shape shape, Spot inside, double mm)
        {
            var corner = inside.Moved(shape.X * mm, shape.Y * mm);
            var (length, width) = (shape.Length * mm, shape.Width * mm);
            var isPack = shape.Thing.Kind is "pack" or "heat";
            if (shape.IsRound)
            {
                var center = corner.Moved(length / 2, width / 2);
                sketch.Rings([new Ring(center, length / 2)], Pen.Strong, Tone.Field);
            }
            else
            {
                sketch.Rectangle(corner, length, width, Pen.Strong, isPack ? Tone.Paper : Tone.Field);
            }

            if (isPack)
            {
                Hatch(sketch, corner, length, width);
            }

            sketch.Add(
                new TextMark(
                    corner.Moved(length / 2, (width / 2) + (Points * Lettering.Point * 0.36)),
                    shape.Key,
                    Points
                )
                {
                    Bold = true,
                    Align = Align.Middle,
                    Layer = Layers.Label,
                }
            );
        }

        /// <summary>Slanted lines, so that grey print tells packs from cups.</summary>
        private static void Hatch(Sketch sketch, Spot corner, double length, double width)
        {
            var lines = ImmutableArray.CreateBuilder<Contour>();
            for (var d = 2.0; d < length + width; d += 2)
            {
                var from = d <= length ? corner.Moved(d, 0) : corner.Moved(length, d - length);
                var to = d <= width ? corner.Moved(0, d) : corner.Moved(d - width, width);
                lines.Add(new([from, to], false));
            }

            sketch.Lines(lines.ToImmutable(), new Pen(Tone.Rule, 0.15), Layers.Hatch);
        }
    }
}
