using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Views;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>
/// The build sheet: verdict and stops, section and plan, depths at the corners, liters, packs, cut sizes,
/// order
/// of steps and cautions, on one side.
/// </summary>
internal sealed class BuildSheet
{
    private const int MostStops = 4;
    private const double Gutter = 4;
    private const double MostPicture = 124;
    private const double PictureStep = 6;
    private readonly PaperJob job;
    private readonly List<Block> verdict;
    private readonly Dictionary<Style, (Drawing Section, Drawing Plan)> pictures = [];

    private BuildSheet(PaperJob job)
    {
        this.job = job;
        verdict = Verdict();
    }

    public static PaperFile Write(PaperJob job)
    {
        var sheet = new BuildSheet(job);
        var sides = PageFrame.Sides(
            job.Wish.Size,
            job.Head(job.Told.IsRunning ? "Tank in service" : "Build sheet"),
            sheet.Blocks,
            sheet.Rooms
        );
        return job.Pdf("01-build-sheet.pdf", "Build sheet", sides);
    }

    private Room Inside => PageFrame.Inside(job.Wish.Size);

    /// <summary>Least height of the drawings: more where the text is roomy.</summary>
    private static double LeastPicture(Style style) => 94 - 56 * (1 - style.Air);

    /// <summary>The drawings of a style: as tall as what stands below leaves room for.</summary>
    private (Drawing Section, Drawing Plan) Pictures(Style style)
    {
        if (pictures.TryGetValue(style, out var known))
        {
            return known;
        }

        var least = LeastPicture(style);
        for (var tall = MostPicture; tall > least; tall -= PictureStep)
        {
            var tried = Sized(tall);
            var columns = Below(style, tried);
            var body = Body(style, columns);
            if (columns[0].Height > 0 && Flow.Set(body, columns, style, null) == body.Count)
            {
                return pictures[style] = tried;
            }
        }

        return pictures[style] = Sized(least);
    }

    /// <summary>
    /// Section and plan side by side, the width shared so that both are as large as can be.
    /// </summary>
    private (Drawing Section, Drawing Plan) Sized(double tall)
    {
        (Drawing Section, Drawing Plan)? best = null;
        foreach (var share in new[] { 0.46, 0.5, 0.54, 0.58, 0.62 })
        {
            var section = job.Views.Section((Inside.Width * share, tall));
            var plan = job.Views.Plan((Inside.Width - section.Width - Gutter, tall));
            if (best is not { } b || Size(section, plan) > Size(b.Section, b.Plan) + 1e-9)
            {
                best = (section, plan);
            }
        }

        return best!.Value;
    }

    /// <summary>The smaller scale counts first.</summary>
    private static double Size(Drawing section, Drawing plan) =>
        Math.Min(section.Scale, plan.Scale) + 0.01 * Math.Max(section.Scale, plan.Scale);

    private double VerdictHeight(Style style) => Flow.Height(verdict, Inside.Width, style);

    private IReadOnlyList<Block> Blocks(Style style, Sketch? sketch)
    {
        if (sketch is not null)
        {
            Flow.Set(verdict, [Inside], style, sketch);
            var (section, plan) = Pictures(style);
            var top = Inside.Y + VerdictHeight(style);
            sketch.Place(section, new(Inside.X, top));
            var left = Inside.X + Math.Max(section.Width + Gutter, Inside.Width - plan.Width);
            sketch.Place(plan, new(left, top));
            Captions(sketch, (section, Inside.X), (plan, left), top);
        }

        return Body(style, Rooms(style));
    }

    private void Captions(
        Sketch sketch,
        (Drawing Drawing, double X) section,
        (Drawing Drawing, double X) plan,
        double top
    )
    {
        var bottom = top + Math.Max(section.Drawing.Height, plan.Drawing.Height);
        foreach (var (name, (drawing, x)) in new[] { ("Section", section), ("Plan", plan) })
        {
            var words = $"{name}, {ViewScale.Words(drawing.Scale)}";
            var wide = Lettering.Width(words, 9) + 4;
            var end = Inside.X + Inside.Width - wide - Dimensions.BarWidth(drawing.Scale, job.IsUs);
            var start = Math.Min(x, end);
            sketch.Text(new(start, bottom + 2.6), words, 9, Align.Start, Tone.Quiet);
            Dimensions.ScaleBar(sketch, new(start + wide, bottom + 1), drawing.Scale, job.IsUs);
        }
    }

    private IReadOnlyList<Room> Rooms(Style style) => Below(style, Pictures(style));

    private Room[] Below(Style style, (Drawing Section, Drawing Plan) drawn)
    {
        var used = VerdictHeight(style) + Math.Max(drawn.Section.Height, drawn.Plan.Height) + 4.4;
        return Flow.Columns(Inside with { Y = Inside.Y + used, Height = Inside.Height - used }, 2);
    }

    private List<Block> Verdict()
    {
        var stops = job.Of(Severity.Stop).ToList();
        var cautions = job.Of(Severity.Caution).Count();
        if (stops.Count == 0)
        {
            return
            [
                new Words(
                    cautions == 0
                        ? "Nothing stops this build."
                        : $"Nothing stops this build. Read the "
                            + $"{NumberText.Count(cautions, "caution", "cautions")} "
                            + "below before you start."
                )
                {
                    Bold = true,
                    Tone = Tone.Well,
                    After = 1.2,
                },
            ];
        }

        var inner = new List<Block>
        {
            new Words(
                $"STOP: don't build this as drawn ({NumberText.Count(stops.Count, "reason", "reasons")})."
            )
            {
                Bold = true,
                Larger = 1.5,
                Tone = Tone.Stop,
                Sign = Sign.Stop,
            },
        };
        foreach (var stop in stops.Take(MostStops))
        {
            inner.Add(new Words($"{stop.Text} {stop.Fix}") { Key = stop.Where });
        }

        if (stops.Count > MostStops)
        {
            inner.Add(new Words($"And {stops.Count - MostStops} more: see the caution sheet."));
        }

        return [new Framed([.. inner], Tone.Stop)];
    }

    private IReadOnlyList<Block> Body(Style style, IReadOnlyList<Room> columns) =>
        Flow.Shared(
            [
                [.. Depths()],
                [.. Liters()],
                [.. BuildSheetWater.Of(job)],
                [.. job.Told.IsRunning ? [] : Packs()],
                [.. Cuts()],
                [.. Legend()],
                [.. job.Steps.IsEmpty ? [] : Order(style)],
                [.. Cautions(), Weights()],
                [.. Notes()],
            ],
            columns[0],
            style
        );

    private IEnumerable<Block> Depths()
    {
        var table = Table.Of(
            $"Settled depth at the corners, {(job.Inches ? "in" : "cm")}",
            (0.32, "layer", false),
            (0.17, "front left", true),
            (0.17, "front right", true),
            (0.17, "back left", true),
            (0.17, "back right", true)
        );
        foreach (var row in job.Corners)
        {
            table.Row($"floor.{row.Layer}", [row.Layer, .. Four(row.Depth)]);
            if (row.Poured is { } poured)
            {
                table.Row($"floor.{row.Layer}", [$"{row.Layer}, as poured", .. Four(poured)]);
            }
        }

        if (job.Corners.Length > 0)
        {
            table.Row("floor", ["top over base", .. Four(job.Corners[^1].Top)]);
        }

        return table.Blocks;
    }

    private string[] Four(Corners c) =>
        [
            .. new[] { c.FrontLeft, c.FrontRight, c.BackLeft, c.BackRight }.Select(d =>
                Lengths.Bare(d.Si, job.Inches)
            ),
        ];

    private IEnumerable<Block> Liters()
    {
        var layers = job.Numbers.Layers.Where(l => l.Material is not null).ToList();
        var lossless = layers.TrueForAll(l => Math.Abs(l.ToBuy.Si - l.Loose.Si) < 1e-9);
        var title = job.Boxes > 1 ? "Liters for one box" : "Liters";
        var table = lossless
            ? Table.Of(title, (0.62, "goods", false), (0.18, "in box", true), (0.2, "loose, to buy", true))
            : Table.Of(
                title,
                (0.49, "goods", false),
                (0.17, "in box", true),
                (0.17, "loose", true),
                (0.17, "to buy", true)
            );
        foreach (var layer in layers)
        {
            var mixed = layer.Components.Length > 0;
            Row(
                layer.Layer,
                mixed ? $"{layer.Material!.Name}, mixed" : layer.Material!.Name,
                layer.Finished,
                (layer.Loose, layer.ToBuy)
            );
            foreach (var part in layer.Components)
            {
                Row(layer.Layer, $"– {part.Material.Name}", null, (part.Loose, part.ToBuy));
            }

            if (layer.WaterToAdd is { Si: > 0 } water)
            {
                Row(layer.Layer, "– water to add", null, (water, null));
            }
        }

        return table.Blocks;

        void Row(string layer, string name, Figure? finished, (Figure Loose, Figure? ToBuy) outside)
        {
            List<string> cells =
            [
                name,
                finished is null ? "" : NumberText.Liters(finished),
                NumberText.Liters(outside.Loose),
            ];
            if (!lossless)
            {
                cells.Add(outside.ToBuy is null ? "" : NumberText.Liters(outside.ToBuy));
            }

            table.Row($"floor.{layer}", [.. cells]);
        }
    }

    private IEnumerable<Block> Packs()
    {
        var table = Table.Of(
            job.Boxes > 1
                ? string.Create(CultureInfo.InvariantCulture, $"Packs for all {job.Boxes} boxes")
                : "Packs",
            (0.8, "take or buy", false),
            (0.2, "liters", true)
        );
        foreach (var need in job.Numbers.Packs)
        {
            if (need.Stock.Si > 0)
            {
                table.Row(
                    "floor",
                    $"{need.Material.Name}: from stock",
                    NumberText.Liters(Figure.Min(need.Stock, need.Need))
                );
            }

            foreach (var pack in need.Packs)
            {
                table.Row(
                    "floor",
                    $"{NumberText.Whole(pack.Count)} × {pack.Pack.Name}",
                    NumberText.Liters(pack.Liters)
                );
            }
        }

        return table.Blocks;
    }

    private IEnumerable<Block> Cuts()
    {
        var table = Table.Of(
            "Cut sizes (cut list gives tolerance and fit)",
            (0.1, "pcs", false),
            (0.36, "part", false),
            (0.54, job.IsUs ? "" : "mm", true)
        );
        foreach (var cut in job.Numbers.Cuts)
        {
            var thick = cut.Thickness is { } t
                ? string.Create(CultureInfo.InvariantCulture, $" × {t.Si * 1000:0.#}")
                : "";
            table.Row(
                cut.Key,
                NumberText.Whole(cut.Count),
                cut.Part.Replace('-', ' '),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{NumberText.Tape(cut.Length.Si, cut.Width.Si)}{thick}{job.MillimetersBehind}"
                )
            );
        }

        return table.Blocks;
    }

    private IReadOnlyList<Block> Legend()
    {
        var table = Table.Of("In the drawing", (0.07, "", false), (0.54, "", false), (0.39, "", true));
        foreach (var plant in job.Views.Scene.Plants)
        {
            var many = plant.Count > 1 ? FormattableString.Invariant($"{plant.Count} × ") : "";
            table.Row(
                plant.Key,
                NumberText.Integer(plant.Number),
                $"{many}{plant.Name}, {(plant.Mounted ? "mounted" : "planted")}",
                plant.PlaceIsOpen ? "place left open"
                    : job.IsUs
                        ? $"x {Lengths.Inches(plant.X)}, y {Lengths.Inches(plant.Y)}, "
                            + $"z {Lengths.Inches(plant.Z)}"
                    : FormattableString.Invariant(
                        $"x {plant.X * 100:0}, y {plant.Y * 100:0}, z {plant.Z * 100:0} cm"
                    )
            );
        }

        foreach (var piece in job.Views.Scene.Pieces)
        {
            table.Row(piece.Key, SectionView.Letter(piece.Number).ToString(), piece.Name, "");
        }

        return table.Blocks;
    }

    private IEnumerable<Block> Order(Style style)
    {
        yield return new Heading("Order of steps (one card each)") { KeepsWithNext = true };
        if (style.Points < 9.3)
        {
            var all = job.Steps.Select((s, i) => FormattableString.Invariant($"{i + 1} {s.Title}"));
            yield return new Words(string.Join("  ·  ", all));
            yield break;
        }

        for (var i = 0; i < job.Steps.Length; i++)
        {
            var count = NumberText.Count(job.Steps[i].Steps.Length, "step", "steps");
            yield return new Words($"{NumberText.Integer(i + 1)}  {job.Steps[i].Title} ({count})")
            {
                Sign = Sign.Tick,
                After = 0.2,
                KeepsWithNext = i == 0,
            };
        }
    }

    private IEnumerable<Block> Notes()
    {
        var notes = job.Numbers.Design.Design.Notes;
        if (notes.Count > 0)
        {
            yield return new Heading("Notes") { KeepsWithNext = true };
        }

        foreach (var note in notes)
        {
            yield return new Words(note) { Key = "notes" };
        }
    }

    private IEnumerable<Block> Cautions()
    {
        var findings = job.Of(Severity.Caution).ToList();
        if (findings.Count > 0)
        {
            yield return new Heading("Cautions of this design") { KeepsWithNext = true };
            foreach (var finding in findings)
            {
                yield return new Words(finding.Text)
                {
                    Sign = Sign.Caution,
                    After = 0.2,
                    Key = finding.Where,
                };
            }
        }

        foreach (var block in CarePapers.Accepted(job))
        {
            yield return block;
        }

        yield return new Heading("Always (see the caution sheet)") { KeepsWithNext = true };
        yield return new Words(
            string.Join("; ", Instructions.Care.Cautions.Of(job.Numbers).Select(c => c.Title)) + "."
        )
        {
            Sign = Sign.Caution,
        };
    }

    private Words Weights() =>
        new(
            string.Create(
                CultureInfo.InvariantCulture,
                $"One box: {job.Numbers.Weights.Dry.Value:0.0} kg dry, "
                    + $"{job.Numbers.Weights.Planted.Value:0.0} kg "
                    + $"planted, {job.Numbers.Weights.Wet.Value:0.0} kg at its wettest."
            )
        )
        {
            Bold = true,
        };
}
