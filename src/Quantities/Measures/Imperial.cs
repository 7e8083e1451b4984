using Litterfall.Domain;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Measures;

/// <summary>Whether a maker thinks in inches: the first edge of the box says so.</summary>
public static class Imperial
{
    private static readonly string[] Words = ["in", "ft", "foot", "feet", "'", "\"", "″", "′"];

    /// <summary>True when the length of the box was typed in inches or feet.</summary>
    public static bool IsUsed(Design design) => IsImperial((design.Box.Outside ?? design.Box.Inside)!.Length);

    /// <summary>True when the first depth written in the floor was typed in inches.</summary>
    public static bool AreDepths(Design design)
    {
        var floor = design.Floor;
        var zone = floor.Soil is { Zones.Count: > 0 } stepped ? stepped.Zones[0] : null;
        var first = floor.Soil?.Depth
            ?? floor.Soil?.Front
            ?? zone?.Depth
            ?? zone?.Front
            ?? floor.Drainage?.Depth
            ?? floor.Drainage?.Raised
            ?? floor.Litter?.Depth;
        return first is { } depth
            && Words.Any(w => depth.Text.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>True when the first measurement was typed in inches or feet.</summary>
    public static bool IsImperial(Seq<Typed<Length>> edge) =>
        Words.Any(word => edge[0].Text.Contains(word, StringComparison.OrdinalIgnoreCase));
}
