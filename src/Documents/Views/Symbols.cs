using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Views;

/// <summary>Plants, wood and stones as symbols: seen from the side and from above.</summary>
internal static class Symbols
{
    private static readonly Pen Stem = new(Tone.Leaf, 0.3);

    /// <summary>A plant seen from the side, its foot at a point; sizes in millimeters on paper.</summary>
    public static void Side(Sketch sketch, PlantForm form, Spot foot, double size)
    {
        switch (form)
        {
            case PlantForm.Rosette:
                Arcs(sketch, foot, size, [-1.1, -0.7, -0.3, 0, 0.3, 0.7, 1.1], 0.3);
                break;
            case PlantForm.Fronds:
                Arcs(sketch, foot, size * 1.1, [-0.9, -0.5, -0.15, 0.2, 0.55, 0.95], 0.75);
                break;
            case PlantForm.Climber:
                Vine(sketch, foot, size);
                break;
            case PlantForm.Mat:
                Arcs(sketch, foot.Moved(-size * 0.35, 0), size * 0.35, [-0.6, 0, 0.6], 0.2);
                Arcs(sketch, foot, size * 0.42, [-0.7, -0.2, 0.3, 0.7], 0.2);
                Arcs(sketch, foot.Moved(size * 0.35, 0), size * 0.35, [-0.6, 0, 0.6], 0.2);
                break;
            default:
                Arcs(sketch, foot, size * 0.9, [-0.6, -0.3, 0, 0.3, 0.6], 0.4);
                break;
        }
    }

    /// <summary>A plant seen from above.</summary>
    public static void Above(Sketch sketch, PlantForm form, Spot middle, double size)
    {
        var blades =
            form == PlantForm.Rosette ? 9
            : form == PlantForm.Fronds ? 8
            : 6;
        var lines = ImmutableArray.CreateBuilder<Contour>();
        for (var i = 0; i < blades; i++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / blades + 0.3);
            var (tip, wide) = (size / 2, size * (form == PlantForm.Mat ? 0.16 : 0.09));
            lines.Add(
                new(
                    [
                        middle,
                        middle.Moved(0.55 * tip * cos - wide * sin, 0.55 * tip * sin + wide * cos),
                        middle.Moved(tip * cos, tip * sin),
                        middle.Moved(0.55 * tip * cos + wide * sin, 0.55 * tip * sin - wide * cos),
                    ],
                    true
                )
            );
        }

        sketch.Add(
            new PathMark(lines.ToImmutable(), [])
            {
                Pen = new Pen(Tone.Leaf, 0.2),
                Fill = Tone.Paper,
                Key = sketch.Key,
            }
        );
    }

    /// <summary>A number in a circle.</summary>
    public static void Balloon(Sketch sketch, Spot middle, int number)
    {
        sketch.Rings([new Ring(middle, number > 9 ? 2.6 : 2.1)], new Pen(Tone.Leaf, 0.3), Tone.Paper);
        sketch.Text(middle.Moved(0, 1.15), FormattableString.Invariant($"{number}"), 9, Align.Middle);
    }

    /// <summary>A letter in a square: wood and stone.</summary>
    public static void Tag(Sketch sketch, Spot middle, char letter)
    {
        sketch.Rectangle(middle.Moved(-2, -2), 4, 4, new Pen(Tone.Earth, 0.3), Tone.Paper);
        sketch.Text(middle.Moved(0, 1.15), letter.ToString(), 9, Align.Middle);
    }

    /// <summary>Outline of a piece of wood or stone within a frame.</summary>
    public static ImmutableArray<Spot> Lump(Spot corner, double width, double height, bool stone)
    {
        ReadOnlySpan<(double X, double Y)> shape = stone
            ? [(0, .75), (.12, .25), (.42, 0), (.78, .1), (1, .55), (.9, 1), (.1, 1)]
            :
            [
                (0, .62),
                (.06, .3),
                (.22, .12),
                (.45, .2),
                (.7, 0),
                (.93, .14),
                (1, .48),
                (.9, .82),
                (.6, .95),
                (.3, .88),
                (.1, 1),
            ];
        var spots = ImmutableArray.CreateBuilder<Spot>(shape.Length);
        foreach (var (x, y) in shape)
        {
            spots.Add(corner.Moved(x * width, y * height));
        }

        return spots.MoveToImmutable();
    }

    private static void Arcs(Sketch sketch, Spot foot, double size, ReadOnlySpan<double> leans, double droop)
    {
        var lines = ImmutableArray.CreateBuilder<Contour>();
        foreach (var lean in leans)
        {
            var spots = ImmutableArray.CreateBuilder<Spot>(7);
            for (var i = 0; i <= 6; i++)
            {
                var t = i / 6.0;
                var up = Math.Cos(lean * 0.9) * t - droop * Math.Abs(lean) * t * t * 0.6;
                spots.Add(foot.Moved(size * Math.Sin(lean) * t * (0.8 + 0.3 * t), -size * up));
            }

            lines.Add(new(spots.MoveToImmutable(), false));
        }

        sketch.Lines(lines.ToImmutable(), Stem);
    }

    private static void Vine(Sketch sketch, Spot foot, double size)
    {
        var stem = ImmutableArray.CreateBuilder<Spot>(11);
        var leaves = ImmutableArray.CreateBuilder<Contour>();
        for (var i = 0; i <= 10; i++)
        {
            var t = i / 10.0;
            var at = foot.Moved(size * 0.08 * Math.Sin(t * 7), -size * 1.25 * t);
            stem.Add(at);
            if (i > 0)
            {
                var side = i % 2 == 0 ? 1 : -1;
                leaves.Add(
                    new(
                        [
                            at,
                            at.Moved(side * size * 0.07, -size * 0.06),
                            at.Moved(side * size * 0.14, 0),
                            at.Moved(side * size * 0.07, size * 0.03),
                        ],
                        true
                    )
                );
            }
        }

        sketch.Lines([new(stem.MoveToImmutable(), false), .. leaves], new Pen(Tone.Leaf, 0.22));
    }
}
