using System.Text;
using Litterfall.Dispatch.Evidence;

namespace Litterfall.UnitTests.Dispatch.Evidence;

/// <summary>What is said of a logger that came back from a parcel; own worked examples.</summary>
public sealed class LoggerFindingTests
{
    private const string Head = "time;temperature [°C]\n";

    private static string Told(params string[] rows) =>
        LoggerFinding.Tell(
            "logger.csv",
            Encoding.UTF8.GetBytes(Head + string.Join('\n', rows) + "\n"),
            "Etc/UTC",
            (10, 28)
        );

    private static string[] Hourly(params double[] values) =>
        [
            .. values.Select(
                (v, i) =>
                    FormattableString.Invariant(
                        $"{new DateTime(2026, 12, 1, 12, 0, 0).AddHours(i):yyyy-MM-dd HH:mm};{v:0.0}"
                    )
            ),
        ];

    [Fact]
    public void Readings_inside_are_told_as_inside()
    {
        var told = Told(Hourly(21, 20.5, 20, 10, 28));
        Assert.Contains("10 to 28 °C in 5 readings", told, StringComparison.Ordinal);
        Assert.EndsWith("every reading within 10–28 °C.", told, StringComparison.Ordinal);
    }

    /// <summary>From 12 to 8 °C the line crosses 10 °C half way; the hour from 8 to 8 is one more.</summary>
    [Fact]
    public void Time_outside_is_counted_along_the_straight_line()
    {
        var told = Told(Hourly(20, 16, 12, 8, 8));
        Assert.Contains(
            "2 of 5 readings outside 10–28 °C, 1.5 hours of what was read",
            told,
            StringComparison.Ordinal
        );
        // Up to 32 °C and down again: the third above 28 °C of each hour.
        Assert.Contains("0.7 hours", Told(Hourly(20, 20, 20, 20, 32, 20)), StringComparison.Ordinal);
    }

    /// <summary>The last reading is the cold one: it is outside, though no time follows it.</summary>
    [Fact]
    public void The_last_reading_counts_and_what_was_not_read_is_told()
    {
        string[] rows = [.. Hourly(21, 20.5, 20.2, 20), "2026-12-02 08:00;6.5"];
        var told = Told(rows);
        Assert.DoesNotContain("within", told, StringComparison.Ordinal);
        Assert.Contains("1 of 5 readings outside 10–28 °C, 0.0 hours", told, StringComparison.Ordinal);
        Assert.Contains("nothing was read for 17.0 hours between", told, StringComparison.Ordinal);
    }

    /// <summary>A plateau of melting packs, 22 hours at 8 °C to the tenth, is no broken sensor.</summary>
    [Fact]
    public void A_long_plateau_outside_counts()
    {
        var told = Told(Hourly([.. Enumerable.Repeat(8.0, 23)]));
        Assert.Contains("23 of 23 readings outside 10–28 °C, 22.0 hours", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_two_columns_of_temperature_is_told_which_is_meant()
    {
        var rows =
            "time;temperature [°C];temperature outside [°C]\n2026-12-01 12:00;20;3\n"
            + "2026-12-01 13:00;20;3\n2026-12-01 14:00;21;4\n";
        var told = LoggerFinding.Tell("logger.csv", Encoding.UTF8.GetBytes(rows), "Etc/UTC", (10, 28));
        Assert.Contains("20 to 21 °C in 3 readings", told, StringComparison.Ordinal);
        Assert.Contains("not told: “temperature outside", told, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_logger_is_told_and_kept() =>
        Assert.Contains(
            "not readable as one",
            LoggerFinding.Tell("x.csv", "hello"u8, "Etc/UTC", null),
            StringComparison.Ordinal
        );
}
