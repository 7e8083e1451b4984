using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd;

/// <summary><c>litterfall ship</c> as others call it.</summary>
public sealed class ShipTests
{
    private static string Sample(string name) =>
        Path.Combine(Cli.Root, "samples", "dispatch", $"{name}.json");

    private static JsonNode Day(JsonNode answer, string day) =>
        answer["days"]!.AsArray().Single(d => d!["day"]!.GetValue<string>() == day)!;

    private static string Verdict(JsonNode node) => node["verdict"]!.GetValue<string>();

    /// <summary>
    /// Own worked example: 27 °C at the workshop, 34 °C at the hub, 26 °C at the destination. The guide wants
    /// a cold pack and depot pick-up (from 33 °C on), the class of most poison frogs never goes above 33 °C.
    /// </summary>
    [Fact]
    public void A_hot_Tuesday_stops_and_a_day_that_needs_nothing_is_offered()
    {
        var run = Cli.Once("ship", Sample("hot-tuesday"), "--json");
        Assert.Equal(1, run.Code);
        var tuesday = Day(run.Json, "2026-07-14");
        Assert.Equal("never", Verdict(tuesday));
        var rules = tuesday["rules"]!.AsArray();
        var guide = rules.Single(r => r!["rule"]!.GetValue<string>() == "published-guide")!;
        Assert.Equal(
            ("depot-only", "cold pack, depot pick-up only"),
            (Verdict(guide), guide["words"]!.GetValue<string>())
        );
        var plain = run.Json["nextPlainDay"]!.GetValue<string>();
        Assert.Equal("2026-07-15", plain);
        Assert.Equal("ship", Verdict(Day(run.Json, plain)));
        Assert.Equal("never", Verdict(Day(run.Json, "2026-07-17")));
    }

    [Fact]
    public void The_days_around_a_holiday_are_barred()
    {
        var run = Cli.Once("ship", Sample("holiday-trap"), "--json");
        Assert.Equal(0, run.Code);
        Assert.Equal("2026-11-23", run.Json["nextDay"]!.GetValue<string>());
        Assert.Equal("hold", Verdict(Day(run.Json, "2026-11-24")));
        Assert.All(["2026-11-25", "2026-11-26", "2026-11-27"], day =>
            Assert.Equal("never", Verdict(Day(run.Json, day)))
        );
    }

    /// <summary>
    /// Own worked example: a day typed as 3.5 to 6 °C after a day of frost is one of 3.5 to 6 °C, which the
    /// guide lets go with a heat pack (from 3.3 °C on).
    /// </summary>
    [Fact]
    public void A_typed_day_counts_as_it_was_typed()
    {
        var tuesday = Day(Cli.Once("ship", Sample("frost-week"), "--json").Json, "2026-01-13");
        var places = tuesday["places"]!.AsArray();
        var origin = places.Single(p => p!["place"]!.GetValue<string>() == "origin")!;
        Assert.Equal((3.5, 6.0), (origin["lowC"]!.GetValue<double>(), origin["highC"]!.GetValue<double>()));
        Assert.Equal("ship-with-packs", Verdict(tuesday));
    }

    /// <summary>An empty list says that none is in stock; one left out asks for the usual ones.</summary>
    [Theory]
    [InlineData("packs", "hold", "no-pack")]
    [InlineData("cartons", "hold", "no-carton")]
    public void An_empty_list_means_none_in_stock(string list, string verdict, string slug)
    {
        var asked = JsonNode.Parse(File.ReadAllText(Sample("frost-week")))!;
        asked[list] = new JsonArray();
        var file = Path.Combine(Path.GetTempPath(), $"ship-{Guid.NewGuid():N}.json");
        File.WriteAllText(file, asked.ToJsonString());
        try
        {
            var wednesday = Day(Cli.Run("ship", file, "--json").Json, "2026-01-14");
            Assert.Equal(verdict, Verdict(wednesday));
            Assert.Contains(slug, wednesday["reasons"]!.ToJsonString(), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Theory]
    [InlineData("mild-week")]
    [InlineData("frost-week")]
    [InlineData("holiday-trap")]
    public void The_answer_is_the_same_each_time_and_reads_plainly(string name)
    {
        var (one, two) = (
            Cli.Once("ship", Sample(name), "--json").Json,
            Cli.Run("ship", Sample(name), "--json").Json
        );
        one.AsObject().Remove("elapsedMs");
        two.AsObject().Remove("elapsedMs");
        Assert.Equal(one.ToJsonString(), two.ToJsonString());
        var text = Cli.Run("ship", Sample(name)).Out;
        Assert.Contains("Next day that works", text, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "from": "2026-07-14", "contents": [] }""", "contents is a list of 0")]
    [InlineData(
        """{ "from": "14.7.2026", "contents": [ { "what": "ficus-pumila", "count": 1 } ] }""",
        "is no day"
    )]
    [InlineData(
        """{ "from": "2026-07-14", "contents": [ { "what": "dendrobates-aurata", "count": 1 } ] }""",
        "the library has no"
    )]
    [InlineData(
        """
            { "from": "2026-07-14", "contents": [ { "what": "ficus-pumila", "count": 1 } ],
              "rules": { "riskPercent": 5 } }
            """,
        "from 0 to 2"
    )]
    [InlineData(
        """
            { "from": "2026-07-14", "contents": [ { "what": "ficus-pumila", "count": 1 } ],
              "regions": { "home": { "country": "XX" } } }
            """,
        "No holidays are known"
    )]
    [InlineData(
        """
            { "from": "2026-07-14", "contents": [ { "what": "ficus-pumila", "count": 1 } ],
              "forecasts": { "hub": { "file": "not-there.csv" } } }
            """,
        "there is no file"
    )]
    public void What_cannot_be_read_says_where(string json, string told)
    {
        var file = Path.Combine(Path.GetTempPath(), $"ship-{Guid.NewGuid():N}.json");
        File.WriteAllText(file, json);
        try
        {
            Assert.Contains(told, Cli.Refuses("ship", file).Error, StringComparison.Ordinal);
            Cli.RefusesInJson("ship", file);
        }
        finally
        {
            File.Delete(file);
        }
    }
}
