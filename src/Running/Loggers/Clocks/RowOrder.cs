using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Loggers.Clocks;

/// <summary>
/// Rows in the order of time: those that stand twice, time and values alike, are dropped; where the clock
/// was set and where readings are missing is said.
/// </summary>
public sealed class RowOrder
{
    private const double GapTimes = 1.5;
    private const double Regular = 0.9;
    private const int MostAlike = 64;

    private readonly long[] utc;
    private readonly double[][] values;

    private RowOrder(long[] utc, double[][] values)
    {
        this.utc = utc;
        this.values = values;
    }

    /// <summary>Rows that are kept, in the order of time.</summary>
    public int[] Kept { get; private set; } = [];

    /// <summary>Rows that stood there already.</summary>
    public int Duplicates { get; private set; }

    /// <summary>Spans that stand twice.</summary>
    public List<LogGap> Overlaps { get; } = [];

    /// <summary>Spans without readings.</summary>
    public List<LogGap> Gaps { get; } = [];

    /// <summary>Rows before which the clock was set.</summary>
    public List<int> Steps { get; } = [];

    /// <summary>Times that stand twice with different values.</summary>
    public int Conflicts { get; private set; }

    /// <summary>Puts rows in order.</summary>
    /// <param name="utc">Times in the order of the file, UTC ticks.</param>
    /// <param name="values">Values by column, at least as many as times.</param>
    /// <param name="interval">Usual time between rows, ticks; 0 where nothing can be said.</param>
    public static RowOrder From(long[] utc, double[][] values, long interval)
    {
        var order = new RowOrder(utc, values);
        var isTwice = order.Sort();
        order.FindSteps(isTwice, interval);
        order.FindGaps(interval);
        return order;
    }

    /// <summary>The usual step between rows, ticks; 0 where there are too few.</summary>
    public static long Interval(long[] times)
    {
        var steps = new List<long>();
        for (var i = 1; i < times.Length && steps.Count < 5000; i++)
        {
            if (times[i] > times[i - 1])
            {
                steps.Add(times[i] - times[i - 1]);
            }
        }

        if (steps.Count == 0)
        {
            return 0;
        }

        steps.Sort();
        return steps[steps.Count / 2];
    }

    private bool[] Sort()
    {
        var isTwice = new bool[utc.Length];
        var order = new int[utc.Length];
        var isRising = true;
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
            isRising &= i == 0 || utc[i] > utc[i - 1];
        }

        if (isRising)
        {
            Kept = order;
            return isTwice;
        }

        var keys = (long[])utc.Clone();
        Array.Sort(keys, order);
        Steady(keys, order);
        for (var i = 0; i < order.Length; i++)
        {
            for (
                var k = i - 1;
                k >= Math.Max(0, i - MostAlike) && keys[k] == keys[i] && !isTwice[order[i]];
                k--
            )
            {
                isTwice[order[i]] = !isTwice[order[k]] && AreAlike(order[i], order[k]);
            }

            Conflicts += i > 0 && keys[i] == keys[i - 1] && !isTwice[order[i]] ? 1 : 0;
        }

        Kept = [.. order.Where(r => !isTwice[r])];
        Duplicates = order.Length - Kept.Length;
        FindOverlaps(isTwice);
        return isTwice;
    }

    /// <summary>Rows of one time stay in the order of the file.</summary>
    private static void Steady(long[] keys, int[] order)
    {
        var from = 0;
        for (var i = 1; i <= keys.Length; i++)
        {
            if (i < keys.Length && keys[i] == keys[from])
            {
                continue;
            }

            if (i - from > 1)
            {
                Array.Sort(order, from, i - from);
            }

            from = i;
        }
    }

    private bool AreAlike(int a, int b) => Array.TrueForAll(values, column => column[a].Equals(column[b]));

    private void FindOverlaps(bool[] isTwice)
    {
        var from = -1;
        for (var i = 0; i <= isTwice.Length; i++)
        {
            if (i < isTwice.Length && isTwice[i])
            {
                from = from < 0 ? i : from;
            }
            else if (from >= 0)
            {
                Overlaps.Add(new(At(Math.Min(utc[from], utc[i - 1])), At(Math.Max(utc[from], utc[i - 1]))));
                from = -1;
            }
        }
    }

    /// <summary>
    /// A clock that was set shows by a step back into what was logged already, or by a step forward that is
    /// no whole number of intervals and too short for a pause.
    /// </summary>
    private void FindSteps(bool[] isTwice, long interval)
    {
        if (interval <= 0 || !IsRegular(interval))
        {
            return;
        }

        var last = long.MinValue;
        var first = utc[0];
        for (var i = 0; i < utc.Length; i++)
        {
            if (isTwice[i])
            {
                last = Math.Max(last, utc[i]);
                continue;
            }

            var step = last == long.MinValue ? interval : utc[i] - last;
            var turns = step / (double)interval;
            var isBack = step <= 0 && step > -2 * TimeSpan.TicksPerDay && utc[i] >= first && utc[i] < last;
            var isForward = turns is > 1.15 and < 3.0 && Math.Abs(turns - Math.Round(turns)) > 0.1;
            if (isBack || isForward)
            {
                Steps.Add(i);
            }

            // After a step back the clock goes on from there.
            last = isBack ? utc[i] : Math.Max(last, utc[i]);
        }
    }

    private bool IsRegular(long interval)
    {
        var near = 0;
        for (var i = 1; i < utc.Length; i++)
        {
            near += Math.Abs(utc[i] - utc[i - 1] - interval) * 20 <= interval ? 1 : 0;
        }

        return near >= Regular * (utc.Length - 1);
    }

    private void FindGaps(long interval)
    {
        if (interval <= 0)
        {
            return;
        }

        var limit = (long)(GapTimes * interval);
        if (!IsRegular(interval))
        {
            limit = Math.Max(limit, 3 * Longest());
        }

        var steps = Steps.ToHashSet();
        for (var k = 1; k < Kept.Length; k++)
        {
            var step = utc[Kept[k]] - utc[Kept[k - 1]];
            var isPace = step > limit && (IsSame(step, k + 1) || IsSame(step, k - 1));
            if (step > limit && !isPace && !steps.Contains(Kept[k]))
            {
                Gaps.Add(new(At(utc[Kept[k - 1]]), At(utc[Kept[k]])));
            }
        }
    }

    /// <summary>A logger set to a slower pace has the same step before or after.</summary>
    private bool IsSame(long step, int k) =>
        k >= 1 && k < Kept.Length && Math.Abs(utc[Kept[k]] - utc[Kept[k - 1]] - step) * 20 <= step;

    private long Longest()
    {
        var all = new List<long>();
        for (var k = 1; k < Kept.Length; k++)
        {
            all.Add(utc[Kept[k]] - utc[Kept[k - 1]]);
        }

        all.Sort();
        return all.Count == 0 ? 0 : all[(all.Count - 1) * 95 / 100];
    }

    private static DateTime At(long ticks) => new(ticks, DateTimeKind.Utc);
}
