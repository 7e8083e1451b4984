using System.Globalization;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Findings;
using Litterfall.Judging;
using Litterfall.Judging.Animals;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>What the rules that keep animals and people safe say, word by word where words decide.</summary>
public sealed class SafetyRuleTests
{
    private const string Inch =
        "{ outside: { length: 24 in, depth: 18 in, height: 18 in }, glass: { walls: 6 mm } }";

    /// <summary>
    /// Strawberry frog: 29.1 − 5 = 24.1 °C and the 23.98 °C it chooses lie under its band's top, 25 °C.
    /// Green tree frog of Australia: chooses 29.3 °C (measured), over its band of 29.
    /// Dyeing frog: 34 − 5 = 29 is over the alarm of 28 °C, and that over its band of 26.
    /// </summary>
    [Theory]
    [InlineData("oophaga-pumilio", "25 °C is the top of its day band (keeping practice, from memory).")]
    [InlineData("ranoidea-caerulea", "29.3 °C is the temperature it chooses (measured).")]
    [InlineData("dendrobates-tinctorius", "28 °C is the general alarm of keepers, from memory.")]
    public void A_heat_limit_says_what_it_rests_on(string animal, string words) =>
        Assert.Equal(
            words,
            HeatLimits.Kind(Shop.Embedded().Entries.OfType<AnimalEntry>().Single(a => a.Key == animal))
        );

    /// <summary>60 W under glass in a room of 26 °C: the box passes 28 °C though the room does not.</summary>
    [Fact]
    public void Lamps_that_overheat_the_box_are_a_stop_of_the_box()
    {
        var finding = RuleCheck.Trips(
            "overheats",
            Severity.Stop,
            RuleCheck.Pose(
                "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\n"
                    + "room: { temperature: 26 C, humidity: 50 % }\n"
                    + "lamps: [ { lamp: led-bar-6500k, watts: 60, on: \"08:00\", off: \"20:00\" } ]\nFROGS"
            )
        );
        Assert.StartsWith("With its lamps the box is above 28 °C", finding.Text, StringComparison.Ordinal);
        Assert.Contains(
            FormattableString.Invariant($"for about {finding.Measured!.Value / 60:0} hours a day"),
            finding.Text,
            StringComparison.Ordinal
        );
        // What it reaches less 28 °C, both told to a tenth.
        double most = Told(finding.Text, "reaches ", " °C");
        Assert.Equal(most - 28.0, Told(finding.Fix, "cooler: ", " K"), 0.11);
    }

    private static double Told(string text, string before, string after)
    {
        int from = text.IndexOf(before, StringComparison.Ordinal) + before.Length;
        int to = text.IndexOf(after, from, StringComparison.Ordinal);
        return double.Parse(text[from..to], CultureInfo.InvariantCulture);
    }

    [Theory]
    [InlineData("positive", Severity.Stop, "is positive")]
    [InlineData("pending", Severity.Caution, "not back")]
    public void A_swab_is_told_as_it_is(string swab, Severity severity, string words)
    {
        var finding = RuleCheck.Trips(
            "pathogen-positive",
            severity,
            Trips.In(Trips.Animals("dendrobates-auratus", 2, $"swab: {swab}"))
        );
        Assert.Contains(words, finding.Text, StringComparison.Ordinal);
        Assert.Equal(
            swab == "positive",
            finding.Fix.StartsWith("Do not move them", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("public", "false", true)]
    [InlineData("public", "true", false)]
    [InlineData("adults", "false", false)]
    public void A_box_on_show_is_locked(string visitors, string locked, bool isTold)
    {
        string box = RuleCheck.Cube.Insert(RuleCheck.Cube.Length - 1, $", locked: {locked} ");
        var design = RuleCheck.Pose($"room: {{ visitors: [ {visitors} ] }}\nFROGS", box: box);
        Assert.Equal(isTold, design.Finding("public-box-opens") is not null);
        Assert.Null(
            RuleCheck.Pose($"room: {{ visitors: [ {visitors} ] }}", box: box).Finding("public-box-opens")
        );
    }

    /// <summary>Volume, Italian guide and own box allow 3; a box of 38 L none.</summary>
    [Theory]
    [InlineData(Inch, 4, "Keep 3, which every guide allows, or take a larger box.")]
    [InlineData(
        "{ outside: { length: 30 cm, depth: 30 cm, height: 45 cm }, glass: { walls: 4 mm } }",
        2,
        "Take a larger box: the strictest guide allows none in this one."
    )]
    public void Too_many_animals_are_told_how_many_may_stay(string box, int count, string fix) =>
        Assert.Equal(
            fix,
            Trips.In(Trips.Animals("dendrobates-auratus", count), box).Finding("stocking-rule-broken")!.Fix
        );

    /// <summary>Five of a species kept in pairs: the group is told, not the guides as well.</summary>
    [Fact]
    public void A_broken_group_is_told_alone()
    {
        var design = Trips.In(Trips.Animals("dendrobates-tinctorius", 5), Inch);
        Assert.NotNull(design.Finding("group-rule-broken"));
        Assert.Null(design.Finding("stocking-rule-broken"));
    }

    /// <summary>
    /// A lid of 1576 × 426 × 3 mm beside a loose strip sags by 9 mm, over 1576 ÷ 250 = 6.3
    /// and under span ÷ 65; with a bar it does not; 10 mm of glass hold.
    /// </summary>
    [Theory]
    [InlineData("3 mm", "false", "Set a bar under its middle")]
    [InlineData("3 mm", "true", null)]
    [InlineData("10 mm", "false", null)]
    public void A_lid_beside_a_loose_strip_sags(string thickness, string braced, string? fix)
    {
        const string box =
            "{ outside: { length: 1612 mm, depth: 512 mm, height: 500 mm }, glass: { walls: 6 mm } }";
        var design = RuleCheck.Pose(
            $"lid: {{ material: glass, thickness: {thickness}, gap: 12 mm, strip: 50 mm, latched: true, "
                + $"braced: {braced} }}",
            box: box
        );
        var finding = design.FindingsOf("lid-sags").FirstOrDefault(f => f.Where == "lid.thickness");
        if (fix is null)
        {
            Assert.Null(finding);
        }
        else
        {
            Assert.NotNull(finding);
            Assert.StartsWith(fix, finding.Fix, StringComparison.Ordinal);
            Assert.True(finding.Measured!.Si > finding.Limit!.Si);
        }
    }

    /// <summary>
    /// July alone stands at 30 °C, all day over the alarm of 28 °C: 24 × 60 = 1440 minutes, more than 30. The
    /// rest of the year does not make up for it. A sine of 25 ± 3.1 K is above 28 °C for
    /// 24/π × arccos(3/3.1) = 1.95 h.
    /// </summary>
    [Theory]
    [InlineData(
        "room: { temperature: 22 C, months: { jul: { temperature: 30 C } } }",
        "in July",
        1440.0,
        "Keep it at 28 °C or cooler: 2 K less"
    )]
    [InlineData(
        "room: { temperature: 25 C, swing: 3.1 K }",
        "over the year",
        117.0,
        "Keep it at 28 °C or cooler: 0.1 K less"
    )]
    public void The_warmest_part_of_the_year_decides(string room, string when, double minutes, string fix)
    {
        var finding = RuleCheck.Trips(
            "overheats",
            Severity.Stop,
            Trips.In($"{Trips.Animals("dendrobates-tinctorius", 2)}\n{room}")
        );
        Assert.Contains(when, finding.Text, StringComparison.Ordinal);
        Assert.Equal(minutes, finding.Measured!.Value, 0.5);
        Assert.StartsWith(fix, finding.Fix, StringComparison.Ordinal);
    }

    /// <summary>Strawberry frog: critical maximum 29.1 °C (Pottier et al. 2022), limit 25 °C.</summary>
    [Theory]
    [InlineData("29 C", false)]
    [InlineData("29.2 C", true)]
    public void That_an_animal_may_die_is_said_at_its_critical_maximum(string room, bool isSaid)
    {
        var finding = Trips
            .In($"{Trips.Animals("oophaga-pumilio", 2)}\nroom: {{ temperature: {room} }}")
            .Finding("overheats")!;
        Assert.Equal(isSaid, finding.Text.Contains("it may die", StringComparison.Ordinal));
    }

    /// <summary>
    /// A pair is allowed; one male with two females of the strawberry frog. Where the number fits, the sexes
    /// are what is wrong; where it does not, the number goes first.
    /// </summary>
    [Theory]
    [InlineData("dendrobates-tinctorius", 2, "females: 2", "Change the group so that there is not")]
    [InlineData("oophaga-pumilio", 3, "males: 2, females: 1", "Change the group so that there is not")]
    [InlineData("dendrobates-tinctorius", 4, "females: 4", "Keep 2 in this box")]
    [InlineData("dendrobates-tinctorius", 3, "", "Keep 2 in this box")]
    public void A_group_that_fights_is_told_what_to_change(
        string animal,
        int count,
        string sexes,
        string fix
    ) =>
        Assert.StartsWith(
            fix,
            Trips.In(Trips.Animals(animal, count, sexes)).Finding("group-rule-broken")!.Fix,
            StringComparison.Ordinal
        );

    /// <summary>
    /// The fix writes the number that every guide allows, 3, where just one entry asks for animals: those
    /// that live there, or those the box is sold for. Of two entries nobody knows which to take.
    /// </summary>
    [Theory]
    [InlineData("animals: [ { animal: dendrobates-auratus, count: 4 } ]", "3 animals")]
    [InlineData("ratedFor: [ { animal: dendrobates-auratus, count: 4 } ]", "3 animals")]
    [InlineData(
        "animals: [ { animal: dendrobates-auratus, count: 2 }, { animal: dendrobates-auratus, count: 2 } ]",
        null
    )]
    [InlineData(
        "ratedFor: [ { animal: dendrobates-auratus, count: 2 }, { animal: dendrobates-auratus, count: 2 } ]",
        null
    )]
    public void Fewer_animals_are_written_where_one_entry_asks(string animals, string? words)
    {
        var design = Trips.In(animals, Inch);
        var fix = RuleBook.Fixes(design.Finding("stocking-rule-broken")!, design.Design).FirstOrDefault();
        Assert.Equal(words, fix?.Words);
        if (fix is not null)
        {
            var asked = fix.Document.Design;
            Assert.Equal(3, asked.Animals.Count > 0 ? asked.Animals[0].Count : asked.RatedFor[0].Count);
        }
    }
}
