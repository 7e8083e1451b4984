using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Trade;

/// <summary>Who goods are bought from, and on what terms.</summary>
public sealed record Supplier
{
    /// <summary>Short own key.</summary>
    public required string Key { get; init; }

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>ISO 4217 code of its prices.</summary>
    public required string Currency { get; init; }

    /// <summary>Delivery of one purchase, net.</summary>
    public decimal Delivery { get; init; }

    /// <summary>Value of goods from which delivery is free, net; null where it never is.</summary>
    public decimal? FreeFrom { get; init; }

    /// <summary>Least value of goods it takes, net.</summary>
    public decimal MinimumOrder { get; init; }

    /// <summary>Working days from purchase to arrival.</summary>
    public int LeadDays { get; init; }

    /// <summary>Address, account, what to remember.</summary>
    public string Notes { get; init; } = "";
}

/// <summary>A price from a number of packs on; it counts for all packs of the purchase.</summary>
/// <param name="FromPacks">Fewest packs.</param>
/// <param name="Price">Net price of one pack.</param>
public sealed record PriceTier(int FromPacks, decimal Price);

/// <summary>A pack of a good as one supplier sells it.</summary>
public sealed record Offer
{
    /// <summary>Own key, such as supplier and pack.</summary>
    public required string Key { get; init; }

    /// <summary>Key of the supplier.</summary>
    public required string Supplier { get; init; }

    /// <summary>Key of the good.</summary>
    public required string Good { get; init; }

    /// <summary>As it is sold: "bale of 3.8 cu ft".</summary>
    public required string Pack { get; init; }

    /// <summary>Key of the library's pack or equipment; null where it has none.</summary>
    public string? LibraryPack { get; init; }

    /// <summary>Amount in one pack as it is used, in the unit of the good.</summary>
    public required double Amount { get; init; }

    /// <summary>Prices, the first from one pack.</summary>
    public required Seq<PriceTier> Tiers { get; init; }

    /// <summary>
    /// Area of one pack, m², for sheets, rolls and panes cut to size; null where the library's pack says it.
    /// </summary>
    public double? SheetArea { get; init; }

    /// <summary>Thickness of a sheet, mm; null where the library's pack says it, or any will do.</summary>
    public double? SheetMillimeters { get; init; }

    /// <summary>
    /// Edge of one sheet, mm; of a roll its length. Null for what is cut to size, or no sheet.
    /// </summary>
    public double? LengthMillimeters { get; init; }

    /// <summary>The other edge of one sheet, mm; of a roll its width.</summary>
    public double? WidthMillimeters { get; init; }

    /// <summary>True where one pack is a roll.</summary>
    public bool IsRoll { get; init; }

    /// <summary>
    /// Working days until it is here, where it takes longer or shorter than other goods of the supplier; null
    /// for as long as those.
    /// </summary>
    public int? LeadDays { get; init; }

    /// <summary>Day the price was told or paid last.</summary>
    public DateOnly? Dated { get; init; }

    /// <summary>Net price of one pack when so many are bought.</summary>
    /// <param name="packs">Number of packs, at least 1.</param>
    public decimal PriceOf(int packs) => Tiers.Last(t => t.FromPacks <= packs).Price;
}
