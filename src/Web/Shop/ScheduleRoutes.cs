using Litterfall.Documents.Calendar;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Shop.Schedule;
using Litterfall.Domain.Schedule;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Orders;
using Litterfall.Web.Shop.Schedule;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Scheduling;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Shop;

/// <summary>Papers of the plan, and its calendar file.</summary>
internal static class ScheduleRoutes
{
    private const int DaysOfWeek = 7;
    private const int MostDays = 31;

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/plan.ics", CalendarAsync);
        app.MapGet("/week.pdf", WeekAsync);
        app.MapGet("/people.pdf", PeopleAsync);
        app.MapGet("/tell.pdf", TellAsync);
    }

    private static async Task<IResult> CalendarAsync(PlanDesk desk, CancellationToken cancel) =>
        Results.File(
            PlanCalendar.Write((await desk.LoadAsync(cancel)).Plan),
            CalendarFile.MediaType,
            "workshop-plan.ics"
        );

    private static async Task<IResult> WeekAsync([AsParameters] PlanAsk ask, CancellationToken cancel)
    {
        var view = await ask.Desk.LoadAsync(cancel);
        var monday = WorkDays.Monday(WeekPage.Day(ask.Day) ?? view.Today);
        var tasks = await ask.Sources.FindAsync(view, monday, monday.AddDays(DaysOfWeek - 1), cancel);
        var loads = Enumerable
            .Range(0, DaysOfWeek)
            .Select(d => PlanLoad.Find(view.Plan, view.Calendar, monday.AddDays(d)))
            .Where(l => l.IsWork || tasks.Any(t => t.Day == l.Day));
        return Shown(
            SchedulePapers.Week(
                ask.Shared(view),
                [
                    .. loads.Select(l => new DayLoadText(
                        l.Day,
                        $"{OrderShow.Time(l.Minutes)} of {OrderShow.Time(l.MostMinutes)}",
                        FormattableString.Invariant($"{l.Bench} of {view.Calendar.BenchPlaces}"),
                        FormattableString.Invariant($"{l.Quarantine} of {view.Calendar.QuarantinePlaces}")
                    )),
                ],
                [.. tasks]
            )
        );
    }

    private static async Task<IResult> PeopleAsync([AsParameters] PlanAsk ask, CancellationToken cancel)
    {
        var view = await ask.Desk.LoadAsync(cancel);
        var first = WeekPage.Day(ask.Day) ?? view.Today;
        var days = Math.Clamp(ask.Days ?? 1, 1, MostDays);
        var tasks = await ask.Sources.FindAsync(view, first, first.AddDays(days - 1), cancel);
        return Shown(
            SchedulePapers.People(
                ask.Shared(view),
                [.. view.People],
                [.. tasks.Where(t => view.Done(t.Key) is null)]
            )
        );
    }

    private static async Task<IResult> TellAsync([AsParameters] PlanAsk ask, CancellationToken cancel)
    {
        var view = await ask.Desk.LoadAsync(cancel);
        return Shown(
            SchedulePapers.Tell(
                ask.Shared(view),
                [.. view.Plan.Moves.Where(m => !m.IsTold).Select(m => Line(view, m))]
            )
        );
    }

    private static TellLine Line(PlanView view, PlanMove move)
    {
        var order = view.Orders.FirstOrDefault(o => o.Number == move.Order);
        var customer = order is null ? null : view.Customers.GetValueOrDefault(order.Customer);
        string?[] reach = [customer?.Mail, customer?.Phone];
        return new(
            view.Name(move.Order),
            view.Customer(move.Order),
            string.Join(", ", reach.Where(r => !string.IsNullOrEmpty(r))),
            move.Was,
            move.Now,
            move.Why
        );
    }

    private static IResult Shown(PaperFile paper) => StockRoutes.Shown(paper);
}

/// <summary>How papers of the plan are asked for in an address.</summary>
/// <param name="Day">First day, or a day of the week.</param>
/// <param name="Days">How many days.</param>
/// <param name="Sheet">"letter", or A4.</param>
/// <param name="Desk">Reads the plan.</param>
/// <param name="Sources">Tasks of days.</param>
/// <param name="Options">Version of the program.</param>
internal sealed record PlanAsk(
    string? Day,
    int? Days,
    string? Sheet,
    PlanDesk Desk,
    TaskSources Sources,
    BenchOptions Options
)
{
    /// <summary>What the papers share.</summary>
    /// <param name="view">The plan.</param>
    public ShopSheet Shared(PlanView view) =>
        new(
            Sheet == "letter" ? PaperSize.Letter : PaperSize.A4,
            view.Terms.Name,
            view.Today,
            Options.Version
        );
}
