using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd.Lab;

/// <summary>
/// <c>lab crew</c>: counts of the matrix of day classes by another program, keys and refusals.
/// </summary>
public sealed class CrewTests
{
    [Fact]
    public void A_hundred_springtails_are_nine_thousand_in_four_weeks()
    {
        var result = Solve(
            """
            { "animal": "Folsomia candida", "temperatureC": 22, "start": { "adults": 100 },
              "days": 42 }
            """
        );
        Assert.Equal(["growthFactorPerDay", "daily", "elapsedMs"], result.AsObject().Select(m => m.Key));
        Assert.Equal(1.140264, result.Number("growthFactorPerDay"), 1e-6);
        var days = result["daily"]!.AsArray();
        Assert.Equal(43, days.Count);
        Assert.Equal(
            ["day", "eggs", "juveniles", "adults", "mobile"],
            days[0]!.AsObject().Select(m => m.Key)
        );
        Assert.Equal(9182.0, days[28]!.Number("mobile"), 1.0);
        Assert.Equal(107_112.0, days[42]!.Number("mobile"), 1.0);
    }

    [Fact]
    public void A_life_table_damp_crowding_and_removal_are_taken()
    {
        var result = Solve(
            """
            { "animal": { "eggDays": 7, "juvenileDays": 19, "eggsPerDay": 6.81067,
              "survivalToAdult": 0.58286,
                          "adultSurvivalPerDay": 0.991117 },
              "temperatureC": [22, 22, 22], "matricKpa": -10, "start": { "adults": 10, "juveniles": 5,
                "eggs": 3 },
              "days": 30, "carryingCapacity": 100, "removalPerDay": 0.02 }
            """
        );
        Assert.InRange(result.Number("growthFactorPerDay"), 1.04, 1.088);
        Assert.Equal(15.0, result["daily"]![0]!.Number("mobile"), 1e-9);
    }

    /// <summary>Real ages: 1.138376 at 22 °C, within 0.3 %.</summary>
    [Fact]
    public void Changing_warmth_ages_in_fractions()
    {
        var days = Solve(
            """
            { "animal": "folsomia-candida", "temperatureC": [22.0, 22.000001],
              "start": { "adults": 100 }, "days": 500 }
            """
        )["daily"]!.AsArray();
        Assert.Equal(1.138376, days[500]!.Number("mobile") / days[499]!.Number("mobile"), 3e-3);
    }

    [Theory]
    [InlineData("\"folsomia-candida\"", "\"wolf\"", "no crew animal 'wolf'")]
    [InlineData("\"temperatureC\": 22", "\"temperatureC\": \"warm\"", "temperatureC")]
    [InlineData("\"temperatureC\": 22", "\"temperatureC\": []", "there is no temperature")]
    [InlineData("\"days\": 10", "\"days\": 0", "days")]
    [InlineData("\"days\": 10", "\"days\": 10, \"removalPerDay\": 2", "removalPerDay")]
    [InlineData("\"days\": 10", "\"days\": 10, \"matricKpa\": 3", "matricKpa")]
    [InlineData("\"adults\": 100", "\"adult\": 100", "adult")]
    public void What_is_wrong_is_told(string good, string bad, string words)
    {
        const string text = """
            { "animal": "folsomia-candida", "temperatureC": 22,
              "start": { "adults": 100 }, "days": 10 }
            """;
        Assert.Contains(good, text, StringComparison.Ordinal);
        using var scratch = new Scratch();
        string file = scratch.Write("case.json", text.Replace(good, bad, StringComparison.Ordinal));
        Assert.Contains(words, Cli.Refuses("lab", "crew", file).Error, StringComparison.Ordinal);
        Cli.RefusesInJson("lab", "crew", file);
    }

    [Fact]
    public void Text_tells_the_growth()
    {
        using var scratch = new Scratch();
        string file = scratch.Write(
            "case.json",
            """
            { "animal": "trichorhina tomentosa", "temperatureC": 24,
              "start": { "adults": 50 }, "days": 90 }
            """
        );
        var ended = Cli.Run("lab", "crew", file);
        Assert.Equal(0, ended.Code);
        Assert.Contains("1.017865", ended.Out, StringComparison.Ordinal);
        Assert.Contains("39.1 days", ended.Out, StringComparison.Ordinal);
    }

    private static JsonNode Solve(string text)
    {
        using var scratch = new Scratch();
        var ended = Cli.Run("lab", "crew", scratch.Write("case.json", text), "--json");
        Assert.True(ended.Code == 0, ended.ToString());
        return ended.Json;
    }
}
