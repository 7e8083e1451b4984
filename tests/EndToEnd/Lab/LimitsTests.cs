namespace Litterfall.Tests.EndToEnd.Lab;

/// <summary>Cases whose numbers would not come out end with 3 and say where and why.</summary>
public sealed class LimitsTests
{
    private const string Cube = """
        "volumeM3": 0.09, "glassAreaM2": 1, "glassHeatCapacityJPerK": 9000, "soilAreaM2": 0.2,
        "soilHeatCapacityJPerK": 30000, "airGlassWPerM2K": 3, "airSoilWPerM2K": 3, "glassRoomWPerM2K": 8,
        "soilGlassWPerM2K": 5, "soilRoomWPerM2K": 2, "massTransferMPerS": 0.003, "airChangesPerHour": 1
        """;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_lamp_of_a_megawatt_leaves_the_laws_of_moist_air(bool json)
    {
        var ended = Run(
            "headspace",
            $$"""
            { {{Cube}}, "room": { "meanC": 21, "humidityRatio": 0.0078 },
              "lamp": { "onHour": 0, "offHour": 20, "airW": 1000000 },
              "start": { "airC": 21, "humidityPercent": 70 }, "hours": 6 }
            """,
            json
        );
        Assert.Equal(3, ended.Code);
        var said = json ? ended.Json.ToJsonString(Plain) : ended.Error;
        Assert.Contains("95 °C", said, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", ended.Out + ended.Error, StringComparison.Ordinal);
    }

    /// <summary>
    /// A warm, full air over a cold room: what it cannot hold settles on the soil, and the books close.
    /// </summary>
    [Fact]
    public void Air_that_cools_holds_no_more_than_it_can()
    {
        var ended = Run(
            "headspace",
            $$"""
            { {{Cube}}, "room": { "meanC": 2, "humidityRatio": 0.004 }, "mist": [],
              "start": { "airC": 30, "glassC": 30, "soilC": 30, "humidityPercent": 100 }, "hours": 12 }
            """,
            json: true
        );
        Assert.Equal(0, ended.Code);
        Assert.All(
            ended.Json["hourly"]!.AsArray(),
            hour => Assert.InRange(hour!.Number("humidityPercent"), 0, 100.000001)
        );
        Assert.InRange(ended.Json.Number("ledgerErrorGrams"), 0, 1e-6);
    }

    [Fact]
    public void A_crew_beyond_all_numbers_stops_at_its_day()
    {
        var ended = Run(
            "crew",
            """
            { "animal": { "eggDays": 10, "juvenileDays": 20, "eggsPerDay": 3, "survivalToAdult": 0.5,
              "adultSurvivalPerDay": 0.98 }, "temperatureC": 21, "start": { "adults": 10 }, "days": 20000 }
            """,
            json: false
        );
        Assert.Equal(3, ended.Code);
        Assert.Matches("stopped on day \\d+: there are more animals", ended.Error);
    }

    private static readonly System.Text.Json.JsonSerializerOptions Plain = new()
    {
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private static Ended Run(string part, string text, bool json)
    {
        using var scratch = new Scratch();
        var path = scratch.Write("case.json", text);
        return json ? Cli.Run("lab", part, path, "--json") : Cli.Run("lab", part, path);
    }
}
