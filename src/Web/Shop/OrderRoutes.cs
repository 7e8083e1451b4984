using System.Collections.Immutable;
using System.Text;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Tables;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Orders;
using Litterfall.Workshop.Quoting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Shop;

/// <summary>Papers of orders, pictures of frozen versions, and the journal.</summary>
public static class OrderRoutes
{
    private static readonly StillWish Still = new(1200, 930);

    /// <summary>Puts the routes in.</summary>
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/quote/{number:int}.pdf", QuoteAsync);
        app.MapGet("/quote/{number:int}/confirmation.pdf", ConfirmationAsync);
        app.MapGet("/issued/{kind}/{number:int}.pdf", IssuedAsync);
        app.MapGet("/journal.csv", JournalAsync);
        app.MapGet("/order-picture/{id:guid}/{version:int}.svg", SmallAsync);
    }

    private static async Task<IResult> QuoteAsync(
        int number,
        string? sheet,
        BenchStore store,
        StillShelf stills,
        CancellationToken cancel
    ) =>
        await store.QuoteAsync(number, cancel) is { } quote
            ? Shown(
                QuotePaper.Write(
                    quote,
                    await WishAsync(quote, sheet, store, stills, cancel),
                    [.. quote.Options.Select(o => SumRules.Deposit(quote.Shop, o.Gross))]
                )
            )
            : Results.NotFound();

    private static async Task<IResult> ConfirmationAsync(
        int number,
        string? sheet,
        BenchStore store,
        StillShelf stills,
        CancellationToken cancel
    ) =>
        await store.QuoteAsync(number, cancel) is { } quote
        && (await store.OrderAsync(quote.Order, cancel))?.Value is { } order
        && order.AcceptedQuote == number
            ? Shown(
                OrderConfirmation.Write(order, quote, await WishAsync(quote, sheet, store, stills, cancel))
            )
            : Results.NotFound();

    private static async Task<IResult> IssuedAsync(
        string kind,
        int number,
        string? sheet,
        BenchStore store,
        CancellationToken cancel
    )
    {
        var paper = (await store.InvoicesAsync(null, cancel)).FirstOrDefault(i =>
            i.Number == number && string.Equals(i.Kind.ToString(), kind, StringComparison.OrdinalIgnoreCase)
        );
        if (paper is null)
        {
            return Results.NotFound();
        }

        var wish = new ShopWish(Size(sheet), await LogoAsync(paper.Shop, store, cancel));
        return Shown(
            paper.Kind == IssuedKind.Delivery
                ? DeliveryNotePaper.Write(paper, wish)
                : InvoicePaper.Write(paper, wish)
        );
    }

    private static async Task<IResult> JournalAsync(
        DateOnly? from,
        DateOnly? to,
        string? @decimal,
        BenchStore store,
        CancellationToken cancel
    )
    {
        bool Within(DateOnly day) => !(day < from) && !(day > to);
        var names = (await OrderBook.AllAsync<Customer>(store, cancel)).ToDictionary(
            c => c.Key,
            c => c.Name,
            StringComparer.Ordinal
        );
        var paid = (await OrderBook.AllAsync<Order>(store, cancel)).SelectMany(o =>
            o.Payments.Where(p => Within(p.Day))
                .Select(p => (o, names.GetValueOrDefault(o.Customer) ?? o.Customer, p))
        );
        var terms = (await OrderBook.TermsAsync(store, cancel)).Terms;
        var bytes = JournalTable.Write(
            (await store.InvoicesAsync(null, cancel)).Where(i => Within(i.Day)),
            paid,
            terms.Currency,
            @decimal == "comma" ? CsvStyle.Semicolon : CsvStyle.Invariant
        );
        return Results.File(bytes, CsvTable.MediaType, "journal.csv");
    }

    /// <summary>A frozen version never changes, but the library it is drawn with may.</summary>
    private static async Task<IResult> SmallAsync(
        Guid id,
        int version,
        BenchStore store,
        SmallDrawings small,
        HttpContext context
    )
    {
        if (
            await store.DesignAsync(id, version, context.RequestAborted) is not { } design
            || small.Svg(design.Name, design.Text) is not { } svg
        )
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = "private, max-age=86400";
        return Results.Text(svg, "image/svg+xml", Encoding.UTF8);
    }

    private static async Task<ShopWish> WishAsync(
        Quote quote,
        string? sheet,
        BenchStore store,
        StillShelf stills,
        CancellationToken cancel
    )
    {
        var still = quote.Design is { } design
            ? await stills.PngAsync(
                design,
                quote.Version,
                Still with
                {
                    HasAnimals = quote.Options.Any(o => o.HasAnimals),
                },
                cancel
            )
            : null;
        return new(Size(sheet), await LogoAsync(quote.Shop, store, cancel))
        {
            Picture = still is { } shown ? [.. shown.Png] : [],
        };
    }

    private static async Task<ImmutableArray<byte>> LogoAsync(
        ShopTerms shop,
        BenchStore store,
        CancellationToken cancel
    ) => shop.Logo is { } name && await store.FileAsync(name, cancel) is { } file ? [.. file] : [];

    private static PaperSize Size(string? sheet) => sheet == "letter" ? PaperSize.Letter : PaperSize.A4;

    private static IResult Shown(PaperFile paper) => Results.File(paper.Bytes, "application/pdf");
}
