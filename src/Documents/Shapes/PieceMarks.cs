using System.Collections.Immutable;
using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Shapes;

/// <summary>
/// Wood, cork and stone by what they are: branches fork, a cork tube is hollow, slate lies in plates. Each
/// fills the frame it is given, in shares of its width and height from the upper left.
/// </summary>
internal static class PieceMarks
{
    private const uint Cork = 0xC2A98D;
    private const uint Hollow = 0x8A745D;
    private static readonly Pen Rim = new(Tone.Earth, 0.32);
    private static readonly Pen Grain = new(Tone.Earth, 0.16);

    private static readonly (double X, double Y)[] Arch =
    [
        (0, 1),
        (.02, .5),
        (.16, .16),
        (.5, 0),
        (.84, .15),
        (.98, .5),
        (1, 1),
        (.88, 1),
        (.84, .6),
        (.7, .34),
        (.5, .25),
        (.3, .34),
        (.16, .6),
        (.12, 1),
    ];

    private static readonly (double X, double Y)[] Slab =
    [
        (0, .2),
        (.05, 0),
        (.3, .06),
        (.6, 0),
        (.93, .08),
        (1, .3),
        (.97, .6),
        (1, .9),
        (.7, 1),
        (.4, .94),
        (.06, 1),
        (.03, .6),
    ];

    private static readonly (double X, double Y)[] Branch =
    [
        (0, .82),
        (.3, .62),
        (.42, .2),
        (.36, 0),
        (.46, .02),
        (.53, .3),
        (.66, .42),
        (.86, .12),
        (.95, .16),
        (.8, .5),
        (1, .5),
        (1, .62),
        (.7, .66),
        (.4, .86),
        (.05, 1),
    ];

    private static readonly (double X, double Y)[] Vine =
    [
        (0, .6),
        (.16, .44),
        (.24, .1),
        (.31, .12),
        (.3, .5),
        (.46, .56),
        (.6, .3),
        (.56, .02),
        (.64, 0),
        (.72, .3),
        (.92, .34),
        (1, .1),
        (1, .42),
        (.76, .52),
        (.66, .7),
        (.84, .9),
        (.78, 1),
        (.58, .78),
        (.4, .78),
        (.2, .7),
        (.04, .86),
    ];

    private static readonly (double X, double Y)[] Root =
    [
        (.42, 0),
        (.56, 0),
        (.6, .3),
        (.82, .2),
        (.86, .28),
        (.64, .46),
        (.98, .62),
        (1, .72),
        (.64, .62),
        (.76, 1),
        (.66, 1),
        (.52, .66),
        (.4, 1),
        (.3, 1),
        (.38, .62),
        (0, .8),
        (0, .7),
        (.34, .48),
        (.1, .26),
        (.14, .18),
        (.42, .32),
    ];

    private static readonly (double X, double Y)[] Boulder =
    [
        (0, .7),
        (.06, .4),
        (.2, .16),
        (.42, .02),
        (.66, .05),
        (.86, .22),
        (.97, .5),
        (1, .8),
        (.9, 1),
        (.1, 1),
    ];

    private static readonly (double X, double Y)[] Jagged =
    [
        (0, .8),
        (.08, .4),
        (.2, .46),
        (.26, .12),
        (.42, .2),
        (.54, 0),
        (.66, .24),
        (.8, .14),
        (.86, .46),
        (1, .56),
        (.94, 1),
        (.06, 1),
    ];

    private static readonly (double X, double Y)[] Long =
    [
        (0, 1),
        (.01, .5),
        (.07, .2),
        (.3, .06),
        (.56, 0),
        (.82, .08),
        (.96, .3),
        (1, .62),
        (.99, 1),
    ];

    /// <summary>A piece along its length.</summary>
    /// <param name="sketch">Takes it.</param>
    /// <param name="material">Key of its material.</param>
    /// <param name="isStone">True for stone.</param>
    /// <param name="frame">Upper left corner, width and height, mm.</param>
    public static void Along(
        Sketch sketch,
        string material,
        bool isStone,
        (Spot Corner, double Wide, double Tall) frame
    )
    {
        switch (material)
        {
            case "cork-bark":
                Body(sketch, Long, frame, Cork);
                Lines(
                    sketch,
                    frame,
                    [(.06, .5, .4, .36), (.3, .68, .8, .6), (.5, .3, .9, .36), (.1, .86, .5, .84)]
                );
                break;
            case "cork-tube":
                Body(sketch, [(0, .06), (.3, 0), (.94, .04), (.94, .96), (.5, 1), (0, .94)], frame, Cork);
                Lines(sketch, frame, [(.06, .3, .5, .26), (.3, .5, .84, .52), (.1, .74, .6, .78)]);
                Oval(
                    sketch,
                    (frame.Corner.Moved(frame.Wide * 0.88, 0), frame.Wide * 0.12, frame.Tall),
                    (0, 1),
                    Hollow
                );
                break;
            default:
                Side(sketch, material, isStone, frame);
                break;
        }
    }

    /// <summary>A piece from its end.</summary>
    /// <param name="sketch">Takes it.</param>
    /// <param name="material">Key of its material.</param>
    /// <param name="isStone">True for stone.</param>
    /// <param name="frame">Upper left corner, width and height, mm.</param>
    public static void Side(
        Sketch sketch,
        string material,
        bool isStone,
        (Spot Corner, double Wide, double Tall) frame
    )
    {
        switch (material)
        {
            case "cork-bark":
                Body(sketch, Arch, frame, Cork);
                Lines(
                    sketch,
                    frame,
                    [(.1, .5, .16, .3), (.3, .2, .42, .14), (.6, .14, .72, .22), (.88, .4, .92, .6)]
                );
                break;
            case "cork-tube":
                Oval(sketch, frame, (0, 1), Cork);
                Oval(sketch, frame, (.22, .78), Hollow);
                break;
            case "slate":
                Plates(sketch, frame);
                break;
            default:
                Any(sketch, material, isStone, frame);
                break;
        }
    }

    /// <summary>A piece from above.</summary>
    /// <param name="sketch">Takes it.</param>
    /// <param name="material">Key of its material.</param>
    /// <param name="isStone">True for stone.</param>
    /// <param name="frame">Upper left corner, width and height, mm.</param>
    public static void Above(
        Sketch sketch,
        string material,
        bool isStone,
        (Spot Corner, double Wide, double Tall) frame
    )
    {
        switch (material)
        {
            case "cork-bark" or "cork-tube":
                Body(sketch, Slab, frame, Cork);
                Lines(
                    sketch,
                    frame,
                    [(.08, .2, .5, .24), (.4, .4, .92, .36), (.1, .62, .6, .66), (.5, .82, .94, .78)]
                );
                if (material == "cork-tube")
                {
                    var mouth = (
                        frame.Corner.Moved(frame.Wide * 0.9, frame.Tall * 0.05),
                        frame.Wide * 0.12,
                        frame.Tall * 0.9
                    );
                    Oval(sketch, mouth, (0, 1), Hollow);
                }

                break;
            case "slate":
                Body(sketch, [(0, .3), (.3, 0), (.9, .06), (1, .5), (.8, 1), (.14, .92)], frame, 0xA3ACAF);
                Lines(sketch, frame, [(.14, .34, .84, .16), (.2, .8, .9, .56)]);
                break;
            default:
                Any(sketch, material, isStone, frame);
                break;
        }
    }

    private static void Any(
        Sketch sketch,
        string material,
        bool isStone,
        (Spot Corner, double Wide, double Tall) frame
    )
    {
        switch (material)
        {
            case "grapevine-wood" or "driftwood":
                Body(sketch, Vine, frame, 0xC9AF90);
                Lines(sketch, frame, [(.08, .66, .4, .66), (.46, .66, .66, .44), (.72, .42, .96, .3)]);
                break;
            case "azalea-root":
                Body(sketch, Root, frame, 0xBF9A80);
                Lines(sketch, frame, [(.48, .1, .5, .6), (.5, .5, .9, .66), (.46, .5, .08, .74)]);
                break;
            case "lava-stone":
                Body(sketch, Jagged, frame, 0xA08A84);
                Holes(sketch, frame);
                break;
            case "limestone":
                Body(sketch, Jagged, frame, 0xD8D1C0);
                Lines(sketch, frame, [(.1, .7, .9, .66), (.2, .5, .8, .44)]);
                break;
            default:
                Body(sketch, isStone ? Boulder : Branch, frame, isStone ? 0xBFBDB8U : 0xB9A088U);
                Lines(
                    sketch,
                    frame,
                    isStone
                        ? [(.2, .5, .42, .3), (.6, .7, .84, .6)]
                        : [(.08, .88, .4, .7), (.48, .6, .9, .58)]
                );
                break;
        }
    }

    private static void Body(
        Sketch sketch,
        (double X, double Y)[] shape,
        (Spot Corner, double Wide, double Tall) frame,
        uint color
    )
    {
        ImmutableArray<Spot> spots =
        [
            .. shape.Select(p => frame.Corner.Moved(p.X * frame.Wide, p.Y * frame.Tall)),
        ];
        sketch.Add(
            new PathMark([new(spots, true)], [])
            {
                Pen = Rim,
                Shade = color,
                Key = sketch.Key,
            }
        );
    }

    private static void Oval(
        Sketch sketch,
        (Spot Corner, double Wide, double Tall) frame,
        (double From, double To) part,
        uint color
    )
    {
        const int Sides = 18;
        var (half, middle) = ((part.To - part.From) / 2, (part.From + part.To) / 2);
        Body(
            sketch,
            [
                .. Enumerable
                    .Range(0, Sides)
                    .Select(k => Math.SinCos(k * 2 * Math.PI / Sides))
                    .Select(t => (middle + (half * t.Cos), middle + (half * t.Sin))),
            ],
            frame,
            color
        );
    }

    private static void Plates(Sketch sketch, (Spot Corner, double Wide, double Tall) frame)
    {
        foreach (
            var (low, inset, shift) in new[]
            {
                (1.0, 0.0, 0.0),
                (.74, .06, .03),
                (.48, .12, -.04),
                (.24, .2, .02),
            }
        )
        {
            Body(
                sketch,
                [
                    (inset + shift, low - .06),
                    (inset + shift + .04, low - .24),
                    (1 - inset + shift - .03, low - .22),
                    (1 - inset + shift, low),
                    (inset + shift + .02, low),
                ],
                frame,
                0xA3ACAF
            );
        }
    }

    private static void Lines(
        Sketch sketch,
        (Spot Corner, double Wide, double Tall) frame,
        ReadOnlySpan<(double X1, double Y1, double X2, double Y2)> lines
    )
    {
        var all = ImmutableArray.CreateBuilder<Contour>(lines.Length);
        foreach (var (x1, y1, x2, y2) in lines)
        {
            all.Add(
                new(
                    [
                        frame.Corner.Moved(x1 * frame.Wide, y1 * frame.Tall),
                        frame.Corner.Moved(x2 * frame.Wide, y2 * frame.Tall),
                    ],
                    false
                )
            );
        }

        sketch.Lines(all.MoveToImmutable(), Grain, Layers.Hatch);
    }

    private static void Holes(Sketch sketch, (Spot Corner, double Wide, double Tall) frame)
    {
        var r = 0.035 * Math.Min(frame.Wide, frame.Tall);
        ImmutableArray<Ring> rings =
        [
            .. new[] { (.2, .7), (.35, .5), (.5, .3), (.55, .75), (.7, .5), (.82, .75) }.Select(p => new Ring(
                frame.Corner.Moved(p.Item1 * frame.Wide, p.Item2 * frame.Tall),
                r
            )),
        ];
        sketch.Rings(rings, null, Tone.Earth, Layers.Hatch);
    }
}
