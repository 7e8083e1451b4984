using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Load;

/// <summary>A workshop folder is named, but a material that is bought has no price in it.</summary>
internal static class PriceMissing
{
    public static readonly Rule Rule = new(
        "price-missing",
        Protects.Build,
        "a workshop folder is named but lacks a price",
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var missing = n
            .Packs.Where(p => p.Cost is null || p.UsedValue is null)
            .Select(p => p.Material.Name)
            .ToArray();
        if (n.Design.Catalog.Workshop is not null && missing.Length > 0)
        {
            yield return Rule.Found(
                Severity.Note,
                $"No price is entered for {Materials.Listed(missing)}, so the cost of materials is not "
                    + $"known.",
                (null, null),
                "Enter the prices of these packs in the workshop's library.",
                "workshop"
            );
        }
    }
}
