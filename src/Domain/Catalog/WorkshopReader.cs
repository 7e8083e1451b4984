using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trees;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Catalog;

/// <summary>
/// Reads a workshop's folder: <c>workshop.json</c> (name, currency), <c>prices.json</c> (pack, price,
/// breaks),
/// <c>stock.json</c> (liters by material), <c>sources.json</c>, and any other file as catalog entries.
/// </summary>
public static class WorkshopReader
{
    private const string PriceOf = "price of ";
    private const string StockOf = "stock of ";
    private const int MostRows = 20_000;
    private const int MostBreaks = 20;
    private const int MostPacks = 1_000_000;
    private static readonly NumberRange Price = new(0, 1e6, TakesLowest: false, TakesHighest: false);
    private const string PriceForm = "a list like [ { \"pack\": \"bark-20-l\", \"price\": 9.80 } ]";

    /// <summary>The workshop, or every fault in its folder.</summary>
    public static Reading<WorkshopFolder> Read(string name, IReadOnlyCollection<CatalogFile> files)
    {
        var faults = new List<TextFault>();
        var workshop = new WorkshopFolder { Name = name };
        foreach (var file in files)
        {
            workshop = FileName(file.Path) switch
            {
                "workshop.json" => Object(file, workshop, faults, form => ReadWorkshop(form, workshop)),
                "prices.json" => Rows(file, workshop, faults, rows => ReadPrices(file, rows, workshop)),
                "stock.json" => Object(file, workshop, faults, form => ReadStock(file, form, workshop)),
                "sources.json" => workshop with { Sources = CatalogReader.ReadSources(file, faults) },
                _ => ReadEntries(file, workshop, faults),
            };
        }

        return faults.Count == 0 ? new(workshop, []) : new(null, [.. faults]);
    }

    /// <summary>Prices and stock that name nothing in the catalog, and recipes of unknown parts.</summary>
    public static Seq<TextFault> Unknown(TradeCatalog catalog, string folder)
    {
        var workshop = catalog.Workshop!;
        var none = new EntryPlaces(folder, new TextSpan(0, 0, 1, 1), []);
        EntryPlaces At(string key) => workshop.Places.GetValueOrDefault(key) ?? none;
        var prices = workshop.Prices.Keys.Where(key =>
            catalog.Find(key) is not (PackEntry or EquipmentEntry)
        );
        var stock = workshop.StockLiters.Keys.Where(key => catalog.Find(key) is null);
        var parts = workshop.Entries.SelectMany(e => e.Parts.Select(p => (Recipe: e.Key, p.Material)));
        return
        [
            .. prices
                .Order(StringComparer.Ordinal)
                .Select(key =>
                    At($"{PriceOf}{key}")
                        .Fault(null, $"'{key}' is not a pack or equipment", Near(catalog, key))
                ),
            .. stock
                .Order(StringComparer.Ordinal)
                .Select(key =>
                    At($"{StockOf}{key}")
                        .Fault(null, $"the library has no '{key}'", "a material of the library")
                ),
            .. parts
                .Where(p => catalog.Find(p.Material) is null)
                .Select(p =>
                    At(p.Recipe)
                        .Fault(
                            null,
                            $"recipe '{p.Recipe}' names '{p.Material}', which the library does not have",
                            Hint(catalog, p.Material, Ingredients)
                        )
                ),
            .. workshop.Entries.SelectMany(e => Values(catalog, e, At(e.Key))),
        ];
    }

    private static readonly EntryKind[] Ingredients =
    [
        EntryKind.Soil,
        EntryKind.Aggregate,
        EntryKind.Moss,
        EntryKind.Litter,
    ];

    /// <summary>Values in another unit or outside of what they can be.</summary>
    private static IEnumerable<TextFault> Values(TradeCatalog catalog, CatalogEntry own, EntryPlaces at)
    {
        foreach (var value in own.Values.Where(v => v.Number is not null))
        {
            var usual = catalog
                .Library.Values.Where(e => e.Kind == own.Kind && !e.IsWorkshops)
                .Select(e => e.Value(value.Name))
                .OfType<CatalogValue>()
                .Where(v => v is { Number: not null, Unit: not null })
                .ToList();
            if (EntryRanges.Fault(value, usual) is var (message, expected))
            {
                yield return at.Fault(value.Name, $"{own.Key}: {message}", expected);
            }
        }

        if (
            own.Value("thetaR") is { Number: { } dry }
            && own.Value("thetaS") is { Number: { } full }
            && dry >= full
        )
        {
            yield return at.Fault("thetaR", $"{own.Key}: thetaR is not below thetaS", "a smaller thetaR");
        }
    }

    private static string Near(TradeCatalog catalog, string key) =>
        Hint(catalog, key, EntryKind.Pack, EntryKind.Equipment);

    private static string Hint(TradeCatalog catalog, string key, params EntryKind[] kinds)
    {
        var near = catalog.Near(key, kinds);
        return near.Length > 0
            ? $"perhaps {string.Join(" or ", near)}"
            : $"a key of `litterfall library {kinds[0].Word()}`";
    }

    private static string FileName(string path) => path[(path.LastIndexOf('/') + 1)..];

    private static WorkshopFolder ReadWorkshop(TreeForm form, WorkshopFolder workshop)
    {
        var (name, currency) = (form.OptionalText("name"), form.OptionalText("currency"));
        if (currency is not null && (currency.Length != 3 || !currency.All(char.IsAsciiLetterUpper)))
        {
            form.Refuse(
                "currency",
                $"'{TreeNode.Shown(currency)}' is not a currency code",
                "three letters of ISO 4217, such as EUR"
            );
        }

        return workshop with
        {
            Name = name ?? workshop.Name,
            Currency = currency,
        };
    }

    private static WorkshopFolder ReadPrices(
        CatalogFile file,
        ImmutableArray<TreeForm> rows,
        WorkshopFolder workshop
    )
    {
        var (prices, places) = (workshop.Prices, workshop.Places);
        for (var i = 0; i < rows.Length; i++)
        {
            var (pack, first) = (rows[i].Text("pack"), rows[i].Number("price", Price));
            var breaks = rows[i]
                .OptionalObjects("breaks", "a price break", MostBreaks)
                .Select(step => (From: step.Whole("from", 2, MostPacks), Price: step.Number("price", Price)))
                .Prepend((From: 1, Price: first))
                .Where(step => double.IsFinite(step.Price))
                .Select(step => new PriceBreak(step.From, (decimal)step.Price))
                .OrderBy(step => step.FromPacks);
            if (pack is null)
            {
                continue;
            }

            var key = TradeCatalog.Canonical(pack);
            prices = prices.SetItem(key, new PackPrice(key, [.. breaks], $"{file.Path}, row {i + 1}"));
            places = places.SetItem($"{PriceOf}{key}", PlaceOf(file, rows[i]));
        }

        return workshop with
        {
            Prices = prices,
            Places = places,
        };
    }

    private static WorkshopFolder ReadStock(CatalogFile file, TreeForm form, WorkshopFolder workshop)
    {
        var stock = ImmutableDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        var places = workshop.Places;
        foreach (var name in form.Keys)
        {
            if (form.Amount<Volume>(name.Text, QuantityKinds.Volume.Expected) is { } volume)
            {
                var key = TradeCatalog.Canonical(name.Text);
                stock[key] = volume.Si * 1000;
                var at = new EntryPlaces(file.Path, name.Span, ImmutableDictionary<string, TextSpan>.Empty);
                places = places.SetItem($"{StockOf}{key}", at);
            }
        }

        return workshop with
        {
            StockLiters = stock.ToImmutable(),
            Places = places,
        };
    }

    private static WorkshopFolder ReadEntries(
        CatalogFile file,
        WorkshopFolder workshop,
        List<TextFault> faults
    )
    {
        var read = CatalogReader.ReadPlaced(file, true, faults);
        return workshop with
        {
            Entries = workshop.Entries.AddRange(read.Select(one => one.Entry)),
            Places = workshop.Places.SetItems(
                read.Select(one => KeyValuePair.Create(one.Entry.Key, one.Places))
            ),
        };
    }

    private static EntryPlaces PlaceOf(CatalogFile file, TreeForm form) =>
        new(file.Path, form.Span, ImmutableDictionary<string, TextSpan>.Empty);

    /// <summary>Reads an object of a file; the workshop as it was where the file holds none.</summary>
    private static WorkshopFolder Object(
        CatalogFile file,
        WorkshopFolder workshop,
        List<TextFault> faults,
        Func<TreeForm, WorkshopFolder> read
    )
    {
        var of = new TreeFaults(file.Path);
        var form = JsonTree.Read(file.Text, of) is { } top ? TreeForm.Top(top, of, "the file") : null;
        var with = form is null ? workshop : read(form);
        faults.AddRange(of.ToSeq());
        return with;
    }

    /// <summary>Reads a list of objects of a file.</summary>
    private static WorkshopFolder Rows(
        CatalogFile file,
        WorkshopFolder workshop,
        List<TextFault> faults,
        Func<ImmutableArray<TreeForm>, WorkshopFolder> read
    )
    {
        var of = new TreeFaults(file.Path);
        var rows = JsonTree.Read(file.Text, of) is { } top
            ? TreeForm.Each(top, of, "the row", (PriceForm, MostRows))
            : [];
        var with = read(rows);
        faults.AddRange(of.ToSeq());
        return with;
    }
}
