using System.Globalization;
using Litterfall.Domain.Schedule;
using Litterfall.Web.Shop.Orders;
using Litterfall.Workshop.Scheduling;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>The seven days of a week: what is taken of hands and places, and who does what.</summary>
public sealed partial class WeekDays
{
    private const int DaysOfWeek = 7;

    /// <summary>The kept plan.</summary>
    [Parameter, EditorRequired]
    public required PlanView View { get; set; }

    /// <summary>The first day.</summary>
    [Parameter, EditorRequired]
    public required DateOnly Monday { get; set; }

    /// <summary>Tasks of the week.</summary>
    [Parameter, EditorRequired]
    public required IReadOnlyList<DayTask> Tasks { get; set; }

    private IEnumerable<WeekDay> Days
    {
        get
        {
            for (var i = 0; i < DaysOfWeek; i++)
            {
                var load = PlanLoad.Find(View.Plan, View.Calendar, Monday.AddDays(i));
                var own = Tasks.Where(t => t.Day == load.Day).ToList();
                if (load.IsWork || own.Count > 0)
                {
                    yield return new(
                        load,
                        View.Calendar.Holidays.FirstOrDefault(h => h.Day == load.Day)?.Name
                            ?? (load.IsWork ? "" : "no work"),
                        Meters(load, View.Calendar),
                        own.GroupBy(t => t.Who.Length > 0 ? t.Who : "Whoever has time")
                    );
                }
            }
        }
    }

    private static DayMeter[] Meters(PlanLoad load, ShopCalendar calendar) =>
        [
            DayMeter.From(
                "Orders",
                load.Minutes,
                load.MostMinutes,
                $"{OrderShow.Time(load.Minutes)} of {OrderShow.Time(load.MostMinutes)}"
            ),
            DayMeter.From(
                "Shelf",
                load.Bench,
                calendar.BenchPlaces,
                Places(load.Bench, calendar.BenchPlaces)
            ),
            DayMeter.From(
                "Quarantine",
                load.Quarantine,
                calendar.QuarantinePlaces,
                Places(load.Quarantine, calendar.QuarantinePlaces)
            ),
        ];

    private static string Places(int taken, int there) =>
        FormattableString.Invariant($"{taken} of {there} places");

    /// <summary>A day as it is shown.</summary>
    /// <param name="Load">What is taken.</param>
    /// <param name="Rest">Why there is no work; empty where there is.</param>
    /// <param name="Meters">What is taken, drawn.</param>
    /// <param name="People">Tasks by who does them.</param>
    private sealed record WeekDay(
        PlanLoad Load,
        string Rest,
        DayMeter[] Meters,
        IEnumerable<IGrouping<string, DayTask>> People
    );

    /// <summary>A bar of what is taken.</summary>
    /// <param name="Name">Of what.</param>
    /// <param name="Percent">How much, at most 100.</param>
    /// <param name="IsOver">True where more is taken than there is.</param>
    /// <param name="Words">The same in words.</param>
    private sealed record DayMeter(string Name, string Percent, bool IsOver, string Words)
    {
        public static DayMeter From(string name, double taken, double there, string words) =>
            new(
                name,
                (there <= 0 ? (taken > 0 ? 100 : 0) : Math.Min(100, 100 * taken / there)).ToString(
                    "0",
                    CultureInfo.InvariantCulture
                ),
                taken > there,
                words
            );
    }
}
