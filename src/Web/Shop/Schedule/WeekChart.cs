using System.Globalization;
using Litterfall.Domain.Schedule;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Scheduling;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>A bar of an order from one day to another, to scale.</summary>
/// <param name="Kind">Class of its look: quarantine, make, growin.</param>
/// <param name="X">Left edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Words">What it is, for a pointer and for readers of the screen.</param>
public sealed record ChartBar(string Kind, double X, double Width, string Words);

/// <summary>A row of the drawing.</summary>
/// <param name="Order">Number of the order.</param>
/// <param name="Name">"LD-201".</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Bars">Its bars.</param>
/// <param name="Ship">Middle of the day it leaves; null where that is not in the drawing.</param>
/// <param name="Promised">Middle of the promised day; null where that is not in the drawing.</param>
/// <param name="Words">The row in a sentence.</param>
public sealed record ChartRow(
    int Order,
    string Name,
    double Y,
    IReadOnlyList<ChartBar> Bars,
    double? Ship,
    double? Promised,
    string Words
);

/// <summary>A week on the axis.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Label">Its Monday.</param>
public sealed record ChartWeek(double X, string Label)
{
    private const double Gap = 3;

    /// <summary>Left edge of the label.</summary>
    public double LabelX => X + Gap;
}

/// <summary>Orders over weeks, drawn to scale: the same width for each day.</summary>
public sealed class WeekChart
{
    /// <summary>Height of a row.</summary>
    public const double RowHeight = 46;

    /// <summary>Room above the rows for the weeks.</summary>
    public const double Top = 26;

    private const double Names = 74;
    private const int LeastWeeks = 10;
    private const int MostWeeks = 30;
    private const double DayWidth = 9;
    private const int WeekDays = 7;
    private readonly DateOnly first;
    private readonly int days;

    private WeekChart(DateOnly first, int days)
    {
        (this.first, this.days) = (first, days);
    }

    /// <summary>Width of the drawing.</summary>
    public double Width => Names + (days * DayWidth);

    /// <summary>Height of the drawing.</summary>
    public double Height => Top + (Rows.Count * RowHeight) + 6;

    /// <summary>Left edge of the shown week, and its width; null where it is not in the drawing.</summary>
    public (double X, double Width)? Shown { get; private init; }

    /// <summary>Middle of today; null where it is not in the drawing.</summary>
    public double? Today { get; private init; }

    /// <summary>The weeks.</summary>
    public IReadOnlyList<ChartWeek> Weeks { get; private init; } = [];

    /// <summary>The orders.</summary>
    public IReadOnlyList<ChartRow> Rows { get; private init; } = [];

    /// <summary>The drawing of a plan.</summary>
    /// <param name="view">The plan.</param>
    /// <param name="week">Monday of the week that is shown.</param>
    public static WeekChart Draw(PlanView view, DateOnly week)
    {
        var orders = view
            .Plan.Orders.Where(o => o.Tasks.Any(t => !t.IsCancelled))
            .OrderBy(o => o.Days.Arrive)
            .ThenBy(o => o.Days.Order)
            .ToList();
        var from = WorkDays.Monday(view.Today < week ? view.Today : week).AddDays(-WeekDays);
        var last = orders.Select(o => o.Days.Arrive).Append(week.AddDays(WeekDays)).Max();
        var weeks = Math.Clamp(((last.DayNumber - from.DayNumber) / WeekDays) + 2, LeastWeeks, MostWeeks);
        var chart = new WeekChart(from, weeks * WeekDays);
        return new WeekChart(from, weeks * WeekDays)
        {
            Shown = chart.Middle(week) is { } x ? (x - (DayWidth / 2), WeekDays * DayWidth) : null,
            Today = chart.Middle(view.Today),
            Weeks =
            [
                .. Enumerable
                    .Range(0, weeks)
                    .Select(w => new ChartWeek(
                        Names + (w * WeekDays * DayWidth),
                        from.AddDays(w * WeekDays).ToString("d MMM", CultureInfo.InvariantCulture)
                    )),
            ],
            Rows = [.. orders.Select((o, i) => chart.Row(view, o, i))],
        };
    }

    private ChartRow Row(PlanView view, PlannedOrder order, int index)
    {
        var own = order.Days;
        var begun = new[] { own.Cut, own.Background }.OfType<DateOnly>().DefaultIfEmpty(own.Pack).Min();
        var made = own.Plant ?? own.Pack;
        ChartBar?[] bars =
        [
            Bar("quarantine", own.PlantsIn, own.Plant?.AddDays(-1), "plants in quarantine"),
            Bar("make", begun, made, "made"),
            Bar("growin", own.Plant?.AddDays(1), own.Plant is null ? null : own.Pack, "grows in"),
        ];
        return new(
            own.Order,
            view.Name(own.Order),
            Top + (index * RowHeight),
            [.. bars.OfType<ChartBar>()],
            Middle(own.Ship),
            order.Promised is { } promised ? Middle(promised) : null,
            $"{view.Name(own.Order)}: there on {PlanWords.Day(own.Arrive)}"
                + (order.LateDays > 0 ? $", {PlanWords.Days(order.LateDays)} late" : "")
        );
    }

    private ChartBar? Bar(string kind, DateOnly? from, DateOnly? to, string words)
    {
        if (from is not { } start || to is not { } end || end < start)
        {
            return null;
        }

        var left = Math.Max(0, start.DayNumber - first.DayNumber);
        var right = Math.Min(days, end.DayNumber - first.DayNumber + 1);
        return right <= left
            ? null
            : new(
                kind,
                Names + (left * DayWidth),
                (right - left) * DayWidth,
                $"{words}, {PlanWords.Short(start)} to {PlanWords.Short(end)}"
            );
    }

    private double? Middle(DateOnly day) =>
        day.DayNumber - first.DayNumber is >= 0 and var at && at < days
            ? Names + ((at + 0.5) * DayWidth)
            : null;
}
