namespace Litterfall.Running.Loggers.Cells;

/// <summary>A date and a time as the digits of a row say it; the order of the date is not known
/// yet.</summary>
internal struct RawTime
{
    /// <summary>No offset stands in the row.</summary>
    public const short NoOffset = short.MinValue;

    /// <summary>First, second and third part of the date.</summary>
    public short First,
        Second,
        Third;

    /// <summary>Minutes before UTC, or <see cref="NoOffset"/>.</summary>
    public short Offset;

    /// <summary>Time since midnight, ticks.</summary>
    public long Ticks;

    /// <summary>Sign between the parts of the date.</summary>
    public char Sign;

    /// <summary>The second part was a month's name: day, month, year.</summary>
    public bool IsNamed;

    /// <summary>A date was found.</summary>
    public bool HasDate;

    /// <summary>A time was found.</summary>
    public bool HasTime;

    /// <summary>The time was told in halves of the day.</summary>
    public bool IsHalfDay;
}

/// <summary>Reads dates and times of any usual order by hand: a file has hundreds of thousands.</summary>
internal static class TimeCell
{
    private const long Minute = TimeSpan.TicksPerMinute;

    /// <summary>First letters of the months in languages that name them with Latin letters.</summary>
    private static readonly (string Name, short Month)[] Months =
    [
        ("jan", 1),
        ("ene", 1),
        ("gen", 1),
        ("jän", 1),
        ("feb", 2),
        ("fév", 2),
        ("fev", 2),
        ("mar", 3),
        ("mär", 3),
        ("mrt", 3),
        ("maa", 3),
        ("apr", 4),
        ("avr", 4),
        ("abr", 4),
        ("may", 5),
        ("mai", 5),
        ("mei", 5),
        ("mag", 5),
        ("maj", 5),
        ("jun", 6),
        ("giu", 6),
        ("jui", 6),
        ("jul", 7),
        ("lug", 7),
        ("aug", 8),
        ("aoû", 8),
        ("aou", 8),
        ("ago", 8),
        ("sep", 9),
        ("set", 9),
        ("oct", 10),
        ("okt", 10),
        ("ott", 10),
        ("out", 10),
        ("nov", 11),
        ("dec", 12),
        ("déc", 12),
        ("dez", 12),
        ("dic", 12),
        ("des", 12),
    ];

    /// <summary>Adds what a cell says to a time; false where it is neither date nor time.</summary>
    public static bool TryRead(ReadOnlySpan<char> cell, ref RawTime time)
    {
        var i = 0;
        while (true)
        {
            while (i < cell.Length && cell[i] is ' ' or ',' or '\u00A0')
            {
                i++;
            }

            if (i >= cell.Length)
            {
                return time.HasDate || time.HasTime;
            }

            var isTaken = char.IsAsciiDigit(cell[i])
                ? (!time.HasDate && TryDate(cell, ref i, ref time)) || TryClock(cell, ref i, ref time)
                : TryWord(cell, ref i, ref time);
            if (!isTaken)
            {
                return false;
            }
        }
    }

    private static int Digits(ReadOnlySpan<char> cell, ref int i, out int count)
    {
        var (value, start) = (0, i);
        while (i < cell.Length && char.IsAsciiDigit(cell[i]) && i - start < 9)
        {
            value = (value * 10) + (cell[i++] - '0');
        }

        count = i - start;
        return value;
    }

    private static bool TryDate(ReadOnlySpan<char> cell, ref int at, ref RawTime time)
    {
        var i = at;
        var first = Digits(cell, ref i, out var length);
        if (length == 8 && (i >= cell.Length || cell[i] is ' ' or 'T'))
        {
            i += i < cell.Length && cell[i] == 'T' ? 1 : 0;
            return Packed(first, i, ref at, ref time);
        }

        if (length is 0 or > 4 || i >= cell.Length || cell[i] is not ('-' or '/' or '.' or ' '))
        {
            return false;
        }

        var sign = cell[i++];
        var second = Second(cell, ref i, sign, out var isNamed);
        if (second == 0)
        {
            return false;
        }

        while (isNamed && i < cell.Length && cell[i] is '.' or ' ' or ',')
        {
            i++;
        }

        if (i < cell.Length && cell[i] == sign)
        {
            i++;
        }
        else if (!isNamed)
        {
            return false;
        }

        var third = Digits(cell, ref i, out length);
        if (length is 0 or 3 or > 4)
        {
            return false;
        }

        Put(ref time, first, second, third, isNamed ? 'm' : sign);
        time.IsNamed = isNamed && first <= 31;
        i += i < cell.Length && cell[i] is 'T' or 't' or '_' ? 1 : 0;
        at = i;
        return true;
    }

    /// <summary>The middle of a date, a number or a month's name; 0 where it is neither.</summary>
    private static int Second(ReadOnlySpan<char> cell, ref int i, char sign, out bool isNamed)
    {
        while (i < cell.Length && cell[i] == ' ')
        {
            i++;
        }

        isNamed = i < cell.Length && char.IsLetter(cell[i]);
        if (isNamed)
        {
            return Month(cell, ref i);
        }

        if (sign == ' ')
        {
            return 0;
        }

        var second = Digits(cell, ref i, out var length);
        return length <= 2 ? second : 0;
    }

    private static bool Packed(int all, int end, ref int at, ref RawTime time)
    {
        var (year, month, day) = (all / 10_000, all / 100 % 100, all % 100);
        if (year is < 1970 or > 2100 || month is 0 or > 12 || day is 0 or > 31)
        {
            return false;
        }

        Put(ref time, year, month, day, 'p');
        at = end;
        return true;
    }

    private static void Put(ref RawTime time, int first, int second, int third, char sign)
    {
        time.First = (short)first;
        time.Second = (short)second;
        time.Third = (short)third;
        time.Sign = sign;
        time.HasDate = true;
    }

    private static int Month(ReadOnlySpan<char> cell, ref int i)
    {
        var start = i;
        while (i < cell.Length && char.IsLetter(cell[i]))
        {
            i++;
        }

        var word = cell[start..i];
        if (word.Length < 3)
        {
            return 0;
        }

        foreach (var (name, month) in Months)
        {
            if (word[..3].Equals(name, StringComparison.OrdinalIgnoreCase))
            {
                // "juillet" is not "juin", "maaliskuu" not "maart".
                return month == 6 && word.StartsWith("juil", StringComparison.OrdinalIgnoreCase) ? 7 : month;
            }
        }

        return 0;
    }

    private static bool TryClock(ReadOnlySpan<char> cell, ref int at, ref RawTime time)
    {
        var i = at;
        if (time.HasTime)
        {
            return false;
        }

        var hour = Digits(cell, ref i, out var length);
        if (time.Sign == 'p' && length is (4 or 6))
        {
            at = i;
            return PackedClock(length == 4 ? hour * 100 : hour, ref time)
                && TryOffset(cell, ref at, ref time);
        }

        if (length is 0 or > 2 || i >= cell.Length || cell[i] is not (':' or '.' or 'h'))
        {
            return false;
        }

        var sign = cell[i++];
        if (sign == '.' && !time.HasDate)
        {
            return false;
        }

        var minute = Digits(cell, ref i, out length);
        if (length != 2 || hour > 24 || minute > 59)
        {
            return false;
        }

        var ticks = (hour * TimeSpan.TicksPerHour) + (minute * Minute);
        if (i + 1 < cell.Length && cell[i] == sign && char.IsAsciiDigit(cell[i + 1]))
        {
            i++;
            var second = Digits(cell, ref i, out length);
            if (length > 2 || second > 60)
            {
                return false;
            }

            ticks += second * TimeSpan.TicksPerSecond;
            ticks += Fraction(cell, ref i);
        }

        if (!TryHalf(cell, ref i, ref ticks, ref time))
        {
            return false;
        }

        time.Ticks = ticks;
        time.HasTime = true;
        at = i;
        return TryOffset(cell, ref at, ref time);
    }

    /// <summary>"093000" behind a date without signs.</summary>
    private static bool PackedClock(int packed, ref RawTime time)
    {
        var seconds = (packed / 10_000 * 3600) + (packed / 100 % 100 * 60) + (packed % 100);
        time.Ticks = seconds * TimeSpan.TicksPerSecond;
        time.HasTime = time.Ticks <= TimeSpan.TicksPerDay;
        return time.HasTime;
    }

    private static long Fraction(ReadOnlySpan<char> cell, ref int i)
    {
        if (i + 1 >= cell.Length || cell[i] is not ('.' or ',' or ':') || !char.IsAsciiDigit(cell[i + 1]))
        {
            return 0;
        }

        i++;
        long ticks = 0;
        var unit = TimeSpan.TicksPerSecond;
        while (i < cell.Length && char.IsAsciiDigit(cell[i]))
        {
            unit /= 10;
            ticks += unit * (cell[i++] - '0');
        }

        return ticks;
    }

    /// <summary>AM and PM: 12 AM is midnight, 12 PM noon.</summary>
    private static bool TryHalf(ReadOnlySpan<char> cell, ref int i, ref long ticks, ref RawTime time)
    {
        var at = i;
        while (at < cell.Length && cell[at] is ' ' or '\u00A0' or '\u202F')
        {
            at++;
        }

        if (at >= cell.Length || cell[at] is not ('a' or 'A' or 'p' or 'P'))
        {
            return true;
        }

        var isLate = cell[at] is 'p' or 'P';
        at++;
        at += at < cell.Length && cell[at] == '.' ? 1 : 0;
        if (at >= cell.Length || cell[at] is not ('m' or 'M'))
        {
            return false;
        }

        at++;
        at += at < cell.Length && cell[at] == '.' ? 1 : 0;
        var hour = ticks / TimeSpan.TicksPerHour;
        if (hour is 0 or > 12)
        {
            return false;
        }

        ticks +=
            (
                isLate && hour < 12 ? 12
                : !isLate && hour == 12 ? -12
                : 0
            ) * TimeSpan.TicksPerHour;
        time.IsHalfDay = true;
        i = at;
        return true;
    }

    /// <summary>"Z", "UTC", "+01:00", "-0500", "GMT+1".</summary>
    private static bool TryOffset(ReadOnlySpan<char> cell, ref int i, ref RawTime time)
    {
        var at = i;
        while (at < cell.Length && cell[at] == ' ')
        {
            at++;
        }

        var rest = cell[at..];
        var isNamed =
            rest.StartsWith("UTC", StringComparison.OrdinalIgnoreCase)
            || rest.StartsWith("GMT", StringComparison.OrdinalIgnoreCase);
        if (isNamed || (rest.Length > 0 && rest[0] is 'Z' or 'z'))
        {
            at += isNamed ? 3 : 1;
            time.Offset = 0;
            i = at;
            if (!isNamed)
            {
                return true;
            }
        }

        if (at >= cell.Length || cell[at] is not ('+' or '-' or '−'))
        {
            return true;
        }

        var sign = cell[at++] == '+' ? 1 : -1;
        var hours = Digits(cell, ref at, out var length);
        var minutes = 0;
        if (length > 2)
        {
            (hours, minutes) = (hours / 100, hours % 100);
        }
        else if (at < cell.Length && cell[at] == ':')
        {
            at++;
            minutes = Digits(cell, ref at, out _);
        }

        if (length is 0 or > 4 || hours > 14 || minutes > 59)
        {
            return false;
        }

        time.Offset = (short)(sign * ((hours * 60) + minutes));
        i = at;
        return true;
    }

    /// <summary>A month before its day, or a weekday that is passed over.</summary>
    private static bool TryWord(ReadOnlySpan<char> cell, ref int at, ref RawTime time)
    {
        var i = at;
        if (!char.IsLetter(cell[i]) || time.HasDate)
        {
            return false;
        }

        var start = i;
        var month = Month(cell, ref i);
        var length = i - start;
        i += i < cell.Length && cell[i] == '.' ? 1 : 0;
        if (i >= cell.Length || cell[i] is not (' ' or ',' or '-'))
        {
            return false;
        }

        if (month == 0)
        {
            at = i;
            return length <= 10;
        }

        i++;
        var day = Digits(cell, ref i, out length);
        while (i < cell.Length && cell[i] is ',' or ' ' or '-')
        {
            i++;
        }

        var year = Digits(cell, ref i, out var many);
        if (length is 0 or > 2 || many is not (2 or 4))
        {
            return false;
        }

        Put(ref time, day, month, year, 'm');
        time.IsNamed = true;
        at = i;
        return true;
    }
}
