using System.Globalization;
using System.Text.Json;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.UnitTests.Domain;

/// <summary>A maker's own entry of a known key replaces the values it gives and keeps all others.</summary>
public sealed class OwnValuesTests
{
    private static readonly Lazy<TradeCatalog> Read = new(Shop.Embedded);

    public static TheoryData<string> Kinds => [.. EntryKinds.All.Select(kind => kind.Word())];

    /// <summary>Every value of every kind, one at a time, on an entry that has it.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Any_single_value_of_any_kind_can_be_replaced(string kind)
    {
        var entries = Read.Value.Entries.Where(e => e.Kind.Word() == kind).ToList();
        Assert.NotEmpty(entries);
        foreach (var member in EntryMembers.Of(EntryKinds.Find(kind)!.Value))
        {
            if (entries.Find(e => Value(e, member.Name) is not null) is not { } known)
            {
                continue;
            }

            var old = Value(known, member.Name)!;
            var own = old.Text is null ? Near(old) : $$"""{ "text": "our own word" }""";
            var merged = With(known.Key, kind, $$"""{ "{{member.Name}}": {{own}} }""");
            var now = Value(merged, member.Name)!;
            Assert.Equal(Provenance.Entered, now.Origin.Provenance);
            Assert.True(
                old.Text is null ? now.Number == Other(old) : now.Text == "our own word",
                $"{known.Key}.{member.Name}"
            );
            Assert.Equal(
                known.Values.Where(v => v.Name != member.Name).ToArray(),
                merged.Values.Where(v => v.Name != member.Name).ToArray()
            );
        }
    }

    /// <summary>A value the known entry lacks is added to it.</summary>
    [Fact]
    public void A_value_can_be_added_to_a_known_entry()
    {
        var frog = (AnimalEntry)With(
            "dendrobates-truncatus",
            "animal",
            """{ "ctMin": { "value": 9, "unit": "C" } }"""
        );
        Assert.Equal(282.15, frog.CriticalMinimum!.Si, 1e-9);
        Assert.Equal(37.58, frog.CriticalMaximum!.Value, 1e-9);
    }

    [Fact]
    public void An_entry_of_another_kind_takes_the_place_of_the_known_one()
    {
        var own = With("float-glass", "soil", """{ "bulkDensityDry": { "value": 90, "unit": "kg/m3" } }""");
        Assert.IsType<SoilEntry>(own);
        Assert.Single(own.Values);
    }

    [Fact]
    public void Own_words_for_an_entry_take_the_place_of_the_known_ones()
    {
        var text = """
            [ { "key": "float-glass", "kind": "sheet", "name": "our glass",
                "synonyms": ["pane"], "values": {} } ]
            """;
        Assert.Equal(["pane"], Merged(text, "float-glass").Synonyms);
    }

    private static CatalogValue? Value(CatalogEntry entry, string name) =>
        entry.Values.FirstOrDefault(v => v.Name == name);

    /// <summary>Another number in the range of the value: shares stay under 1, counts over it.</summary>
    private static double Other(CatalogValue old) =>
        (old.Unit!.Symbol, old.Number!.Value) switch
        {
            ("1", > 1) or ("1", 1) when old.Number > 1 || old.Name == "pieces" => old.Number.Value + 1,
            ("1", > 0.5) or ("%", > 50) => old.Number.Value * 0.9,
            _ => old.Number.Value * 1.1,
        };

    private static string Near(CatalogValue old)
    {
        var number = Other(old).ToString("R", CultureInfo.InvariantCulture);
        return $$"""{ "value": {{number}}, "unit": {{JsonSerializer.Serialize(old.Unit!.Symbol)}} }""";
    }

    private static CatalogEntry With(string key, string kind, string values) =>
        Merged(
            $$"""[ { "key": "{{key}}", "kind": "{{kind}}", "name": "ours", "values": {{values}} } ]""",
            key
        );

    private static CatalogEntry Merged(string text, string key)
    {
        var workshop = WorkshopReader.Read("own", [new CatalogFile("own.json", text)]);
        Assert.True(workshop.IsGood, string.Join('\n', workshop.Faults));
        var catalog = Read.Value.With(workshop.Value!);
        var faults = WorkshopReader.Unknown(catalog, "own");
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        return catalog.Find(key)!;
    }
}
