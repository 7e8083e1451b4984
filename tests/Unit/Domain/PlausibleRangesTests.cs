using Litterfall.App.Files;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Xunit;

namespace Litterfall.UnitTests.Domain;

/// <summary>Sizes no planted box has are refused at their place before anything is computed.</summary>
public sealed class PlausibleRangesTests
{
    private static readonly Lazy<Litterfall.Domain.Catalog.TradeCatalog> Catalog = new(() =>
        Shop.Catalog(null).Value!
    );

    private static string Text(string edges, string more) =>
        $"litterfall: 1\nname: t\nbox: {{ inside: {{ {edges} }} }}\n"
        + $"floor: {{ soil: {{ recipe: ready-rainforest, depth: 6 cm }} }}\n{more}\n";

    private static IReadOnlyList<TextFault> Faults(
        string more,
        string edges = "length: 60 cm, depth: 45 cm, height: 60 cm"
    )
    {
        var document = DesignReader.Read("t.viv.yaml", Text(edges, more));
        return document.IsGood
            ? [.. DesignChecker.Check(document.Value!, Catalog.Value).Faults]
            : [.. document.Faults];
    }

    private const string Times = "times: [ { at: \"08:00\", for: 20 s } ]";

    /// <summary>Each a slip of the pen next to a value a maker writes; the two differ in one value.</summary>
    [Theory]
    [InlineData(
        "misting: { nozzles: 2, each: 90 L/min, " + Times + " }",
        "misting: { nozzles: 2, each: 90 mL/min, " + Times + " }"
    )]
    [InlineData("fogger: { rate: 50 L/h, " + Times + " }", "fogger: { rate: 0.5 L/h, " + Times + " }")]
    [InlineData("heating: { watts: 2000 W }", "heating: { watts: 20 W }")]
    [InlineData(
        "lamps: [ { lamp: led-bar-6500k, watts: 1800 } ]",
        "lamps: [ { lamp: led-bar-6500k, watts: 18 } ]"
    )]
    [InlineData(
        "lamps: [ { lamp: led-bar-6500k, lumens: 200000 } ]",
        "lamps: [ { lamp: led-bar-6500k, lumens: 2000 } ]"
    )]
    [InlineData("planted: 9999-12-30", "planted: 2026-12-30")]
    [InlineData("planted: 0001-01-01", "planted: 2026-01-01")]
    [InlineData("animalsIn: 2226-01-01", "animalsIn: 2026-01-01")]
    // 2 nozzles of 90 mL/min for 2.5 h are 27 L on 0.27 m2: 10 cm over the floor
    [InlineData(
        "misting: { nozzles: 2, each: 90 mL/min, times: [ { at: \"08:00\", for: 151 min } ] }",
        "misting: { nozzles: 2, each: 90 mL/min, times: [ { at: \"08:00\", for: 149 min } ] }"
    )]
    public void What_no_box_has_is_refused_with_its_range(string slip, string meant)
    {
        Assert.Empty(Faults(meant));
        var fault = Assert.Single(Faults(slip));
        Assert.Equal(5, fault.Line);
        Assert.Matches("[0-9]", fault.Expected);
    }

    [Theory]
    [InlineData("length: 3 cm, depth: 45 cm, height: 60 cm")]
    [InlineData("length: 600 cm, depth: 45 cm, height: 60 cm")]
    [InlineData("length: 60 cm, depth: 45 mm, height: 60 cm")]
    [InlineData("length: 60 cm, depth: 45 cm, height: 12 ft")]
    public void A_box_that_is_too_small_or_too_large_is_refused(string edges)
    {
        var fault = Assert.Single(Faults("", edges));
        Assert.Equal(3, fault.Line);
        Assert.Contains("8 cm to 3 m", fault.Expected, StringComparison.Ordinal);
    }

    /// <summary>Boxes that small makers build: a jar of 10 cm and a wall of 2.5 m.</summary>
    [Theory]
    [InlineData("length: 10 cm, depth: 10 cm, height: 20 cm")]
    [InlineData("length: 250 cm, depth: 80 cm, height: 220 cm")]
    public void Boxes_that_are_built_are_taken(string edges) => Assert.Empty(Faults("", edges));

    [Fact]
    public void A_hundred_lamps_are_too_many()
    {
        var lamps = string.Join(", ", Enumerable.Repeat("{ lamp: led-bar-6500k }", 100));
        Assert.Contains(
            FormattableString.Invariant($"1 to {PlausibleCounts.Lamps}"),
            Assert.Single(Faults($"lamps: [ {lamps} ]")).Expected,
            StringComparison.Ordinal
        );
    }

    /// <summary>Each lamp is followed to each plant: many of both are refused before it begins.</summary>
    [Fact]
    public void Many_lamps_over_many_lines_of_plants_are_refused()
    {
        const string lamp = "{ lamp: led-bar-6500k, watts: 5 }";
        string Lamps(int count) => $"lamps: [ {string.Join(", ", Enumerable.Repeat(lamp, count))} ]\n";
        static bool IsOfBoth(TextFault f) => f.Message.Contains("lines of plants", StringComparison.Ordinal);
        const string plant = "{ plant: fittonia-albivenis, at: { x: 10 cm, y: 10 cm } }";
        string plants = $"plants: [ {string.Join(", ", Enumerable.Repeat(plant, 100))} ]\n";
        var most = PlausibleCounts.LampsTimesPlants / 100;
        Assert.DoesNotContain(Faults(Lamps(most) + plants), IsOfBoth);
        Assert.Contains(Faults(Lamps(most + 1) + plants), IsOfBoth);
        Assert.Equal(
            PlausibleCounts.LampsTimesPlantsWords,
            PlausibleCounts.LampsTimesPlants.ToString(System.Globalization.CultureInfo.InvariantCulture)
        );
    }

    [Fact]
    public void The_schema_says_the_ranges()
    {
        var schema = DesignSchema.Write(Catalog.Value).ToJsonString();
        Assert.Contains("8 cm to 3 m", schema, StringComparison.Ordinal);
        Assert.Contains("1 mL/min to 2 L/min", schema, StringComparison.Ordinal);
        Assert.Contains("1990-01-01 to 2099-12-31", schema, StringComparison.Ordinal);
        Assert.Contains("\"maxItems\":40", schema, StringComparison.Ordinal);
    }
}
