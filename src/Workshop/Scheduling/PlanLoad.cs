using Litterfall.Domain.Schedule;

namespace Litterfall.Workshop.Scheduling;

/// <summary>How much of hands and places a plan takes on a day.</summary>
/// <param name="Day">The day.</param>
/// <param name="IsWork">Whether there is work.</param>
/// <param name="Minutes">Minutes of planned work.</param>
/// <param name="MostMinutes">Minutes that are worked.</param>
/// <param name="Bench">Places on the shelf that are taken.</param>
/// <param name="Quarantine">Places in quarantine that are taken.</param>
public sealed record PlanLoad(
    DateOnly Day,
    bool IsWork,
    double Minutes,
    double MostMinutes,
    int Bench,
    int Quarantine
)
{
    /// <summary>The load of a day.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="calendar">Days of the workshop.</param>
    /// <param name="day">The day.</param>
    public static PlanLoad Find(ShopPlan plan, ShopCalendar calendar, DateOnly day)
    {
        var live = plan.Orders.Where(o => o.Tasks.Any(t => !t.IsCancelled)).ToList();
        return new(
            day,
            calendar.IsWork(day),
            live.SelectMany(o => o.Tasks)
                .Where(t => !t.IsCancelled && t.Task.Day == day)
                .Sum(t => t.Task.Minutes),
            calendar.Minutes(day),
            live.Where(o => o.Days.Plant <= day && day <= o.Days.Pack).Sum(o => o.BenchPlaces),
            live.Where(o => o.Days.PlantsIn <= day && day < o.Days.Plant).Sum(o => o.QuarantinePlaces)
        );
    }
}
