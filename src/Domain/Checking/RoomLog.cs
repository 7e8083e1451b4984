using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Faults;

namespace Litterfall.Domain.Checking;

/// <summary>One reading of a logger in the room.</summary>
/// <param name="Time">Local time of the logger.</param>
/// <param name="Celsius">Temperature, °C.</param>
/// <param name="Humidity">Relative humidity, 0 to 1.</param>
public readonly record struct RoomReading(DateTime Time, double Celsius, double Humidity);

/// <summary>
/// What a logger in the room recorded: a table with a head line, split by comma, semicolon or tab, with
/// decimal
/// point or (where the comma does not split) decimal comma.
/// </summary>
/// <param name="Readings">Readings in order of time, no two at one time; two or more.</param>
public sealed record RoomLog(ImmutableArray<RoomReading> Readings)
{
    private const int LeastRows = 2;
    private const double MostHumidity = 1.06;
    private static readonly char[] Splits = [';', '\t', ','];
    private static readonly string[] Times = ["time", "date", "zeit", "datum", "stamp"];
    private static readonly string[] Temperatures = ["temp", "°c", "°f"];
    private static readonly string[] Humidities = ["hum", "rh", "feuchte", "%"];
    private static readonly string[] Forms =
    [
        "yyyy-MM-dd HH:mm:ss",
        "yyyy-MM-dd HH:mm",
        "yyyy-MM-ddTHH:mm:ss",
        "yyyy-MM-ddTHH:mm",
        "yyyy/MM/dd HH:mm:ss",
        "yyyy/MM/dd HH:mm",
        "dd.MM.yyyy HH:mm:ss",
        "dd.MM.yyyy HH:mm",
        "d.M.yyyy H:mm:ss",
        "d.M.yyyy H:mm",
    ];

    /// <summary>Whole days it covers; 0 where it is shorter.</summary>
    public int WholeDays => (int)Math.Floor((Readings[^1].Time - Readings[0].Time).TotalDays);

    /// <summary>Reads a logger file.</summary>
    /// <param name="file">Name used in messages.</param>
    /// <param name="text">Its text.</param>
    public static Reading<RoomLog> Read(string file, string text)
    {
        var lines = text.TrimStart('\uFEFF').Split('\n').Select(l => l.TrimEnd('\r')).ToArray();
        var head = Array.FindIndex(lines, l => l.Trim().Length > 0);
        if (head < 0)
        {
            return Refused(
                file,
                1,
                "the logger file is empty",
                "a head line with time, temperature and humidity"
            );
        }

        var split = Splits.MaxBy(c => lines[head].Count(x => x == c));
        var names = lines[head].Split(split).Select(n => n.Trim(' ', '"').ToLowerInvariant()).ToArray();
        var columns = (
            Time: Find(names, Times),
            Warm: Find(names, Temperatures),
            Damp: Find(names, Humidities)
        );
        if (columns.Time < 0 || columns.Warm < 0 || columns.Damp < 0)
        {
            return Refused(
                file,
                head + 1,
                "the head line of the logger file lacks a column",
                "columns named time, temperature and humidity"
            );
        }

        var isFahrenheit = IsFahrenheit(names[columns.Warm]);
        var readings = new SortedDictionary<DateTime, RoomReading>();
        for (var i = head + 1; i < lines.Length; i++)
        {
            if (lines[i].Trim().Length == 0)
            {
                continue;
            }

            var cells = lines[i].Split(split);
            if (Row(cells, columns, split == ',', isFahrenheit) is not { } reading)
            {
                return Refused(
                    file,
                    i + 1,
                    "this line of the logger file cannot be read",
                    "a time as 2026-02-15 08:10, a temperature of -15 to 60 °C and a humidity of 0 to 106 %"
                );
            }

            readings[reading.Time] = reading;
        }

        return readings.Count < LeastRows
            ? Refused(file, head + 1, "the logger file has too few lines", "two readings or more")
            : new(new RoomLog([.. readings.Values]), []);
    }

    private static bool IsFahrenheit(string name) =>
        name.Contains("°f", StringComparison.Ordinal)
        || name.EndsWith("_f", StringComparison.Ordinal)
        || name.EndsWith(" f", StringComparison.Ordinal);

    private static RoomReading? Row(
        string[] cells,
        (int Time, int Warm, int Damp) columns,
        bool isPoint,
        bool isFahrenheit
    )
    {
        if (
            cells.Length <= Math.Max(columns.Time, Math.Max(columns.Warm, columns.Damp))
            || !DateTime.TryParseExact(
                cells[columns.Time].Trim(' ', '"'),
                Forms,
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var time
            )
            || Number(cells[columns.Warm], isPoint) is not { } warm
            || Number(cells[columns.Damp], isPoint) is not { } damp
        )
        {
            return null;
        }

        var celsius = isFahrenheit ? (warm - 32) / 1.8 : warm;
        var share = damp / 100;
        return celsius is < -15 or > 60 || share is < 0 or > MostHumidity
            ? null
            : new RoomReading(time, celsius, Math.Min(share, 1));
    }

    private static double? Number(string cell, bool isPoint) =>
        double.TryParse(
            isPoint ? cell.Trim(' ', '"') : cell.Trim(' ', '"').Replace(',', '.'),
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out var number
        )
            ? number
            : null;

    private static int Find(string[] names, string[] words) =>
        Array.FindIndex(names, n => words.Any(w => n.Contains(w, StringComparison.Ordinal)));

    private static Reading<RoomLog> Refused(string file, int line, string message, string expected) =>
        new(null, [new TextFault(file, line, 1, message, expected)]);
}
