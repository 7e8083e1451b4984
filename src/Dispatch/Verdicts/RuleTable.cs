using System.Collections.Immutable;
using Litterfall.Dispatch.Bands;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>The rules of a day side by side.</summary>
internal static class RuleTable
{
    private static readonly ImmutableArray<ShipRule> All = [.. Enum.GetValues<ShipRule>()];

    /// <summary>One row for each rule that was asked.</summary>
    public static IEnumerable<RuleVerdict> Rows(
        ImmutableArray<ShipReason> reasons,
        Dictionary<ShipRule, string> words,
        ImmutableArray<LiveGood> goods
    )
    {
        foreach (var rule in All)
        {
            var said = reasons.Where(r => r.Rule == rule).ToList();
            if (rule == ShipRule.PublishedGuide && !goods.Any(g => g.IsAmphibian))
            {
                yield return new(rule, ShipVerdict.Ship, "for amphibians only: not asked");
                continue;
            }

            var verdict = said.Count == 0 ? ShipVerdict.Ship : said.Max(r => r.Verdict);
            yield return new(rule, verdict, Words(rule, verdict, words, reasons));
        }
    }

    private static string Words(
        ShipRule rule,
        ShipVerdict verdict,
        Dictionary<ShipRule, string> words,
        ImmutableArray<ShipReason> reasons
    )
    {
        if (words.TryGetValue(rule, out var known))
        {
            return known;
        }

        var isWeather = rule is ShipRule.PublishedGuide or ShipRule.ClassBands or ShipRule.Journey;
        var isAsked = reasons.Any(r => r.Rule == rule);
        if (isWeather && !isAsked && reasons.Any(r => r.Verdict >= ShipVerdict.Hold))
        {
            return rule == ShipRule.ClassBands && words.Count > 0 ? "within the limits" : "not looked at";
        }

        return verdict switch
        {
            ShipVerdict.Ship => rule == ShipRule.ClassBands ? "within the limits" : "nothing against it",
            ShipVerdict.Never when rule == ShipRule.ClassBands => "stop",
            _ => VerdictWords.Verdict(verdict),
        };
    }
}
