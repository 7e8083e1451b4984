using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Orders;

/// <summary>What a quote says beside its options.</summary>
/// <param name="Shop">Workshop as it stands.</param>
/// <param name="Customer">Customer as it stands.</param>
/// <param name="Day">Today.</param>
public sealed record QuoteHead(ShopTerms Shop, Customer Customer, DateOnly Day)
{
    /// <summary>Day promised for delivery; null for none.</summary>
    public DateOnly? Promised { get; init; }

    /// <summary>What the customer is told beside.</summary>
    public string Note { get; init; } = "";

    /// <summary>The quote it replaces; null for the first.</summary>
    public Quote? Replaces { get; init; }
}

/// <summary>
/// Sending quotes and recording what the customer took. A sent quote is only ever replaced.
/// </summary>
public static class OrderQuotes
{
    /// <summary>Why a quote cannot be sent, in one sentence; null where it can.</summary>
    /// <param name="order">The order.</param>
    /// <param name="head">What it says beside its options.</param>
    /// <param name="options">The options.</param>
    public static string? Refusal(Order order, QuoteHead head, IReadOnlyCollection<QuoteOption> options) =>
        order.State is OrderState.Delivered or OrderState.Closed or OrderState.Lost
            ? OrderSteps.Refusal(order, OrderState.Quoted)
        : options.Count == 0 ? "A quote needs at least one option."
        : options.Any(o => o.Gross <= 0) ? "An option costs nothing. Enter prices, or a price of your own."
        : head.Promised is { } day ? PromisedDay.Refusal(day, head.Day, null)
        : null;

    /// <summary>The quote under its number.</summary>
    /// <param name="number">Its running number.</param>
    /// <param name="order">The order.</param>
    /// <param name="head">What it says beside its options.</param>
    /// <param name="options">The options.</param>
    public static Quote Make(int number, Order order, QuoteHead head, IEnumerable<QuoteOption> options)
    {
        Seq<QuoteOption> all = [.. options];
        var pictured = all.SelectMany(o => o.Items).FirstOrDefault(i => i.Design is not null);
        return new()
        {
            Number = number,
            Name = IssuedName.From(head.Shop.QuotePrefix, number),
            Order = order.Number,
            Replaces = head.Replaces?.Number,
            Day = head.Day,
            ValidUntil = head.Day.AddDays(head.Shop.QuoteDays),
            Promised = head.Promised,
            Shop = head.Shop,
            Customer = head.Customer,
            Options = all,
            Design = pictured?.Design,
            Version = pictured?.Version ?? 0,
            Note = head.Note,
        };
    }

    /// <summary>
    /// The order once a quote was sent. What the customer agreed to before stands until the new one is taken.
    /// </summary>
    /// <param name="order">The order.</param>
    /// <param name="head">What the quote says.</param>
    /// <param name="act">Who and when; the note tells what was sent.</param>
    public static Order Sent(Order order, QuoteHead head, OrderAct act) =>
        (
            order.State is OrderState.Enquiry or OrderState.Quoted
                ? OrderSteps.Go(order, OrderState.Quoted, act) with
                {
                    Promised = head.Promised ?? order.Promised,
                }
                : OrderSteps.Told(order, act)
        ) with
        {
            QuotedUntil = head.Day.AddDays(head.Shop.QuoteDays),
        };

    /// <summary>Why an option cannot be recorded as taken, in one sentence; null where it can.</summary>
    /// <param name="order">The order.</param>
    /// <param name="quotes">Its quotes, the last first.</param>
    /// <param name="number">Number of the quote that was taken.</param>
    /// <param name="option">Index of the option.</param>
    /// <param name="today">Today.</param>
    public static string? AcceptRefusal(
        Order order,
        IReadOnlyList<Quote> quotes,
        int number,
        int option,
        DateOnly today
    )
    {
        var quote = quotes.FirstOrDefault(q => q.Number == number);
        return order.State is not OrderState.Quoted && !order.IsOpen
                ? OrderSteps.Refusal(order, OrderState.Accepted)
            : quote is null ? "There is no such quote for this order."
            : quotes[0].Number != number
                ? $"{quote.Name} was replaced by {quotes[0].Name}. Record the option of that one."
            : order.AcceptedQuote == number ? $"{quote.Name} is accepted already."
            : option < 0 || option >= quote.Options.Count ? $"{quote.Name} has no such option."
            : quote.ValidUntil < today
                ? $"{quote.Name} was good until {OrderText.Day(quote.ValidUntil)}. Send a new one."
            : quote.Promised is { } day && day < today
                ? $"{quote.Name} promises {OrderText.Day(day)}, which is over. Send a new one."
            : null;
    }

    /// <summary>The order once an option was taken: it holds that option's things, price and goods.</summary>
    /// <param name="order">The order.</param>
    /// <param name="quote">The quote.</param>
    /// <param name="option">Index of the option.</param>
    /// <param name="deposit">Deposit, with tax.</param>
    /// <param name="act">Who and when.</param>
    public static Order Accepted(Order order, Quote quote, int option, decimal deposit, OrderAct act)
    {
        var taken = quote.Options[option];
        var harm = order.Items.ToLookup(i => (i.Design, i.Version), i => i.Harm);
        var moved = order.IsOpen
            ? OrderSteps.Told(order, act)
            : OrderSteps.Go(order, OrderState.Accepted, act);
        return moved with
        {
            Items =
            [
                .. taken.Items.Select(i =>
                    i with
                    {
                        Harm = i.Harm ?? harm[(i.Design, i.Version)].FirstOrDefault(),
                    }
                ),
            ],
            Goods = taken.Goods,
            Net = taken.Net,
            Gross = taken.Gross,
            Deposit = order.IsOpen ? Math.Min(order.Deposit, taken.Gross) : deposit,
            Promised = quote.Promised ?? order.Promised,
            AcceptedQuote = quote.Number,
            AcceptedOption = option,
        };
    }
}
