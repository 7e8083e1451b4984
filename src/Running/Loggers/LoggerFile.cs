using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers.Cells;
using Litterfall.Running.Loggers.Clocks;
using Litterfall.Running.Loggers.Marks;

namespace Litterfall.Running.Loggers;

/// <summary>Reads a logger file of any usual style.</summary>
public static class LoggerFile
{
    /// <summary>Rows of the preview.</summary>
    public const int PreviewRows = 10;

    private const string Expected = "rows with a date, a time and at least one number";

    /// <summary>Reads a file.</summary>
    /// <param name="name">Its name, for messages and to guess the place.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="wish">What is known beforehand.</param>
    public static Reading<LoggerReading> Read(string name, ReadOnlySpan<byte> bytes, LoggerWish wish)
    {
        if (bytes.Length == 0)
        {
            return Refused(new(name, 1, 1, "the file is empty", Expected));
        }

        var text = LoggerText.Read(bytes);
        var layout = LayoutGuess.Find(text, null);
        if (layout is null)
        {
            return Refused(new(name, FirstLine(text), 1, "no row has a time and a number", Expected));
        }

        var fingerprint = Fingerprint(text, layout);
        var style = wish.Styles.FirstOrDefault(s => s.Fingerprint == fingerprint);
        if (style is not null)
        {
            layout = LayoutGuess.Find(text, style) ?? layout;
        }

        var table = RowTable.Read(text, layout, name);
        if (table.Fault is { } fault)
        {
            return Refused(fault);
        }

        if (table.Count == 0)
        {
            return Refused(new(name, layout.First + 1, 1, "no row has a time and a number", Expected));
        }

        var dates = DateGuess.Find(table, layout, style?.Dates ?? DateOrder.Guessed);
        return dates.BadRow >= 0
            ? Refused(
                new(
                    name,
                    table.Lines[dates.BadRow] + 1,
                    1,
                    $"\"{Start(text[table.Lines[dates.BadRow]])}\" begins with no date of the calendar",
                    "a date as in the rows before"
                )
            )
            : new(new Assembly(name, text, layout, table, dates).Make(fingerprint, style, wish), []);
    }

    private static Reading<LoggerReading> Refused(TextFault fault) => new(null, [fault]);

    private static string Start(ReadOnlySpan<char> line) => line[..Math.Min(line.Length, 30)].ToString();

    private static int FirstLine(LoggerText text)
    {
        for (var i = 0; i < text.Count; i++)
        {
            if (!text[i].IsWhiteSpace())
            {
                return i + 1;
            }
        }

        return 1;
    }

    /// <summary>The same for all files of one kind: marks, names of columns, number of columns.</summary>
    private static string Fingerprint(LoggerText text, FileLayout layout)
    {
        var plain = string.Create(
            CultureInfo.InvariantCulture,
            $"{layout.Mark}|{text.Code == LetterCode.Utf16}|{layout.Time}|{layout.Units >= 0}"
                + $"|{string.Join('|', layout.Heads)}|{string.Join(',', layout.Columns.Select(c => c.Index))}"
        );
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(plain)))[..16];
    }

    private sealed record Assembly(
        string Name,
        LoggerText Text,
        FileLayout Layout,
        RowTable Table,
        DateGuess Dates
    )
    {
        public LoggerReading Make(string fingerprint, LoggerStyle? style, LoggerWish wish)
        {
            var isNewestFirst = Turned(Dates.Local);
            var zone = FileZone.Find(Text, Layout, Table, Dates.Local, (style?.Zone ?? "", wish.Zone));
            var values = Table.Values.Select(v => v[..Table.Count]).ToArray();
            var interval = RowOrder.Interval(zone.Utc);
            var order = RowOrder.From(zone.Utc, values, interval);
            var place = style is { Place.Length: > 0 } ? style.Place : PlaceGuess.Find(Name, isColumn: false);
            LogChannel[] channels =
            [
                .. Layout.Columns.Select(c => new LogChannel(
                    c.Name,
                    c.Quantity,
                    c.KeptUnit,
                    c.Place.Length > 0 ? c.Place : place
                )),
            ];
            var found = Channels(order, zone.Utc, values);
            SensorMarks.Find(found);
            foreach (var step in order.Steps)
            {
                var at = Array.BinarySearch(found[0].Ticks, zone.Utc[step]);
                Array.ForEach(found, c => c.Mark(Math.Max(at, 0), Math.Max(at, 0) + 1, LogMarks.ClockStep));
            }

            var words = new StyleWords(Text, Layout, Table, zone);
            return new()
            {
                Report = new()
                {
                    Name = Name,
                    Style = words.Style(Dates.Order),
                    Zone = zone.Name,
                    Fingerprint = fingerprint,
                    Rows = Table.Count,
                    Kept = order.Kept.Length,
                    Duplicates = order.Duplicates,
                    From = new(found[0].Ticks[0], DateTimeKind.Utc),
                    To = new(found[0].Ticks[^1], DateTimeKind.Utc),
                    Channels = [.. channels],
                    Gaps = [.. order.Gaps],
                    Overlaps = [.. order.Overlaps],
                    Flags = [.. Flags(found, channels)],
                    Quirks = [.. words.Quirks(Dates, isNewestFirst, order.Conflicts)],
                },
                Series = [.. found.Select((c, i) => Series(c, channels[i]))],
                Columns = [.. Shown(channels)],
                FirstRows = [.. FirstRows()],
                Dates = Dates.Order,
                IsFahrenheitGuessed = Layout.IsFahrenheitGuessed,
            };
        }

        /// <summary>Turns rows round where the newest stands first.</summary>
        private bool Turned(long[] local)
        {
            var (up, down) = (0, 0);
            for (var i = 1; i < local.Length; i++)
            {
                up += local[i] > local[i - 1] ? 1 : 0;
                down += local[i] < local[i - 1] ? 1 : 0;
            }

            if (down <= up)
            {
                return false;
            }

            Array.Reverse(local);
            Array.Reverse(Table.Times, 0, Table.Count);
            Array.Reverse(Table.Lines, 0, Table.Count);
            Array.ForEach(Table.Values, v => Array.Reverse(v, 0, Table.Count));
            return true;
        }

        private Channel[] Channels(RowOrder order, long[] utc, double[][] values)
        {
            var ticks = Array.ConvertAll(order.Kept, r => utc[r]);
            return
            [
                .. Layout.Columns.Select(
                    (c, i) =>
                        new Channel(
                            c.Quantity,
                            ticks,
                            Array.ConvertAll(order.Kept, r => values[i][r]),
                            new LogMarks[ticks.Length]
                        )
                ),
            ];
        }

        private static LogSeries Series(Channel channel, LogChannel named) =>
            new(named.Place, named.Quantity, named.Unit)
            {
                Ticks = ImmutableCollectionsMarshal.AsImmutableArray(channel.Ticks),
                Values = ImmutableCollectionsMarshal.AsImmutableArray(channel.Values),
                Marks = ImmutableCollectionsMarshal.AsImmutableArray(channel.Marks),
            };

        private static IEnumerable<LogFlag> Flags(Channel[] found, LogChannel[] channels)
        {
            for (var c = 0; c < found.Length; c++)
            {
                foreach (var flag in LogFlags.Find(found[c].Ticks, found[c].Marks, channels[c].Name))
                {
                    yield return flag;
                }
            }
        }

        private IEnumerable<ShownColumn> Shown(LogChannel[] channels)
        {
            var width = Math.Max(Layout.Heads.Count, Layout.Columns.Max(c => c.Index) + 1);
            width = Math.Max(width, Math.Max(Layout.Time.Date, Layout.Time.Clock) + 1);
            for (var i = 0; i < width; i++)
            {
                var at = Layout.Columns.Select((c, k) => (c, k)).FirstOrDefault(p => p.c.Index == i);
                yield return new(
                    i,
                    i < Layout.Heads.Count ? Layout.Heads[i] : "",
                    at.c is null ? null : channels[at.k],
                    at.c?.Unit?.Name ?? "",
                    i == Layout.Time.Date || i == Layout.Time.Clock
                );
            }
        }

        private IEnumerable<Seq<string>> FirstRows()
        {
            var cells = new Range[CellSplit.MostCells];
            for (var i = 0; i < Math.Min(PreviewRows, Table.Count); i++)
            {
                var row = Text[Table.Lines[i]];
                var count = CellSplit.Cut(row, Layout.Mark, cells);
                var shown = new string[count];
                for (var c = 0; c < count; c++)
                {
                    shown[c] = row[cells[c]].ToString();
                }

                yield return [.. shown];
            }
        }
    }
}
