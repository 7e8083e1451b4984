using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;

namespace Litterfall.Documents.Shapes;

/// <summary>Animals as silhouettes at true size, in shares of their body length.</summary>
internal static class AnimalMarks
{
    private const int MostDrawn = 6;
    private const double GoldenShare = 0.618034;

    /// <summary>Along x with the head to the right, the ground at 0, up negative.</summary>
    private static readonly (double X, double Y)[] FrogSide =
    [
        (-.5, 0),
        (-.5, -.16),
        (-.4, -.3),
        (-.14, -.4),
        (.12, -.5),
        (.24, -.56),
        (.34, -.5),
        (.48, -.42),
        (.5, -.34),
        (.4, -.27),
        (.3, -.24),
        (.34, -.04),
        (.46, -.02),
        (.46, 0),
        (.24, 0),
        (.16, -.2),
        (-.06, -.12),
        (.1, -.02),
        (.1, 0),
        (-.24, 0),
        (-.4, -.08),
        (-.3, 0),
    ];

    private static readonly (double X, double Y)[] GeckoSide =
    [
        (-1.3, -.02),
        (-.9, -.08),
        (-.5, -.14),
        (-.2, -.24),
        (.1, -.25),
        (.28, -.2),
        (.4, -.25),
        (.52, -.16),
        (.5, -.1),
        (.3, -.08),
        (.26, -.02),
        (.34, 0),
        (.16, 0),
        (.12, -.08),
        (-.2, -.08),
        (-.26, 0),
        (-.42, 0),
        (-.36, -.08),
        (-.6, -.06),
        (-.95, -.02),
    ];

    private static readonly (double X, double Y)[] Worm =
    [
        (-.5, -.02),
        (-.4, -.09),
        (-.2, -.05),
        (0, -.1),
        (.2, -.06),
        (.4, -.1),
        (.5, -.06),
        (.5, -.01),
        (.4, -.02),
        (.2, 0),
        (0, -.02),
        (-.2, 0),
        (-.4, -.01),
    ];

    private static readonly (double X, double Y)[] CrabSide =
    [
        (-.9, 0),
        (-.62, -.42),
        (-.42, -.3),
        (-.36, -.5),
        (0, -.56),
        (.36, -.5),
        (.42, -.3),
        (.62, -.42),
        (.9, 0),
        (.6, -.28),
        (.44, -.2),
        (.66, 0),
        (.36, -.16),
        (-.36, -.16),
        (-.66, 0),
        (-.44, -.2),
        (-.6, -.28),
    ];

    /// <summary>Along x with the head to the right, its middle at 0.</summary>
    private static readonly (double X, double Y)[] FrogAbove =
    [
        (.5, 0),
        (.42, .14),
        (.26, .2),
        (.3, .4),
        (.46, .44),
        (.2, .44),
        (.12, .22),
        (-.1, .2),
        (-.06, .42),
        (-.36, .52),
        (-.12, .58),
        (-.42, .6),
        (-.5, .4),
        (-.34, .14),
        (-.44, 0),
        (-.34, -.14),
        (-.5, -.4),
        (-.42, -.6),
        (-.12, -.58),
        (-.36, -.52),
        (-.06, -.42),
        (-.1, -.2),
        (.12, -.22),
        (.2, -.44),
        (.46, -.44),
        (.3, -.4),
        (.26, -.2),
        (.42, -.14),
    ];

    private static readonly (double X, double Y)[] GeckoAbove =
    [
        (.52, 0),
        (.42, .11),
        (.28, .07),
        (.22, .12),
        (.36, .3),
        (.22, .3),
        (.1, .13),
        (-.2, .12),
        (-.26, .3),
        (-.42, .32),
        (-.32, .1),
        (-.7, .06),
        (-1.3, .1),
        (-.7, -.04),
        (-.32, -.1),
        (-.42, -.32),
        (-.26, -.3),
        (-.2, -.12),
        (.1, -.13),
        (.22, -.3),
        (.36, -.3),
        (.22, -.12),
        (.28, -.07),
        (.42, -.11),
    ];

    private static readonly (double X, double Y)[] CrabAbove =
    [
        (.42, .3),
        (.7, .5),
        (.76, .2),
        (.56, .3),
        (.44, .06),
        (.44, -.06),
        (.56, -.3),
        (.76, -.2),
        (.7, -.5),
        (.42, -.3),
        (.3, -.46),
        (.1, -.9),
        (.1, -.5),
        (-.2, -.96),
        (-.16, -.5),
        (-.5, -.9),
        (-.4, -.3),
        (-.44, 0),
        (-.4, .3),
        (-.5, .9),
        (-.16, .5),
        (-.2, .96),
        (.1, .5),
        (.1, .9),
        (.3, .46),
    ];

    /// <summary>
    /// The animals of a design, each with a share of the way along and of the way across, the same each time.
    /// </summary>
    public static IEnumerable<(AnimalEntry Entry, string Key, double Along, double Across)> Of(
        CheckedDesign design
    )
    {
        var drawn = 0;
        for (var i = 0; i < design.Design.Animals.Count; i++)
        {
            var key = FormattableString.Invariant($"animals[{i}]");
            var entry = design.Entry<AnimalEntry>($"{key}.animal");
            for (var k = 0; k < design.Design.Animals[i].Count && drawn < MostDrawn; k++, drawn++)
            {
                var along = ((drawn + 1) * GoldenShare) % 1;
                yield return (
                    entry,
                    key,
                    0.08 + (0.84 * along),
                    0.15 + (0.6 * (((drawn + 1) * GoldenShare * 2.3) % 1))
                );
            }
        }
    }

    /// <summary>An animal from the side.</summary>
    /// <param name="sketch">Takes it.</param>
    /// <param name="entry">The animal.</param>
    /// <param name="foot">The ground under it.</param>
    /// <param name="length">Its body length, mm on paper.</param>
    /// <param name="facesLeft">Which way it looks.</param>
    public static void Side(Sketch sketch, AnimalEntry entry, Spot foot, double length, bool facesLeft) =>
        Draw(
            sketch,
            entry,
            AnimalShapes.Of(entry) switch
            {
                AnimalShape.Gecko => GeckoSide,
                AnimalShape.Millipede => Worm,
                AnimalShape.Crab => CrabSide,
                _ => FrogSide,
            },
            p => foot.Moved((facesLeft ? -1 : 1) * p.X * length, p.Y * length)
        );

    /// <summary>An animal from above.</summary>
    /// <param name="sketch">Takes it.</param>
    /// <param name="entry">The animal.</param>
    /// <param name="middle">Where it sits.</param>
    /// <param name="length">Its body length, mm on paper.</param>
    /// <param name="turn">Which way it looks, radians.</param>
    public static void Above(Sketch sketch, AnimalEntry entry, Spot middle, double length, double turn)
    {
        var (sin, cos) = Math.SinCos(turn);
        Draw(
            sketch,
            entry,
            AnimalShapes.Of(entry) switch
            {
                AnimalShape.Gecko => GeckoAbove,
                AnimalShape.Millipede => Worm,
                AnimalShape.Crab => CrabAbove,
                _ => FrogAbove,
            },
            p => middle.Moved(length * ((p.X * cos) - (p.Y * sin)), length * ((p.X * sin) + (p.Y * cos)))
        );
    }

    private static void Draw(
        Sketch sketch,
        AnimalEntry entry,
        (double X, double Y)[] shape,
        Func<(double X, double Y), Spot> place
    )
    {
        var color = (entry.Color?.Text ?? "brown").Split(',')[0];
        ImmutableArray<Spot> spots = [.. shape.Select(place)];
        sketch.Add(
            new PathMark([new(spots, true)], [])
            {
                Pen = new Pen(Tone.Ink, 0.18),
                Shade = NamedColors.Pale(color),
                Key = sketch.Key,
            }
        );
    }
}
