using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>The components bring more water than the mix should hold.</summary>
internal static class MixTooWet
{
    public static readonly Rule Rule = new(
        "mix-too-wet",
        Protects.Build,
        "the goods as sold hold more water than the fresh mix may have at the wet end of squeeze wetness",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var soil = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil);
        if (soil is not { MostWater: { Si: > 0 } most, WaterBrought: { } brought } || brought.Si <= most.Si)
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            "The materials as sold hold more water than the mix may have, even at the wet end of squeeze "
                + "wetness.",
            (brought, most),
            "Dry the wettest component or take another lot.",
            "floor.soil.recipe"
        );
    }
}
