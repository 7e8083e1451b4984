using System.Globalization;
using Litterfall.Documents.Calendar;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Shop.Tanks;
using Litterfall.Running.Rounds;
using Litterfall.Running.Service;
using Litterfall.Running.Visits;
using Litterfall.Store;
using Litterfall.Web.Shop;
using Litterfall.Web.Tanks.Register;
using Litterfall.Web.Tanks.Rounds;
using Litterfall.Web.Tanks.Visits;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Tanks.Papers;

/// <summary>Papers and the calendar of running tanks.</summary>
internal static class TankRoutes
{
    private const int DaysAhead = 60;

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/round.pdf", RoundAsync);
        app.MapGet("/tanks.ics", CalendarAsync);
        app.MapGet("/register.pdf", RegisterAsync);
        app.MapGet("/register.csv", TableAsync);
        app.MapGet("/visit/{number:int}.pdf", VisitAsync);
    }

    private static async Task<IResult> RoundAsync(
        RoundDesk desk,
        VisitDesk visits,
        [AsParameters] StockAsk ask,
        CancellationToken cancel
    )
    {
        var view = await desk.LoadAsync(cancel);
        var today = await visits.LoadAsync(cancel);
        return StockRoutes.Shown(
            RoundPaper.Write(
                ask.Shared(view.Tanks.Stock),
                new(
                    [.. view.Book.Tanks.Select(t => Line(view, t)).OfType<MorningLine>()],
                    [.. view.Book.Findings.Select(f => $"{f.Tank}: {f.Words}")],
                    [.. await desk.AdviceAsync(view, cancel)],
                    [
                        .. today
                            .Coming(0)
                            .Select(v =>
                                $"{today.Customer(v.Contract.Customer)}: {string.Join(", ", v.Contract.Tanks)}"
                            ),
                    ]
                )
            )
        );
    }

    private static async Task<IResult> RegisterAsync(
        DateOnly? from,
        DateOnly? until,
        RegisterDesk desk,
        [AsParameters] StockAsk ask,
        CancellationToken cancel
    )
    {
        var view = await desk.LoadAsync(from, until, cancel);
        return StockRoutes.Shown(RegisterPaper.Write(ask.Shared(view.Tanks.Stock), view.Text()));
    }

    private static async Task<IResult> VisitAsync(
        int number,
        string? sheet,
        VisitDesk desk,
        BenchStore store,
        CancellationToken cancel
    )
    {
        if (await desk.ReportAsync(number, cancel) is not { } report)
        {
            return Results.NotFound();
        }

        var logo = report.Shop.Logo is { } name ? await store.FileAsync(name, cancel) : null;
        var size = sheet == "letter" ? PaperSize.Letter : PaperSize.A4;
        return StockRoutes.Shown(VisitPaper.Write(report, new ShopWish(size, [.. logo ?? []])));
    }

    private static async Task<IResult> TableAsync(
        DateOnly? from,
        DateOnly? until,
        RegisterDesk desk,
        CancellationToken cancel
    ) =>
        Results.File(
            RegisterPaper.Csv((await desk.LoadAsync(from, until, cancel)).Text()),
            "text/csv; charset=utf-8",
            "register.csv"
        );

    private static MorningLine? Line(RoundView view, RoundTank tank)
    {
        var due = view.Book.For(tank.Tank.Code).OrderBy(i => i.Rank).ToList();
        return due.Count == 0
            ? null
            : new(
                Place(view, tank),
                tank.Tank.Code,
                Lives(view, tank),
                string.Join("; ", due.Select(Told)),
                due.Any(i => i.On(view.Book.Today) == RoundWeight.Late)
            );
    }

    private static string Told(RoundItem item) =>
        item.Task == RoundPractice.Drain ? $"draw water off ({item.Why})"
        : item.IsFinding ? item.What.ToLowerInvariant()
        : item.What.Split(',')[0].ToLowerInvariant();

    private static string Place(RoundView view, RoundTank tank)
    {
        var place = tank.Tank.Place;
        return place.Rack.Length > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{place.Rack}, shelf {place.Shelf}")
            : view.Tanks.PlaceOf(tank.Tank);
    }

    private static string Lives(RoundView view, RoundTank tank) =>
        string.Join(
            ", ",
            AnimalCounts
                .Find(tank.Lines)
                .Where(c => c.Count > 0)
                .Select(c => CareTelling.Count(c.Count, view.Tanks.NameOf(c.Species)))
        );

    private static async Task<IResult> CalendarAsync(
        RoundDesk desk,
        VisitDesk visits,
        CancellationToken cancel
    )
    {
        var view = await desk.LoadAsync(cancel);
        var today = view.Book.Today;
        var shown = await visits.LoadAsync(cancel);
        return Results.File(
            TaskCalendar.Write(
                [
                    .. RoundTasks.Find(view.Book, today, today.AddDays(DaysAhead)),
                    // A calendar is read by many: customers are named on our pages alone.
                    .. VisitPlan.Tasks(shown.Coming(DaysAhead), _ => "customer", today),
                ],
                "-//Litterfall//Reminders of tanks//EN",
                today
            ),
            CalendarFile.MediaType,
            "tanks.ics"
        );
    }
}
