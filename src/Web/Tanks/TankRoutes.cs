using System.Globalization;
using Litterfall.Documents.Calendar;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Shop.Tanks;
using Litterfall.Running.Rounds;
using Litterfall.Running.Service;
using Litterfall.Web.Shop;
using Litterfall.Web.Tanks.Rounds;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Tanks;

/// <summary>Papers and the calendar of running tanks.</summary>
internal static class TankRoutes
{
    private const int DaysAhead = 60;

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/round.pdf", RoundAsync);
        app.MapGet("/tanks.ics", CalendarAsync);
    }

    private static async Task<IResult> RoundAsync(
        RoundDesk desk,
        [AsParameters] StockAsk ask,
        CancellationToken cancel
    )
    {
        var view = await desk.LoadAsync(cancel);
        return StockRoutes.Shown(
            RoundPaper.Write(
                ask.Shared(view.Tanks.Stock),
                new(
                    [.. view.Book.Tanks.Select(t => Line(view, t)).OfType<MorningLine>()],
                    [.. view.Book.Findings.Select(f => $"{f.Tank}: {f.Words}")],
                    [.. await desk.AdviceAsync(view, cancel)],
                    []
                )
            )
        );
    }

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
                .Select(c => $"{c.Count.ToString(CultureInfo.InvariantCulture)} {view.Tanks.NameOf(c.Species)}")
        );

    private static async Task<IResult> CalendarAsync(RoundDesk desk, CancellationToken cancel)
    {
        var view = await desk.LoadAsync(cancel);
        var today = view.Book.Today;
        return Results.File(
            TaskCalendar.Write(
                RoundTasks.Find(view.Book, today, today.AddDays(DaysAhead)),
                "-//Litterfall//Reminders of tanks//EN",
                today
            ),
            CalendarFile.MediaType,
            "tanks.ics"
        );
    }
}
