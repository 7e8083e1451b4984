using Litterfall.Domain.Catalog;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;

namespace Litterfall.Dispatch.Packing;

/// <summary>What a parcel is to be packed from.</summary>
public sealed record PackingCase
{
    /// <summary>The parcel.</summary>
    public required Parcel Parcel { get; init; }

    /// <summary>The library with the workshop's own entries.</summary>
    public required TradeCatalog Catalog { get; init; }

    /// <summary>The shop's rules with its cups, packs and cartons.</summary>
    public required DispatchRules Rules { get; init; }

    /// <summary>The carton.</summary>
    public required Carton Carton { get; init; }

    /// <summary>Packs in it.</summary>
    public Seq<PackUse> Packs { get; init; } = [];

    /// <summary>Band to keep inside, °C; null where nobody knows it.</summary>
    public double? BandLowCelsius { get; init; }

    /// <summary>Band to keep inside, °C; null where nobody knows it.</summary>
    public double? BandHighCelsius { get; init; }

    /// <summary>Goods of the workshop, for the unit that stock is counted in.</summary>
    public Seq<Good> Goods { get; init; } = [];

    /// <summary>Longest time on the way with the doorstep, h.</summary>
    public double Hours { get; init; } = 48;

    /// <summary>Telephone of the workshop, where the rules name none.</summary>
    public string ShopPhone { get; init; } = "";
}
