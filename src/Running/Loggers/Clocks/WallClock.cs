using NodaTime;

namespace Litterfall.Running.Loggers.Clocks;

/// <summary>What a logger's clock did on the days on which the clocks of its zone change.</summary>
public enum SummerTime
{
    /// <summary>No change lies in the file, or the zone has none.</summary>
    Unseen,

    /// <summary>It went with the clocks.</summary>
    Followed,

    /// <summary>It stayed as it was set.</summary>
    Ignored,
}

/// <summary>Times of a file as UTC.</summary>
/// <param name="Utc">UTC ticks, one for each row.</param>
/// <param name="Summer">What the clock did on days of change.</param>
/// <param name="Shift">Offset that was kept, where it ignored them.</param>
public sealed record WallTimes(long[] Utc, SummerTime Summer, TimeSpan Shift);

/// <summary>
/// Turns times of a wall clock into UTC by the rules of a zone. The hour that comes twice is told apart by
/// the order of the rows.
/// </summary>
public sealed class WallClock
{
    private const long Never = long.MinValue;

    private readonly long[] local;
    private readonly long interval;
    private readonly List<Span> spans = [];

    /// <summary>A span of time with one offset; ends are UTC ticks.</summary>
    private readonly record struct Span(long From, long To, long Offset);

    private WallClock(long[] local, long interval, DateTimeZone zone)
    {
        this.local = local;
        this.interval = Math.Max(interval, 1);
        if (local.Length == 0)
        {
            return;
        }

        var day = TimeSpan.TicksPerDay;
        var from = Instant.FromDateTimeUtc(new DateTime(local.Min() - day, DateTimeKind.Utc));
        var to = Instant.FromDateTimeUtc(new DateTime(local.Max() + day, DateTimeKind.Utc));
        foreach (var part in zone.GetZoneIntervals(from, to))
        {
            spans.Add(
                new(
                    part.HasStart ? part.Start.ToDateTimeUtc().Ticks : DateTime.MinValue.Ticks,
                    part.HasEnd ? part.End.ToDateTimeUtc().Ticks : DateTime.MaxValue.Ticks,
                    part.WallOffset.Ticks
                )
            );
        }
    }

    /// <summary>Reads the times of a file.</summary>
    /// <param name="local">Times on the wall in the order of the rows, ticks.</param>
    /// <param name="interval">Usual time between rows, ticks.</param>
    /// <param name="zone">The zone.</param>
    public static WallTimes Read(long[] local, long interval, DateTimeZone zone)
    {
        var clock = new WallClock(local, interval, zone);
        var seen = clock.Seen(out var shift);
        if (seen == SummerTime.Ignored)
        {
            return new([.. local.Select(t => t - shift)], seen, TimeSpan.FromTicks(shift));
        }

        return new(clock.Followed(), seen, TimeSpan.Zero);
    }

    /// <summary>
    /// A clock that ignored the change shows times that do not exist in spring, or runs once through the
    /// hour that comes twice in fall.
    /// </summary>
    private SummerTime Seen(out long shift)
    {
        shift = 0;
        int followed = 0,
            ignored = 0;
        for (var i = 1; i < spans.Count; i++)
        {
            var (before, after) = (spans[i - 1].Offset, spans[i].Offset);
            if (before == after)
            {
                continue;
            }

            var at = spans[i].From;
            var verdict =
                after > before ? Skipped(at + before, at + after) : Repeated(at + after, at + before);
            followed += verdict == SummerTime.Followed ? 1 : 0;
            ignored += verdict == SummerTime.Ignored ? 1 : 0;
            shift = ignored == 1 && verdict == SummerTime.Ignored ? before : shift;
        }

        return ignored > followed ? SummerTime.Ignored
            : followed > 0 ? SummerTime.Followed
            : SummerTime.Unseen;
    }

    /// <summary>Spring: were there rows at times that the wall never showed?</summary>
    private SummerTime Skipped(long from, long to)
    {
        var (inside, jump) = (0, false);
        for (var i = 0; i < local.Length; i++)
        {
            inside += local[i] >= from && local[i] < to ? 1 : 0;
            jump |=
                i > 0
                && local[i - 1] < from
                && local[i] >= to
                && local[i] - local[i - 1] <= to - from + (2 * interval);
        }

        return inside > 0 ? SummerTime.Ignored
            : jump ? SummerTime.Followed
            : SummerTime.Unseen;
    }

    /// <summary>Fall: did the rows run through the hour twice?</summary>
    private SummerTime Repeated(long from, long to)
    {
        var (steps, through) = (0, 0);
        for (var i = 1; i < local.Length; i++)
        {
            var step = local[i] - local[i - 1];
            var isNear = local[i] >= from - interval && local[i] < to + interval;
            steps += isNear && step <= 0 && -step <= to - from && local[i] < to ? 1 : 0;
            through +=
                local[i - 1] < to && local[i] >= to && step <= 1.5 * interval && Reaches(i - 1, from) ? 1 : 0;
        }

        return steps > 0 ? SummerTime.Followed
            : through > 0 ? SummerTime.Ignored
            : SummerTime.Unseen;
    }

    /// <summary>True where the rows run without a gap back to before a time.</summary>
    private bool Reaches(int row, long from)
    {
        var i = row;
        while (i > 0 && local[i] >= from)
        {
            var step = local[i] - local[i - 1];
            if (step < 0 || step > 1.5 * interval)
            {
                return false;
            }

            i--;
        }

        return local[i] < from;
    }

    private long[] Followed()
    {
        var utc = new long[local.Length];
        var previous = Never;
        var hint = 0;
        for (var i = 0; i < local.Length; i++)
        {
            utc[i] = At(i, previous, ref hint);
            previous = utc[i];
        }

        Mend(utc);
        return utc;
    }

    private long At(int row, long previous, ref int hint)
    {
        var wall = local[row];
        var near = spans[hint];
        var plain = wall - near.Offset;
        // A day from both ends of the span nothing can be doubted.
        if (plain - TimeSpan.TicksPerDay > near.From && plain + TimeSpan.TicksPerDay < near.To)
        {
            return plain;
        }

        var (first, second) = (Never, Never);
        for (var s = 0; s < spans.Count; s++)
        {
            var time = wall - spans[s].Offset;
            if (time < spans[s].From || time >= spans[s].To)
            {
                continue;
            }

            hint = s;
            (first, second) = first == Never ? (time, Never) : (first, time);
        }

        if (first == Never)
        {
            // The wall never showed it: as if the clock had not been set yet.
            return wall - Before(wall);
        }

        // A row far back belongs to another stretch of the file: its order says nothing.
        var isSameStretch = previous != Never && first > previous - (3 * TimeSpan.TicksPerHour);
        return second != Never && isSameStretch && first <= previous ? second : first;
    }

    private long Before(long wall)
    {
        for (var s = 1; s < spans.Count; s++)
        {
            var at = spans[s].From;
            if (wall >= at + spans[s - 1].Offset && wall < at + spans[s].Offset)
            {
                return spans[s - 1].Offset;
            }
        }

        return spans[^1].Offset;
    }

    /// <summary>
    /// Rows that pass the hour once, after a gap and right up to what follows, were of its second passing.
    /// </summary>
    private void Mend(long[] utc)
    {
        for (var s = 1; s < spans.Count; s++)
        {
            var gain = spans[s - 1].Offset - spans[s].Offset;
            var (from, to) = (spans[s].From - gain, spans[s].From);
            if (gain <= 0)
            {
                continue;
            }

            for (var i = 0; i + 1 < utc.Length; i++)
            {
                if (utc[i] < from || utc[i] >= to || utc[i + 1] < to)
                {
                    continue;
                }

                var first = i;
                while (first > 0 && utc[first - 1] >= from && utc[first - 1] <= utc[first])
                {
                    first--;
                }

                var isAfterGap = first == 0 || utc[first] - utc[first - 1] > 1.5 * interval;
                var isBeforeGap = utc[i + 1] - utc[i] > 1.5 * interval;
                var isMended =
                    utc[i + 1] - (utc[i] + gain) is var left && left >= 0 && left <= 1.5 * interval;
                for (var k = first; isAfterGap && isBeforeGap && isMended && k <= i; k++)
                {
                    utc[k] += gain;
                }
            }
        }
    }
}
