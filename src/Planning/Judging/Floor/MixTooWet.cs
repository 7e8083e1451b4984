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
        if (soil is not { MostWater: { Si: > 0 } most, WaterBrought: { } brought } || brought.Si <= most.Si)
        {
            yield break;
        }

        yield return new Finding(
            "mix-too-wet",
            Severity.Caution,
            Protects.Build,
            "The goods as sold hold more water than the mix may have even at the wet end of squeeze wetness.",
            brought,
            most,
            "Dry the wettest component or take another lot."
        )
        {
            Where = "floor.soil",
        };
    }
}
