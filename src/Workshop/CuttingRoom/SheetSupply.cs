using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>A sheet, roll or offcut that a material can be cut from.</summary>
/// <param name="Source">What it is in the workshop.</param>
/// <param name="Sheet">The same as the task of cutting knows it.</param>
public sealed record SheetSupply(CutSource Source, StockSheet Sheet)
{
    /// <summary>What is in stock counts a little less than what is bought, so that it goes first.</summary>
    private const decimal StockFirst = 0.99m;

    /// <summary>
    /// Price of a square meter where nobody said one: only compares sheets with each other.
    /// </summary>
    private const decimal Nominal = 10m;

    private const double Fit = 0.11;
    private const double Least = 1e-6;

    /// <summary>
    /// Everything a material can be cut from: offcuts first, the oldest in front, then sheets and rolls in
    /// stock, then what is offered. What other plans set aside is not in it.
    /// </summary>
    /// <param name="facts">What the table knows.</param>
    /// <param name="good">The good.</param>
    /// <param name="millimeters">Thickness; null for any.</param>
    /// <param name="rules">How it is cut.</param>
    public static ImmutableArray<SheetSupply> Read(
        TableFacts facts,
        Good good,
        double? millimeters,
        CuttingRules rules
    )
    {
        var each = PricePerSquareMeter(facts, good, millimeters) ?? Nominal;
        var taken = SetAside.Read(facts.Jobs);
        var lots = facts
            .Book.LotsOf(good.Key)
            .Where(a => a.HasSome && a.Bar(facts.Today) is null && a.Lot.Order is null)
            .Where(a => IsSame(a.Lot.ThicknessMillimeters, millimeters))
            .ToList();
        return
        [
            .. lots.Where(a => a.Lot.Form == SheetForm.Offcut)
                .Select(a => FromOffcut(a, each, rules, taken))
                .OfType<SheetSupply>(),
            .. lots.Where(a => a.Lot.Form != SheetForm.Offcut)
                .Select(a => FromLot(a, good, each, rules, taken))
                .OfType<SheetSupply>(),
            .. Offers(facts, good.Key, millimeters)
                .Select(o => FromOffer(o, facts, good))
                .OfType<SheetSupply>(),
        ];
    }

    /// <summary>
    /// Price of a square meter of new material, net: of whole sheets or rolls on offer, else what stock cost,
    /// else of panes cut to size; null where nobody said.
    /// </summary>
    public static decimal? PricePerSquareMeter(TableFacts facts, Good good, double? millimeters)
    {
        var offers = Offers(facts, good.Key, millimeters).ToList();
        var whole = offers
            .Select(o => Size(o, facts) is { } size ? o.PriceOf(1) / (decimal)Area(size) : (decimal?)null)
            .Min();
        if (whole is not null)
        {
            return whole;
        }

        var paid = facts
            .Book.LotsOf(good.Key)
            .Where(a => a.Lot.Cost > 0 && a.Lot.Amount > 0 && a.Lot.Supplier is not null)
            .Select(a =>
                UnitsPerSquareMeter(a.Lot, good.Unit) is { } units
                    ? a.Lot.Cost * (decimal)(units / a.Lot.Amount)
                    : (decimal?)null
            )
            .LastOrDefault(p => p is not null);
        return paid
            ?? offers
                .Where(o => (o.SheetArea ?? (good.Unit == StockUnit.SquareMeters ? o.Amount : 0)) > 0)
                .Select(o => (decimal?)(o.PriceOf(1) / (decimal)(o.SheetArea ?? o.Amount)))
                .Min();
    }

    /// <summary>Units of the good in a square meter of a lot; null where its size is not known.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="unit">What its good is counted in.</param>
    public static double? UnitsPerSquareMeter(Lot lot, StockUnit unit) =>
        unit == StockUnit.SquareMeters ? 1
        : lot is not { LengthMillimeters: > 0 and var length, WidthMillimeters: > 0 and var width } ? null
        : lot.Form == SheetForm.Offcut ? lot.Amount / Area((length, width))
        : unit == StockUnit.Meters && lot.Form == SheetForm.Roll ? 1000 / width
        : unit == StockUnit.Pieces ? 1 / Area((length, width))
        : null;

    /// <summary>True where two thicknesses are the same, or one of them is not known.</summary>
    internal static bool IsSame(double? one, double? other) =>
        one is not { } a || other is not { } b || Math.Abs(a - b) < Fit;

    /// <summary>Size of what an offer brings; null for what is cut to size.</summary>
    internal static (double Length, double Width)? Size(Offer offer, TableFacts facts) =>
        offer is { LengthMillimeters: > 0 and var length, WidthMillimeters: > 0 and var width }
            ? (length, width)
        : offer.LibraryPack is { } key
        && facts.Catalog.Find<PackEntry>(key) is { Length: { } long1, Width: { } wide }
            ? (long1.Si * 1000, wide.Si * 1000)
        : null;

    /// <summary>Area in m² of a size in mm.</summary>
    internal static double Area((double Length, double Width) size) => size.Length * size.Width * 1e-6;

    /// <summary>"1200 × 600 mm".</summary>
    internal static string SizeWords(double length, double width) =>
        string.Create(CultureInfo.InvariantCulture, $"{length:0.#} × {width:0.#} mm");

    private static IEnumerable<Offer> Offers(TableFacts facts, string good, double? millimeters)
    {
        var ours = facts
            .Supply.Suppliers.Where(s => s.Currency == facts.Currency)
            .Select(s => s.Key)
            .ToHashSet(StringComparer.Ordinal);
        return facts.Supply.Offers.Where(o =>
            o.Good == good
            && o.Tiers.Count > 0
            && o.Amount > 0
            && ours.Contains(o.Supplier)
            && IsSame(o.SheetMillimeters, millimeters)
        );
    }

    private static SheetSupply? FromOffcut(LotAccount lot, decimal each, CuttingRules rules, SetAside taken)
    {
        if (
            lot.Lot is not { LengthMillimeters: > 0 and var length, WidthMillimeters: > 0 and var width }
            || taken.Sheets(lot.Lot.Id) > 0
        )
        {
            return null;
        }

        var area = Area((length, width));
        var credit = Cents(each * (decimal)(rules.OffcutWorth * area));
        return new(
            new(
                lot.Lot.Id,
                CutSourceKind.Offcut,
                lot.Lot.Id,
                null,
                $"offcut {lot.Lot.Id}",
                lot.Lot.Amount / area
            ),
            new()
            {
                Id = lot.Lot.Id,
                Length = length,
                Width = width,
                Count = 1,
                Price = credit,
            }
        );
    }

    private static SheetSupply? FromLot(
        LotAccount account,
        Good good,
        decimal each,
        CuttingRules rules,
        SetAside taken
    )
    {
        var lot = Sized(account.Lot, account.OnHand, good, rules);
        if (
            UnitsPerSquareMeter(lot, good.Unit) is not { } units
            || lot is not { LengthMillimeters: > 0 and var length, WidthMillimeters: > 0 and var width }
        )
        {
            return null;
        }

        if (lot.Form == SheetForm.Roll)
        {
            var left = (account.OnHand / units * 1e6 / width) - taken.Length(lot.Id);
            var longest = Math.Floor(Math.Min(left, length) * 10 + Least) / 10;
            return longest < 1
                ? null
                : new(
                    new(lot.Id, CutSourceKind.Roll, lot.Id, null, $"roll {lot.Id}", units),
                    new()
                    {
                        Id = lot.Id,
                        Length = longest,
                        Width = width,
                        Count = 1,
                        IsRoll = true,
                        PricePerMeter = Cents(StockFirst * each * (decimal)(width / 1000)),
                    }
                );
        }

        var area = Area((length, width));
        var count = (int)Math.Floor((account.OnHand / units / area) + Least) - taken.Sheets(lot.Id);
        return count < 1
            ? null
            : new(
                new(lot.Id, CutSourceKind.Sheet, lot.Id, null, $"sheet {lot.Id}", units),
                new()
                {
                    Id = lot.Id,
                    Length = length,
                    Width = width,
                    Count = count,
                    Price = Cents(StockFirst * each * (decimal)area),
                }
            );
    }

    /// <summary>A lot without a size of its own has the usual one of its good.</summary>
    internal static Lot Sized(Lot lot, double onHand, Good good, CuttingRules rules)
    {
        if (lot is { LengthMillimeters: > 0, WidthMillimeters: > 0 } || rules.SheetWidth is not { } width)
        {
            return lot;
        }

        var roll = good.Unit == StockUnit.Meters ? lot.Amount * 1000 : lot.Amount * 1e6 / width;
        return rules.IsRoll
                ? lot with
                {
                    Form = SheetForm.Roll,
                    LengthMillimeters = Math.Max(roll, onHand),
                    WidthMillimeters = width,
                }
            : rules.SheetLength is { } length
                ? lot with
                {
                    Form = SheetForm.Sheets,
                    LengthMillimeters = length,
                    WidthMillimeters = width,
                }
            : lot;
    }

    private static SheetSupply? FromOffer(Offer offer, TableFacts facts, Good good)
    {
        if (Size(offer, facts) is not { } size)
        {
            return null;
        }

        var isRoll =
            offer.IsRoll || (offer.LengthMillimeters is null && facts.Catalog.Find(good.Key) is MeshEntry);
        var price = offer.PriceOf(1);
        return new(
            new(
                offer.Key,
                CutSourceKind.Buy,
                null,
                offer.Key,
                $"{offer.Pack}, {facts.SupplierName(offer.Supplier)}",
                offer.Amount / Area(size)
            ),
            new()
            {
                Id = offer.Key,
                Length = size.Length,
                Width = size.Width,
                IsRoll = isRoll,
                Price = isRoll ? null : price,
                PricePerMeter = isRoll ? Cents(price / (decimal)(size.Length / 1000)) : null,
            }
        );
    }

    private static decimal Cents(decimal sum) => Math.Round(sum, 2, MidpointRounding.AwayFromZero);
}
