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
                $"The workshop folder has no price for {string.Join(", ", missing)}, so there is no "
                    + $"cost of goods.",
                (null, null),
                "Add the packs to prices.json.",
                "workshop"
            );
        }
    }
}
