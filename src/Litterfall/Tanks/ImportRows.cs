using System.Globalization;
using System.Text.Json;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;

namespace Litterfall.App.Tanks;

/// <summary>Every kept reading as a line of JSON, written aside and put in place whole.</summary>
internal static class ImportRows
{
    private const int Flush = 1 << 16;
    private static readonly JsonWriterOptions Plain = new()
    {
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };
    private static readonly LogMarks[] Marks =
    [
        LogMarks.Stuck,
        LogMarks.Saturated,
        LogMarks.OutOfRange,
        LogMarks.Drift,
        LogMarks.ClockStep,
    ];

    /// <summary>Writes the file.</summary>
    public static void Write(string path, IEnumerable<LoggerReading> files, CancellationToken cancel)
    {
        var aside = path + ".part";
        try
        {
            using (var file = new FileStream(aside, FileMode.Create, FileAccess.Write, FileShare.None, Flush))
            using (var json = new Utf8JsonWriter(file, Plain))
            {
                foreach (var reading in files)
                {
                    Write(file, json, reading, cancel);
                }
            }

            File.Move(aside, path, overwrite: true);
        }
        finally
        {
            File.Delete(aside);
        }
    }

    private static void Write(
        FileStream file,
        Utf8JsonWriter json,
        LoggerReading reading,
        CancellationToken cancel
    )
    {
        for (var i = 0; i < reading.Series[0].Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            for (var c = 0; c < reading.Series.Length; c++)
            {
                var series = reading.Series[c];
                if (double.IsNaN(series.Values[i]))
                {
                    continue;
                }

                json.WriteStartObject();
                json.WriteString(
                    "utc",
                    new DateTime(series.Ticks[i], DateTimeKind.Utc).ToString(
                        "yyyy-MM-dd'T'HH:mm:ss.FFF'Z'",
                        CultureInfo.InvariantCulture
                    )
                );
                json.WriteString("channel", reading.Report.Channels[c].Name);
                json.WriteString("quantity", ImportText.Word(series.Quantity));
                json.WriteNumber("value", series.Values[i]);
                json.WriteString("unit", series.Unit);
                json.WriteStartArray("flags");
                foreach (var mark in Marks)
                {
                    if ((series.Marks[i] & mark) != LogMarks.None)
                    {
                        json.WriteStringValue(ImportText.Word(mark));
                    }
                }

                json.WriteEndArray();
                json.WriteEndObject();
                json.Flush();
                file.WriteByte((byte)'\n');
                json.Reset();
            }
        }
    }
}
