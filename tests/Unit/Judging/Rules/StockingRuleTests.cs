using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>
/// Stocking counts against hand arithmetic from the rules as printed: German page 750 + 200 and 1200 + 400
/// cm², United States page 465 cm², gallons 10 + 5 and 5 (common practice); 20, 60 and 40 L (from memory).
/// </summary>
public sealed class StockingRuleTests
{
    private const string Inch =
        "{ outside: { length: 24 in, depth: 18 in, height: 18 in }, glass: { walls: 6 mm } }";
    private const string Kit =
        "{ outside: { length: 30 cm, depth: 30 cm, height: 45 cm }, glass: { walls: 4 mm } }";

    [Theory]
    // Floor 59.0 × 44.0 = 2596 cm²: small 2 + 1846/200 = 11.2; 2596/465 = 5.6.
    [InlineData("60 cm", "45 cm", "5 mm", "epipedobates-anthonyi", "german-area", 11)]
    [InlineData("60 cm", "45 cm", "5 mm", "epipedobates-anthonyi", "us-area", 5)]
    // 59.76 × 44.52 = 2660.5 cm²: larger 2 + 1460.5/400 = 5.65; 5.7.
    [InlineData("24 in", "18 in", "6 mm", "dendrobates-auratus", "german-area", 5)]
    [InlineData("24 in", "18 in", "6 mm", "dendrobates-auratus", "us-area", 5)]
    // 88.8 × 58.8 = 5221 cm²: larger 2 + 4021/400 = 12.05; 11.2.
    [InlineData("90 cm", "60 cm", "6 mm", "dendrobates-leucomelas", "german-area", 12)]
    [InlineData("90 cm", "60 cm", "6 mm", "dendrobates-leucomelas", "us-area", 11)]
    // 29.2 × 29.2 = 853 cm²: small 2 + 103/200 = 2.5; larger below 1200, none.
    [InlineData("30 cm", "30 cm", "4 mm", "ranitomeya-imitator", "german-area", 2)]
    [InlineData("30 cm", "30 cm", "4 mm", "dendrobates-auratus", "german-area", 0)]
    // 44 × 44 = 1936 cm²: small 2 + 1186/200 = 7.9, larger 2 + 736/400 = 3.8, 4.2.
    [InlineData("45 cm", "45 cm", "5 mm", "epipedobates-anthonyi", "german-area", 7)]
    [InlineData("45 cm", "45 cm", "5 mm", "dendrobates-auratus", "german-area", 3)]
    [InlineData("45 cm", "45 cm", "5 mm", "dendrobates-auratus", "us-area", 4)]
    // Dutch: 5 × 1936/2500 = 3.9, 3 × 0.774 = 2.3; Italian: 5 × 1936/3600 = 2.7, 5 × 1936/4900 = 1.98.
    [InlineData("45 cm", "45 cm", "5 mm", "dendrobates-auratus", "dutch-guide", 4)]
    [InlineData("45 cm", "45 cm", "5 mm", "dendrobates-tinctorius", "dutch-guide", 2)]
    [InlineData("45 cm", "45 cm", "5 mm", "ranitomeya-variabilis", "italian-guide", 3)]
    [InlineData("45 cm", "45 cm", "5 mm", "dendrobates-auratus", "italian-guide", 2)]
    public void Floor_rules_allow_what_hand_arithmetic_gives(
        string length,
        string depth,
        string glass,
        string animal,
        string rule,
        double allowed
    )
    {
        var box =
            $"{{ outside: {{ length: {length}, depth: {depth}, height: 60 cm }}, "
            + $"glass: {{ walls: {glass} }} }}";
        Assert.Equal(allowed, Trips.In(Trips.Animals(animal, 1), box).Number($"stocking[{rule}].allowed"));
    }

    [Theory]
    // 44 × 44 × 62.6 cm = 121.2 L = 32.0 gal: 1 + 22/5 = 5.4 and 32/5 = 6.4; 121.2/40 = 3.03.
    [InlineData("626 mm", "epipedobates-anthonyi", "us-gallons", 5)]
    [InlineData("626 mm", "epipedobates-anthonyi", "us-gallons-small", 6)]
    [InlineData("626 mm", "epipedobates-anthonyi", "volume", 3)]
    // 44 × 44 × 20 cm = 38.7 L: below 60 L none; 44 × 44 × 31 = 60.02 L: 60.02/20 = 3.0.
    [InlineData("200 mm", "ranitomeya-imitator", "volume", 0)]
    [InlineData("310 mm", "ranitomeya-imitator", "volume", 3)]
    // 44 × 44 × 19 cm = 36.8 L = 9.7 gal: not the first ten.
    [InlineData("190 mm", "dendrobates-auratus", "us-gallons", 0)]
    public void Volume_rules_allow_what_hand_arithmetic_gives(
        string height,
        string animal,
        string rule,
        double allowed
    )
    {
        var box = $"{{ inside: {{ length: 440 mm, depth: 440 mm, height: {height} }} }}";
        Assert.Equal(allowed, Trips.In(Trips.Animals(animal, 1), box).Number($"stocking[{rule}].allowed"));
    }

    [Theory]
    // 60 × 45 × 45 cm for 3 auratus: 120 × 60 cm is 2.67 times the floor, 8; turned by a right angle too.
    [InlineData("120 cm", "60 cm", "45 cm", 8)]
    [InlineData("45 cm", "60 cm", "45 cm", 3)]
    [InlineData("60 cm", "45 cm", "449 mm", 0)]
    [InlineData("120 cm", "44 cm", "45 cm", 0)]
    public void The_smallest_box_is_compared_outside(
        string length,
        string depth,
        string height,
        double allowed
    )
    {
        var box =
            $"{{ outside: {{ length: {length}, depth: {depth}, height: {height} }}, "
            + "glass: { walls: 5 mm } }";
        Assert.Equal(
            allowed,
            Trips.In(Trips.Animals("dendrobates-auratus", 1), box).Number("stocking[species-box].allowed")
        );
    }

    [Fact]
    public void Entries_of_one_species_are_summed_and_a_rating_is_judged_alike()
    {
        var twice = Trips.In(
            "animals: [ { animal: dendrobates-auratus, count: 2 }, { animal: dendrobates-auratus, "
                + "count: 2 } ]",
            Inch
        );
        Assert.Equal(4, twice.Number("stocking[volume].asked"));
        Assert.NotNull(twice.Finding("stocking-rule-broken"));
        var rated = Trips.In("ratedFor: [ { animal: dendrobates-auratus, count: 4 } ]", Inch);
        Assert.Equal("ratedFor[0].count", rated.Finding("stocking-rule-broken")!.Where);
        Assert.Empty(Trips.In("animals: [ { animal: dendrobates-auratus, count: 0 } ]").Numbers.Stocking);
    }

    [Fact]
    public void Rules_that_do_not_apply_are_listed_with_the_reason()
    {
        var rows = Trips.In(Trips.Animals("archispirostreptus-gigas", 1)).Numbers.Stocking;
        Assert.Equal(9, rows.Length);
        Assert.Equal(["species-box"], rows.Where(r => r.Applies).Select(r => r.Rule));
        Assert.All(rows.Where(r => !r.Applies), r => Assert.NotEmpty(r.Remark));
    }

    [Fact]
    public void Guides_that_disagree_are_a_note_with_the_smallest_and_the_largest()
    {
        // 120.0 L at 40 L each allow 3, as do the Italian guide (5 × 2660/4900 = 2.7) and the species' own
        // box; German and United States area, gallons and the Dutch guide allow 5: 3 of 7 are broken.
        var finding = Trips.Check(
            "stocking-rule-broken",
            Severity.Note,
            Trips.In(Trips.Animals("dendrobates-auratus", 4), Inch),
            Trips.In(Trips.Animals("dendrobates-auratus", 3), Inch)
        );
        Assert.Equal(4, finding.Measured!.Value);
        Assert.Equal(3, finding.Limit!.Value);
        Assert.StartsWith(
            "3 of 7 stocking guides allow fewer than 4 ",
            finding.Text,
            StringComparison.Ordinal
        );
        Assert.Matches("from [^,]+ 3 to [^,]+ 5[.]$", finding.Text);
    }

    [Fact]
    public void EveryRuleBroken()
    {
        // 853 cm², 38 L, 10.05 gal: German 0, United States 1, volume 0, gallons 1, Italian 0.9 → 1, box 0;
        // the Dutch guide allows 5 × 853/2500 = 1.7 → 2.
        var three = Trips.In(Trips.Animals("dendrobates-auratus", 3), Kit);
        var two = Trips.In(Trips.Animals("dendrobates-auratus", 2), Kit);
        Trips.Check("stocking-every-rule-broken", Severity.Stop, three, two);
        Assert.Null(three.Finding("stocking-rule-broken"));
        // Two are allowed by the Dutch guide alone: six of seven broken, more than half.
        Assert.Equal(Severity.Caution, two.Finding("stocking-rule-broken")!.Severity);
    }

    [Theory]
    // Pair; pair or one male with two females; single or one male with two females; one male (from memory).
    [InlineData("dendrobates-tinctorius", 3, "", 2, "")]
    [InlineData("dendrobates-tinctorius", 2, "females: 2", 2, "males: 1, females: 1")]
    [InlineData("oophaga-pumilio", 4, "", 3, "")]
    [InlineData("oophaga-pumilio", 3, "males: 2, females: 1", 3, "males: 1, females: 2")]
    [InlineData("correlophus-ciliatus", 2, "", 3, "")]
    [InlineData("correlophus-ciliatus", 2, "", 1, "")]
    [InlineData("geosesarma", 3, "males: 2", 3, "males: 1")]
    public void GroupsThatFight(string animal, int count, string sexes, int goodCount, string goodSexes)
    {
        var trips = Trips.In(Trips.Animals(animal, count, sexes));
        var inside = Trips.In(Trips.Animals(animal, goodCount, goodSexes));
        Trips.Check("group-rule-broken", Severity.Stop, trips, inside);
        Assert.Null(trips.Finding("stocking-rule-broken"));
    }
}
