using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;

namespace Litterfall.App.Tanks;

/// <summary>What <c>import</c> tells: one JSON document, or lines for people.</summary>
internal static class ImportText
{
    private const int MostShown = 12;

    /// <summary>One JSON document.</summary>
    public static string Json(IReadOnlyList<LoggerReading> files, double milliseconds) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("files");
            foreach (var file in files)
            {
                Write(json, file.Report);
            }

            json.WriteEndArray();
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    /// <summary>The word of a quantity in a document.</summary>
    public static string Word(LogQuantity quantity) =>
        quantity switch
        {
            LogQuantity.Temperature => "temperature",
            LogQuantity.Humidity => "humidity",
            LogQuantity.DewPoint => "dew-point",
            LogQuantity.Pressure => "pressure",
            LogQuantity.Light => "light",
            _ => "other",
        };

    /// <summary>The word of a mark in a document.</summary>
    public static string Word(LogMarks mark) =>
        mark switch
        {
            LogMarks.Stuck => "stuck",
            LogMarks.Saturated => "saturated",
            LogMarks.OutOfRange => "out-of-range",
            LogMarks.Drift => "drift",
            _ => "clock-step",
        };

    /// <summary>Lines for people.</summary>
    public static string Lines(IReadOnlyList<LoggerReading> files)
    {
        var text = new StringBuilder();
        foreach (var report in files.Select(f => f.Report))
        {
            var plain = CultureInfo.InvariantCulture;
            text.AppendLine(plain, $"{Terminal.Clean(report.Name)}");
            text.AppendLine(plain, $"  {report.Style}; times: {report.Zone}");
            var doubled = Count(report.Duplicates, "exact duplicate");
            text.Append(plain, $"  {Count(report.Rows, "row")}, {report.Kept} kept, {doubled}, ");
            text.AppendLine(plain, $"{Shown(report.From)} to {Shown(report.To)} UTC");
            foreach (var channel in report.Channels)
            {
                var place = channel.Place.Length > 0 ? $", in {Terminal.Clean(channel.Place)}" : "";
                text.AppendLine(
                    plain,
                    $"  {Terminal.Clean(channel.Name)}: {Plain(channel.Quantity)}, {channel.Unit}{place}"
                );
            }

            Spans(text, "gap", [.. report.Gaps.Select(g => $"{Shown(g.From)} to {Shown(g.To)}")]);
            Spans(text, "overlap", [.. report.Overlaps.Select(g => $"{Shown(g.From)} to {Shown(g.To)}")]);
            Spans(
                text,
                "mark",
                [
                    .. report.Flags.Select(f =>
                        $"{Terminal.Clean(f.Channel)}: {Word(f.Kind)}, {Shown(f.From)} to {Shown(f.To)}"
                    ),
                ]
            );
            foreach (var quirk in report.Quirks)
            {
                text.AppendLine(plain, $"  note: {Terminal.Clean(quirk)}");
            }
        }

        return text.ToString();
    }

    private static void Write(Utf8JsonWriter json, LoggerReport report)
    {
        json.WriteStartObject();
        json.WriteString("file", report.Name);
        json.WriteString("style", report.Style);
        json.WriteString("zone", report.Zone);
        json.WriteNumber("rows", report.Rows);
        json.WriteNumber("kept", report.Kept);
        json.WriteNumber("duplicates", report.Duplicates);
        json.WriteString("from", Utc(report.From));
        json.WriteString("to", Utc(report.To));
        json.WriteStartArray("channels");
        foreach (var channel in report.Channels)
        {
            json.WriteStartObject();
            json.WriteString("name", channel.Name);
            json.WriteString("quantity", Word(channel.Quantity));
            json.WriteString("unit", channel.Unit);
            json.WriteString("place", channel.Place.Length > 0 ? channel.Place : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Spans(json, "gaps", report.Gaps);
        Spans(json, "overlaps", report.Overlaps);
        json.WriteStartArray("flags");
        foreach (var flag in report.Flags)
        {
            json.WriteStartObject();
            json.WriteString("kind", Word(flag.Kind));
            json.WriteString("channel", flag.Channel);
            json.WriteString("from", Utc(flag.From));
            json.WriteString("to", Utc(flag.To));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("quirks");
        foreach (var quirk in report.Quirks)
        {
            json.WriteStringValue(quirk);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Spans(Utf8JsonWriter json, string name, IEnumerable<LogGap> spans)
    {
        json.WriteStartArray(name);
        foreach (var span in spans)
        {
            json.WriteStartObject();
            json.WriteString("from", Utc(span.From));
            json.WriteString("to", Utc(span.To));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Spans(StringBuilder text, string what, List<string> spans)
    {
        foreach (var span in spans.Take(MostShown))
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"  {what}: {span}");
        }

        if (spans.Count > MostShown)
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"  and {Count(spans.Count - MostShown, "more " + what)}"
            );
        }
    }

    private static string Plain(LogQuantity quantity) => Word(quantity).Replace('-', ' ');

    private static string Count(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    private static string Shown(DateTime at) => at.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Utc(DateTime at) =>
        at.ToString("yyyy-MM-dd'T'HH:mm:ss.FFF'Z'", CultureInfo.InvariantCulture);
}
