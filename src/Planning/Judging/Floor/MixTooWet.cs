using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Quantities;

namespace Litterfall.Planning.Judging.Floor;

/// <summary>The components bring more water than the mix should hold.</summary>
internal static class MixTooWet
{
    public static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var soil = n.Layers.FirstOrDefault(l => l.Layer == "soil");
        if (
            soil is not { SqueezeWater: { Si: > 0 } wanted, WaterBrought: { } brought }
            || brought.Si <= wanted.Si
        )
        {
            yield break;
        }

        yield return new Finding(
            "mix-too-wet",
            Severity.Caution,
            Protects.Build,
            "The goods as sold already hold more water than the mix needs; none can be added.",
            brought,
            wanted,
            "Dry the wettest component or take another lot."
        )
        {
            Where = "floor.soil",
        };
    }
}
