using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Animals;

/// <summary>Animals that may fight, because they are not kept as the pair or trio they live in.</summary>
internal static class GroupRuleBroken
{
    public static readonly Rule Rule = new(
        "group-rule-broken",
        Protects.Animal,
        "more animals, or other sexes, than the pair, trio or group the species is kept in",
        Judge
    )
    {
        Needs = Stage.Quantities,
        Fixes = (finding, design) => FewerAnimals.Fixes(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var row in n.Stocking.Where(row => row is { IsGroupRule: true, Holds: false }))
        {
            var sexes = row.Remark.Length > 0 ? $", and there is {row.Remark}" : "";
            yield return Rule.Found(
                Severity.Stop,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{row.Asked.Value:0} {row.AnimalName} in one box{sexes}: animals that do not fit into "
                        + $"such a group may fight. {row.Text}"
                ),
                (row.Asked, row.Allowed),
                row.Remark.Length > 0 && row.Asked.Si <= row.Allowed!.Si
                    ? $"Change the group so that there is not {row.Remark}; surplus animals need their "
                        + $"own box."
                    : $"Keep {StockingWords.Number(row.Allowed!)} in this box and the others in boxes of "
                        + $"their own.",
                row.Remark.Length > 0 && row.Asked.Si <= row.Allowed!.Si
                    ? $"{row.Item}.males"
                    : $"{row.Item}.count"
            );
        }
    }
}
