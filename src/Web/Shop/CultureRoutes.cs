using Litterfall.Web.Shop.Cultures;
using Litterfall.Web.Shop.Nursery;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Shop;

/// <summary>Papers of cultures and of plants.</summary>
internal static class CultureRoutes
{
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/shop/cultures/round.pdf", RoundAsync);
        app.MapGet("/shop/cultures/labels.pdf", LabelsAsync);
        app.MapGet("/shop/nursery/round.pdf", PlantRoundAsync);
        app.MapGet("/shop/nursery/labels.pdf", PlantLabelsAsync);
    }

    private static async Task<IResult> RoundAsync(
        CultureDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    ) => StockRoutes.Shown((await CulturesAsync(desk, ask, context)).Round());

    private static async Task<IResult> LabelsAsync(
        string? only,
        CultureDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    ) =>
        (await CulturesAsync(desk, ask, context)).Labels(only, ask.Cut == "true") is { } labels
            ? StockRoutes.Shown(labels)
            : Results.NotFound();

    private static async Task<IResult> PlantRoundAsync(
        NurseryDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    ) => StockRoutes.Shown((await PlantsAsync(desk, ask, context)).Round());

    private static async Task<IResult> PlantLabelsAsync(
        string? only,
        NurseryDesk desk,
        [AsParameters] StockAsk ask,
        HttpContext context
    ) =>
        (await PlantsAsync(desk, ask, context)).Labels(only, ask.Cut == "true") is { } labels
            ? StockRoutes.Shown(labels)
            : Results.NotFound();

    private static async Task<CulturePapers> CulturesAsync(
        CultureDesk desk,
        StockAsk ask,
        HttpContext context
    )
    {
        var view = await desk.LoadAsync(context.RequestAborted);
        return new(view, ask.Shared(view.Stock), ask.Papers(view.Stock, context));
    }

    private static async Task<NurseryPapers> PlantsAsync(NurseryDesk desk, StockAsk ask, HttpContext context)
    {
        var view = await desk.LoadAsync(context.RequestAborted);
        return new(view, ask.Shared(view.Stock), ask.Papers(view.Stock, context));
    }
}
