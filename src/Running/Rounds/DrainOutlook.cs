using Litterfall.Domain.Tanks;
using Litterfall.Forecasting;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Running.Rounds;

/// <summary>What the forecast of a tank says of its reservoir.</summary>
/// <param name="LimitMillimeters">Highest level that is allowed, mm over the base.</param>
/// <param name="MillilitersPerMillimeter">Water for a millimeter of level, mL.</param>
/// <param name="MillimetersPerDay">Level that comes in a day; null where it does not rise.</param>
public sealed record DrainOutlook(
    double LimitMillimeters,
    double MillilitersPerMillimeter,
    double? MillimetersPerDay
)
{
    /// <summary>From the plain forecast of a design; null without a layer that is drawn off.</summary>
    /// <param name="numbers">Numbers of the design, with its water.</param>
    public static DrainOutlook? From(DesignNumbers numbers)
    {
        var balance = numbers.Water.Balance;
        var layer = numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage);
        if (layer is null || balance.PerLevel is not { Si: > 0 } perLevel || balance.DrainsByItself)
        {
            return null;
        }

        // PerLevel is an area in m²: a millimeter over 1 m² is a liter.
        var rise = balance.Gain is { Si: > 0 } gain ? gain.Si / perLevel.Si * 1000 : (double?)null;
        return new(DrainMark.Of(layer).Si * 1000, perLevel.Si * 1000, rise);
    }
}

/// <summary>Where the level of a tank stands by its log, and when it is to be drawn off.</summary>
public sealed record DrainState
{
    private const int LeastSlopes = 3;
    private const int MostSlopes = 6;
    private const double LeastDays = 2;

    /// <summary>Level today by the last reading and the rise since, mm over the base.</summary>
    public required double LevelMillimeters { get; init; }

    /// <summary>Day of the last reading; null where there was none.</summary>
    public required DateOnly? Read { get; init; }

    /// <summary>Rise in a day, mm; null where it does not rise.</summary>
    public required double? MillimetersPerDay { get; init; }

    /// <summary>True where the rise is that of the tank's own readings, not of its design.</summary>
    public required bool IsMeasured { get; init; }

    /// <summary>First day on which it stands at its limit; null where it does not get there.</summary>
    public required DateOnly? Due { get; init; }

    /// <summary>Milliliters to draw off down to a centimeter, on that day.</summary>
    public required double Milliliters { get; init; }

    /// <summary>The state of a tank.</summary>
    /// <param name="lines">Lines of its log that count, in the order of time.</param>
    /// <param name="outlook">Its forecast.</param>
    /// <param name="begun">Day from which it runs, with an empty reservoir.</param>
    /// <param name="today">Today.</param>
    public static DrainState Find(
        IEnumerable<CareEntry> lines,
        DrainOutlook outlook,
        DateOnly begun,
        DateOnly today
    )
    {
        var (level, at, read) = (0.0, begun, (DateOnly?)null);
        var slopes = new List<double>();
        (double Level, DateOnly Day)? before = null;
        foreach (var line in lines)
        {
            var day = DateOnly.FromDateTime(line.At);
            var moved = (line.Amount ?? 0) / outlook.MillilitersPerMillimeter;
            switch (line.Kind)
            {
                case CareKind.Level when line.Amount is { } millimeters:
                    if (before is { } b && day.DayNumber - b.Day.DayNumber >= LeastDays)
                    {
                        slopes.Add((millimeters - b.Level) / (day.DayNumber - b.Day.DayNumber));
                    }

                    (level, at, read, before) = (millimeters, day, day, (millimeters, day));
                    break;
                case CareKind.Drained or CareKind.ToppedUp:
                    var rise = outlook.MillimetersPerDay ?? 0;
                    level += rise * (day.DayNumber - at.DayNumber);
                    level = Math.Max(0, line.Kind == CareKind.Drained ? level - moved : level + moved);
                    at = day;
                    before = before is { } last && last.Day == day ? (level, day) : null;
                    break;
            }
        }

        return From((level, at, read), Own(slopes), outlook, today);
    }

    private static DrainState From(
        (double Level, DateOnly At, DateOnly? Read) known,
        double? own,
        DrainOutlook outlook,
        DateOnly today
    )
    {
        var rise = own ?? outlook.MillimetersPerDay;
        var rises = rise is > 0 ? rise : null;
        var left = outlook.LimitMillimeters - known.Level;
        const double least = 10;
        const int farthest = 3650;
        var days = rises is { } r ? Math.Floor(Math.Max(0, left) / r) : (double?)null;
        return new()
        {
            LevelMillimeters =
                known.Level + ((rises ?? 0) * Math.Max(0, today.DayNumber - known.At.DayNumber)),
            Read = known.Read,
            MillimetersPerDay = rises,
            IsMeasured = own is not null,
            Due =
                left <= 0 ? known.At
                : days is <= farthest ? known.At.AddDays((int)days)
                : null,
            Milliliters = Math.Max(0, outlook.LimitMillimeters - least) * outlook.MillilitersPerMillimeter,
        };
    }

    /// <summary>Median of the last rises between readings; null where they are too few.</summary>
    private static double? Own(List<double> slopes)
    {
        if (slopes.Count < LeastSlopes)
        {
            return null;
        }

        var last = slopes.TakeLast(MostSlopes).Order().ToList();
        var middle = last.Count / 2;
        return last.Count % 2 == 1 ? last[middle] : (last[middle - 1] + last[middle]) / 2;
    }
}
