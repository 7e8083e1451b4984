using Litterfall.Documents.Drawings;
using Litterfall.Domain;

namespace Litterfall.Documents.Views;

/// <summary>Steps of the soil and the opening of the doors, as they are taken hold of.</summary>
internal static class FloorAndDoorGrips
{
    private const double Least = 0.005;
    private const double LeastShare = 0.05;

    /// <summary>Borders and tops of the steps, seen from the front or lengthwise.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="at">Place in the drawing of a point along the front and over the base.</param>
    /// <param name="perMeter">Length of a meter in the drawing, mm.</param>
    public static IEnumerable<Grip> Steps(Scene scene, Func<double, double, Spot> at, double perMeter)
    {
        if (scene.Design.Floor.Soil is not { Zones.Count: > 0 } soil)
        {
            yield break;
        }

        var terrain = scene.Terrain;
        var from = 0.0;
        for (var i = 0; i < soil.Zones.Count; i++)
        {
            var zone = soil.Zones[i];
            var wide = zone.Share.Si * terrain.Length;
            var path = FormattableString.Invariant($"floor.soil.zones[{i}]");
            var middle = from + (wide / 2);
            if (zone.Depth is { } depth)
            {
                yield return new Grip(
                    "floor.soil",
                    FormattableString.Invariant($"step {i + 1}, its depth"),
                    at(middle, terrain.Drainage + depth.Si),
                    perMeter
                )
                {
                    Up = new($"{path}.depth", depth.Si, Least, terrain.Height * 0.6),
                };
            }

            from += wide;
            if (i + 1 < soil.Zones.Count)
            {
                yield return Border(scene, path, (i, from, wide), at, perMeter);
            }
        }
    }

    /// <summary>Sill and doors by their edges, from the front.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="at">Place in the drawing of a point along the front and over the base.</param>
    /// <param name="perMeter">Length of a meter in the drawing, mm.</param>
    public static IEnumerable<Grip> Opening(Scene scene, Func<double, double, Spot> at, double perMeter)
    {
        var terrain = scene.Terrain;
        if (scene.Design.Box is not { Opening: Domain.Opening.Front } box)
        {
            yield break;
        }

        if (box.Sill is { } sill)
        {
            yield return new Grip("box", "sill", at(terrain.Length * 0.12, sill.Si), perMeter)
            {
                Up = new("box.sill", sill.Si, 0.0, terrain.Height * 0.8),
            };
        }

        var low = box.Sill?.Si ?? 0;
        if (box.Doors is { Height: { } height })
        {
            yield return new Grip(
                "box.doors",
                "height of the door opening",
                at(terrain.Length * 0.88, Math.Min(terrain.Height, low + height.Si)),
                perMeter
            )
            {
                Up = new("box.doors.height", height.Si, 0.02, Math.Max(0.02, terrain.Height - low)),
            };
        }
    }

    private static Grip Border(
        Scene scene,
        string path,
        (int Number, double X, double Wide) step,
        Func<double, double, Spot> at,
        double perMeter
    )
    {
        var terrain = scene.Terrain;
        var next = scene.Design.Floor.Soil!.Zones[step.Number + 1].Share.Si * terrain.Length;
        var rim = LeastShare * terrain.Length;
        return new Grip(
            "floor.soil",
            FormattableString.Invariant($"border of steps {step.Number + 1} and {step.Number + 2}"),
            at(step.X, terrain.Drainage * 0.5),
            perMeter
        )
        {
            Across = new($"{path}.share", step.Wide, rim, Math.Max(rim, step.Wide + next - rim)),
        };
    }
}
