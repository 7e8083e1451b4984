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
