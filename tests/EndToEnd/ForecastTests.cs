using System.Text.Json.Nodes;
using Litterfall.Tests.EndToEnd.Lab;

namespace Litterfall.Tests.EndToEnd;

/// <summary><c>forecast</c>: equal series, ledgers that close, the same seed gives the same bytes.</summary>
public sealed class ForecastTests
{
    private const string Office = "samples/ld-202-waiting-room.viv.yaml";
    private const string OldTank = "samples/t-17-old-show-tank.viv.yaml";

    [Fact]
    public void Series_are_equal_long_and_ledgers_close()
    {
        var result = Run(Office, "--days", "10", "--members", "3");
        var series = result["series"]!.AsObject();
        Assert.All(series.Where(s => s.Value is JsonArray && s.Key != "depthMm"), s =>
            Assert.Equal(241, s.Value!.AsArray().Count)
        );
        Assert.All(series["fogByPane"]!.AsObject(), p => Assert.Equal(241, p.Value!.AsArray().Count));
        var water = result["ledgers"]!["waterGrams"]!;
        Assert.InRange(Math.Abs(water.Number("error")), 0.0, 0.05);
        Assert.InRange(Math.Abs(water.Number("airError")), 0.0, 1e-6);
        foreach (var (key, low) in series.Where(s => s.Key.EndsWith("Low", StringComparison.Ordinal)))
        {
            var (middle, high) = (series[key[..^3]]!.AsArray(), series[key[..^3] + "High"]!.AsArray());
            for (var i = 0; i < middle.Count; i++)
            {
                var at = middle[i]!.GetValue<double>();
                Assert.True(
                    low!.AsArray()[i]!.GetValue<double>() <= at && at <= high[i]!.GetValue<double>(),
                    key
                );
            }
        }

        Assert.Equal(3, result["ensemble"]!["members"]!.GetValue<int>());
        Assert.NotEmpty(result["ensemble"]!["varied"]!.AsArray());
    }

    /// <summary>A weekend without heating shows on the panes on Saturday, not on weekdays.</summary>
    [Fact]
    public void A_cold_weekend_fogs_the_panes_of_the_waiting_room()
    {
        var result = Run(Office, "--days", "23", "--members", "0", "--from", "2026-08-17");
        var fog = result["series"]!["fogByPane"]!["front"]!
            .AsArray()
            .Select(f => f!.GetValue<double>())
            .ToList();
        double Hours(int day) => fog.Skip(1 + (24 * day)).Take(24).Sum();

        // From a Monday: days 12 and 19 are Saturdays, 9 and 16 Wednesdays.
        Assert.True(Hours(12) > 2 && Hours(19) > 2);
        Assert.True(Hours(9) < 0.5 && Hours(16) < 0.5);
    }

    [Fact]
    public void A_seed_gives_its_band_again_and_another_seed_another()
    {
        string Band(string seed)
        {
            var result = Run(Office, "--days", "3", "--members", "4", "--seed", seed);
            return result["series"]!["humidityPercentLow"]!.ToJsonString();
        }

        Assert.Equal(Band("7"), Band("7"));
        Assert.NotEqual(Band("7"), Band("8"));
    }

    /// <summary>
    /// The overfilled show tank (own worked example): 10.6 days until the reservoir is full, 5 cm over the
    /// barrier on day 20, where nobody drains; drained it never gets there.
    /// </summary>
    [Fact]
    public void The_old_show_tank_fills_as_it_did()
    {
        var filled = Run(OldTank, "--days", "21", "--members", "0", "--from", "2026-03-01", "--undrained");
        var barrier = filled["events"]!.AsArray().Single(e => e!["kind"]!.GetValue<string>() == "barrier")!;
        Assert.InRange(barrier.Number("hour") / 24, 10.6 - 1.5, 10.6 + 1.5);
        Assert.InRange(filled["series"]!["levelMm"]!.AsArray()[480]!.GetValue<double>() - 40, 30.0, 70.0);
        var drained = Run(OldTank, "--days", "21", "--members", "0", "--from", "2026-03-01");
        Assert.Contains(drained["events"]!.AsArray(), e => e!["kind"]!.GetValue<string>() == "drain");
        Assert.DoesNotContain(drained["events"]!.AsArray(), e => e!["kind"]!.GetValue<string>() == "barrier");
    }

    [Theory]
    [InlineData("--days", "0")]
    [InlineData("--members", "many")]
    [InlineData("--from", "tomorrow")]
    public void What_cannot_be_forecast_is_refused(string option, string value) =>
        Cli.Refuses("forecast", Office, option, value);

    [Fact]
    public void The_text_has_a_line_a_day_and_its_ledger()
    {
        var ended = Cli.Run("forecast", Office, "--days", "3", "--members", "0");
        Assert.Equal(0, ended.Code);
        Assert.Equal("", ended.Error);
        Assert.Contains("Sun 16 Aug", ended.Out, StringComparison.Ordinal);
        Assert.Contains("misses by", ended.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_logger_in_the_room_is_the_room()
    {
        using var scratch = new Scratch();
        var design = scratch.At("logged.viv.yaml");
        var rows = Enumerable
            .Range(0, 49)
            .Select(h =>
                FormattableString.Invariant($"2026-08-{10 + (h / 24)} {h % 24:00}:00;{15 + (h % 24)},0;50")
            );
        File.WriteAllText(
            scratch.At("room.csv"),
            "Time;Temperature;Humidity\n" + string.Join('\n', rows) + "\n"
        );
        File.WriteAllText(
            design,
            "litterfall: 1\nname: logged\nbox: { outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, "
                + "glass: { walls: 5 mm } }\n"
                + "floor: { soil: { recipe: ready-rainforest, depth: 7 cm } }\nroom: { log: room.csv }\n"
        );
        var room = Run(design, "--days", "1", "--members", "0", "--from", "2026-08-11")["series"]![
            "roomC"
        ]!.AsArray();
        Assert.Equal(15.0, room[0]!.GetValue<double>(), 1e-6);
        Assert.Equal(25.0, room[10]!.GetValue<double>(), 1e-6);
        File.WriteAllText(scratch.At("room.csv"), "Time;Temperature;Humidity\n2026-08-10 00:00;warm;50\n");
        var refused = Cli.Refuses("forecast", design);
        Assert.Contains("room.csv:2", refused.Error, StringComparison.Ordinal);
    }

    private static JsonNode Run(string design, params string[] options)
    {
        var ended = Cli.Run(["forecast", design, .. options, "--json"]);
        Assert.True(ended.Code == 0, ended.ToString());
        Assert.Equal("", ended.Error);
        return ended.Json;
    }
}
