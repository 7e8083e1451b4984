using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Rooms;

namespace Litterfall.Web.Tanks.Loggers;

/// <summary>Loggers in words.</summary>
internal static class LoggerWords
{
    private const int MostSpans = 6;

    /// <summary>What a channel measures.</summary>
    public static string Of(LogQuantity quantity) =>
        quantity switch
        {
            LogQuantity.Temperature => "Temperature",
            LogQuantity.Humidity => "Humidity",
            LogQuantity.DewPoint => "Fog point (dew point)",
            LogQuantity.Pressure => "Air pressure",
            LogQuantity.Light => "Light",
            _ => "Something else",
        };

    /// <summary>What is wrong with readings.</summary>
    public static string Of(LogMarks mark) =>
        mark switch
        {
            LogMarks.Stuck => "sensor stuck",
            LogMarks.Saturated => "sensor wet, at its upper end",
            LogMarks.OutOfRange => "outside what a sensor can read",
            LogMarks.Drift => "sensor drifts",
            _ => "clock was set",
        };

    /// <summary>What was found in a file, one line each.</summary>
    public static IEnumerable<string> Findings(LoggerReport report)
    {
        if (report.Duplicates > 0)
        {
            yield return Count(report.Duplicates, "row stood here already", "rows stood here already")
                + " and counted once";
        }

        foreach (var gap in report.Gaps.Take(MostSpans))
        {
            yield return $"No readings from {When(gap.From)} to {When(gap.To)}";
        }

        if (report.Gaps.Count > MostSpans)
        {
            yield return Count(report.Gaps.Count - MostSpans, "more gap", "more gaps");
        }

        foreach (var flag in report.Flags.Take(MostSpans))
        {
            yield return $"{flag.Channel}: {Of(flag.Kind)}, {When(flag.From)} to {When(flag.To)}";
        }

        if (report.Flags.Count > MostSpans)
        {
            yield return Count(
                report.Flags.Count - MostSpans,
                "more span of doubtful readings",
                "more spans of doubtful readings"
            );
        }

        foreach (var quirk in report.Quirks)
        {
            yield return quirk.TrimEnd('.');
        }
    }

    /// <summary>What went wrong with the air, in one sentence.</summary>
    public static string Of(Excursion one)
    {
        var where =
            one.Zone.Length > 0 ? $"rack {one.Zone} only"
            : one.Places.Length == 1 ? one.Places[0]
            : "the room";
        var (what, unit, extreme) = one.Kind switch
        {
            ExcursionKind.Hot => ("Too hot", "°C", "up to"),
            ExcursionKind.Cold => ("Too cold", "°C", "down to"),
            _ => ("Too dry", "%", "down to"),
        };
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: {where}, {When(one.From)} to {When(one.To)}, {extreme} {one.Extreme:0.0} "
                + $"{unit} in {one.Worst}; measured in {string.Join(", ", one.Places)}"
        );
    }

    /// <summary>A tank warmer than its species bears, in one sentence.</summary>
    public static string Of(WarmTank one) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{one.Tank} was above {one.LimitCelsius:0.#} °C {Count(one.Spells, "time", "times")}, up to "
                + $"{one.WarmestCelsius:0.0} °C: warmer than the frogs in it should have it"
        );

    /// <summary>Where the collapse of cultures may come from, in one sentence.</summary>
    public static string Of(CultureTrace one) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{one.Species}, line {string.Join(" and ", one.Trace.Lines)}: likely from the heat of "
                + $"{one.Trace.From:d MMM} to {one.Trace.To:d MMM yyyy}, when the shelf was too warm "
                + $"to hatch for {one.Trace.Hours:0} hours (up to {one.Trace.WarmestCelsius:0.0} °C)"
        );

    /// <summary>A count with its word.</summary>
    public static string Count(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count:N0} {(count == 1 ? one : many)}");

    /// <summary>A time, UTC.</summary>
    public static string When(DateTime at) =>
        at.ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture) + " UTC";

    /// <summary>A reading in few words.</summary>
    public static string Short(LiveReading one) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Of(one.Quantity).ToLowerInvariant()} {one.Value:0.0} {one.Unit}"
        );
}
