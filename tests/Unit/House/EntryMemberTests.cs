using System.Text.Json;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Faults;

namespace Litterfall.UnitTests.House;

/// <summary>Every value of the library has a member that reads it, and every member a reader.</summary>
public sealed class EntryMemberTests
{
    [Fact]
    public void Every_value_of_the_catalog_is_a_member_of_its_kind()
    {
        var strange =
            from file in Shop.CatalogFiles()
            where !CatalogReader.IsSources(file)
            from item in JsonDocument.Parse(file.Text).RootElement.EnumerateArray()
            let kind = EntryKinds.Find(item.GetProperty("kind").GetString()!)
            from value in item.TryGetProperty("values", out var values) ? values.EnumerateObject() : default
            where kind is null || EntryMembers.Find(kind.Value, value.Name) is null
            select $"{item.GetProperty("key")}.{value.Name}";
        Assert.Empty(strange);
    }

    [Fact]
    public void Every_member_is_read_or_excepted()
    {
        var unread = Unread().Except(Excepted().Select(e => e.Member), StringComparer.Ordinal).ToList();
        Assert.True(unread.Count == 0, $"nothing reads\n{string.Join('\n', unread)}");
    }

    [Fact]
    public void Every_exception_is_still_needed_and_has_a_reason()
    {
        Assert.Empty(Excepted().Select(e => e.Member).Except(Unread(), StringComparer.Ordinal));
        Assert.All(Excepted(), e => Assert.True(e.Reason.Length > 10, e.Member));
    }

    [Fact]
    public void A_misspelled_value_of_an_own_entry_is_refused_with_a_near_word()
    {
        var fault = Assert.Single(Faults("soil", """ "bulkDensityDri": { "value": 90, "unit": "kg/m3" } """));
        Assert.Equal("'own' has a value bulkDensityDri, which the kind soil does not know", fault.Message);
        Assert.Equal("perhaps bulkDensityDry", fault.Expected);
    }

    [Fact]
    public void A_value_of_another_kind_is_refused_with_those_of_its_own() =>
        Assert.StartsWith(
            "one of alpha1,",
            Assert.Single(Faults("mesh", """ "ctMax": { "value": 36, "unit": "C" } """)).Expected,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("mesh", """ "metal": { "value": 1, "unit": "1" } """, "a text")]
    [InlineData("mesh", """ "aperture": { "text": "fine" } """, "a number with its unit")]
    public void A_number_is_no_text_and_a_text_no_number(string kind, string values, string expected) =>
        Assert.Equal(expected, Assert.Single(Faults(kind, values)).Expected);

    [Fact]
    public void An_unknown_kind_is_refused_with_a_near_word() =>
        Assert.Contains("perhaps soil", Assert.Single(Faults("soill", "")).Message, StringComparison.Ordinal);

    /// <summary>Texts of another kind, broken texts and control characters have their place.</summary>
    [Theory]
    [InlineData("""{"key":5}""", 1, 8, "key is 5")]
    [InlineData("""{"key":null}""", 1, 8, "key is null")]
    [InlineData("""{"kind":"soil"}""", 1, 1, "lacks 'key'")]
    [InlineData("""{"key":"\ud800"}""", 1, 8, "half a character")]
    [InlineData("""{"key":"a\u0000"}""", 1, 8, "control character")]
    [InlineData("[]", 1, 1, "a list")]
    [InlineData("{", 1, 2, "not JSON")]
    public void A_key_that_is_none_is_refused_with_its_place(string text, int line, int column, string says)
    {
        var fault = CatalogReader.ReadKey("own", text).Faults[0];
        Assert.Equal((line, column), (fault.Line, fault.Column));
        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
    }

    /// <summary>An own value is held against what the library knows, and told where it stands.</summary>
    [Theory]
    [InlineData("pack", "litres", "1e-9", "L", false)]
    [InlineData("pack", "litres", "20", "L", true)]
    [InlineData("pack", "litres", "20", "kg", false)]
    [InlineData("soil", "bulkDensityDry", "-90", "kg/m3", false)]
    [InlineData("soil", "bulkDensityDry", "90", "kg/m3", true)]
    [InlineData("soil", "n1", "1", "1", false)]
    [InlineData("moss", "l", "-2.1", "1", true)]
    [InlineData("crew", "breedingStopsAt", "-0.02", "MPa", true)]
    [InlineData("crew", "T0", "9", "C", true)]
    [InlineData("crew", "T0", "900", "C", false)]
    public void An_own_value_lies_in_the_range_of_its_kind(
        string kind,
        string name,
        string number,
        string unit,
        bool isTaken
    )
    {
        var text = $$"""
            [ { "key": "own", "kind": "{{kind}}", "name": "own",
                "values": { "{{name}}": { "value": {{number}}, "unit": "{{unit}}" } } } ]
            """;
        var workshop = WorkshopReader.Read("own", [new CatalogFile("own.json", text)]);
        Assert.True(workshop.IsGood, string.Join('\n', workshop.Faults));
        var faults = WorkshopReader.Unknown(SampleFiles.Catalog.With(workshop.Value!), "own");
        Assert.Equal(isTaken, faults.Count == 0);
        Assert.All(faults, fault => Assert.Equal(("own.json", 2), (fault.File, fault.Line)));
    }

    [Fact]
    public void Words_and_kinds_lead_to_each_other() =>
        Assert.All(EntryKinds.All, kind => Assert.Equal(kind, EntryKinds.Find(kind.Word())));

    private static List<TextFault> Faults(string kind, string values)
    {
        var faults = new List<TextFault>();
        var text = $$"""[ { "key": "own", "kind": "{{kind}}", "name": "own", "values": { {{values}} } } ]""";
        Assert.Empty(CatalogReader.ReadEntries(new CatalogFile("own.json", text), true, faults));
        return faults;
    }

    private static IEnumerable<string> Unread() =>
        EntryReaders.Members().Except(EntryReaders.Read(), StringComparer.Ordinal);

    private static IEnumerable<(string Member, string Reason)> Excepted() =>
        from line in File.ReadLines(SourceTree.Path("tests", "Unit", "House", "unread-values.txt"))
        where line.Trim().Length > 0 && !line.StartsWith('#')
        let parts = line.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries)
        select (parts[0], parts.ElementAtOrDefault(1) ?? "");
}
