using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Planning.Judging.Box;
using Litterfall.Planning.Judging.Floor;
using Litterfall.Planning.Judging.Load;

namespace Litterfall.Planning.Judging;

/// <summary>All rules, by name, in the order they are shown.</summary>
public static class Rules
{
    /// <summary>The rules.</summary>
    public static readonly ImmutableArray<Rule> All =
    [
        NothingLeftInside.Rule,
        LayersTooHigh.Rule,
        SoilAboveSill.Rule,
        NominalSize.Rule,
        BarrierTooSmall.Rule,
        LidFit.Rule,
        GlassTooThin.Rule,
        GlassNotForWater.Rule,
        GlassBelowTable.Rule,
        ShelfOverloaded.Rule,
        FloatingAggregate.Rule,
        MixTooWet.Rule,
        PriceMissing.Rule,
    ];

    /// <summary>
    /// Judges a design: stops first. A stop that rests on a recalled value or on common practice is lowered
    /// to
    /// a caution unless it protects an animal or a person.
    /// </summary>
    public static ImmutableArray<Finding> Judge(DesignNumbers numbers) =>
        [.. All.SelectMany(rule => rule.Judge(numbers)).Select(Held).OrderByDescending(f => f.Severity)];

    private static Finding Held(Finding finding) =>
        finding is { Severity: Severity.Stop, Protects: Protects.Build } && finding.Provenance.IsWeak()
            ? finding with
            {
                Severity = Severity.Caution,
            }
            : finding;
}
