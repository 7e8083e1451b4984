using Litterfall.Web.Sharing;
using Litterfall.Web.Shop.Cutting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Shop;

/// <summary>Cut sheets, labels and files of cutting plans.</summary>
internal static class CuttingRoutes
{
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/shop/cutting/{number:int}/sheets.pdf", SheetsAsync);
        app.MapGet("/shop/cutting/{number:int}/labels.pdf", LabelsAsync);
        app.MapGet("/shop/cutting/{number:int}/files.zip", FilesAsync);
    }

    private static async Task<IResult> SheetsAsync(
        int number,
        CuttingDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    ) =>
        await FindAsync(number, desk, ask.Place, context) is var (view, papers)
            ? StockRoutes.Shown(papers.Pdf(ask.Shared(view.Stock)))
            : Results.NotFound();

    private static async Task<IResult> LabelsAsync(
        int number,
        CuttingDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    ) =>
        await FindAsync(number, desk, ask.Place, context) is var (view, papers)
            ? StockRoutes.Shown(papers.Labels(ask.Shared(view.Stock), ask.Cut == "true"))
            : Results.NotFound();

    private static async Task<IResult> FilesAsync(
        int number,
        CuttingDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    ) =>
        await FindAsync(number, desk, ask.Place, context) is var (_, papers)
            ? Results.File(
                papers.Zip(),
                "application/zip",
                FormattableString.Invariant($"cutting-plan-{number}.zip")
            )
            : Results.NotFound();

    /// <summary>Parts that were cut by hand have no sheets, and so no papers.</summary>
    private static async Task<(CuttingView View, CuttingPapers Papers)?> FindAsync(
        int number,
        CuttingDesk desk,
        BenchPlace place,
        HttpContext context
    )
    {
        var view = await desk.LoadAsync(context.RequestAborted);
        return view.Find(number) is { Value: { Plan.Sheets.Count: > 0 } job }
            ? (view, new CuttingPapers(view, job, Link(context, place)))
            : null;
    }

    /// <summary>Address that codes on labels lead to, up to the slash before "table" or "l".</summary>
    private static string Link(HttpContext context, BenchPlace place) =>
        StockRoutes.Link(context, place) is { Length: > 2 } scanned ? scanned[..^2].ToUpperInvariant() : "";
}
