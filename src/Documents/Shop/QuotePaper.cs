using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Pdf;
using Litterfall.Domain.Trade;

namespace Litterfall.Documents.Shop;

/// <summary>A quote for the customer: the tank, the choices side by side, price, day and terms.</summary>
public static class QuotePaper
{
    /// <summary>The paper.</summary>
    /// <param name="quote">The quote.</param>
    /// <param name="wish">Sheet, sign and picture.</param>
    /// <param name="deposits">Deposit of each option, with tax.</param>
    public static PaperFile Write(Quote quote, ShopWish wish, IReadOnlyList<decimal> deposits) =>
        new(
            $"{quote.Name}.pdf",
            CustomerLetter.Sides(wish, Head(quote), _ => Blocks(quote, wish, deposits)),
            pages => PdfWriter.Write($"Quote {quote.Name}", quote.Day, pages)
        );

    private static ShopHead Head(Quote quote) =>
        new(
            quote.Replaces is null ? "Quote" : "Changed quote",
            quote.Shop,
            quote.Customer,
            [
                ("Number", quote.Name),
                ("Date", ShopWords.Day(quote.Day)),
                ("Good until", ShopWords.Day(quote.ValidUntil)),
                (
                    "Our order number",
                    quote.Shop.OrderPrefix + quote.Order.ToString(CultureInfo.InvariantCulture)
                ),
            ]
        );

    private static List<Block> Blocks(Quote quote, ShopWish wish, IReadOnlyList<decimal> deposits)
    {
        var isChoice = quote.Options.Count > 1;
        ImmutableArray<Block> intro =
        [
            new Words(
                isChoice
                    ? "Thank you for asking us. This is what we can make for you; the choices differ in "
                        + "how much of the work is ours."
                    : "Thank you for asking us. This is what we can make for you."
            )
            {
                After = 2,
            },
            .. quote.Note.Length > 0 ? new Block[] { new Words(quote.Note) { After = 2 } } : [],
            .. quote.Promised is { } day
                ? new Block[]
                {
                    new Words($"Delivery by {ShopWords.Day(day)}, if we hear from you in time.")
                    {
                        Bold = true,
                        After = 2,
                    },
                }
                : [],
            .. quote.Replaces is not null
                ? new Block[] { new Words("It takes the place of our earlier quote.") { After = 2 } }
                : [],
        ];
        return
        [
            new BesidePicture(intro, wish.Picture),
            new SideBySide([.. quote.Options.Select((o, i) => Option(quote, o, deposits[i]))]),
            .. Conditions(quote),
            .. Acceptance(quote, isChoice),
        ];
    }

    private static ImmutableArray<Block> Option(Quote quote, QuoteOption option, decimal deposit)
    {
        var currency = quote.Shop.Currency;
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(
            new Words(option.Name)
            {
                Bold = true,
                Larger = 2,
                After = 1.2,
            }
        );
        if (option.Changes.Length > 0)
        {
            blocks.Add(new Words(option.Changes) { After = 1.2 });
        }

        if (option.Gains.Length > 0)
        {
            blocks.Add(new Words($"What you gain: {option.Gains}") { After = 1.6 });
        }

        blocks.AddRange(ShopTables.Lines(option.Lines, quote.Options.Count > 1));
        blocks.AddRange(ShopTables.Sums(option, quote.Shop));
        if (deposit > 0)
        {
            blocks.Add(
                new Words($"Deposit when you accept: {ShopWords.Money(deposit, currency)}")
                {
                    Tone = Tone.Quiet,
                    After = 0,
                }
            );
        }

        return blocks.ToImmutable();
    }

    private static IEnumerable<Block> Conditions(Quote quote)
    {
        if (quote.Shop.Terms.Count == 0)
        {
            yield break;
        }

        yield return new Heading("What we agree on") { KeepsWithNext = true };
        foreach (var term in quote.Shop.Terms)
        {
            yield return new Words(term) { Sign = Sign.Dash };
        }
    }

    private static IEnumerable<Block> Acceptance(Quote quote, bool isChoice)
    {
        yield return new Heading("Your answer") { KeepsWithNext = true };
        if (isChoice)
        {
            foreach (var option in quote.Options)
            {
                yield return new Words($"{option.Name}, {ShopWords.Money(option.Gross, quote.Shop.Currency)}")
                {
                    Sign = Sign.Tick,
                };
            }
        }

        yield return new Blank("Place and date");
        yield return new Blank("Signature");
    }
}
