using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Workshop.Goods;

namespace Litterfall.Workshop.Importing;

/// <summary>What a price list is read beside.</summary>
/// <param name="Catalog">The library.</param>
/// <param name="Goods">Goods that are known.</param>
/// <param name="Suppliers">Suppliers that are known.</param>
/// <param name="Supplier">Key of the supplier of rows that name none.</param>
/// <param name="Currency">Currency of the workshop.</param>
/// <param name="Day">Day of the list.</param>
public sealed record PriceListPlace(
    TradeCatalog Catalog,
    ImmutableArray<Good> Goods,
    ImmutableArray<Supplier> Suppliers,
    string Supplier,
    string Currency,
    DateOnly Day
);

/// <summary>One row of a price list as it would be taken.</summary>
/// <param name="Line">Line of the file.</param>
/// <param name="Offer">What it says; null where it cannot be taken.</param>
/// <param name="Good">Good of the offer, new or known.</param>
/// <param name="Trouble">What is wrong, in one sentence; empty where nothing is.</param>
public sealed record PriceListRow(int Line, Offer? Offer, Good? Good, string Trouble);

/// <summary>Reads rows of a table as packs with prices.</summary>
public static class PriceList
{
    private const double PackMatch = 0.01;

    // Signs of ISO 4217 currencies as lists write them; a bare dollar is taken for that of the US.
    private static readonly (string Sign, string Code)[] Signs =
    [
        ("€", "EUR"),
        ("£", "GBP"),
        ("US$", "USD"),
        ("$", "USD"),
        ("¥", "JPY"),
    ];

    /// <summary>Every row, good or with its trouble; rows of one pack become tiers of one offer.</summary>
    /// <param name="table">The list.</param>
    /// <param name="columns">What its columns mean.</param>
    /// <param name="place">What it is read beside.</param>
    public static ImmutableArray<PriceListRow> Read(
        TypedTable table,
        ImmutableArray<PriceColumn> columns,
        PriceListPlace place
    )
    {
        var rows = table
            .Rows.Select((cells, i) => Row(table, columns, cells, (table.Lines[i], place)))
            .ToList();
        return [.. Tiered(rows)];
    }

    /// <summary>Columns that a list needs before it can be read; empty where all are named.</summary>
    /// <param name="columns">What its columns mean.</param>
    public static ImmutableArray<string> Missing(ImmutableArray<PriceColumn> columns) =>
        [
            .. new[]
            {
                (columns.Contains(PriceColumn.Name), "the name of the good"),
                (columns.Contains(PriceColumn.Price), "the price of a pack"),
                (
                    columns.Contains(PriceColumn.Pack) || columns.Contains(PriceColumn.Amount),
                    "what a pack holds"
                ),
            }
                .Where(one => !one.Item1)
                .Select(one => one.Item2),
        ];

    private static PriceListRow Row(
        TypedTable table,
        ImmutableArray<PriceColumn> columns,
        ImmutableArray<string> cells,
        (int Line, PriceListPlace Place) at
    )
    {
        string Cell(PriceColumn column) => columns.IndexOf(column) is >= 0 and var i ? cells[i] : "";
        PriceListRow No(string trouble) => new(at.Line, null, null, trouble);

        var name = Cell(PriceColumn.Name);
        if (name.Length is 0 or > 200)
        {
            return No("It names no good.");
        }

        if (
            Currency(Cell(PriceColumn.Currency) + " " + Cell(PriceColumn.Price)) is { } currency
            && currency != at.Place.Currency
        )
        {
            return No($"Its price is in {currency}; the workshop counts in {at.Place.Currency}.");
        }

        if (table.Number(Cell(PriceColumn.Price)) is not { } price || price is <= 0 or >= 1e6)
        {
            return No($"'{Cell(PriceColumn.Price)}' is no price of a pack.");
        }

        if (Amount(table, Cell) is not { } amount)
        {
            var said = Cell(PriceColumn.Pack) + Cell(PriceColumn.Amount);
            return No(
                said.Length == 0
                    ? "It says no pack. Expected what one pack holds, such as 20 L or 500 g."
                    : $"'{said}' is no amount. Expected such as 20 L, 8 dry qt, 500 g or 10 pieces."
            );
        }

        var supplier = Supplier(Cell(PriceColumn.Supplier), at.Place);
        if (supplier is null)
        {
            return No($"There is no supplier '{Cell(PriceColumn.Supplier)}'. Add the supplier first.");
        }

        if (Fitting(name, amount, at.Place) is not var (good, inUnit))
        {
            return No($"'{name}' is counted in another unit here than this pack is.");
        }

        var from = table.Number(Cell(PriceColumn.From)) is >= 1 and < 1e6 and var packs ? (int)packs : 1;
        var pack = Cell(PriceColumn.Pack) is { Length: > 0 } told ? told : Told(amount);
        var tier = new PriceTier(from, Math.Round((decimal)price, 4));
        return new(at.Line, Read(at.Place, (supplier, good), (pack, inUnit), tier), good, "");
    }

    private static Offer Read(
        PriceListPlace place,
        (string Supplier, Good Good) of,
        (string Name, double Amount) pack,
        PriceTier tier
    ) =>
        new()
        {
            Key = OwnKey.From($"{of.Supplier}-{of.Good.Key}-{pack.Name}"),
            Supplier = of.Supplier,
            Good = of.Good.Key,
            Pack = pack.Name,
            LibraryPack = LibraryPack(place.Catalog, of.Good, pack.Amount),
            Amount = pack.Amount,
            Tiers = [tier],
            Dated = place.Day,
        };

    /// <summary>The currency that a cell names by its sign or code; null where it names none.</summary>
    private static string? Currency(string said)
    {
        foreach (var (sign, code) in Signs)
        {
            if (said.Contains(sign, StringComparison.Ordinal))
            {
                return code;
            }
        }

        var letters = said.Split([.. said.Where(c => !char.IsAsciiLetter(c)).Distinct()])
            .FirstOrDefault(w => w.Length == 3);
        return letters?.ToUpperInvariant();
    }

    private static IEnumerable<PriceListRow> Tiered(List<PriceListRow> rows)
    {
        var tiers = rows.Where(r => r.Offer is not null)
            .GroupBy(r => r.Offer!.Key, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => g.SelectMany(r => r.Offer!.Tiers).OrderBy(t => t.FromPacks).ToList(),
                StringComparer.Ordinal
            );
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            if (row.Offer is not { } offer)
            {
                yield return row;
                continue;
            }

            var all = tiers[offer.Key];
            if (!seen.Add(offer.Key))
            {
                if (all.DistinctBy(t => t.FromPacks).Count() < all.Count)
                {
                    yield return row with
                    {
                        Offer = null,
                        Trouble = "The list has this pack twice with prices from the same number of packs.",
                    };
                }

                continue;
            }

            yield return all[0].FromPacks == 1
                ? row with
                {
                    Offer = offer with { Tiers = [.. all.DistinctBy(t => t.FromPacks)] },
                }
                : row with
                {
                    Offer = null,
                    Trouble = $"It has no price for one pack, only from {all[0].FromPacks} packs on.",
                };
        }
    }

    /// <summary>What a pack holds, in SI units of its kind.</summary>
    private static (StockUnit Unit, double Amount)? Amount(TypedTable table, Func<PriceColumn, string> cell)
    {
        var pack = cell(PriceColumn.Pack);
        if (pack.Length > 0 && Measured(pack) is { } told)
        {
            return told;
        }

        var number = cell(PriceColumn.Amount);
        var unit = cell(PriceColumn.Unit);
        return table.Number(number) is > 0 and { } value
            ? Measured(
                $"{value.ToString(CultureInfo.InvariantCulture)} {(unit.Length > 0 ? unit : "pieces")}"
            )
            : null;
    }

    /// <summary>"bale of 3.8 cu ft", "20 L", "500 g", "10 pcs": the first amount in it.</summary>
    private static (StockUnit, double)? Measured(string text)
    {
        var start = text.AsSpan().IndexOfAnyInRange('0', '9');
        if (start < 0)
        {
            return null;
        }

        var amount = text[start..].Trim();
        if (QuantityText.TryParse(QuantityKinds.Volume, amount, out var volume, out _) && volume > 0)
        {
            return (StockUnit.Liters, volume * 1000);
        }

        if (QuantityText.TryParse(QuantityKinds.Mass, amount, out var mass, out _) && mass > 0)
        {
            return (StockUnit.Kilograms, mass);
        }

        if (QuantityText.TryParse(QuantityKinds.Length, amount, out var length, out _) && length > 0)
        {
            return (StockUnit.Meters, length);
        }

        return Pieces(amount);
    }

    private static (StockUnit, double)? Pieces(string amount)
    {
        var digits = new string([.. amount.TakeWhile(char.IsAsciiDigit)]);
        var word = amount[digits.Length..].Trim().TrimEnd('.').ToLowerInvariant();
        string[] known =
        [
            "",
            "piece",
            "pieces",
            "pc",
            "pcs",
            "st",
            "stk",
            "stück",
            "pièces",
            "cups",
            "cup",
            "each",
            "ea",
        ];
        return
            known.Contains(word)
            && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            && count > 0
            ? (StockUnit.Pieces, count)
            : null;
    }

    private static string? Supplier(string named, PriceListPlace place) =>
        named.Length == 0
            ? place.Supplier
            : place.Suppliers.FirstOrDefault(s => Same(s.Key, named) || Same(s.Name, named))?.Key;

    /// <summary>The good of that name, known or new, and what the pack holds in its unit.</summary>
    private static (Good Good, double Amount)? Fitting(
        string name,
        (StockUnit Unit, double Amount) pack,
        PriceListPlace place
    )
    {
        var known = LibraryGoods.Find(name, place.Goods, place.Catalog);
        if (known is null)
        {
            return (
                new Good
                {
                    Key = OwnKey.From(name),
                    Name = name,
                    Kind = GoodKind.Equipment,
                    Unit = pack.Unit,
                },
                pack.Amount
            );
        }

        if (known.Unit == StockUnit.Liters && pack.Unit == StockUnit.Liters)
        {
            // A bale says what it is pressed to; what counts is what it opens to.
            var bale = place
                .Catalog.PacksOf(known.Key)
                .FirstOrDefault(p =>
                    p.Volume is { } printed
                    && Math.Abs(printed.Si * 1000 - pack.Amount) < PackMatch * pack.Amount
                );
            return (known, bale?.LooseVolume is { } loose ? loose.Si * 1000 : pack.Amount);
        }

        if (known.Unit == pack.Unit)
        {
            return (known, pack.Amount);
        }

        // Bulk goods are kept in liters; a pack by weight holds what the library says it opens to.
        var opened =
            known.Unit == StockUnit.Liters && pack.Unit == StockUnit.Kilograms
                ? place
                    .Catalog.PacksOf(known.Key)
                    .FirstOrDefault(p =>
                        p.Mass is { } mass
                        && p.LooseVolume is not null
                        && Math.Abs(mass.Si - pack.Amount) < PackMatch * pack.Amount
                    )
                    ?.LooseVolume
                : null;
        return opened is { } liters ? (known, liters.Si * 1000) : null;
    }

    private static string? LibraryPack(TradeCatalog catalog, Good good, double amount) =>
        good.Unit == StockUnit.Liters
            ? catalog
                .PacksOf(good.Key)
                .FirstOrDefault(p =>
                    p.LooseVolume is { } liters && Math.Abs(liters.Si * 1000 - amount) < PackMatch * amount
                )
                ?.Key
            : catalog.Find<EquipmentEntry>(good.Key)?.Key;

    private static string Told((StockUnit Unit, double Amount) pack)
    {
        var unit = pack.Unit switch
        {
            StockUnit.Liters => "L",
            StockUnit.Kilograms => "kg",
            StockUnit.Meters => "m",
            _ => "pieces",
        };
        return string.Create(CultureInfo.InvariantCulture, $"{pack.Amount:0.###} {unit}");
    }

    private static bool Same(string one, string other) =>
        string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase)
        || TradeCatalog.Canonical(one) == TradeCatalog.Canonical(other);
}
