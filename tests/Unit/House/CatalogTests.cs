using System.Text.Json;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.UnitTests.House;

/// <summary>Every value of the embedded catalog is cited, in range and fits the rest.</summary>
public sealed class CatalogTests
{
    private static readonly Lazy<TradeCatalog> Read = new(() => CatalogReader.Read(Shop.CatalogFiles()));

    private static TradeCatalog Catalog => Read.Value;

    private static IEnumerable<(CatalogEntry Entry, CatalogValue Value)> Values =>
        Catalog.Entries.SelectMany(e => e.Values.Select(v => (e, v)));

    [Theory]
    [InlineData("aggregate", 4)]
    [InlineData("mesh", 4)]
    [InlineData("soil", 10)]
    [InlineData("recipe", 4)]
    [InlineData("moss", 3)]
    [InlineData("litter", 4)]
    [InlineData("hardscape", 5)]
    [InlineData("background", 3)]
    [InlineData("adhesive", 2)]
    [InlineData("sheet", 10)]
    [InlineData("pack", 50)]
    [InlineData("crew", 9)]
    [InlineData("animal", 40)]
    [InlineData("plant", 70)]
    [InlineData("lamp", 20)]
    [InlineData("grid", 1)]
    [InlineData("feeder", 4)]
    [InlineData("equipment", 90)]
    public void Every_kind_is_there(string kind, int atLeast) =>
        Assert.True(Catalog.Entries.Count(e => e.Kind.Word() == kind) >= atLeast);

    [Fact]
    public void No_key_stands_twice()
    {
        var keys =
            from file in Shop.CatalogFiles()
            where !CatalogReader.IsSources(file)
            from item in JsonDocument.Parse(file.Text).RootElement.EnumerateArray()
            select TradeCatalog.Canonical(item.GetProperty("key").GetString()!);
        Assert.Empty(
            keys.GroupBy(k => k, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key)
        );
    }

    [Fact]
    public void No_value_or_member_stands_twice_and_none_is_misspelled()
    {
        string[] entry =
        [
            "key",
            "kind",
            "name",
            "synonyms",
            "note",
            "values",
            "parts",
            "partsSource",
            "material",
        ];
        string[] value = ["value", "low", "high", "unit", "text", "source", "place", "provenance", "note"];
        var faults = new List<string>();
        foreach (var file in Shop.CatalogFiles().Where(f => !CatalogReader.IsSources(f)))
        {
            foreach (var item in JsonDocument.Parse(file.Text).RootElement.EnumerateArray())
            {
                var key = item.GetProperty("key").GetString();
                Unlisted(item, entry, $"{file.Path} {key}", faults);
                if (!item.TryGetProperty("values", out var values))
                {
                    continue;
                }

                Unlisted(values, [.. values.EnumerateObject().Select(p => p.Name)], $"{key}.values", faults);
                foreach (var one in values.EnumerateObject())
                {
                    Unlisted(one.Value, value, $"{key}.{one.Name}", faults);
                }
            }
        }

        Assert.Empty(faults);
    }

    [Fact]
    public void Every_number_has_a_unit_and_every_text_says_something() =>
        Assert.Empty(
            Values
                .Where(v =>
                    v.Value.Number is null ? string.IsNullOrWhiteSpace(v.Value.Text) : v.Value.Unit is null
                )
                .Select(Named)
        );

    [Fact]
    public void Every_value_names_a_listed_source_and_a_place_in_it()
    {
        var origins = Values
            .Select(v => (Named(v), v.Value.Origin))
            .Concat(
                Catalog
                    .Entries.Where(e => !e.Parts.IsDefaultOrEmpty)
                    .Select(e => (e.Key, e.PartsOrigin ?? new Citation("missing", "", Provenance.Recalled)))
            )
            .ToList();
        Assert.Empty(
            origins.Where(o => !Catalog.Sources.ContainsKey(o.Item2.Source)).Select(o => o.ToString())
        );
        Assert.Empty(origins.Where(o => string.IsNullOrWhiteSpace(o.Item2.Place)).Select(o => o.ToString()));
    }

    [Fact]
    public void Read_means_that_more_than_a_title_was_read() =>
        Assert.Empty(
            Values
                .Where(v =>
                    v.Value.Origin.Provenance is Provenance.Read or Provenance.Digitized
                    && Catalog.Sources.GetValueOrDefault(v.Value.Origin.Source)?.Read
                        is null
                            or "none"
                            or "title"
                            or ""
                )
                .Select(Named)
        );

    [Fact]
    public void Nothing_in_the_catalog_claims_to_be_typed_by_the_maker() =>
        Assert.Empty(
            Values
                .Where(v => v.Value.Origin.Provenance is Provenance.Entered or Provenance.Measured)
                .Select(Named)
        );

    [Fact]
    public void Every_source_is_described_and_used()
    {
        string[] kinds =
        [
            "journal",
            "standard",
            "handbook",
            "dataset",
            "law",
            "web page",
            "common practice",
            "own",
        ];
        string[] read = ["whole", "abstract", "data", "excerpt", "title", "none"];
        Assert.All(Catalog.Sources.Values, s =>
        {
            Assert.True(s.Title.Length > 5, s.Key);
            Assert.Contains(s.Kind, kinds);
            Assert.Contains(s.Read, read);
            Assert.True(s.Year is null or (>= 1600 and <= 2100), s.Key);
        });
    }

    [Fact]
    public void Recipe_parts_exist_and_hold_soil_or_something_mixed_into_it()
    {
        var faults =
            from recipe in Catalog.Of<RecipeEntry>()
            from part in recipe.Parts
            where Catalog.Find(part.Material) is not (SoilEntry or AggregateEntry or MossEntry or LitterEntry)
            select $"{recipe.Key}: {part.Material}";
        Assert.Empty(faults);
        var ready = Catalog.Of<RecipeEntry>().Where(e => e.Parts.IsDefaultOrEmpty);
        Assert.All(ready, r => Assert.Equal(1, r.MixingYield!.Si, 1e-12));
    }

    [Fact]
    public void Packs_hold_a_known_material_and_say_how_much()
    {
        string[] amounts = ["litres", "kilograms", "length", "pieces", "area", "volume"];
        var packs = Catalog.Of<PackEntry>().ToList();
        Assert.Empty(
            packs.Where(p => p.Material is null || Catalog.Find(p.Material) is null).Select(p => p.Key)
        );
        Assert.Empty(packs.Where(p => !p.Values.Any(v => amounts.Contains(v.Name))).Select(p => p.Key));
    }

    [Fact]
    public void A_band_contains_its_value() =>
        Assert.Empty(
            Values
                .Where(v =>
                    v.Value.Low > v.Value.Number
                    || v.Value.High < v.Value.Number
                    || v.Value.Low > v.Value.High
                )
                .Select(Named)
        );

    [Fact]
    public void Numbers_are_physically_possible() =>
        Assert.Empty(
            Values
                .Where(v => v.Value is { Number: { }, Unit: { } })
                .Where(v =>
                    Bounds(v.Value) is var (low, high)
                    && new[] { v.Value.Number, v.Value.Low, v.Value.High }.Any(n => n < low || n > high)
                )
                .Select(v => $"{Named(v)} = {v.Value.Number} {v.Value.Unit!.Symbol}")
        );

    /// <summary>A sheet without optics of its own would be lit as clear glass.</summary>
    [Fact]
    public void Every_sheet_says_what_light_it_lets_through()
    {
        var sheets = Catalog.Entries.OfType<SheetEntry>().ToList();
        Assert.All(sheets, s => Assert.True(s is { RefractiveIndex: { }, Extinction: { } }, s.Key));
        string[] solid = ["pvc-foam-board", "hdpe-sheet"];
        // Both are sold as opaque: a tenth or less is left after 3 mm (common practice, no source).
        Assert.All(
            sheets.Where(s => solid.Contains(s.Key)),
            s => Assert.InRange(Math.Exp(-s.Extinction!.Si * 0.003), 0.0, 0.1)
        );
    }

    /// <summary>Pairs that end in Low and High are ranges too.</summary>
    [Fact]
    public void A_low_value_is_not_above_its_high_twin()
    {
        var faults =
            from v in Values
            where v.Value.Name.EndsWith("Low", StringComparison.Ordinal)
            let high = v.Entry.Values.FirstOrDefault(other => other.Name == v.Value.Name[..^3] + "High")
            where high is not null && Si(v.Value) > Si(high)
            select Named(v);
        Assert.Empty(faults);
    }

    /// <summary>A soil holds less water at its driest than when full, and no more than its pores.</summary>
    [Fact]
    public void Water_contents_are_in_order()
    {
        var faults =
            from e in Catalog.Of<PorousEntry>()
            let dry = e.ResidualWater
            let full = e.SaturatedWater
            where dry is not null && full is not null
            where dry.Si < 0 || dry.Si >= full.Si || full.Si > 1
            select e.Key;
        Assert.Empty(faults);
    }

    [Fact]
    public void The_design_file_of_the_handbook_resolves_completely()
    {
        var reading = DesignReader.Read(
            "example",
            SourceTree.Text("tests/Unit/Domain/contract-example.viv.yaml")
        );
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        var design = DesignChecker.Check(reading.Value!, Catalog);
        Assert.True(design.IsGood, string.Join('\n', design.Faults));
    }

    [Fact]
    public void Synonyms_lead_to_one_entry_of_their_kind()
    {
        var twice =
            from e in Catalog.Entries
            from s in e.Synonyms
            group e.Key by (e.Kind, Word: TradeCatalog.Canonical(s)) into words
            where words.Distinct(StringComparer.Ordinal).Count() > 1
            select $"{words.Key}: {string.Join(", ", words)}";
        Assert.Empty(twice);
    }

    /// <summary>What nature, a workshop or a room can have, by unit; far wider than what is usual.</summary>
    private static (double Low, double High)? Bounds(CatalogValue value) =>
        value.Unit!.Symbol switch
        {
            "%" => (0, 100),
            "kg/m3" => (1, 23_000), // osmium is 22 590
            "L" or "dry qt" or "liquid qt" or "gal" or "cu ft" => (1e-3, 1000),
            "mm" => (0, 20_000),
            "cm" => (0, 2000),
            "m" => (1e-3, 200),
            "kg" or "g" or "mg" => (1e-9, 1e5),
            "C" => (-60, 120), // animals, plants, rooms and washing water
            "MPa" => (-100, 1000),
            "GPa" => (1e-3, 1300), // diamond is about 1200
            "W/m/K" => (0.01, 450), // aerogel to silver
            "1/K" => (0, 1e-3),
            "lm/W" => (1, 683), // 683 lm/W is the limit by definition of the candela
            "umol/m2/s" => (0, 2500), // full sun is about 2000
            "mol/m2/d" => (0, 70),
            "umol/s/klm" => (1, 1000),
            "lm" => (1, 1e6),
            "W" => (0.1, 1e4),
            "cm/h" => (1e-9, 1e6),
            "1/cm" => (1e-6, 100),
            "d" or "h" or "month" or "year" or "min" or "s" or "week" => (0, 1e6),
            "1/y" or "1/d" => (0, 1000),
            "g/m2" or "kg/m2" or "g/L" => (1e-3, 1e4),
            _ => null,
        };

    private static double Si(CatalogValue value) => value.Unit!.ToSiValue(value.Number!.Value);

    private static string Named((CatalogEntry Entry, CatalogValue Value) v) =>
        $"{v.Entry.Key}.{v.Value.Name}";

    private static void Unlisted(JsonElement item, string[] listed, string place, List<string> faults)
    {
        foreach (var group in item.EnumerateObject().GroupBy(p => p.Name, StringComparer.Ordinal))
        {
            if (group.Count() > 1 || !listed.Contains(group.Key))
            {
                faults.Add($"{place}: {group.Key}");
            }
        }
    }
}
