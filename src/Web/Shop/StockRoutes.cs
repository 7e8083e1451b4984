using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;
using Litterfall.Web.Shop.Batches;
using Litterfall.Web.Shop.Kits;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Stock;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Shop;

/// <summary>Labels and lists of the store room, and the address that codes on labels lead to.</summary>
internal static class StockRoutes
{
    private const string Scanned = "/L/";

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/l/{code}", Scan);
        app.MapGet("/shop/lot/{id}/label.pdf", LabelAsync);
        app.MapGet("/shop/lot/{id}/recall.pdf", RecallAsync);
        app.MapGet("/shop/labels.pdf", LabelsAsync);
        app.MapGet("/shop/count.pdf", CountAsync);
        app.MapGet("/shop/batches/{recipe}/cards.pdf", CardsAsync);
        app.MapGet("/shop/batch/{lot}/labels.pdf", BatchLabelsAsync);
        app.MapGet("/shop/kits/{order:int}/{paper}.pdf", KitAsync);
    }

    /// <summary>A code on a label, scanned with the camera of a phone, opens its lot.</summary>
    private static IResult Scan(string code) => Results.Redirect($"/stock/lot/{Uri.EscapeDataString(code)}");

    private static async Task<IResult> LabelAsync(string id, [AsParameters] StockAsk ask, HttpContext context)
    {
        var (view, papers) = await ReadAsync(ask, context);
        return view.Book.Find(id) is { } lot
            ? Shown(papers.Labels([papers.Label(lot)], ask.Cut == "true"))
            : Results.NotFound();
    }

    /// <summary>Labels of the lots that came on a day.</summary>
    private static async Task<IResult> LabelsAsync(
        string? lots,
        [AsParameters] StockAsk ask,
        HttpContext context
    )
    {
        var (view, papers) = await ReadAsync(ask, context);
        var found = (lots ?? "").Split(',').Select(view.Book.Find).OfType<LotAccount>().ToList();
        return found.Count > 0
            ? Shown(papers.Labels(found.Select(papers.Label), ask.Cut == "true"))
            : Results.NotFound();
    }

    private static async Task<IResult> RecallAsync(
        string id,
        [AsParameters] StockAsk ask,
        HttpContext context
    )
    {
        var (view, papers) = await ReadAsync(ask, context);
        return Recall.Trace(view.Book, id) is { } recall ? Shown(papers.Recall(recall)) : Results.NotFound();
    }

    private static async Task<IResult> CountAsync([AsParameters] StockAsk ask, HttpContext context) =>
        Shown((await ReadAsync(ask, context)).Papers.Count());

    private static async Task<IResult> CardsAsync(
        string recipe,
        double? more,
        BatchDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    )
    {
        var view = await desk.LoadAsync(context.RequestAborted);
        var papers = ask.Papers(view.Stock, context);
        return
            view.Recipes.FirstOrDefault(r => r.Key == recipe) is { } entry
            && new BatchPapers(view, ask.Shared(view.Stock), papers).Cards(entry, Math.Max(0, more ?? 0))
                is { } cards
            ? Shown(cards)
            : Results.NotFound();
    }

    private static async Task<IResult> BatchLabelsAsync(
        string lot,
        BatchDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    )
    {
        var view = await desk.LoadAsync(context.RequestAborted);
        return
            view.Batches.FirstOrDefault(b => b.Value.Lot == lot)?.Value is { } batch
            && view.Stock.Book.Find(lot) is { } account
            ? Shown(
                new BatchPapers(view, ask.Shared(view.Stock), ask.Papers(view.Stock, context)).Labels(
                    batch,
                    account,
                    ask.Cut == "true"
                )
            )
            : Results.NotFound();
    }

    private static async Task<IResult> KitAsync(
        int order,
        string paper,
        KitDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    )
    {
        if (await desk.LoadAsync(order, context.RequestAborted) is not { } view)
        {
            return Results.NotFound();
        }

        var sheets = new KitSheets(view, ask.Shared(view.Stock), ask.Papers(view.Stock, context));
        var written = paper switch
        {
            "pick" => sheets.Pick(),
            "bags" => sheets.Bags(ask.Cut == "true"),
            "packing" => sheets.Packing(),
            "leaflet" => sheets.Leaflet(),
            _ => null,
        };
        return written is null ? Results.NotFound() : Shown(written);
    }

    private static async Task<(StockView View, StockPapers Papers)> ReadAsync(
        StockAsk ask,
        HttpContext context
    )
    {
        var view = await ask.Shelf.LoadAsync(context.RequestAborted);
        return (view, ask.Papers(view, context));
    }

    /// <summary>Address for codes: that of the page, or one that other machines reach.</summary>
    internal static string Link(HttpContext context, BenchPlace place)
    {
        var host = context.Request.Host;
        var isHere = host.Host is "localhost" or "127.0.0.1" or "[::1]" or "::1";
        return !isHere ? $"{context.Request.Scheme}://{host}{Scanned}"
            : place.Urls.FirstOrDefault() is { } url ? $"{url.TrimEnd('/')}{Scanned}"
            : "";
    }

    internal static IResult Shown(PaperFile paper) => Results.File(paper.Bytes, "application/pdf");
}

/// <summary>How papers of stock are asked for in an address, and what they are made from.</summary>
/// <param name="Sheet">"letter", or A4.</param>
/// <param name="Us">"true" for gallons and pounds.</param>
/// <param name="Cut">"true" for labels on sheets to cut out.</param>
/// <param name="Shelf">The book of stock.</param>
/// <param name="Place">Where other machines reach the bench.</param>
/// <param name="Options">Version of the program.</param>
internal sealed record StockAsk(
    string? Sheet,
    string? Us,
    string? Cut,
    StockShelf Shelf,
    BenchPlace Place,
    BenchOptions Options
)
{
    /// <summary>What the papers share.</summary>
    /// <param name="view">Stock.</param>
    public ShopSheet Shared(StockView view) =>
        new(
            Sheet == "letter" ? PaperSize.Letter : PaperSize.A4,
            view.Terms?.Name ?? "Workshop",
            Shelf.Today,
            Options.Version
        )
        {
            IsUs = Us == "true",
        };

    /// <summary>Papers of stock as it is now.</summary>
    /// <param name="view">Stock.</param>
    /// <param name="context">Who asks, and at which address.</param>
    public StockPapers Papers(StockView view, HttpContext context) =>
        new(view, Shared(view), StockRoutes.Link(context, Place));
}
