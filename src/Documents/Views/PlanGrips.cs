using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Domain;

namespace Litterfall.Documents.Views;

/// <summary>What of the plan and of the front view can be taken hold of.</summary>
internal static class PlanGrips
{
    /// <summary>Plants and pieces by two edges.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="at">Place in the drawing of a point of the box.</param>
    /// <param name="perMeter">Length of a meter in the drawing, mm.</param>
    /// <param name="isFront">True for the front view: heights, of what hangs, instead of depths.</param>
    public static ImmutableArray<Grip> Of(
        Scene scene,
        Func<(double X, double Y, double Z), Spot> at,
        double perMeter,
        bool isFront
    )
    {
        var terrain = scene.Terrain;
        Grip One(string key, string name, (double X, double Y, double Z) place, bool isHung)
        {
            var part = SectionView.Part(key);
            return new Grip(part, name, at(place), perMeter)
            {
                Across = new($"{part}.at.x", place.X, 0.0, terrain.Length),
                Up =
                    !isFront ? new($"{part}.at.y", place.Y, 0.0, terrain.DepthOfBox)
                    : isHung ? new($"{part}.at.z", place.Z, 0.0, terrain.Height)
                    : null,
                Hidden = isFront ? new($"{part}.at.y", place.Y, 0.0, terrain.DepthOfBox) : null,
            };
        }

        return
        [
            .. scene.Plants.Select(p => One(p.Key, p.Name, (p.X, p.Y, p.Z), p.Mounted)),
            .. scene.Pieces.Select(p =>
                One(p.Key, $"piece {SectionView.Letter(p.Number)}", (p.X, p.Y, p.Foot), false)
            ),
            .. Vents(scene, at, perMeter, isFront),
        ];
    }

    /// <summary>Vents: in the plan those of the lid, from the front those of front and back.</summary>
    private static IEnumerable<Grip> Vents(
        Scene scene,
        Func<(double X, double Y, double Z), Spot> at,
        double perMeter,
        bool isFront
    )
    {
        var terrain = scene.Terrain;
        foreach (var vent in scene.Vents)
        {
            var shown = isFront ? vent.Side is Side.Front or Side.Back : vent.Side == Side.Top;
            if (!shown)
            {
                continue;
            }

            var place = isFront
                ? (vent.Middle, 0.0, vent.Height)
                : (vent.Middle, vent.Behind, terrain.Height);
            yield return new Grip(vent.Key, $"vent {vent.Number}", at(place), perMeter)
            {
                Across = new($"{vent.Key}.along", vent.Middle, 0.0, terrain.Length),
                Up = isFront
                    ? new($"{vent.Key}.height", vent.Height, 0.0, terrain.Height)
                    : new($"{vent.Key}.behind", vent.Behind, 0.0, terrain.DepthOfBox),
            };
        }
    }
}
