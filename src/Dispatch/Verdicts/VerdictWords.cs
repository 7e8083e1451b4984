using System.Globalization;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>Words of verdicts.</summary>
public static class VerdictWords
{
    /// <summary>"ship with packs".</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Verdict(ShipVerdict verdict) =>
        verdict switch
        {
            ShipVerdict.Ship => "ship",
            ShipVerdict.ShipWithPacks => "ship with packs",
            ShipVerdict.DepotOnly => "depot pick-up only",
            ShipVerdict.Hold => "hold",
            _ => "never",
        };

    /// <summary>"published guide".</summary>
    /// <param name="rule">The rule.</param>
    public static string Rule(ShipRule rule) =>
        rule switch
        {
            ShipRule.PublishedGuide => "published guide",
            ShipRule.ClassBands => "class limits",
            ShipRule.ShopPolicy => "your own rules",
            ShipRule.Journey => "computed journey",
            ShipRule.Calendar => "calendar",
            ShipRule.Carrier => "carrier",
            ShipRule.Animals => "animals and papers",
            ShipRule.Knowledge => "what is known",
            _ => "packing",
        };

    /// <summary>"at the hub".</summary>
    /// <param name="range">The place.</param>
    public static string At(NodeRange range) =>
        range.Node switch
        {
            RouteNode.Origin => "at the workshop",
            RouteNode.Hub => range.Place.Length > 0 ? $"at the hub ({range.Place})" : "at the hub",
            _ => range.Place.Length > 0 ? $"at the destination ({range.Place})" : "at the destination",
        };

    /// <summary>"the workshop".</summary>
    /// <param name="node">The place.</param>
    public static string Place(RouteNode node) =>
        node switch
        {
            RouteNode.Origin => "the workshop",
            RouteNode.Hub => "the hub",
            _ => "the destination",
        };

    /// <summary>"27.5 °C".</summary>
    /// <param name="celsius">The temperature, °C.</param>
    public static string Celsius(double celsius) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(celsius, 1) + 0.0:0.#} °C");

    /// <summary>"1.4 %".</summary>
    /// <param name="share">Share, 0 to 1.</param>
    public static string Percent(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.#} %");

    /// <summary>"2 × phase-change pack 21 °C, 500 g, half melted".</summary>
    /// <param name="use">How it goes in.</param>
    /// <param name="pack">The pack.</param>
    public static string Pack(PackUse use, TransportPack pack)
    {
        var state = pack.Kind switch
        {
            PackKind.Heat => "opened an hour before",
            PackKind.Ice => "frozen",
            _ when use.LiquidShare >= 1 => "fully melted",
            _ when use.LiquidShare <= 0 => "fully frozen",
            _ => "half melted",
        };
        return string.Create(CultureInfo.InvariantCulture, $"{use.Count} × {pack.Name}, {state}");
    }
}
