using System.Collections.Immutable;
using Litterfall.Documents.Drawings;

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
        ];
    }
}
