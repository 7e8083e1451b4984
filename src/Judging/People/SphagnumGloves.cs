using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>Sphagnum can carry a fungus that enters by small cuts.</summary>
internal static class SphagnumGloves
{
    public static readonly Rule Rule = new(
        "sphagnum-gloves",
        Protects.Person,
        "sphagnum is used, which can carry Sporothrix",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var moss = Materials.OfFloor(n).Where(m => Materials.Says(m, "Sporothrix")).ToList();
        if (moss.Count > 0)
        {
            yield return Rule.Found(
                Severity.Note,
                Materials.Sentence(
                    $"{Materials.Listed([.. moss.Select(m => m.Name)])} can carry the fungus "
                        + $"Sporothrix, which "
                        + "enters by small cuts."
                ),
                (null, null),
                "Wear gloves and long sleeves, cover cuts, and wash afterwards.",
                n.Design.Design.Floor.Moss is null ? "floor.soil.recipe" : "floor.moss.material",
                (moss[0] as SubstrateEntry)?.Caution?.Origin ?? Citation.Habit("gloves for sphagnum")
            );
        }
    }
}
