using System.Collections.Immutable;
using Litterfall.Dispatch.Bands;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>What a pack must be able to do.</summary>
internal enum PackDuty
{
    /// <summary>No pack is asked for.</summary>
    None,

    /// <summary>Warm.</summary>
    Warm,

    /// <summary>Cool.</summary>
    Cool,

    /// <summary>Both: only a phase-change pack can.</summary>
    Both,
}

/// <summary>What the published guide for amphibians says of a day.</summary>
internal static class GuideRule
{
    /// <summary>Reasons, one for each place and side that asks for something.</summary>
    public static IEnumerable<ShipReason> Reasons(ImmutableArray<NodeRange> nodes, bool hasDepot)
    {
        foreach (var node in nodes)
        {
            if (Reason(node, node.LowCelsius, isWarm: false, hasDepot) is { } cold)
            {
                yield return cold;
            }

            if (Reason(node, node.HighCelsius, isWarm: true, hasDepot) is { } warm)
            {
                yield return warm;
            }
        }
    }

    /// <summary>What the packs must do.</summary>
    public static PackDuty Duty(ImmutableArray<NodeRange> nodes)
    {
        var warms = nodes.Any(n => n.LowCelsius < AmphibianGuide.HeatPackBelow);
        var cools = nodes.Any(n => n.HighCelsius > AmphibianGuide.ColdPackAbove);
        return (warms, cools) switch
        {
            (true, true) => PackDuty.Both,
            (true, false) => PackDuty.Warm,
            (false, true) => PackDuty.Cool,
            _ => PackDuty.None,
        };
    }

    /// <summary>In a few words: "cold pack, depot pick-up only".</summary>
    public static string Words(ImmutableArray<NodeRange> nodes)
    {
        var needs = nodes
            .SelectMany(n => new[] { AmphibianGuide.Need(n.LowCelsius), AmphibianGuide.Need(n.HighCelsius) })
            .ToHashSet();
        if (needs.Contains(GuideNeed.DoNotShip))
        {
            return "do not ship";
        }

        var packs = Duty(nodes) switch
        {
            PackDuty.Warm => "heat pack",
            PackDuty.Cool => "cold pack",
            PackDuty.Both => "heat pack and cold pack",
            _ => "no pack",
        };
        return needs.Contains(GuideNeed.DepotOnly) ? $"{packs}, depot pick-up only" : packs;
    }

    private static ShipReason? Reason(NodeRange node, double celsius, bool isWarm, bool hasDepot)
    {
        var need = AmphibianGuide.Need(celsius);
        var isHere = isWarm ? celsius > AmphibianGuide.ColdPackAbove : celsius < AmphibianGuide.HeatPackBelow;
        if (!isHere)
        {
            return null;
        }

        var said = $"{VerdictWords.Celsius(celsius)} {VerdictWords.At(node)}";
        return need switch
        {
            GuideNeed.DoNotShip => Made(
                "guide-do-not-ship",
                ShipVerdict.Never,
                $"{said}: the published guide says do not ship.",
                isWarm ? AmphibianGuide.NotAbove : AmphibianGuide.NotBelow
            ),
            GuideNeed.DepotOnly when !hasDepot => Made(
                "guide-no-depot",
                ShipVerdict.Hold,
                $"{said}: the published guide allows depot pick-up only, and this carrier has no depot.",
                AmphibianGuide.DepotFrom
            ),
            GuideNeed.DepotOnly => Made(
                "guide-depot",
                ShipVerdict.DepotOnly,
                $"{said}: the published guide says cold pack and depot pick-up only.",
                AmphibianGuide.DepotFrom
            ),
            GuideNeed.ColdPack => Made(
                "guide-cold-pack",
                ShipVerdict.ShipWithPacks,
                $"{said}: the published guide says cold pack; a phase-change pack counts as one.",
                AmphibianGuide.ColdPackAbove
            ),
            _ => Made(
                "guide-heat-pack",
                ShipVerdict.ShipWithPacks,
                $"{said}: the published guide says heat pack; a melted phase-change pack counts as one.",
                AmphibianGuide.HeatPackBelow
            ),
        };

        ShipReason Made(string slug, ShipVerdict verdict, string text, double limit) =>
            new()
            {
                Slug = slug,
                Rule = ShipRule.PublishedGuide,
                Verdict = verdict,
                Text = text,
                IsProtective = true,
                Node = node.Node,
                Measured = celsius,
                Limit = limit,
                Source = AmphibianGuide.Origin.Source,
                SourcePlace = AmphibianGuide.Origin.Place,
                Provenance = AmphibianGuide.Origin.Provenance,
            };
    }
}
