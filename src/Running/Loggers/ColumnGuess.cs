using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers.Cells;

namespace Litterfall.Running.Loggers;

/// <summary>Guesses what each column holds, from its head, its unit and its values.</summary>
internal sealed class ColumnGuess(
    IReadOnlyList<string> heads,
    IReadOnlyList<string> units,
    List<string[]> rows,
    TimeCells time
)
{
    private const double LeastFilled = 0.05;
    private const double WarmestLikely = 48.0;
    private const double MostHumidity = 104.5;
    private const double DewMiss = 0.6;

    /// <summary>Temperatures had no unit and can only be °F.</summary>
    public bool IsFahrenheitGuessed { get; private set; }

    /// <summary>Columns of readings, as guessed or as somebody fixed them.</summary>
    public List<ReadColumn> Columns(LoggerStyle? style)
    {
        var found = new List<ReadColumn>();
        var width = rows.Max(r => r.Length);
        for (var c = 0; c < width; c++)
        {
            if (c == time.Date || c == time.Clock)
            {
                continue;
            }

            var wish = style?.Columns.FirstOrDefault(w => w.Index == c);
            if (wish is { IsRead: false })
            {
                continue;
            }

            if ((wish is not null ? Wished(wish) : Guessed(c)) is { } column)
            {
                found.Add(column);
            }
        }

        return style is null || style.Columns.Count == 0 ? Named(WithoutHead(found)) : Named(found);
    }

    /// <summary>Columns that hold one letter: normal, alarm, power-up.</summary>
    public List<int> States() =>
        [
            .. Enumerable
                .Range(0, rows.Max(r => r.Length))
                .Where(c => c != time.Date && c != time.Clock)
                .Where(c =>
                    rows.TrueForAll(r => c < r.Length && r[c].Length == 1 && char.IsAsciiLetter(r[c][0]))
                ),
        ];

    private ReadColumn Wished(LoggerColumn wish)
    {
        var head = Head(wish.Index);
        var unit = UnitWord.Find(wish.Unit) ?? head?.Unit;
        return new()
        {
            Index = wish.Index,
            Name = head?.Name ?? "",
            Quantity = wish.Quantity,
            Unit = unit is not null && IsFit(unit, wish.Quantity) ? unit : null,
            Place = wish.Place,
        };
    }

    private static bool IsFit(UnitWord unit, LogQuantity quantity) =>
        unit.Quantity == quantity
        || (unit.Quantity == LogQuantity.Temperature && quantity == LogQuantity.DewPoint)
        || quantity == LogQuantity.Other;

    private HeadCell? Head(int c)
    {
        if (c >= heads.Count || heads[c].Length == 0)
        {
            return null;
        }

        var head = HeadCell.Read(heads[c]);
        var below = c < units.Count ? UnitWord.Find(units[c]) : null;
        if (below is null)
        {
            return head;
        }

        return head.Role == HeadRole.Reading && (IsFit(below, head.Quantity) || head.Unit is null)
                ? head with
                {
                    Unit = below,
                    Quantity = IsFit(below, head.Quantity) ? head.Quantity : below.Quantity,
                }
            : head.Role == HeadRole.Unknown
                ? head with
                {
                    Role = HeadRole.Reading,
                    Unit = below,
                    Quantity = below.Quantity,
                }
            : head;
    }

    private ReadColumn? Guessed(int c)
    {
        var values = Values(c, out var filled);
        var head = Head(c);
        if (head?.Role is HeadRole.Time or HeadRole.Besides || values.Count == 0)
        {
            return null;
        }

        var isSure = head?.Role == HeadRole.Reading;
        var isRare = filled < LeastFilled * rows.Count || (values.Count == 1 && rows.Count > 3);
        if (!isSure && (isRare || IsRunning(values) || (heads.Count > 0 && head is null)))
        {
            return null;
        }

        var place = head is null ? "" : PlaceGuess.Find(head.Name, isColumn: true);
        var cellUnit = CellUnit(c);
        var quantity = isSure ? head!.Quantity : cellUnit?.Quantity ?? Likely(values);
        var unit = head?.Unit ?? (cellUnit is not null && IsFit(cellUnit, quantity) ? cellUnit : null);
        if (quantity == LogQuantity.Temperature && unit is null && isSure && Middle(values) > WarmestLikely)
        {
            unit = UnitWord.Fahrenheit;
            IsFahrenheitGuessed = true;
        }

        return new()
        {
            Index = c,
            Name = head?.Name ?? "",
            Quantity = quantity,
            Unit = unit,
            Place = place,
        };
    }

    private UnitWord? CellUnit(int c)
    {
        var cell = rows[^1].ElementAtOrDefault(c) ?? "";
        var at = cell.AsSpan().LastIndexOfAnyInRange('0', '9');
        return at >= 0 && at + 1 < cell.Length ? UnitWord.Find(cell.AsSpan(at + 1)) : null;
    }

    private List<double> Values(int c, out int filled)
    {
        var values = new List<double>();
        filled = 0;
        foreach (var row in rows)
        {
            if (c < row.Length && NumberCell.TryRead(row[c], out var value) && !double.IsNaN(value))
            {
                values.Add(value);
                filled++;
            }
        }

        return values;
    }

    /// <summary>A running number rises from row to row and has no fraction.</summary>
    private static bool IsRunning(List<double> values) =>
        values.Count > 2
        && values.TrueForAll(v => v == Math.Floor(v))
        && values.Zip(values.Skip(1)).All(p => p.Second > p.First);

    private static double Middle(List<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    private static LogQuantity Likely(List<double> values) =>
        Middle(values) switch
        {
            < -40.0 => LogQuantity.Other,
            < 45.0 => LogQuantity.Temperature,
            <= MostHumidity => LogQuantity.Humidity,
            > 850.0 and < 1100.0 => LogQuantity.Pressure,
            _ => LogQuantity.Other,
        };

    /// <summary>Without a head, the second of two columns is humidity and a third may be the dew
    /// point.</summary>
    private List<ReadColumn> WithoutHead(List<ReadColumn> found)
    {
        if (heads.Count > 0 || found.Count < 2 || found[0].Unit is not null || found[1].Unit is not null)
        {
            return found;
        }

        var second = Values(found[1].Index, out _);
        if (
            found[0].Quantity == LogQuantity.Temperature
            && second.TrueForAll(v => v is >= 0.0 and <= MostHumidity)
            && second.Max() - second.Min() + Middle(second) > 45.0
        )
        {
            found[1] = found[1] with { Quantity = LogQuantity.Humidity };
        }

        if (found.Count > 2 && found[2].Quantity == LogQuantity.Temperature && IsDew(found))
        {
            found[2] = found[2] with { Quantity = LogQuantity.DewPoint };
        }

        return found;
    }

    private bool IsDew(List<ReadColumn> found)
    {
        var misses = new List<double>();
        foreach (var row in rows)
        {
            if (
                found[2].Index < row.Length
                && NumberCell.TryRead(row[found[0].Index], out var celsius)
                && NumberCell.TryRead(row[found[1].Index], out var percent)
                && NumberCell.TryRead(row[found[2].Index], out var dew)
                && percent > 1.0
            )
            {
                misses.Add(Math.Abs(dew - DewPoint(celsius, percent)));
            }
        }

        return misses.Count > 0 && Middle(misses) < DewMiss;
    }

    /// <summary>Magnus' form with the constants of Alduchov and Eskridge (1996), equation 21.</summary>
    private static double DewPoint(double celsius, double percent)
    {
        const double a = 17.625;
        const double b = 243.04;
        var g = Math.Log(percent / 100.0) + (a * celsius / (b + celsius));
        return b * g / (a - g);
    }

    /// <summary>Each column has a name of its own.</summary>
    private static List<ReadColumn> Named(List<ReadColumn> columns)
    {
        var used = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < columns.Count; i++)
        {
            var name =
                columns[i].Name.Length > 0
                    ? columns[i].Name
                    : string.Create(CultureInfo.InvariantCulture, $"channel {i + 1}");
            var given = name;
            for (var n = 2; !used.Add(given); n++)
            {
                given = string.Create(CultureInfo.InvariantCulture, $"{name} {n}");
            }

            columns[i] = columns[i] with { Name = given };
        }

        return columns;
    }
}
