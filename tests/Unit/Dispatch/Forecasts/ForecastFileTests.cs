using System.Text;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Domain.Faults;

namespace Litterfall.UnitTests.Dispatch.Forecasts;

/// <summary>
/// Hourly forecasts as people get them. Expected values are those of the written rows, turned into °C by
/// definition: (°F − 32) × 5/9 and K − 273.15; times by the tz database.
/// </summary>
public sealed class ForecastFileTests
{
    private static Reading<ForecastHours> Read(string text, string zone = "Etc/UTC", string unit = "") =>
        ForecastFile.Read("forecast.csv", Encoding.UTF8.GetBytes(text), new() { Zone = zone, Unit = unit });

    private static (DateTime At, double Celsius)[] Hours(Reading<ForecastHours> reading)
    {
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        return [.. reading.Value!.Hours.Select(h => (h.At, Math.Round(h.Celsius, 6)))];
    }

    private static DateTime Utc(int day, int hour) => new(2026, 7, day, hour, 0, 0, DateTimeKind.Utc);

    [Fact]
    public void Semicolons_decimal_commas_and_days_first()
    {
        var hours = Hours(
            Read(
                "Datum;Temperatur (°C);Taupunkt (°C)\n14.07.2026 10:00;21,5;12,0\n"
                    + "14.07.2026 11:00;22,75;12,1\n14.07.2026 12:00;24;12,2\n",
                "Europe/Berlin"
            )
        );
        // Berlin keeps summer time: 10:00 is 08:00 UTC.
        Assert.Equal([(Utc(14, 8), 21.5), (Utc(14, 9), 22.75), (Utc(14, 10), 24)], hours);
    }

    [Fact]
    public void American_dates_and_Fahrenheit_in_the_head()
    {
        var hours = Hours(
            Read("Date,Time,Temp (F),Humidity\n7/14/2026,1:00 PM,86,40\n7/14/2026,2:00 PM,88.7,41\n")
        );
        Assert.Equal([(Utc(14, 13), 30), (Utc(14, 14), 31.5)], hours);
    }

    [Fact]
    public void Fahrenheit_and_kelvin_by_their_range()
    {
        Assert.Equal(
            [25, 26],
            Hours(Read("time,temp\n2026-07-14T10:00,77\n2026-07-14T11:00,78.8\n")).Select(h => h.Celsius)
        );
        Assert.Equal(
            [25, 26.5],
            Hours(Read("time,temp\n2026-07-14T10:00,298.15\n2026-07-14T11:00,299.65\n"))
                .Select(h => h.Celsius)
        );
    }

    /// <summary>40 is a hot day in °C and a cold one in °F: nobody guesses.</summary>
    [Fact]
    public void A_unit_that_leaves_a_doubt_is_asked_for()
    {
        const string text = "time,temp\n2026-07-14T10:00,40\n2026-07-14T11:00,41\n";
        var doubt = Read(text);
        Assert.False(doubt.IsGood);
        Assert.Contains("names no unit", doubt.Faults[0].Message, StringComparison.Ordinal);
        Assert.Equal([40, 41], Hours(Read(text, unit: "C")).Select(h => h.Celsius));
        Assert.Equal([4.444444, 5], Hours(Read(text, unit: "F")).Select(h => h.Celsius));
    }

    [Fact]
    public void Epoch_seconds_and_offsets()
    {
        // 2026-07-14T12:00:00Z is 1 784 030 400 s: 20 648 days of 86 400 s and half a day.
        Assert.Equal(
            [Utc(14, 12), Utc(14, 13)],
            Hours(Read("timestamp,temperature C\n1784030400,20\n1784034000,21\n")).Select(h => h.At)
        );
        Assert.Equal(
            [Utc(14, 8), Utc(14, 9)],
            Hours(Read("time,temp C\n2026-07-14T10:00+02:00,20\n2026-07-14T11:00+02:00,21\n"))
                .Select(h => h.At)
        );
    }

    [Theory]
    [InlineData(
        """
            [{"time":"2026-07-14T10:00Z","temp_c":20.5,"dew_c":9},
             {"time":"2026-07-14T11:00Z","temp_c":21,"dew_c":9}]
            """
    )]
    [InlineData(
        """
            {"hourly_units":{"time":"iso8601","temperature_2m":"°C"},
             "hourly":{"time":["2026-07-14T10:00","2026-07-14T11:00"],"temperature_2m":[20.5,21]}}
            """
    )]
    [InlineData(
        """
            {"list":[{"dt":1784023200,"main":{"temp":293.65,"temp_min":280,"humidity":50}},
                     {"dt":1784026800,"main":{"temp":294.15,"temp_min":280,"humidity":51}}]}
            """
    )]
    [InlineData(
        """
            {"properties":{"periods":[
              {"startTime":"2026-07-14T06:00:00-04:00","temperature":68.9,"temperatureUnit":"F"},
              {"startTime":"2026-07-14T07:00:00-04:00","temperature":69.8,"temperatureUnit":"F"}]}}
            """
    )]
    [InlineData("""[["2026-07-14T10:00Z",20.5],["2026-07-14T11:00Z",21]]""")]
    public void Json_of_any_usual_shape(string json)
    {
        var hours = Hours(Read(json));
        Assert.Equal([Utc(14, 10), Utc(14, 11)], hours.Select(h => h.At));
        Assert.Equal([20.5, 21], hours.Select(h => Math.Round(h.Celsius, 3)));
    }

    /// <summary>50 °F and 41 °F are 10 °C and 5 °C: the unit stands beside each value.</summary>
    [Fact]
    public void A_unit_beside_each_value_counts()
    {
        const string json = """
            [{"at":"2026-01-14T10:00Z","temperature":50,"temperatureUnit":"F"},
             {"at":"2026-01-14T11:00Z","temperature":41,"temperatureUnit":"F"}]
            """;
        Assert.Equal([10, 5], Hours(Read(json)).Select(h => h.Celsius));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("""{"a":1}""")]
    [InlineData("[]")]
    [InlineData("just words\nand more\n")]
    [InlineData("time,humidity %\n2026-07-14T10:00,40\n2026-07-14T11:00,41\n")]
    public void What_is_no_forecast_is_refused(string text)
    {
        var reading = Read(text);
        Assert.False(reading.IsGood);
        Assert.NotEmpty(reading.Faults[0].Message);
    }

    [Fact]
    public void An_unknown_zone_is_refused() =>
        Assert.Contains(
            "zone",
            Read("a,b\n1,2\n", "Nowhere/City").Faults[0].Message,
            StringComparison.Ordinal
        );
}
