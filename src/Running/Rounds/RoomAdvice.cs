using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Quantities.Measures;

namespace Litterfall.Running.Rounds;

/// <summary>What animals of a tank want: °C as means of day and night, and where harm begins.</summary>
/// <param name="Tank">The tank.</param>
/// <param name="Animals">Name of the species.</param>
/// <param name="Low">Lowest mean, °C.</param>
/// <param name="High">Highest mean, °C.</param>
/// <param name="AvoidAbove">Warmth that harms, °C; null where it is not known.</param>
public sealed record TankWish(Tank Tank, string Animals, double Low, double High, double? AvoidAbove);

/// <summary>What the room could do better, by its loggers: computed, a degree at a time.</summary>
public static class RoomAdvice
{
    private const int Days = 14;
    private const int MostDegrees = 3;
    private const double LeastHours = 2;

    // Vertical gradient where no logger hangs at a shelf: common practice, no source.
    private const double KelvinPerMeter = 1.5;

    /// <summary>Advice in sentences; none where nothing is measured or all is well.</summary>
    /// <param name="room">The room.</param>
    /// <param name="wishes">What lives in its tanks.</param>
    /// <param name="series">Readings of temperature, by the tanks they hang in.</param>
    public static ImmutableArray<string> Find(
        TankRoom room,
        ImmutableArray<TankWish> wishes,
        ImmutableArray<LogSeries> series
    )
    {
        var measured = series
            .Where(s => s.Quantity == LogQuantity.Temperature && s.Count > 0)
            .ToDictionary(s => s.Place, StringComparer.Ordinal);
        if (measured.Count == 0 || wishes.Length == 0)
        {
            return [];
        }

        var until = measured.Values.Max(s => s.Ticks[^1]);
        var from = until - (Days * TimeSpan.TicksPerDay);
        var means = Means(room, wishes, measured, from);
        return
        [
            .. Hot(wishes, measured, (from, until)),
            .. SetPoint(room, wishes, means),
            .. Swaps(wishes, means),
        ];
    }

    /// <summary>Mean of each tank: its own logger, else its shelf's, else the rack's by height.</summary>
    private static Dictionary<string, double> Means(
        TankRoom room,
        ImmutableArray<TankWish> wishes,
        Dictionary<string, LogSeries> measured,
        long from
    )
    {
        var own = wishes
            .Where(w => measured.ContainsKey(w.Tank.Code))
            .Select(w => (w.Tank, Mean: Mean(measured[w.Tank.Code], from)))
            .Where(m => double.IsFinite(m.Mean))
            .ToList();
        var means = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var tank in wishes.Select(w => w.Tank))
        {
            var same = own.Where(o => o.Tank.Code == tank.Code).ToList();
            var shelf = own.Where(o =>
                    o.Tank.Place.Rack == tank.Place.Rack && o.Tank.Place.Shelf == tank.Place.Shelf
                )
                .ToList();
            var rack = own.Where(o => o.Tank.Place.Rack == tank.Place.Rack).ToList();
            if (same.Count > 0)
            {
                means[tank.Code] = same[0].Mean;
            }
            else if (shelf.Count > 0)
            {
                means[tank.Code] = shelf.Average(s => s.Mean);
            }
            else if (rack.Count > 0)
            {
                means[tank.Code] = rack.Average(r =>
                    r.Mean + (KelvinPerMeter * (Height(room, tank) - Height(room, r.Tank)))
                );
            }
        }

        return means;
    }

    private static double Height(TankRoom room, Tank tank)
    {
        var shelves = room.Racks.FirstOrDefault(r => r.Name == tank.Place.Rack)?.ShelfMeters;
        return shelves is not null && tank.Place.Shelf >= 1 && tank.Place.Shelf <= shelves.Count
            ? shelves[tank.Place.Shelf - 1]
            : 0;
    }

    private static double Mean(LogSeries series, long from)
    {
        var (sum, count) = (0.0, 0);
        for (var i = series.Count - 1; i >= 0 && series.Ticks[i] >= from; i--)
        {
            if (IsGood(series, i))
            {
                (sum, count) = (sum + series.Values[i], count + 1);
            }
        }

        return count > 0 ? sum / count : double.NaN;
    }

    private static bool IsGood(LogSeries series, int i) =>
        double.IsFinite(series.Values[i])
        && (
            i >= series.Marks.Length
            || (series.Marks[i] & (LogMarks.Stuck | LogMarks.OutOfRange)) == LogMarks.None
        );

    /// <summary>Shelves that ran too warm for what lives on them, on how many days.</summary>
    private static IEnumerable<string> Hot(
        ImmutableArray<TankWish> wishes,
        Dictionary<string, LogSeries> measured,
        (long From, long Until) window
    )
    {
        foreach (var shelf in wishes.GroupBy(w => (w.Tank.Place.Rack, w.Tank.Place.Shelf)))
        {
            if (shelf.Min(w => w.AvoidAbove) is not { } limit)
            {
                continue;
            }

            var days = shelf
                .Where(w => measured.ContainsKey(w.Tank.Code))
                .Select(w => DaysAbove(measured[w.Tank.Code], limit, window.From))
                .DefaultIfEmpty(0)
                .Max();
            if (days > 0)
            {
                var last = DateOnly.FromDateTime(new DateTime(window.Until, DateTimeKind.Utc));
                yield return string.Create(
                    CultureInfo.InvariantCulture,
                    $"Shelf {shelf.Key.Shelf} of rack {shelf.Key.Rack} ran above {limit:0.#} °C for more "
                        + $"than {LeastHours:0} hours on {days} of the {Days} days to {NumberText.Day(last)}."
                );
            }
        }
    }

    /// <summary>Days with more than two hours above a limit.</summary>
    private static int DaysAbove(LogSeries series, double limit, long from)
    {
        var hours = new Dictionary<long, double>();
        for (var i = series.Count - 1; i > 0 && series.Ticks[i] >= from; i--)
        {
            if (IsGood(series, i) && series.Values[i] > limit)
            {
                var day = series.Ticks[i] / TimeSpan.TicksPerDay;
                var step = Math.Min(series.Ticks[i] - series.Ticks[i - 1], TimeSpan.TicksPerHour);
                hours[day] = hours.GetValueOrDefault(day) + ((double)step / TimeSpan.TicksPerHour);
            }
        }

        return hours.Values.Count(h => h > LeastHours);
    }

    /// <summary>The smallest change of the set point that suits most tanks.</summary>
    private static IEnumerable<string> SetPoint(
        TankRoom room,
        ImmutableArray<TankWish> wishes,
        Dictionary<string, double> means
    )
    {
        int Suited(double change) =>
            wishes.Count(w =>
                means.TryGetValue(w.Tank.Code, out var mean)
                && mean + change >= w.Low
                && mean + change <= w.High
            );

        var now = Suited(0);
        var best = Enumerable
            .Range(-MostDegrees, (2 * MostDegrees) + 1)
            .OrderByDescending(d => Suited(d))
            .ThenBy(d => Math.Abs(d))
            .First();
        var more = Suited(best) - now;
        if (more <= 0)
        {
            yield break;
        }

        var degrees = Math.Abs(best) == 1 ? "one degree" : $"{Words(Math.Abs(best))} degrees";
        var to = room.SetCelsius is { } set
            ? string.Create(CultureInfo.InvariantCulture, $" (to {set + best:0.#} °C)")
            : "";
        yield return $"Setting the room {degrees} {(best < 0 ? "lower" : "higher")}{to} brings "
            + $"{NumberText.Count(more, "tank", "tanks")} back into what "
            + $"{(more == 1 ? "its" : "their")} animals want: "
            + $"{NumberText.Count(now, "tank is", "tanks are")} within it now, {Suited(best)} would be.";
    }

    private static string Words(int number) => number == 2 ? "two" : "three";

    /// <summary>Two tanks that would both be suited at each other's place.</summary>
    private static IEnumerable<string> Swaps(
        ImmutableArray<TankWish> wishes,
        Dictionary<string, double> means
    )
    {
        bool Suits(TankWish wish, string at) => means[at] >= wish.Low && means[at] <= wish.High;
        var known = wishes.Where(w => means.ContainsKey(w.Tank.Code)).ToList();
        var moved = new HashSet<string>(StringComparer.Ordinal);
        foreach (var warm in known.Where(w => means[w.Tank.Code] > w.High))
        {
            var cool = known.FirstOrDefault(c =>
                !moved.Contains(c.Tank.Code)
                && means[c.Tank.Code] < means[warm.Tank.Code]
                && Suits(warm, c.Tank.Code)
                && Suits(c, warm.Tank.Code)
            );
            if (cool is not null && moved.Add(warm.Tank.Code) && moved.Add(cool.Tank.Code))
            {
                yield return string.Create(
                    CultureInfo.InvariantCulture,
                    $"Swap {warm.Tank.Code} ({warm.Animals}, {means[warm.Tank.Code]:0.0} °C on the mean) "
                        + $"with {cool.Tank.Code} ({cool.Animals}, {means[cool.Tank.Code]:0.0} °C): "
                        + $"both suit the "
                        + $"other's place."
                );
            }
        }
    }
}
