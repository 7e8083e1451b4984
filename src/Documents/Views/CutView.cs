using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Views;

/// <summary>
/// A part to cut: as a workshop file at its true size, or as a dimensioned drawing on a page.
/// </summary>
public static class CutView
{
    private const double Beside = 15;
    private const double LabelRoom = 42;

    /// <summary>
    /// The part at 1:1 without text: outline on the cutting layer, holes on the drilling layer, and a line of
    /// 100 mm below it on the reference layer.
    /// </summary>
    public static Drawing TrueSize(CutPart part)
    {
        part = OnTape(part);
        var (length, width) = (part.Length.Si * 1000, part.Width.Si * 1000);
        var sketch = new Sketch { Key = part.Key };
        sketch.Add(
            new PathMark([new Contour(Outline(part, new(0, 0), 1), true)], [])
            {
                Pen = new Pen(Tone.Ink, 0.1),
                Key = part.Key,
                Layer = Layers.Cut,
            }
        );
        foreach (var cut in part.CutOuts.Where(c => !IsNotch(c, part)))
        {
            sketch.Add(
                new PathMark([new Contour(Corners(cut, part, new(0, 0), 1), true)], [])
                {
                    Pen = new Pen(Tone.Ink, 0.1),
                    Key = cut.Key,
                    Layer = Layers.Cut,
                }
            );
        }

        foreach (var hole in part.Holes)
        {
            sketch.Key = hole.Key;
            sketch.Rings(
                [new Ring(Middle(hole, part), hole.Diameter.Si * 500)],
                new Pen(Tone.Ink, 0.1),
                null,
                Layers.Drill
            );
        }

        sketch.Key = "";
        sketch.Line(new(0, width + 10), new(100, width + 10), new Pen(Tone.Quiet, 0.1), Layers.Reference);
        return sketch.Done(Math.Max(length, 100), width + 15);
    }

    /// <summary>The part with its dimensions, at the largest usual scale that fits.</summary>
    public static Drawing Dimensioned(CutPart part, (double Width, double Height) room)
    {
        part = OnTape(part);
        var scale = Math.Min(
            ViewScale.Fitting(part.Length.Si, room.Width - Beside - 4),
            ViewScale.Fitting(part.Width.Si, room.Height - Beside - 4)
        );
        var (length, width) = (part.Length.Si * 1000 * scale, part.Width.Si * 1000 * scale);
        var sketch = new Sketch { Key = part.Key };
        var corner = new Spot(Beside, 4);
        sketch.Area(Outline(part, corner, scale), new Pen(Tone.Ink, 0.4), Tone.Glass, 0.12);
        var (left, right) = (corner.Moved(0, width), corner.Moved(length, width));
        Dimensions.Across(
            sketch,
            left,
            right,
            part.Holes.Length > 0 ? 10.5 : 6,
            (Exact(part.Length.Si), part.Key)
        );
        Dimensions.Upward(
            sketch,
            left,
            corner,
            part.Holes.Length > 0 ? -11 : -5,
            (Exact(part.Width.Si), part.Key)
        );
        foreach (var hole in part.Holes)
        {
            Hole(sketch, part, hole, corner, scale);
        }

        foreach (var cut in part.CutOuts)
        {
            Opening(sketch, part, cut, corner, scale);
        }

        return Legible.Whole(Legible.Of(sketch.Done(Beside + length + 4, 4 + width + Beside, scale)));
    }

    /// <summary>A part as it is marked with a tape: the papers and the file have the same size.</summary>
    private static CutPart OnTape(CutPart part) =>
        part with
        {
            Length = OnTape(part.Length),
            Width = OnTape(part.Width),
        };

    private static Figure OnTape(Figure size) =>
        Figure
            .Computed(
                $"{size.Name}, down to half a millimeter",
                NumberText.OnTape(size.Si),
                Unit.Millimeter.Dimension,
                size
            )
            .As(size.Name ?? "size", Unit.Millimeter);

    /// <summary>The holes of a part in words.</summary>
    public static string Holes(CutPart part) =>
        string.Concat(
            part.Holes.Select(h =>
                $"; hole Ø {Exact(h.Diameter.Si)} for {h.Named}, {Exact(h.FromLeft.Si)} from the left, "
                + $"{Exact(h.FromBottom.Si)} from below"
            )
        )
        + string.Concat(
            part.CutOuts.Select(c =>
                $"; {(IsNotch(c, part) ? "notch" : "opening")} {Exact(c.Length.Si)} × {Exact(c.Width.Si)} "
                + $"for {c.For}, inner corners rounded, {Exact(c.FromLeft.Si)} from the left, "
                + $"{Exact(c.FromBottom.Si)} from below"
            )
        );

    /// <summary>Millimeters to a tenth, as cut.</summary>
    public static string Exact(double meters) =>
        string.Create(CultureInfo.InvariantCulture, $"{meters * 1000:0.#} mm");

    private static void Hole(Sketch sketch, CutPart part, CutHole hole, Spot corner, double scale)
    {
        var middle = Middle(hole, part);
        var at = corner.Moved(middle.X * scale, middle.Y * scale);
        var radius = Math.Max(0.8, hole.Diameter.Si * 500 * scale);
        sketch.Key = hole.Key;
        sketch.Rings([new Ring(at, radius)], new Pen(Tone.Ink, 0.35), Tone.Paper);
        sketch.Lines(
            [
                new([at.Moved(-radius - 1.5, 0), at.Moved(radius + 1.5, 0)], false),
                new([at.Moved(0, -radius - 1.5), at.Moved(0, radius + 1.5)], false),
            ],
            Pen.Fine,
            Layers.Dimension
        );
        var foot = corner.Moved(0, part.Width.Si * 1000 * scale);
        Dimensions.Across(sketch, foot, new(at.X, foot.Y), 5.2, ("", hole.Key));
        Dimensions.Upward(sketch, foot, new(foot.X, at.Y), -4.6, ("", hole.Key));
        string[] lines =
        [
            $"Ø {Exact(hole.Diameter.Si)}, {hole.For}",
            $"{Exact(hole.FromLeft.Si)} from the left",
            $"{Exact(hole.FromBottom.Si)} from below",
        ];
        if (part.Length.Si * 1000 * scale < LabelRoom)
        {
            sketch.Key = "";
            return;
        }

        for (var i = 0; i < lines.Length; i++)
        {
            sketch.Text(at.Moved(radius + 3, -10.5 + 4 * i), lines[i], Dimensions.Points);
        }

        sketch.Line(
            at.Moved(radius * 0.7, -radius * 0.7),
            at.Moved(radius + 2.6, -3),
            Pen.Fine,
            Layers.Dimension
        );
        sketch.Key = "";
    }

    /// <summary>True where an opening reaches the upper edge of its part.</summary>
    private static bool IsNotch(CutOut cut, CutPart part) =>
        cut.FromBottom.Si + cut.Width.Si >= part.Width.Si - 1e-6;

    /// <summary>The edge of a part, round its notches.</summary>
    private static ImmutableArray<Spot> Outline(CutPart part, Spot corner, double scale)
    {
        var (length, width) = (part.Length.Si * 1000 * scale, part.Width.Si * 1000 * scale);
        var edge = ImmutableArray.CreateBuilder<Spot>();
        edge.Add(corner);
        foreach (var cut in part.CutOuts.Where(c => IsNotch(c, part)).OrderBy(c => c.FromLeft.Si))
        {
            var (left, right) = (
                cut.FromLeft.Si * 1000 * scale,
                (cut.FromLeft.Si + cut.Length.Si) * 1000 * scale
            );
            var deep = Math.Min(width, cut.Width.Si * 1000 * scale);
            edge.AddRange(
                corner.Moved(left, 0),
                corner.Moved(left, deep),
                corner.Moved(right, deep),
                corner.Moved(right, 0)
            );
        }

        edge.AddRange(corner.Moved(length, 0), corner.Moved(length, width), corner.Moved(0, width));
        return edge.ToImmutable();
    }

    private static ImmutableArray<Spot> Corners(CutOut cut, CutPart part, Spot corner, double scale) =>
        Sketch.Corners(
            corner.Moved(
                cut.FromLeft.Si * 1000 * scale,
                (part.Width.Si - cut.FromBottom.Si - cut.Width.Si) * 1000 * scale
            ),
            cut.Length.Si * 1000 * scale,
            cut.Width.Si * 1000 * scale
        );

    private static void Opening(Sketch sketch, CutPart part, CutOut cut, Spot corner, double scale)
    {
        sketch.Key = cut.Key;
        if (!IsNotch(cut, part))
        {
            sketch.Area(Corners(cut, part, corner, scale), new Pen(Tone.Ink, 0.35), Tone.Paper);
        }

        sketch.Key = "";
    }

    private static Spot Middle(CutHole hole, CutPart part) =>
        new(hole.FromLeft.Si * 1000, (part.Width.Si - hole.FromBottom.Si) * 1000);
}
