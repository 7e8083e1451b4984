using System.Globalization;
using Litterfall.Domain.Tanks;

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

    /// <summary>A count with its word.</summary>
    public static string Count(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count:N0} {(count == 1 ? one : many)}");

    /// <summary>A time, UTC.</summary>
    public static string When(DateTime at) =>
        at.ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture) + " UTC";

    /// <summary>A value with its unit.</summary>
    public static string Value(double value, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{value:0.##} {unit}");
}
