using System.Globalization;
using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd.Lab;

/// <summary>
/// The lumped cube of 45 cm through the command, against two other programs (own worked example; all hours
/// stand in the verification cases).
/// </summary>
public sealed class HeadspaceTests
{
    // hour, air °C, humidity %, glass °C, soil °C, film g; 4 air changes, 60 g of mist at 9 and 17 h
    private static readonly double[][] Misted =
    [
        [6, 19.382879, 91.63674, 19.436602, 19.084940, 0.0],
        [12, 22.713862, 96.37089, 22.461307, 22.417307, 6.705378],
        [24, 20.222690, 98.76825, 20.002636, 21.424180, 19.823895],
        [48, 20.231890, 98.77013, 20.009175, 21.448316, 24.535577],
    ];

    private const string Mist =
        """[ { "hour": 9, "seconds": 60, "gramsPerSecond": 1 }, """
        + """{ "hour": 17, "seconds": 60, "gramsPerSecond": 1 } ]""";

    [Fact]
    public void The_cube_is_that_of_two_other_programs()
    {
        var result = Solve(Case(4, Mist, 60));
        var hourly = result["hourly"]!.AsArray();
        Assert.Equal(49, hourly.Count);
        foreach (var row in Misted)
        {
            var hour = hourly[(int)row[0]]!;
            Assert.Equal(row[1], hour.Number("airC"), 0.03);
            Assert.Equal(row[2], hour.Number("humidityPercent"), 0.6);
            Assert.Equal(row[3], hour.Number("glassC"), 0.03);
            Assert.Equal(row[4], hour.Number("soilC"), 0.03);
            Assert.Equal(row[5], hour.Number("filmGrams"), 0.6);
        }

        Assert.Equal(240.0, hourly[48]!.Number("mistGrams"), 1e-9);
        Assert.InRange(result.Number("ledgerErrorGrams"), 0.0, 1e-6);
    }

    /// <summary>Steps of 5 s are at least eight times nearer than steps of 60 s.</summary>
    [Fact]
    public void Shorter_steps_are_nearer()
    {
        double Worst(double step)
        {
            var hourly = Solve(Case(4, Mist, step))["hourly"]!.AsArray();
            return Misted.Max(row => Math.Abs(hourly[(int)row[0]]!.Number("airC") - row[1]));
        }

        Assert.True(8.0 * Worst(5) < Worst(60));
    }

    [Theory]
    [InlineData("\"hours\": 48", "\"hours\": -1", "hours")]
    [InlineData("\"glassAreaM2\": 1.0125", "\"glassAreaM2\": \"wide\"", "glassAreaM2")]
    [InlineData("\"lamp\":", "\"lmap\":", "lmap")]
    public void What_is_wrong_is_told(string good, string bad, string words)
    {
        using var scratch = new Scratch();
        var file = scratch.At("case.json");
        File.WriteAllText(file, Case(4, Mist, 60).Replace(good, bad, StringComparison.Ordinal));
        var ended = Cli.Refuses("lab", "headspace", file);
        Assert.Contains(words, ended.Error, StringComparison.Ordinal);
    }

    private static JsonNode Solve(string text)
    {
        using var scratch = new Scratch();
        var file = scratch.At("case.json");
        File.WriteAllText(file, text);
        var ended = Cli.Run("lab", "headspace", file, "--json");
        Assert.True(ended.Code == 0, ended.ToString());
        return ended.Json;
    }

    private static string Case(double airChanges, string mist, double step) =>
        $$"""
            { "volumeM3": 0.091125, "dryAirKg": 0.107888186, "glassAreaM2": 1.0125,
              "glassHeatCapacityJPerK": 9112.5,
              "soilAreaM2": 0.2025, "soilHeatCapacityJPerK": 30375, "airGlassWPerM2K": 3, "airSoilWPerM2K": 3,
              "glassRoomWPerM2K": 8, "soilGlassWPerM2K": 5, "soilRoomWPerM2K": 2,
              "massTransferMPerS": 0.002777777777777778,
              "room": { "meanC": 21, "amplitudeK": 2, "phaseHour": 9, "humidityRatio": 0.0078 },
              "lamp": { "onHour": 8, "offHour": 20, "airW": 1, "glassW": 3, "soilW": 6 },
              "airChangesPerHour": {{airChanges.ToString(CultureInfo.InvariantCulture)}}, "mist": {{mist}},
              "mistToSoil": 0.7, "mistC": 20,
              "film": { "wetKgPerM2": 0.005, "dripAboveKgPerM2": 0.05, "dripSeconds": 600 },
              "start": { "airC": 21, "glassC": 21, "soilC": 21, "humidityPercent": 70 },
              "stepSeconds": {{step.ToString(CultureInfo.InvariantCulture)}}, "hours": 48 }
            """;
}
