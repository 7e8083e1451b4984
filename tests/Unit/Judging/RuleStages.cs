using System.Collections.Frozen;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Judging;

/// <summary>
/// Which rules look at what is simulated: air, water, light, life. All others judge the same without it,
/// which <see cref="Rules.EveryRuleTests"/> checks on every sample.
/// </summary>
internal static class RuleStages
{
    private static readonly FrozenSet<string> Forecasts = FrozenSet.ToFrozenSet(
        [
            "aggregate-floats",
            "air-too-dry",
            "box-too-cold",
            "box-too-warm",
            "crew-eaten-up",
            "day-off-band",
            "drain-interval-short",
            "droppings-stay",
            "lamp-file-odd",
            "lamp-over-mesh",
            "leaves-never-dry",
            "light-reading-far",
            "litter-crust",
            "litter-runs-low",
            "little-heat-margin",
            "mist-cannot-be-balanced",
            "moss-too-bright",
            "night-off-band",
            "nitrogen-load",
            "no-fresh-air",
            "no-shade-refuge",
            "overheats",
            "panes-fog",
            "plant-below-compensation",
            "plant-too-bright",
            "plant-too-dark",
            "plant-with-dry-roots",
            "plant-with-wet-roots",
            "soil-too-dry-for-crew",
            "soil-without-air",
            "stale-air",
            "uvb-behind-glass",
            "vented-more-than-misted",
            "water-at-barrier",
            "water-ledger-open",
        ],
        StringComparer.Ordinal
    );

    public static bool NeedsForecast(string slug) => Forecasts.Contains(slug);
}
