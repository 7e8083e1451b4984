using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Faults;

namespace Litterfall.Domain.Checking;

/// <summary>One reading of a logger in the room.</summary>
/// <param name="Time">Local time of the logger.</param>
/// <param name="Celsius">Temperature, °C.</param>
/// <param name="Humidity">Relative humidity, 0 to 1.</param>
public readonly record struct RoomReading(DateTime Time, double Celsius, double Humidity);

/// <summary>What a logger in the room recorded.</summary>
/// <param name="Readings">Readings in order of time, no two at one time; two or more.</param>
public sealed record RoomLog(ImmutableArray<RoomReading> Readings)
{
    private const double LongGapHours = 6;
    private const double StuckHours = 12;
    private const double ShortHours = 24;

    /// <summary>1 %: no room is as dry all the time.</summary>
    private const double MostAsShare = 0.01;

    /// <summary>Lines whose time stood in the file before; the last one counts.</summary>
    public int Repeated { get; init; }

    /// <summary>Lines without a value.</summary>
    public int Blank { get; init; }

    /// <summary>Whole days it covers; 0 where it is shorter.</summary>
    public int WholeDays => (int)Math.Floor((Readings[^1].Time - Readings[0].Time).TotalDays);

    /// <summary>Reads a logger file.</summary>
    /// <param name="file">Name used in messages.</param>
    /// <param name="text">Its text.</param>
    public static Reading<RoomLog> Read(string file, string text) => new RoomLogReader(file).Read(text);

    /// <summary>
    /// What a keeper should know of it before trusting it, each a clause: too short, gaps, a value that
    /// stands still, humidity as a share, lines twice, lines without a value. The limits of six, twelve and
    /// 24 hours are own choices: a
    /// room's day is followed by hourly values, and no room holds one humidity for half a day.
    /// </summary>
    public IEnumerable<string> Oddities()
    {
        var hours = (Readings[^1].Time - Readings[0].Time).TotalHours;
        if (hours < ShortHours)
        {
            yield return FormattableString.Invariant($"it covers {hours:0.#} hours only, less than a day");
        }

        for (var i = 1; i < Readings.Length; i++)
        {
            var gap = (Readings[i].Time - Readings[i - 1].Time).TotalHours;
            if (gap > LongGapHours)
            {
                yield return FormattableString.Invariant(
                    $"nothing is recorded for {gap:0.#} hours from {Readings[i - 1].Time:yyyy-MM-dd HH:mm} on"
                );
            }
        }

        foreach (var (name, of) in Channels)
        {
            if (LongestStand(of) is var (from, stood, value) && stood > StuckHours)
            {
                yield return FormattableString.Invariant(
                    $"the {name} stands at {value:0.#} for {stood:0.#} hours from {from:yyyy-MM-dd HH:mm} on"
                );
            }
        }

        if (Readings.Max(r => r.Humidity) is > 0 and <= MostAsShare)
        {
            yield return FormattableString.Invariant(
                $"its humidity is at most {100 * Readings.Max(r => r.Humidity):0.##} %: shares of 1 in place "
            ) + "of percent, most likely; as percent the room would be drier than any desert";
        }

        if (Repeated > 0)
        {
            yield return Repeated == 1
                ? "one line repeats a time, the later line counts"
                : $"{Repeated} lines repeat a time, the later line counts";
        }

        if (Blank > 0)
        {
            yield return Blank == 1 ? "one line has no value" : $"{Blank} lines have no value";
        }
    }

    private static readonly (string Name, Func<RoomReading, double> Of)[] Channels =
    [
        ("temperature", r => r.Celsius),
        ("humidity", r => 100 * r.Humidity),
    ];

    private (DateTime From, double Hours, double Value) LongestStand(Func<RoomReading, double> of)
    {
        var best = (From: Readings[0].Time, Hours: 0.0, Value: of(Readings[0]));
        var first = 0;
        for (var i = 1; i < Readings.Length; i++)
        {
            if (of(Readings[i]) != of(Readings[first]))
            {
                first = i;
            }

            var stood = (Readings[i].Time - Readings[first].Time).TotalHours;
            if (stood > best.Hours && i - first > 2)
            {
                best = (Readings[first].Time, stood, of(Readings[first]));
            }
        }

        return best;
    }
}
