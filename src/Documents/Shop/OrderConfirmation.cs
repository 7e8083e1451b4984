using System.Globalization;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Pdf;
using Litterfall.Domain.Trade;

namespace Litterfall.Documents.Shop;

/// <summary>What customer and workshop agreed on, once an option was taken.</summary>
public static class OrderConfirmation
{
    /// <summary>The paper.</summary>
    /// <param name="order">The order, accepted.</param>
    /// <param name="quote">The accepted quote.</param>
    /// <param name="wish">Sheet, sign and picture.</param>
    public static PaperFile Write(Order order, Quote quote, ShopWish wish)
    {
        var day = order.History.LastOrDefault(e => e.State == OrderState.Accepted) is { } taken
            ? DateOnly.FromDateTime(taken.At)
            : quote.Day;
        var name = quote.Shop.OrderPrefix + order.Number.ToString(CultureInfo.InvariantCulture);
        var head = new ShopHead(
            "Order confirmation",
            quote.Shop,
            quote.Customer,
            [("Order", name), ("Date", ShopWords.Day(day)), ("By our quote", quote.Name)]
        );
        return new(
            $"order-{name}.pdf",
            CustomerLetter.Sides(wish, head, _ => Blocks(order, quote, wish)),
            pages => PdfWriter.Write($"Order confirmation {name}", day, pages)
        );
    }

    private static List<Block> Blocks(Order order, Quote quote, ShopWish wish)
    {
        var option = quote.Options[order.AcceptedOption];
        var currency = quote.Shop.Currency;
        return
        [
            new BesidePicture(
                [
                    new Words($"Thank you for your order. You chose: {option.Name}.")
                    {
                        Bold = true,
                        After = 2,
                    },
                    new Words(option.Changes) { After = 2 },
                    new Words(
                        order.Promised is { } promised
                            ? $"Delivery by {ShopWords.Day(promised)}."
                            : "We tell you the day of delivery as soon as it is known."
                    )
                    {
                        After = 2,
                    },
                    .. order.Terms.Length > 0 ? new Block[] { new Words(order.Terms) } : [],
                ],
                wish.Picture
            ),
            .. ShopTables.Lines(option.Lines, isNarrow: false),
            .. ShopTables.Sums(option, quote.Shop),
            .. order.Deposit > 0
                ? new Block[]
                {
                    ShopTables.Strong($"Deposit, due now, {currency}", ShopWords.Money(order.Deposit)),
                    new Air(2),
                    new Words("We order glass and plants once the deposit is here."),
                }
                : [],
            .. quote.Shop.Terms.Count > 0
                ? new Block[] { new Heading("What we agree on") { KeepsWithNext = true } }
                : [],
            .. quote.Shop.Terms.Select(t => new Words(t) { Sign = Sign.Dash }),
        ];
    }
}
