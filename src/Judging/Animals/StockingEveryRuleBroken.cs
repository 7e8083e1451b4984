using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>No stocking rule of the trade allows so many animals.</summary>
internal static class StockingEveryRuleBroken
{
    public static readonly Rule Rule = new(
        "stocking-every-rule-broken",
        Protects.Animal,
        "all stocking guides of the trade that speak of the species, two at least, allow fewer animals; a "
            + "stop where the smallest box of the species itself is among them",
        Judge
    )
    {
        Needs = Stage.Quantities,
        Fixes = (finding, design) => FewerAnimals.Fixes(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var species in StockingWords.Species(n).Where(s => s.IsEveryRuleBroken))
        {
            var limit = StockingTable.Strictest(species.Practice)!.Allowed!;
            yield return Rule.Found(
                species.IsOwnBoxBroken ? Severity.Stop : Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"No stocking guide allows {species.First.Asked.Value:0} {species.First.AnimalName} in "
                        + $"this box: {StockingWords.List(species.Practice)}."
                ),
                (species.First.Asked, limit),
                StockingFix.Of(limit),
                $"{species.First.Item}.count"
            );
        }
    }
}
