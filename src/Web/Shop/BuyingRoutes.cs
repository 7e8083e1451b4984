using System.Globalization;
using Litterfall.Documents.Shop;
using Litterfall.Store;
using Litterfall.Web.Shop.Buying;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Shop;

/// <summary>Purchase lists.</summary>
internal static class BuyingRoutes
{
    public static void Map(IEndpointRouteBuilder app) =>
        app.MapGet("/shop/purchase/{number:int}.pdf", PurchaseAsync);

    private static async Task<IResult> PurchaseAsync(
        int number,
        [AsParameters] StockAsk ask,
        BenchStore store,
        HttpContext context
    )
    {
        var view = await ask.Shelf.LoadAsync(context.RequestAborted);
        var desk = await BuyingDesk.OpenAsync(store, ask.Shelf);
        var key = number.ToString(CultureInfo.InvariantCulture);
        return await desk.TextAsync(store, key) is { } text
            ? StockRoutes.Shown(PurchaseList.Write(ask.Shared(view), text))
            : Results.NotFound();
    }
}
