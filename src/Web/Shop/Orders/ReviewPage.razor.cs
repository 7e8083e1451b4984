using System.Globalization;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;

namespace Litterfall.Web.Shop.Orders;

/// <summary>What delivered orders earned, and what they teach about hours.</summary>
public sealed partial class ReviewPage
{
    private Seq<LaborProposal> proposals = [];
    private List<Result> results = [];
    private string? fault;
    private string? told;
    private ShopTerms? terms;
    private int version;

    private string Summary
    {
        get
        {
            var net = results.Sum(r => r.Quoted.Net);
            var profit = results.Sum(r => r.Actual.Sheet.Profit);
            return results.Count == 0
                ? "None yet."
                : $"{OrderBook.Key(results.Count)} delivered for {OrderText.Money(net)} "
                    + $"before tax; {OrderText.Money(profit)} were earned, "
                    + $"{OrderShow.Percent(net > 0 ? 100 * profit / net : null)} of it.";
        }
    }

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => ReadAsync();

    private async Task ReadAsync()
    {
        var stock = StockPicture.Read(await Shelf.BookAsync(), Shelf.Today);
        var names = (await OrderBook.AllAsync<Customer>(Store)).ToDictionary(c => c.Key, c => c.Name);
        results = [];
        foreach (var order in await OrderBook.AllAsync<Order>(Store))
        {
            if (
                order.State is OrderState.Delivered or OrderState.Closed
                && order.AcceptedQuote is { } number
                && await Store.QuoteAsync(number) is { } quote
            )
            {
                results.Add(
                    new(
                        order,
                        names.GetValueOrDefault(order.Customer) ?? order.Customer,
                        quote,
                        ActualCost.Compare(order, quote, stock.UsedBy(order.Number))
                    )
                );
            }
        }

        results = [.. results.OrderByDescending(r => r.Order.Number)];
        var kept = await Store.RecordAsync<ShopTerms>(ShopTerms.Key);
        (terms, version) = (kept?.Value, kept?.Version ?? 0);
        proposals = LaborLearning.Propose(
            terms?.Labor ?? [],
            LaborLearning.Samples(results.Select(r => (r.Order, r.Quote)))
        );
    }

    private async Task TakeAsync(LaborProposal proposal)
    {
        var words = $"{proposal.Stage.Name}: {Minutes(proposal.Taken.Minutes)} min from finished orders";
        fault = await Attempt.AtAsync(async () =>
        {
            var next = terms! with
            {
                Labor = [.. terms.Labor.Select(s => s.Key == proposal.Stage.Key ? proposal.Taken : s)],
            };
            await Store.WriteAsync(
                new ShopChange(await OrderBook.WhoAsync(Store)).Keep(ShopTerms.Key, version, next, words)
            );
        });
        await ReadAsync();
        told = fault is null ? $"Taken. {words}. New quotes count with it; sent ones stay." : null;
    }

    private static string Minutes(double minutes) => minutes.ToString("0.0", CultureInfo.InvariantCulture);

    private sealed record Result(Order Order, string Customer, Quote Quote, ActualCost Actual)
    {
        public QuoteOption Quoted => Quote.Options[Order.AcceptedOption];

        public decimal? QuotedMargin =>
            Quoted.Net > 0 ? 100 * (Quoted.Net - Quoted.Cost.Total - Quoted.Cost.Fee) / Quoted.Net : null;
    }
}
