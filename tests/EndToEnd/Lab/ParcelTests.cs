using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd.Lab;

/// <summary>
/// <c>lab parcel</c>: own worked examples (see OwnParcelRuns and OwnIronPack of the verification), keys and
/// refusals.
/// </summary>
public sealed class ParcelTests
{
    private const string Carton = """
        "insideCm": [30, 20, 20], "wallMm": 25, "wallWPerMK": 0.036, "filmsM2KPerW": 0.15,
        "contentsKgWater": 0.5
        """;

    private const string Pack =
        """{ "phaseChange": { "kg": 0.5, "meltC": 21, "latentKJPerKg": 190, "liquidFraction": 1 } }""";

    [Fact]
    public void A_carton_cools_behind_its_air()
    {
        var result = Solve($$"""{ {{Carton}}, "startC": 22, "ambient": 5, "packs": [], "hours": 6 }""");
        var hours = result["hourly"]!.AsArray();
        Assert.Equal(7, hours.Count);
        Assert.Equal(["hour", "insideC", "liquidFraction"], hours[0]!.AsObject().Select(m => m.Key));
        Assert.Equal(22.0, hours[0]!.Number("insideC"));
        Assert.Equal(8.473, hours[2]!.Number("insideC"), 1e-3);
        Assert.Equal(5.145, hours[6]!.Number("insideC"), 1e-3);
        Assert.All(hours, h => Assert.Null(h!["liquidFraction"]));
        Assert.Equal(0.46169, result.Number("uaWPerK"), 1e-5);
        Assert.Equal(1.259, result.Number("timeConstantHours"), 1e-3);
    }

    [Fact]
    public void A_pack_freezes_while_a_heat_pack_burns()
    {
        var result = Solve(
            $$"""
            { {{Carton}}, "startC": 22, "ambient": [[0, 8]], "hours": 10.5, "bandC": [18, 26],
              "packs": [ {{Pack}}, { "heat": { "watts": 2.56, "hours": 40 } } ] }
            """
        );
        var hours = result["hourly"]!.AsArray();
        Assert.Equal(10.5, hours[^1]!.Number("hour"));
        Assert.Equal(1.0, hours[0]!.Number("liquidFraction"));
        Assert.Equal(0.4989, hours[4]!.Number("liquidFraction"), 1e-4);
        Assert.Equal(20.03, hours[8]!.Number("insideC"), 5e-3);
        Assert.InRange(Math.Abs(result.Number("energyBalanceErrorJoules")), 0.0, 1e-4);
        var band = result["band"]!;
        Assert.Equal(8.47, band.Number("firstBelowHour"), 5e-3);
        Assert.Equal(0.0, band.Number("hoursAbove"));
        Assert.Null(band["firstAboveHour"]);
    }

    [Fact]
    public void Several_packs_are_told_one_by_one_and_together()
    {
        var row = Solve(
            $$"""
            { {{Carton}}, "startC": 21, "ambient": 21, "hours": 1,
              "packs": [ {{Pack}},
                { "phaseChange": { "kg": 0.5, "meltC": 30, "latentKJPerKg": 95, "liquidFraction": 0 } } ] }
            """
        )["hourly"]![0]!;
        Assert.Equal([1.0, 0.0], row.Numbers("packLiquidFractions"));
        Assert.Equal(2.0 / 3.0, row.Number("liquidFraction"), 1e-12);
    }

    [Fact]
    public void Iron_vents_and_a_cup_are_told_where_they_are_asked()
    {
        string text = $$"""
            { {{Carton}}, "startC": 20, "ambient": 20, "hours": 1,
              "packs": [ { "iron": { "grams": 50, "hours": 40 } } ],
              "vents": { "holes": 0, "holeMm": 6, "holeDepthMm": 25, "leaksPerHour": 0.5 },
              "cup": { "airLiters": 0.5, "holes": 8, "holeMm": 1, "holeDepthMm": 0.5, "animalGrams": 4.5 } }
            """;
        var result = Solve(text);
        Assert.Equal(2.56, result["iron"]!.Number("meanWatts"), 5e-3);
        Assert.Equal(77.0, result["iron"]!.Number("airLiters"), 2.0);
        Assert.Equal(100.0, result["vents"]!.Number("packSupplyPercent"), 1e-9);
        Assert.InRange(result["cup"]!.Number("oxygenPercent"), 20.7, 20.9);
        Assert.Null(Solve($$"""{ {{Carton}}, "startC": 20, "ambient": 20, "hours": 1 }""")["cup"]);
    }

    [Fact]
    public void The_same_case_gives_the_same_bytes()
    {
        using var scratch = new Scratch();
        string file = scratch.Write(
            "case.json",
            $$"""
            { {{Carton}}, "startC": 22, "ambient": [[0, 3], [5, 31]], "packs": [ {{Pack}} ], "hours": 9 }
            """
        );
        string[] runs =
        [
            .. Enumerable.Range(0, 2).Select(_ => Untimed(Cli.Run("lab", "parcel", file, "--json"))),
        ];
        Assert.Equal(runs[0], runs[1]);
    }

    [Theory]
    [InlineData("\"wallMm\": 25", "\"wallMm\": -3", "wallMm is -3")]
    [InlineData("\"insideCm\": [30, 20, 20]", "\"insideCm\": [30, 20]", "insideCm has 2 numbers")]
    [InlineData("\"wallMm\": 25, \"wallWPerMK\": 0.036", "\"wallWPerMK\": 0.036", "lacks 'wallMm'")]
    [InlineData("\"contentsKgWater\": 0.5", "\"contentsKgWater\": 0", "contentsKgWater is 0")]
    [InlineData("\"ambient\": 5", "\"ambient\": []", "ambient is a list of 0")]
    [InlineData("\"ambient\": 5", "\"ambient\": [[3, 5], [2, 5]]", "ambient[1] has the hour 2")]
    [InlineData("\"ambient\": 5", "\"ambient\": [[0, 500]]", "ambient[0][1] is 500")]
    [InlineData("\"hours\": 6", "\"hours\": 1e9", "hours is")]
    [InlineData("\"hours\": 6", "\"hours\": 6, \"day\": 1", "no key 'day'")]
    [InlineData("\"packs\": []", "\"packs\": [ {} ]", "the pack is of no kind")]
    [InlineData("\"packs\": []", "\"packs\": [ { \"heat\": { \"watts\": 1 } } ]", "lacks 'hours'")]
    public void What_is_wrong_is_told(string good, string bad, string words)
    {
        string text = $$"""{ {{Carton}}, "startC": 22, "ambient": 5, "packs": [], "hours": 6 }""";
        Assert.Contains(good, text, StringComparison.Ordinal);
        using var scratch = new Scratch();
        string file = scratch.Write("case.json", text.Replace(good, bad, StringComparison.Ordinal));
        Assert.Contains(words, Cli.Refuses("lab", "parcel", file).Error, StringComparison.Ordinal);
        Cli.RefusesInJson("lab", "parcel", file);
    }

    [Fact]
    public void Text_tells_the_band_and_what_was_settled()
    {
        using var scratch = new Scratch();
        string file = scratch.Write(
            "case.json",
            $$"""
            { {{Carton}}, "startC": 24, "ambient": 5, "hours": 8, "bandC": [18, 26],
              "packs": [ {{Pack.Replace(
                "\"liquidFraction\": 1",
                "\"liquidFraction\": 0",
                StringComparison.Ordinal
            )}} ] }
            """
        );
        var ended = Cli.Run("lab", "parcel", file);
        Assert.Equal(0, ended.Code);
        Assert.Contains("below 18 C for", ended.Out, StringComparison.Ordinal);
        Assert.Contains("never above 26 C", ended.Out, StringComparison.Ordinal);
        Assert.Contains("were settled at hour 0", ended.Out, StringComparison.Ordinal);
    }

    private static string Untimed(Ended ended) =>
        string.Join(
            '\n',
            ended.Out.Split('\n').Where(l => !l.Contains("elapsedMs", StringComparison.Ordinal))
        );

    private static JsonNode Solve(string text)
    {
        using var scratch = new Scratch();
        var ended = Cli.Run("lab", "parcel", scratch.Write("case.json", text), "--json");
        Assert.True(ended.Code == 0, ended.ToString());
        Assert.Equal("", ended.Error);
        return ended.Json;
    }
}
