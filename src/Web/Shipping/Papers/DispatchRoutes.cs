using Litterfall.Dispatch.Evidence;
using Litterfall.Dispatch.Packing;
using Litterfall.Documents.Calendar;
using Litterfall.Documents.Shop.Dispatch;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Shop;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Shipping.Papers;

/// <summary>Papers, files and evidence of parcels, and their calendar.</summary>
internal static class DispatchRoutes
{
    private const int DaysAhead = 60;

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/dispatch/{number:int}/paper/{name}", PaperAsync);
        app.MapGet("/dispatch/{number:int}/file/{sha256}", FileAsync);
        app.MapGet("/dispatch/{number:int}/evidence.zip", EvidenceAsync);
        app.MapGet("/dispatch.ics", CalendarAsync);
    }

    private static async Task<IResult> PaperAsync(
        int number,
        string name,
        DispatchDesk desk,
        BenchStore store,
        [AsParameters] StockAsk ask,
        HttpContext context
    )
    {
        var view = await desk.LoadAsync(context.RequestAborted);
        if (await desk.ClearedAsync(number, ask.Us == "true", context.RequestAborted) is not { } cleared)
        {
            return Results.NotFound();
        }

        if (
            name is ("cup-labels.pdf" or "carton-label.pdf")
            && DispatchDesk.LabelRefusal(view, cleared) is { } refusal
        )
        {
            return Results.Text($"{refusal}\n", statusCode: StatusCodes.Status409Conflict);
        }

        var shop = view.Stock.Terms ?? new ShopTerms { Name = "Workshop" };
        var logo = shop.Logo is { } sign ? await store.FileAsync(sign, context.RequestAborted) : null;
        var all = ShipPapers.Write(
            ask.Shared(view.Stock),
            cleared,
            shop,
            [.. logo ?? []],
            AnimalPapers.Caution
        );
        if (all.FirstOrDefault(p => p.Name == name) is { } paper)
        {
            return name.EndsWith(".txt", StringComparison.Ordinal)
                ? Results.File(paper.Bytes, "text/plain; charset=utf-8")
                : StockRoutes.Shown(paper);
        }

        return Results.NotFound();
    }

    /// <summary>A file of the evidence; only those that a link of this parcel names.</summary>
    private static async Task<IResult> FileAsync(
        int number,
        string sha256,
        DispatchDesk desk,
        CancellationToken cancel
    )
    {
        var links = await desk.LinksAsync(number, cancel);
        var file = links.SelectMany(l => l.Files).FirstOrDefault(f => f.Sha256 == sha256);
        if (file is null || await desk.FileAsync(sha256, cancel) is not { } bytes)
        {
            return Results.NotFound();
        }

        return file.Name.EndsWith(".jpg", StringComparison.Ordinal)
            ? Results.File(bytes, "image/jpeg")
            : Results.File(bytes, "application/octet-stream", file.Name.Split('/')[^1]);
    }

    private static async Task<IResult> EvidenceAsync(
        int number,
        DispatchDesk desk,
        CancellationToken cancel
    ) =>
        await desk.ExportAsync(number, cancel) is { } zip
            ? Results.File(zip, "application/zip", EvidenceExport.FileName(number))
            : Results.NotFound();

    /// <summary>Parcels as a calendar: what leaves, what should have arrived, claims to answer.</summary>
    private static async Task<IResult> CalendarAsync(DispatchDesk desk, CancellationToken cancel)
    {
        var view = await desk.LoadAsync(cancel);
        var tasks = await desk.TasksAsync((view.Today, view.Today.AddDays(DaysAhead)), false, cancel);
        return Results.File(
            TaskCalendar.Write(tasks, "-//Litterfall//Parcels//EN", view.Today),
            CalendarFile.MediaType,
            "parcels.ics"
        );
    }
}
