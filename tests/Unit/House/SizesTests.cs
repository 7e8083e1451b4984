namespace Litterfall.UnitTests.House;

/// <summary>Code stays small enough to be read; exceptions.txt may only shrink.</summary>
public sealed class SizesTests
{
    private static readonly Lazy<HashSet<string>> Excepted = new(() =>
        [.. Entries().Select(entry => $"{entry.Rule} {entry.Place}")]
    );

    [Fact]
    public void Files_are_short() => NoneOf("file");

    [Fact]
    public void Lines_are_short() => NoneOf("line");

    [Fact]
    public void Methods_fit_on_a_screen() => NoneOf("method");

    [Fact]
    public void Methods_take_few_parameters() => NoneOf("parameters");

    [Fact]
    public void Folders_can_be_surveyed() => NoneOf("folder");

    [Fact]
    public void Nothing_is_left_for_later() => NoneOf("mark");

    [Fact]
    public void Type_names_say_something() => NoneOf("name");

    [Fact]
    public void Every_exception_is_still_needed_and_has_a_reason()
    {
        var breaches = SizeRules.All.Select(b => $"{b.Rule} {b.Place}").ToHashSet(StringComparer.Ordinal);
        Assert.Empty(Excepted.Value.Except(breaches, StringComparer.Ordinal));
        Assert.All(Entries(), entry => Assert.True(entry.Reason.Length > 10, entry.Place));
    }

    private static void NoneOf(string rule)
    {
        var breaches = SizeRules.All.Where(b => b.Rule == rule);
        var open = breaches.Where(b => !Excepted.Value.Contains($"{b.Rule} {b.Place}")).Distinct().ToList();
        Assert.True(open.Count == 0, $"{open.Count} breaches:\n{string.Join('\n', open)}");
    }

    private static IEnumerable<(string Rule, string Place, string Reason)> Entries() =>
        from line in File.ReadLines(SourceTree.Path("tests", "Unit", "House", "exceptions.txt"))
        where line.Trim().Length > 0 && !line.StartsWith('#')
        let parts = line.Split(' ', 3, StringSplitOptions.RemoveEmptyEntries)
        select (parts[0], parts.ElementAtOrDefault(1) ?? "", parts.ElementAtOrDefault(2) ?? "");
}
