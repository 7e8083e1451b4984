using Litterfall.Running.Loggers.Cells;
using Litterfall.Running.Loggers.Clocks;
using NodaTime;

namespace Litterfall.Running.Loggers;

/// <summary>Where the zone of a file's times was found.</summary>
internal enum ZoneOrigin
{
    /// <summary>In each row.</summary>
    Rows,

    /// <summary>Somebody fixed it for files of this kind.</summary>
    Fixed,

    /// <summary>In the head of the file.</summary>
    Head,

    /// <summary>Given with the file, or that of the room.</summary>
    Given,

    /// <summary>From the clock changes in it.</summary>
    Changes,

    /// <summary>Nowhere: taken as UTC.</summary>
    Nowhere,
}

/// <summary>Times of a file as UTC, and by what zone.</summary>
internal sealed record FileZone(long[] Utc, string Name, ZoneOrigin Origin, SummerTime Summer)
{
    private const int MostHeadLines = 60;

    public static FileZone Find(
        LoggerText text,
        FileLayout layout,
        RowTable table,
        long[] local,
        (string Fixed, string Given) wish
    )
    {
        if (OfRows(table, local) is { } rows)
        {
            return rows;
        }

        var interval = RowOrder.Interval(local);
        var (zone, name, origin) =
            ZoneChoice.Find(wish.Fixed) is { } own ? (own, wish.Fixed, ZoneOrigin.Fixed)
            : InHead(text, layout) is var (head, shown) && head is not null ? (head, shown, ZoneOrigin.Head)
            : ZoneChoice.Find(wish.Given) is { } given ? (given, wish.Given, ZoneOrigin.Given)
            : ZoneChoice.FromChanges(local, interval) is { } guess
                ? (ZoneChoice.Find(guess)!, guess, ZoneOrigin.Changes)
            : (DateTimeZone.Utc, "UTC", ZoneOrigin.Nowhere);
        var times = WallClock.Read(local, interval, zone);
        return new(times.Utc, name, origin, times.Summer);
    }

    /// <summary>Offsets in the rows; a row without one has that of the row before.</summary>
    private static FileZone? OfRows(RowTable table, long[] local)
    {
        var first = Array.FindIndex(table.Times, 0, table.Count, t => t.Offset != RawTime.NoOffset);
        if (first < 0)
        {
            return null;
        }

        var utc = new long[local.Length];
        var offset = table.Times[first].Offset;
        var isOne = true;
        for (var i = 0; i < utc.Length; i++)
        {
            var own = table.Times[i].Offset;
            isOne &= own == RawTime.NoOffset || own == offset;
            offset = own == RawTime.NoOffset ? offset : own;
            utc[i] = local[i] - (offset * TimeSpan.TicksPerMinute);
        }

        return new(
            utc,
            isOne ? ZoneChoice.Shown(offset) : "as written in each row",
            ZoneOrigin.Rows,
            SummerTime.Unseen
        );
    }

    /// <summary>"GMT+01:00", "UTC", or a zone's name in the lines before the rows.</summary>
    private static (DateTimeZone? Zone, string Name) InHead(LoggerText text, FileLayout layout)
    {
        for (var i = Math.Max(0, layout.First - MostHeadLines); i < layout.First; i++)
        {
            var line = text[i].ToString();
            var tokens = line.Split(
                [' ', ',', ';', '\t', '"', '(', ')', '[', ']', '|', '='],
                StringSplitOptions.RemoveEmptyEntries
            );
            foreach (var token in tokens)
            {
                var isOffset =
                    token.StartsWith("UTC", StringComparison.OrdinalIgnoreCase)
                    || token.StartsWith("GMT", StringComparison.OrdinalIgnoreCase);
                if (isOffset && ZoneChoice.Minutes(token) is { } minutes)
                {
                    return (ZoneChoice.FromMinutes(minutes), ZoneChoice.Shown(minutes));
                }

                var isName =
                    token.Contains('/', StringComparison.Ordinal) && char.IsAsciiLetterUpper(token[0]);
                if (isName && token.Length > 5 && DateTimeZoneProviders.Tzdb.GetZoneOrNull(token) is { } zone)
                {
                    return (zone, zone.Id);
                }
            }
        }

        return (null, "");
    }
}
