namespace Litterfall.Domain.Trade;

/// <summary>What kind of thing a good is.</summary>
public enum GoodKind
{
    /// <summary>Aggregate, bark, fiber, leaves, moss: bulk goods.</summary>
    Bulk,

    /// <summary>Mix made in the workshop.</summary>
    Mix,

    /// <summary>Glass, acrylic, mesh, cork, foam: sheets and rolls.</summary>
    Sheet,

    /// <summary>Lamps, pumps, hoses, fittings.</summary>
    Equipment,

    /// <summary>Plants.</summary>
    Plant,

    /// <summary>Animals.</summary>
    Animal,

    /// <summary>Cultures of the clean-up crew and of feeders.</summary>
    Culture,

    /// <summary>Boxes, bags, insulation.</summary>
    Packaging,

    /// <summary>Finished tanks and kits.</summary>
    Tank,
}

/// <summary>Something that the workshop buys, keeps, uses or sells.</summary>
public sealed record Good
{
    /// <summary>Key of the library where it has one, else an own one.</summary>
    public required string Key { get; init; }

    /// <summary>As people call it.</summary>
    public required string Name { get; init; }

    /// <summary>Capital letters before the numbers of its lots; empty for the first of its name.</summary>
    public string Letters { get; init; } = "";

    /// <summary>What kind of thing.</summary>
    public required GoodKind Kind { get; init; }

    /// <summary>What it is counted in.</summary>
    public required StockUnit Unit { get; init; }

    /// <summary>Amount below which it is bought again, in its unit.</summary>
    public double ReorderAt { get; init; }

    /// <summary>Days it keeps from the day it comes; null for what does not spoil.</summary>
    public int? KeepsDays { get; init; }

    /// <summary>Where it stands, as the workshop calls the place; empty where nobody said.</summary>
    public string Place { get; init; } = "";

    /// <summary>Its turn on the walk through the workshop when goods are picked.</summary>
    public int Walk { get; init; }

    /// <summary>Net price for one unit when it is sold loose; null where it is not.</summary>
    public decimal? SellsFor { get; init; }

    /// <summary>True for what lives.</summary>
    public bool IsLive => Kind is GoodKind.Plant or GoodKind.Animal or GoodKind.Culture;
}
