using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers.Cells;

namespace Litterfall.Running.Loggers;

/// <summary>
/// Order of day, month and year over the whole file: a part over 12 is no month, else the order in which
/// the rows go on decides, else the custom of those who write dates so.
/// </summary>
internal sealed class DateGuess
{
    private const int Thousand = 1000;
    private readonly RawTime[] times;
    private readonly int count;

    private DateGuess(RawTime[] times, int count)
    {
        this.times = times;
        this.count = count;
    }

    /// <summary>Times on the wall, ticks.</summary>
    public long[] Local { get; private set; } = [];

    /// <summary>The order that was used.</summary>
    public DateOrder Order { get; private set; }

    /// <summary>False where day and month could be the other way round.</summary>
    public bool IsCertain { get; private set; } = true;

    /// <summary>First row whose date there is not; -1 for none.</summary>
    public int BadRow { get; private set; } = -1;

    /// <summary>Reads the dates of a file.</summary>
    public static DateGuess Find(RowTable table, FileLayout layout, DateOrder wish)
    {
        var guess = new DateGuess(table.Times, table.Count);
        guess.Order = wish != DateOrder.Guessed ? wish : guess.Guess(layout);
        guess.Local = guess.Read(guess.Order, out var bad);
        guess.BadRow = bad;
        return guess;
    }

    private DateOrder Guess(FileLayout layout)
    {
        int first = 0,
            second = 0,
            third = 0;
        for (var i = 0; i < count; i++)
        {
            if (!times[i].IsNamed)
            {
                first = Math.Max(first, times[i].First);
                second = Math.Max(second, times[i].Second);
                third = Math.Max(third, times[i].Third);
            }
        }

        if (first >= 32)
        {
            return DateOrder.YearMonthDay;
        }

        var orders = new List<DateOrder>();
        if (second <= 12)
        {
            orders.Add(DateOrder.DayMonthYear);
        }

        if (first <= 12)
        {
            orders.Add(DateOrder.MonthDayYear);
        }

        // "26-02-15" may begin with the year; "26-02-2015" may not.
        if (third < 32 && second <= 12 && first > 12)
        {
            orders.Add(DateOrder.YearMonthDay);
        }

        if (orders.Count <= 1 || second == 0)
        {
            return orders.Count == 0 ? DateOrder.DayMonthYear : orders[0];
        }

        return Smoothest(orders, layout);
    }

    /// <summary>The order in which the rows go on with the fewest and shortest jumps.</summary>
    private DateOrder Smoothest(List<DateOrder> orders, FileLayout layout)
    {
        var ranked = orders.Select(o => (Order: o, Jumps: Jumps(o))).OrderBy(o => o.Jumps).ToList();
        if (ranked[0].Jumps < ranked[1].Jumps * 0.999)
        {
            return ranked[0].Order;
        }

        IsCertain = false;
        var sign = times[0].Sign;
        var isEuropean = sign is '.' or '-' || layout.HasComma || layout.Mark == CellMark.Semicolon;
        var isAmerican =
            times[0].IsHalfDay
            || layout.Columns.Any(c => c.Unit == UnitWord.Fahrenheit)
            || times[0].Third < Thousand;
        var likely = !isEuropean && isAmerican ? DateOrder.MonthDayYear : DateOrder.DayMonthYear;
        return orders.Contains(likely) ? likely : orders[0];
    }

    private double Jumps(DateOrder order)
    {
        var local = Read(order, out var bad);
        if (bad >= 0)
        {
            return double.MaxValue;
        }

        var sum = 0.0;
        for (var i = 1; i < local.Length; i++)
        {
            sum += Math.Abs(local[i] - local[i - 1]);
        }

        return sum;
    }

    private long[] Read(DateOrder order, out int bad)
    {
        var local = new long[count];
        bad = -1;
        var (known, midnight) = (default(RawTime), 0L);
        for (var i = 0; i < count; i++)
        {
            ref readonly var t = ref times[i];
            var isSame =
                i > 0
                && t.First == known.First
                && t.Second == known.Second
                && t.Third == known.Third
                && t.IsNamed == known.IsNamed;
            if (!isSame)
            {
                midnight = Midnight(t, order);
                known = t;
            }

            bad = midnight < 0 && bad < 0 ? i : bad;
            local[i] = midnight + t.Ticks;
        }

        return local;
    }

    private static long Midnight(in RawTime time, DateOrder order)
    {
        var (year, month, day) = order switch
        {
            _ when time.IsNamed => (time.Third, time.Second, time.First),
            DateOrder.YearMonthDay => (time.First, time.Second, time.Third),
            _ when time.First >= Thousand => (time.First, time.Second, time.Third),
            DateOrder.MonthDayYear => (time.Third, time.First, time.Second),
            _ => (time.Third, time.Second, time.First),
        };
        var full = year < 100 ? 2000 + year : year;
        return
            full is < 1970 or > 2199
            || month is < 1 or > 12
            || day < 1
            || day > DateTime.DaysInMonth(full, month)
            ? -1
            : new DateTime(full, month, day, 0, 0, 0, DateTimeKind.Unspecified).Ticks;
    }
}
