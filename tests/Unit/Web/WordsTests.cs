using Litterfall.App.Files;
using Litterfall.Domain.DesignFile;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;

namespace Litterfall.UnitTests.Web;

/// <summary>What pages say of changes, orders and names.</summary>
public sealed class WordsTests
{
    private const string Text = """
        litterfall: 1
        name: page
        box: { inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }
        floor: { soil: { recipe: ready-rainforest, depth: 5 cm } }
        plants: [ { plant: pilea-depressa }, { plant: fittonia-albivenis } ]
        lid: { material: float-glass, thickness: 4 mm, gap: 2 mm }
        room: { temperature: 21 C, humidity: 50 % }

        """;

    private static List<string> Lines(string from, string to)
    {
        static DesignDocument Read(string text) => DesignReader.Read("words", text).Value!;
        var changed = Text.Replace(from, to, StringComparison.Ordinal);
        return [.. DesignWords.Of(Read(Text), Read(changed), Shop.Embedded())];
    }

    [Theory]
    [InlineData("depth: 5 cm", "depth: 2 1/2 in", "5 cm → 2 1/2 in")]
    [InlineData("temperature: 21 C", "temperature: 23 C", "21 C → 23 C")]
    [InlineData("name: page", "name: sheet", "page → sheet")]
    [InlineData(", gap: 2 mm", "", "2 mm left out")]
    public void A_changed_value_is_told_by_part_and_field(string from, string to, string words)
    {
        var line = Assert.Single(Lines(from, to));
        Assert.EndsWith(words, line, StringComparison.Ordinal);
        // Words, not the writing of a file.
        Assert.DoesNotContain("floor.", line, StringComparison.Ordinal);
        Assert.DoesNotContain("[", line, StringComparison.Ordinal);
    }

    /// <summary>The second plant moves up when the first goes; it has not changed.</summary>
    [Fact]
    public void A_plant_that_goes_is_told_alone()
    {
        var line = Assert.Single(Lines("{ plant: pilea-depressa }, ", ""));
        Assert.StartsWith("Removed: Pilea", line, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_comes_is_told_by_its_name()
    {
        var line = Assert.Single(
            Lines("room:", "background: { material: cork-tile, thickness: 2 cm }\nroom:")
        );
        Assert.StartsWith("Added: ", line, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_design_differs_in_nothing() => Assert.Empty(Lines("page", "page"));

    [Theory]
    [InlineData("", 0, "due today")]
    [InlineData("", 1, "due tomorrow")]
    [InlineData("Quoted", 5, "due in 5 days")]
    [InlineData("Quoted", 30, "due 31 Dec 2026")]
    [InlineData("Building", -1, "1 day overdue")]
    [InlineData("Building", -3, "3 days overdue")]
    [InlineData("Delivered", -3, "due 28 Nov 2026")]
    public void A_due_day_is_told_from_today(string status, int days, string words)
    {
        var today = new DateOnly(2026, 12, 1);
        Assert.Equal(words, OrderWords.Due(new DesignOrder(status, "", today.AddDays(days)), today));
    }

    [Fact]
    public void Too_much_at_once_is_refused()
    {
        using var allowance = new UploadAllowance();
        for (var i = 0; i < 19; i++)
        {
            Assert.Null(allowance.Refusal(BenchLibrary.LargestFile));
        }

        Assert.NotNull(allowance.Refusal(2L * BenchLibrary.LargestFile));
        Assert.Null(allowance.Refusal(1000));
    }
}
