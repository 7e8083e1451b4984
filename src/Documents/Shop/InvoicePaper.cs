using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Pdf;
using Litterfall.Domain.Trade;

namespace Litterfall.Documents.Shop;

/// <summary>
/// An invoice, or the credit that takes one back: lines, tax, what was paid and what is due.
/// </summary>
public static class InvoicePaper
{
    /// <summary>The paper.</summary>
    /// <param name="invoice">Invoice or credit.</param>
    /// <param name="wish">Sheet and sign.</param>
    public static PaperFile Write(Invoice invoice, ShopWish wish)
    {
        var isCredit = invoice.Kind == IssuedKind.Credit;
        var head = new ShopHead(
            isCredit ? "Credit" : "Invoice",
            invoice.Shop,
            invoice.Customer,
            [
                ("Number", invoice.Name),
                ("Date", ShopWords.Day(invoice.Day)),
                (
                    "Our order number",
                    invoice.Shop.OrderPrefix + invoice.Order.ToString(CultureInfo.InvariantCulture)
                ),
            ]
        );
        return new(
            $"{invoice.Name}.pdf",
            CustomerLetter.Sides(wish, head, _ => Blocks(invoice, isCredit)),
            pages => PdfWriter.Write($"{head.Title} {invoice.Name}", invoice.Day, pages)
        );
    }

    private static List<Block> Blocks(Invoice invoice, bool isCredit)
    {
        var blocks = new List<Block>
        {
            new Words(
                isCredit
                    ? $"This credit takes our invoice {invoice.TakesBack} back."
                    : "For what we made and delivered to you:"
            )
            {
                After = 3,
            },
        };
        blocks.AddRange(ShopTables.Lines(invoice.Lines, isNarrow: false));
        blocks.AddRange(ShopTables.Sums((invoice.Net, invoice.Tax, invoice.Gross), invoice.Shop));
        if (!isCredit)
        {
            blocks.AddRange(Payment(invoice));
        }

        if (invoice.Note.Length > 0)
        {
            blocks.Add(new Air(4));
            blocks.Add(new Words(isCredit ? $"Reason: {invoice.Note}" : invoice.Note));
        }

        return blocks;
    }

    private static IEnumerable<Block> Payment(Invoice invoice)
    {
        var currency = invoice.Shop.Currency;
        if (invoice.Paid != 0)
        {
            yield return ShopTables.Plain("Paid before, with tax", ShopWords.Money(-invoice.Paid));
        }

        yield return ShopTables.Strong($"Due, {currency}", ShopWords.Money(invoice.Due));
        yield return new Air(4);
        yield return new Words(
            invoice.Due <= 0 ? "All of it is paid. Thank you."
            : invoice.PayBy is { } day
                ? $"Please pay {ShopWords.Money(invoice.Due, currency)} by {ShopWords.Day(day)} and name "
                    + $"{invoice.Name}."
            : $"Please pay {ShopWords.Money(invoice.Due, currency)} and name {invoice.Name}."
        )
        {
            Bold = true,
            Tone = Tone.Ink,
        };
    }
}
