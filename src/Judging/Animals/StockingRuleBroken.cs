using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Some of the trade's stocking rules allow fewer animals; the strictest is the safe one.</summary>
internal static class StockingRuleBroken
{
    public static readonly Rule Rule = new(
        "stocking-rule-broken",
        Protects.Animal,
        "a stocking guide of the trade that speaks of the species allows fewer animals; a caution where half "
            + "of them do",
        Judge
    )
    {
        Needs = Stage.Quantities,
        Fixes = (finding, design) => FewerAnimals.Fixes(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var species in StockingWords.Species(n))
        {
            var broken = species.Broken;
            if (broken.Length == 0 || species.IsGroupBroken || species.IsEveryRuleBroken)
            {
                continue;
            }

            var limit = StockingTable.Strictest(species.Practice)!.Allowed!;
            var all = species.Practice.OrderBy(row => row.Allowed!.Si).ToArray();
            yield return Rule.Found(
                2 * broken.Length >= all.Length ? Severity.Caution : Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Guides(broken.Length, all.Length)} fewer than "
                        + $"{species.First.Asked.Value:0} {species.First.AnimalName} in this box"
                        + $"{Range(all)}."
                ),
                (species.First.Asked, limit),
                StockingFix.Of(limit),
                $"{species.First.Item}.count"
            );
        }
    }

    private static string Guides(int broken, int all) =>
        all == 1 ? "The one stocking guide that applies allows"
        : broken == 1 ? $"One of {NumberText.Integer(all)} stocking guides allows"
        : $"{NumberText.Integer(broken)} of {NumberText.Integer(all)} stocking guides allow";

    private static string Range(StockingRow[] all) =>
        all.Length == 1
            ? $": {StockingWords.List(all)}"
            : $"; they range from {StockingWords.List(all[..1])} to {StockingWords.List(all[^1..])}";
}

/// <summary>What to do where too many animals are asked for.</summary>
internal static class StockingFix
{
    public static string Of(Figure strictest) =>
        strictest.Si >= 1
            ? $"Keep {StockingWords.Number(strictest)}, which every guide allows, or take a larger box."
            : "Take a larger box: the strictest guide allows none in this one.";
}
