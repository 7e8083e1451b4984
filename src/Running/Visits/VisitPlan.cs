using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Rounds;

namespace Litterfall.Running.Visits;

/// <summary>A visit that comes.</summary>
/// <param name="Contract">The contract.</param>
/// <param name="Due">Day it is due.</param>
public sealed record ComingVisit(VisitContract Contract, DateOnly Due);

/// <summary>When visits are due, what is looked at, and what they cost.</summary>
public static class VisitPlan
{
    private const int DaysPerWeek = 7;

    // Own choice until worked hours say better: the way, and each tank.
    private const double MinutesOfWay = 40;
    private const double MinutesPerTank = 30;

    /// <summary>Day of the next visit; null where the contract has ended.</summary>
    /// <param name="contract">The contract.</param>
    /// <param name="visits">Visits that were made.</param>
    public static DateOnly? Next(VisitContract contract, IEnumerable<TankVisit> visits)
    {
        var last = visits.Where(v => v.Contract == contract.Number).Max(v => (DateOnly?)v.Due);
        var due = last is { } day ? day.AddDays(contract.EveryWeeks * DaysPerWeek) : contract.Start;
        return due > contract.End ? null : due;
    }

    /// <summary>Visits up to a day, in the order of the route of each day.</summary>
    /// <param name="contracts">Contracts.</param>
    /// <param name="visits">Visits that were made.</param>
    /// <param name="until">Last day.</param>
    public static ImmutableArray<ComingVisit> Coming(
        IEnumerable<VisitContract> contracts,
        IReadOnlyCollection<TankVisit> visits,
        DateOnly until
    )
    {
        var all = new List<ComingVisit>();
        foreach (var contract in contracts)
        {
            for (
                var due = Next(contract, visits);
                due is { } day && day <= until && !(day > contract.End);
                due = day.AddDays(contract.EveryWeeks * DaysPerWeek)
            )
            {
                all.Add(new(contract, day));
            }
        }

        return [.. all.OrderBy(v => v.Due).ThenBy(v => v.Contract.Route).ThenBy(v => v.Contract.Number)];
    }

    /// <summary>Visits as tasks of days; a late one stands on the first.</summary>
    /// <param name="coming">Visits.</param>
    /// <param name="customer">Name of a customer by its key.</param>
    /// <param name="from">First day.</param>
    public static IEnumerable<DayTask> Tasks(
        IEnumerable<ComingVisit> coming,
        Func<string, string> customer,
        DateOnly from
    ) =>
        coming.Select(v => new DayTask
        {
            Key = string.Create(CultureInfo.InvariantCulture, $"visit-{v.Contract.Number}-{v.Due:yyyyMMdd}"),
            Day = v.Due < from ? from : v.Due,
            Kind = TaskKind.Care,
            Title = $"Visit {customer(v.Contract.Customer)}",
            Detail = string.Join(", ", v.Contract.Tanks),
            Minutes = MinutesOfWay + (MinutesPerTank * v.Contract.Tanks.Count),
            Page = string.Create(CultureInfo.InvariantCulture, $"/visits/{v.Contract.Number}"),
            IsFirm = true,
        });

    /// <summary>What is done on a visit: what always is, and what a tank needs before the next one.</summary>
    /// <param name="contract">The contract.</param>
    /// <param name="book">The round of its tanks.</param>
    /// <param name="day">Day of the visit.</param>
    public static ImmutableArray<VisitStep> Steps(VisitContract contract, RoundBook book, DateOnly day)
    {
        var next = day.AddDays(contract.EveryWeeks * DaysPerWeek);
        return
        [
            .. book.Tanks.SelectMany(t =>
            {
                var code = t.Tank.Code;
                var due = book
                    .All.Where(i => i.Tank == code && i.Due < next && i.Task != RoundPractice.Look)
                    .OrderBy(i => i.Rank)
                    .Select(i => new VisitStep(code, i.Task, i.What, false, ""));
                return due.Prepend(
                        new VisitStep(
                            code,
                            RoundPractice.Look,
                            "Look at every animal and the plants",
                            false,
                            ""
                        )
                    )
                    .Append(new VisitStep(code, "glass", "Wipe the front glass with water only", false, ""));
            }),
        ];
    }
}
