using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Importing;

namespace Litterfall.Web.Shop.Terms;

/// <summary>What a list is imported beside.</summary>
/// <param name="Catalog">The library.</param>
/// <param name="Goods">Goods that are kept.</param>
/// <param name="Offers">Offers that are kept.</param>
/// <param name="Suppliers">Suppliers.</param>
/// <param name="Currency">Currency of the workshop.</param>
public sealed record ImportShop(
    TradeCatalog? Catalog,
    ImmutableArray<Kept<Good>> Goods,
    ImmutableArray<Kept<Offer>> Offers,
    ImmutableArray<Supplier> Suppliers,
    string Currency
)
{
    /// <summary>Nothing loaded yet.</summary>
    public static ImportShop None { get; } = new(null, [], [], [], "EUR");

    /// <summary>What the bench keeps now.</summary>
    /// <param name="store">The bench.</param>
    /// <param name="catalog">The library.</param>
    public static async Task<ImportShop> LoadAsync(BenchStore store, TradeCatalog catalog) =>
        new(
            catalog,
            [.. await store.RecordsAsync<Good>()],
            [.. await store.RecordsAsync<Offer>()],
            [.. (await store.RecordsAsync<Supplier>()).Select(s => s.Value)],
            (await store.RecordAsync<ShopTerms>(ShopTerms.Key))?.Value.Currency ?? "EUR"
        );
}

/// <summary>A list as it would be taken.</summary>
public sealed class ImportTrial
{
    private const int Shown = 10;
    private readonly ImportShop shop;
    private readonly string supplier;
    private readonly DateOnly today;
    private readonly ImmutableArray<PriceListRow> rows;

    /// <summary>Reads a list with the columns that were set for its form before, or guessed.</summary>
    /// <param name="table">The list.</param>
    /// <param name="remembered">What was set for lists of this form; null for none.</param>
    /// <param name="shop">What it is read beside.</param>
    /// <param name="from">Key of the supplier, and today.</param>
    public ImportTrial(
        TypedTable table,
        string? remembered,
        ImportShop shop,
        (string Supplier, DateOnly Today) from
    )
        : this(table, Remember(remembered, table) ?? ColumnGuess.Guess(table), shop, from) { }

    private ImportTrial(
        TypedTable table,
        ImmutableArray<PriceColumn> columns,
        ImportShop shop,
        (string Supplier, DateOnly Today) from
    )
    {
        (Table, Columns, this.shop, (supplier, today)) = (table, columns, shop, from);
        Missing = PriceList.Missing(columns);
        rows =
            Missing.Length > 0 || shop.Catalog is null
                ? []
                : PriceList.Read(
                    table,
                    columns,
                    new PriceListPlace(
                        shop.Catalog,
                        [.. shop.Goods.Select(g => g.Value)],
                        shop.Suppliers,
                        supplier,
                        shop.Currency,
                        today
                    )
                );
        Good = [.. rows.Where(r => r.Offer is not null)];
    }

    /// <summary>The list.</summary>
    public TypedTable Table { get; }

    /// <summary>What its columns mean.</summary>
    public ImmutableArray<PriceColumn> Columns { get; }

    /// <summary>What no column says.</summary>
    public ImmutableArray<string> Missing { get; }

    /// <summary>Rows that can be taken.</summary>
    public List<PriceListRow> Good { get; }

    /// <summary>Rows with trouble first, ten at most.</summary>
    public IEnumerable<PriceListRow> Preview => rows.OrderBy(r => r.Offer is not null).Take(Shown);

    /// <summary>How many rows can be taken.</summary>
    public string Told
    {
        get
        {
            var bad = rows.Count(r => r.Offer is null);
            var fresh = Good.Count(r => shop.Offers.All(o => o.Key != r.Offer!.Key));
            return $"{Number(Good.Count, "pack")} to take, {fresh} new; "
                + (bad == 0 ? "every row reads." : $"{Number(bad, "row")} cannot be taken, shown first.");
        }
    }

    /// <summary>What was done.</summary>
    public string Done => $"Took {Number(Good.Count, "pack")}.";

    /// <summary>What is kept for the next list of this form.</summary>
    public string Remembered => string.Join(',', Columns);

    /// <summary>Choice under which columns of this form are kept.</summary>
    /// <param name="table">The list.</param>
    public static string ChoiceOf(TypedTable table) =>
        $"import.prices.{Fingerprint.Of(table.Fingerprint)[..16]}";

    /// <summary>The same list with another meaning of a column; each meaning stands once.</summary>
    /// <param name="column">Which.</param>
    /// <param name="meaning">What it means.</param>
    public ImportTrial With(int column, string? meaning)
    {
        var means = Enum.TryParse<PriceColumn>(meaning, out var known) ? known : PriceColumn.None;
        var columns = Columns.Select(
            (c, i) =>
                i == column ? means
                : c == means ? PriceColumn.None
                : c
        );
        return new(Table, [.. columns], shop, (supplier, today));
    }

    /// <summary>The same list from another supplier.</summary>
    /// <param name="key">Key of the supplier.</param>
    public ImportTrial From(string key) => new(Table, Columns, shop, (key, today));

    /// <summary>All of it as one step.</summary>
    /// <param name="who">Who takes it.</param>
    public ShopChange Change(string who)
    {
        var change = new ShopChange(who);
        foreach (
            var good in Good.Select(r => r.Good!)
                .DistinctBy(g => g.Key)
                .Where(g => shop.Goods.All(k => k.Key != g.Key))
        )
        {
            change.Keep(good.Key, 0, good, "from a price list");
        }

        var versions = shop.Offers.ToDictionary(o => o.Key, o => o.Version, StringComparer.Ordinal);
        foreach (var offer in Good.Select(r => r.Offer!))
        {
            change.Keep(offer.Key, versions.GetValueOrDefault(offer.Key), offer, "from a price list");
        }

        return change;
    }

    /// <summary>Prices of a row.</summary>
    /// <param name="row">The row.</param>
    public static string Prices(PriceListRow row) =>
        string.Join(", ", row.Offer?.Tiers.Select(PriceRow.Step) ?? []);

    /// <summary>What a meaning is called.</summary>
    /// <param name="column">The meaning.</param>
    public static string Words(PriceColumn column) =>
        column switch
        {
            PriceColumn.Name => "name of the good",
            PriceColumn.Pack => "pack, such as 20 L",
            PriceColumn.Amount => "a pack holds (number)",
            PriceColumn.Unit => "unit of that number",
            PriceColumn.Price => "price of a pack, net",
            PriceColumn.From => "price counts from so many packs",
            PriceColumn.Supplier => "supplier",
            PriceColumn.Currency => "currency",
            _ => "left out",
        };

    private static ImmutableArray<PriceColumn>? Remember(string? remembered, TypedTable table)
    {
        var columns = (remembered ?? "")
            .Split(',')
            .Select(w => Enum.TryParse<PriceColumn>(w, out var column) ? column : PriceColumn.None)
            .ToImmutableArray();
        return remembered is not null && columns.Length == table.Columns.Length ? columns : null;
    }

    private static string Number(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
