using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Rooms;

/// <summary>A culture that collapsed.</summary>
/// <param name="Line">Its line: "A".</param>
/// <param name="Day">Day on which it was seen.</param>
public sealed record CultureLoss(string Line, DateOnly Day);

/// <summary>A species as far as heat stops its eggs.</summary>
/// <param name="StopsCelsius">Air at which no egg hatches, °C; for Folsomia candida 28 °C (Fountain and
/// Hopkin
/// 2005).</param>
/// <param name="GenerationDays">Days from an egg to the next eggs at the shelf's usual warmth.</param>
public sealed record HatchLimit(double StopsCelsius, double GenerationDays);

/// <summary>Heat that a collapse may come from.</summary>
/// <param name="From">First day with it.</param>
/// <param name="To">Last day with it.</param>
/// <param name="WarmestCelsius">Warmest reading, °C.</param>
/// <param name="Hours">Hours beyond the limit.</param>
/// <param name="Lines">Lines that collapsed within a generation after it.</param>
public sealed record HeatTrace(
    DateOnly From,
    DateOnly To,
    double WarmestCelsius,
    double Hours,
    ImmutableArray<string> Lines
);

/// <summary>
/// Traces collapses of cultures to days on which the shelf was so warm that no egg hatched: the adults live
/// on and die without heirs within the next generation.
/// </summary>
public static class HatchTrace
{
    private const double LeastHours = 2.0;
    private const int Joined = 1;

    /// <summary>Hot spells in the generation before a loss, the first first.</summary>
    /// <param name="losses">Cultures that collapsed.</param>
    /// <param name="shelf">Air at their shelf, °C.</param>
    /// <param name="warmer">How much warmer the shelf is than where the logger hangs, K.</param>
    /// <param name="limit">What the species bears.</param>
    public static ImmutableArray<HeatTrace> Find(
        IReadOnlyList<CultureLoss> losses,
        LogSeries shelf,
        double warmer,
        HatchLimit limit
    )
    {
        var days = HotDays(shelf, warmer, limit.StopsCelsius);
        var traces = ImmutableArray.CreateBuilder<HeatTrace>();
        for (var i = 0; i < days.Count;)
        {
            var to = i;
            while (to + 1 < days.Count && days[to + 1].Day.DayNumber - days[to].Day.DayNumber <= Joined)
            {
                to++;
            }

            var spell = days[i..(to + 1)];
            var lines = losses
                .Where(l =>
                    l.Day >= spell[0].Day && l.Day.DayNumber - spell[^1].Day.DayNumber <= limit.GenerationDays
                )
                .Select(l => l.Line)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .ToImmutableArray();
            if (lines.Length > 0)
            {
                traces.Add(
                    new(
                        spell[0].Day,
                        spell[^1].Day,
                        spell.Max(d => d.Warmest),
                        spell.Sum(d => d.Hours),
                        lines
                    )
                );
            }

            i = to + 1;
        }

        return traces.ToImmutable();
    }

    private static List<(DateOnly Day, double Warmest, double Hours)> HotDays(
        LogSeries shelf,
        double warmer,
        double limit
    )
    {
        var days = new SortedDictionary<DateOnly, (double Warmest, double Hours)>();
        for (var i = 1; i < shelf.Count; i++)
        {
            var celsius = shelf.Values[i] + warmer;
            if (shelf.Marks[i] != LogMarks.None || !(celsius > limit))
            {
                continue;
            }

            var day = DateOnly.FromDateTime(new DateTime(shelf.Ticks[i], DateTimeKind.Utc));
            var (warmest, hours) = days.GetValueOrDefault(day, (celsius, 0.0));
            var step = Math.Min(1.0, (shelf.Ticks[i] - shelf.Ticks[i - 1]) / (double)TimeSpan.TicksPerHour);
            days[day] = (Math.Max(warmest, celsius), hours + step);
        }

        return
        [
            .. days.Where(d => d.Value.Hours >= LeastHours)
                .Select(d => (d.Key, d.Value.Warmest, d.Value.Hours)),
        ];
    }
}
