using System.Collections.Immutable;
using System.Text.Json;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Catalog;

/// <summary>
/// Reads a workshop's folder: <c>workshop.json</c> (name, currency), <c>prices.json</c> (pack, price,
/// breaks),
/// <c>stock.json</c> (liters by material), <c>sources.json</c>, and any other file as catalog entries.
/// </summary>
public static class WorkshopReader
{
    private const string PriceForm = "a list like [ { \"pack\": \"bark-20-l\", \"price\": 9.80 } ]";

    /// <summary>The workshop, or every fault in its folder.</summary>
    public static Reading<Workshop> Read(string name, IReadOnlyCollection<CatalogFile> files)
    {
        var faults = new List<TextFault>();
        var workshop = new Workshop { Name = name };
        foreach (var file in files)
        {
            workshop = FileName(file.Path) switch
            {
                "workshop.json" => ReadWorkshop(file, workshop, faults),
                "prices.json" => workshop with
                {
                    Prices = workshop.Prices.SetItems(ReadPrices(file, faults)),
                },
                "stock.json" => workshop with { StockLiters = ReadStock(file, faults) },
                "sources.json" => workshop with { Sources = CatalogReader.ReadSources(file, faults) },
                _ => workshop with
                {
                    Entries = workshop.Entries.AddRange(CatalogReader.ReadEntries(file, true, faults)),
                },
            };
        }

        return faults.Count == 0 ? new(workshop, []) : new(null, [.. faults]);
    }

    /// <summary>Prices and stock that name nothing in the catalog, and recipes of unknown parts.</summary>
    public static Seq<TextFault> Unknown(TradeCatalog catalog, string folder)
    {
        var workshop = catalog.Workshop!;
        var faults = workshop
            .Prices.Keys.Where(key => catalog.Find<PackEntry>(key) is null)
            .Order(StringComparer.Ordinal)
            .Select(key => new TextFault(
                $"{folder}/prices.json",
                1,
                1,
                $"'{key}' is not a pack",
                Hint(catalog, key, EntryKind.Pack)
            ))
            .ToList();
        faults.AddRange(
            workshop
                .StockLiters.Keys.Where(key => catalog.Find(key) is null)
                .Order(StringComparer.Ordinal)
                .Select(key => new TextFault(
                    $"{folder}/stock.json",
                    1,
                    1,
                    $"the library has no '{key}'",
                    "a material of the library"
                ))
        );
        faults.AddRange(
            workshop
                .Entries.SelectMany(e => e.Parts.Select(p => (Recipe: e.Key, p.Material)))
                .Where(p => catalog.Find(p.Material) is null)
                .Select(p => new TextFault(
                    folder,
                    1,
                    1,
                    $"recipe '{p.Recipe}' names '{p.Material}', which the library does not have",
                    Hint(
                        catalog,
                        p.Material,
                        EntryKind.Soil,
                        EntryKind.Aggregate,
                        EntryKind.Moss,
                        EntryKind.Litter
                    )
                ))
        );
        faults.AddRange(workshop.Entries.SelectMany(e => Values(catalog, e, folder)));
        return [.. faults];
    }

    /// <summary>Values measured in the wrong dimension, and zeros the sums would divide by.</summary>
    private static IEnumerable<TextFault> Values(TradeCatalog catalog, CatalogEntry own, string folder)
    {
        foreach (var value in own.Values.Where(v => v.Number is not null))
        {
            var usual = catalog
                .Entries.Where(e => e.Kind == own.Kind && !e.IsWorkshops)
                .Select(e => e.Value(value.Name)?.Unit)
                .FirstOrDefault(unit => unit is not null);
            if (usual is not null && usual.Dimension != value.Unit!.Dimension)
            {
                var message = $"{value.Name} of '{own.Key}' is not measured in {value.Unit.Symbol}";
                yield return new TextFault(folder, 1, 1, message, $"a unit such as {usual.Symbol}");
            }
            else if (value.Number <= 0 && Divisors.Contains(value.Name))
            {
                yield return new TextFault(
                    folder,
                    1,
                    1,
                    $"{value.Name} of '{own.Key}' is not above 0",
                    "a measured value"
                );
            }
            else if (
                value.Unit!.Symbol == "%"
                && value.Number > (value.Name is "settling" or "interparticleVoids" ? 89 : 100)
            )
            {
                yield return new TextFault(
                    folder,
                    1,
                    1,
                    $"{value.Name} of '{own.Key}' is too large a share",
                    "a smaller share"
                );
            }
            else if (value.Number < 0 && value.Unit!.Offset == 0)
            {
                yield return new TextFault(
                    folder,
                    1,
                    1,
                    $"{value.Name} of '{own.Key}' is negative",
                    "0 or more"
                );
            }
        }
    }

    private static readonly string[] Divisors =
    [
        "mixingYield",
        "envelopeDensity",
        "cartridge",
        "spotSpacing",
        "adhesiveCoverage",
        "yield",
        "litres",
        "allowablePermanent",
        "allowableFreeEdge",
        "bulkDensity",
    ];

    private static string Hint(TradeCatalog catalog, string key, params EntryKind[] kinds)
    {
        var near = catalog.Near(key, kinds);
        return near.Length > 0
            ? $"perhaps {string.Join(" or ", near)}"
            : $"a key of `litterfall library {kinds[0].Word()}`";
    }

    private static string FileName(string path) => path[(path.LastIndexOf('/') + 1)..];

    private static Workshop ReadWorkshop(CatalogFile file, Workshop workshop, List<TextFault> faults)
    {
        if (Root(file, JsonValueKind.Object, "an object with name and currency", faults) is not { } root)
        {
            return workshop;
        }

        var currency = Text(root, "currency");
        if (currency is not null && (currency.Length != 3 || !currency.All(char.IsAsciiLetterUpper)))
        {
            faults.Add(
                new(
                    file.Path,
                    1,
                    1,
                    $"'{currency}' is not a currency code",
                    "three letters of ISO 4217, such as EUR"
                )
            );
        }

        return workshop with
        {
            Name = Text(root, "name") ?? workshop.Name,
            Currency = currency,
        };
    }

    private static IEnumerable<KeyValuePair<string, PackPrice>> ReadPrices(
        CatalogFile file,
        List<TextFault> faults
    )
    {
        if (Root(file, JsonValueKind.Array, PriceForm, faults) is not { } root)
        {
            return [];
        }

        var prices = new Dictionary<string, PackPrice>(StringComparer.Ordinal);
        var row = 0;
        foreach (var item in root.EnumerateArray())
        {
            row++;
            var pack = Text(item, "pack");
            var breaks = Breaks(item);
            if (pack is null || breaks is null)
            {
                faults.Add(new(file.Path, 1, 1, $"row {row} has no pack or no price above 0", PriceForm));
                continue;
            }

            var key = TradeCatalog.Canonical(pack);
            prices[key] = new PackPrice(key, breaks.Value, $"{file.Path}, row {row}");
        }

        return prices;
    }

    private static ImmutableArray<PriceBreak>? Breaks(JsonElement item)
    {
        if (Price(item) is not { } first)
        {
            return null;
        }

        var breaks = new List<PriceBreak> { new(1, first) };
        if (item.TryGetProperty("breaks", out var more) && more.ValueKind == JsonValueKind.Array)
        {
            foreach (var step in more.EnumerateArray())
            {
                if (
                    Price(step) is not { } price
                    || !step.TryGetProperty("from", out var from)
                    || from.ValueKind != JsonValueKind.Number
                    || !from.TryGetInt32(out var packs)
                    || packs < 2
                )
                {
                    return null;
                }

                breaks.Add(new(packs, price));
            }
        }

        return [.. breaks.OrderBy(b => b.FromPacks)];
    }

    private static decimal? Price(JsonElement item) =>
        item.ValueKind == JsonValueKind.Object
        && item.TryGetProperty("price", out var price)
        && price.ValueKind == JsonValueKind.Number
        && price.TryGetDecimal(out var value)
        && value is > 0 and < 1_000_000
            ? value
            : null;

    private static ImmutableDictionary<string, double> ReadStock(CatalogFile file, List<TextFault> faults)
    {
        const string form = "an object like { \"fine-bark\": \"74 L\" }";
        var stock = ImmutableDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        if (Root(file, JsonValueKind.Object, form, faults) is not { } root)
        {
            return stock.ToImmutable();
        }

        foreach (var item in root.EnumerateObject())
        {
            var text =
                item.Value.ValueKind == JsonValueKind.String
                    ? item.Value.GetString()!
                    : item.Value.GetRawText();
            if (QuantityText.TryParse<Volume>(text, out var volume, out var problem))
            {
                stock[TradeCatalog.Canonical(item.Name)] = volume.Si * 1000;
            }
            else
            {
                faults.Add(new(file.Path, 1, 1, $"{item.Name}: {problem}", QuantityKinds.Volume.Expected));
            }
        }

        return stock.ToImmutable();
    }

    private static JsonElement? Root(
        CatalogFile file,
        JsonValueKind kind,
        string expected,
        List<TextFault> faults
    )
    {
        try
        {
            var root = JsonDocument.Parse(file.Text).RootElement;
            if (root.ValueKind == kind)
            {
                return root;
            }

            faults.Add(new(file.Path, 1, 1, "the file has the wrong form", expected));
        }
        catch (JsonException e)
        {
            faults.Add(
                new(
                    file.Path,
                    (int)(e.LineNumber ?? 0) + 1,
                    (int)(e.BytePositionInLine ?? 0) + 1,
                    "the file is not JSON",
                    expected
                )
            );
        }

        return null;
    }

    private static string? Text(JsonElement item, string name) =>
        item.ValueKind == JsonValueKind.Object
        && item.TryGetProperty(name, out var value)
        && value.ValueKind == JsonValueKind.String
            ? value.GetString()
            : null;
}
