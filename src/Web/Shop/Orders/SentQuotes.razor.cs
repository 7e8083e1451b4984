using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>Quotes that were sent, and which option was taken.</summary>
public sealed partial class SentQuotes
{
    /// <summary>The order.</summary>
    [Parameter, EditorRequired]
    public required OrderWork Work { get; set; }

    /// <summary>Told with null when something was written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    private string State(Quote quote) =>
        quote.Number == Work.Order.AcceptedQuote ? "accepted"
        : Work.Quotes.FirstOrDefault(q => q.Replaces == quote.Number) is { } next ? $"replaced by {next.Name}"
        : quote.ValidUntil < Work.Today ? $"was good until {OrderText.Day(quote.ValidUntil)}"
        : $"good until {OrderText.Day(quote.ValidUntil)}";

    private async Task AcceptAsync(Quote quote, int option)
    {
        var refusal = OrderQuotes.AcceptRefusal(Work.Order, Work.Quotes, quote.Number, option, Work.Today);
        if (refusal is not null)
        {
            await OnDone.InvokeAsync(refusal);
            return;
        }

        var taken = quote.Options[option];
        var words = Work.Option is { } before
            ? $"Change accepted ({quote.Name}, {taken.Name}): "
                + OrderChange
                    .Between((before, Work.Order.Promised), (taken, quote.Promised ?? Work.Order.Promised))
                    .Words
            : $"{taken.Name} of {quote.Name} accepted: {OrderText.Money(taken.Gross)}.";
        var order = OrderQuotes.Accepted(
            Work.Order,
            quote,
            option,
            SumRules.Deposit(quote.Shop, taken.Gross),
            await Work.ActAsync(words)
        );
        await OnDone.InvokeAsync(await Work.KeepAsync(order, words));
    }
}
