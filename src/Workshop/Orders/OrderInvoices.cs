using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Orders;

/// <summary>Invoices, credits and delivery notes of an order, and the money that comes for it.</summary>
public static class OrderInvoices
{
    /// <summary>The invoice that stands: issued and not taken back; null for none.</summary>
    /// <param name="issued">Papers of the order.</param>
    public static Invoice? Standing(IReadOnlyCollection<Invoice> issued) =>
        issued.LastOrDefault(i => i.Kind == IssuedKind.Invoice && !IsTakenBack(i, issued));

    /// <summary>True for an invoice that a credit takes back.</summary>
    public static bool IsTakenBack(Invoice invoice, IEnumerable<Invoice> issued) =>
        issued.Any(c => c.Kind == IssuedKind.Credit && c.TakesBack == invoice.Name);

    /// <summary>Why no invoice can be issued, in one sentence; null where one can.</summary>
    public static string? Refusal(Order order, IReadOnlyCollection<Invoice> issued) =>
        order.AcceptedQuote is null || order.State is OrderState.Lost
            ? "An invoice needs an accepted quote. Record which option the customer took first."
        : Standing(issued) is { } stands
            ? $"{stands.Name} stands already. Take it back with a credit before you issue another."
        : null;

    /// <summary>The invoice of the accepted option; what was paid is taken off.</summary>
    /// <param name="number">Its running number.</param>
    /// <param name="order">The order.</param>
    /// <param name="quote">The accepted quote.</param>
    /// <param name="head">Workshop and customer as they stand, and the day.</param>
    public static Invoice Bill(int number, Order order, Quote quote, QuoteHead head)
    {
        var option = quote.Options[order.AcceptedOption];
        return Paper(IssuedKind.Invoice, number, order, head) with
        {
            Name = IssuedName.From(head.Shop.InvoicePrefix, number),
            // Tax and rounding are those that were agreed.
            Shop = head.Shop with
            {
                TaxPercent = quote.Shop.TaxPercent,
                ShowsTaxIncluded = quote.Shop.ShowsTaxIncluded,
                Currency = quote.Shop.Currency,
            },
            Lines = option.Lines,
            Net = option.Net,
            Tax = option.Tax,
            Gross = option.Gross,
            Paid = order.Paid,
            PayBy = head.Day.AddDays(head.Shop.PayDays),
        };
    }

    /// <summary>Why an invoice cannot be taken back, in one sentence; null where it can.</summary>
    public static string? CreditRefusal(Invoice invoice, IEnumerable<Invoice> issued) =>
        invoice.Kind != IssuedKind.Invoice ? $"{invoice.Name} is no invoice."
        : IsTakenBack(invoice, issued) ? $"{invoice.Name} is taken back already."
        : null;

    /// <summary>The credit that takes an invoice back whole.</summary>
    /// <param name="number">Its running number.</param>
    /// <param name="order">The order.</param>
    /// <param name="invoice">The invoice.</param>
    /// <param name="head">Workshop and customer as they stand, and the day; the note gives the
    /// reason.</param>
    public static Invoice Credit(int number, Order order, Invoice invoice, QuoteHead head) =>
        Paper(IssuedKind.Credit, number, order, head) with
        {
            Name = IssuedName.From(head.Shop.CreditPrefix, number),
            Shop = invoice.Shop,
            Customer = invoice.Customer,
            Lines = [.. invoice.Lines.Select(l => l with { Net = -l.Net })],
            Net = -invoice.Net,
            Tax = -invoice.Tax,
            Gross = -invoice.Gross,
            TakesBack = invoice.Name,
        };

    /// <summary>The delivery note: what is handed over, without prices.</summary>
    /// <param name="number">Its running number.</param>
    /// <param name="order">The order.</param>
    /// <param name="quote">The accepted quote.</param>
    /// <param name="head">Workshop and customer as they stand, and the day.</param>
    public static Invoice Delivery(int number, Order order, Quote quote, QuoteHead head) =>
        Paper(IssuedKind.Delivery, number, order, head) with
        {
            Name = IssuedName.From(head.Shop.DeliveryPrefix, number),
            Lines = [.. quote.Options[order.AcceptedOption].Lines.Select(l => l with { Net = 0 })],
        };

    /// <summary>Why an amount cannot be written as paid, in one sentence; null where it can.</summary>
    public static string? PaymentRefusal(Order order, decimal amount) =>
        amount == 0 ? "Enter the amount that came."
        : order.Gross is not { } gross ? "Nothing is agreed yet that could be paid."
        : order.Paid + amount > gross
            ? $"That is {OrderText.Money(order.Paid + amount - gross)} more than the agreed "
                + $"{OrderText.Money(gross)}."
        : order.Paid + amount < 0 ? $"Only {OrderText.Money(order.Paid)} was paid; no more can be given back."
        : null;

    private static Invoice Paper(IssuedKind kind, int number, Order order, QuoteHead head) =>
        new()
        {
            Kind = kind,
            Number = number,
            Name = "",
            Order = order.Number,
            Day = head.Day,
            Shop = head.Shop,
            Customer = head.Customer,
            Lines = Seq<QuoteLine>.Empty,
            Note = head.Note,
        };
}
