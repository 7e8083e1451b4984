using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;

namespace Litterfall.UnitTests.Workshop.Orders;

/// <summary>Quotes, changes, invoices and credits of one order; own worked examples.</summary>
public sealed class OrderPapersTests
{
    private static readonly DateOnly Today = OrderExamples.Today;

    private static Quote Quote(int number, params QuoteOption[] options) =>
        OrderQuotes.Make(number, OrderExamples.Enquiry(), OrderExamples.Head, options);

    [Fact]
    public void Only_the_last_quote_is_taken_and_only_while_it_holds()
    {
        var order = OrderExamples.Enquiry() with { State = OrderState.Quoted };
        Quote[] quotes =
        [
            Quote(2, OrderExamples.Option("Kit", 100)),
            Quote(1, OrderExamples.Option("Kit", 90)),
        ];
        string? Refusal(int quote, int option, DateOnly day) =>
            OrderQuotes.AcceptRefusal(order, quotes, quote, option, day);
        Assert.Null(Refusal(2, 0, Today));
        Assert.Contains("replaced by Q-0002", Refusal(1, 0, Today), StringComparison.Ordinal);
        Assert.Contains("no such option", Refusal(2, 1, Today), StringComparison.Ordinal);
        Assert.Null(Refusal(2, 0, Today.AddDays(30)));
        Assert.Contains("was good until", Refusal(2, 0, Today.AddDays(31)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_quote_for_a_day_that_is_over_is_refused()
    {
        var head = OrderExamples.Head with { Promised = Today.AddDays(-1) };
        QuoteOption[] options = [OrderExamples.Option("Kit", 100)];
        Assert.Contains(
            "is over",
            OrderQuotes.Refusal(OrderExamples.Enquiry(), head, options),
            StringComparison.Ordinal
        );
        Assert.NotNull(OrderQuotes.Refusal(OrderExamples.Enquiry(), OrderExamples.Head, []));
        Assert.Null(OrderQuotes.Refusal(OrderExamples.Enquiry(), OrderExamples.Head, options));
    }

    /// <summary>20 L of bark at first, 28.5 L after; 12.00 more before tax are 14.28 with 19 %.</summary>
    [Fact]
    public void A_change_is_told_in_price_day_and_materials()
    {
        var before = OrderExamples.Option("Planted", 100, OrderExamples.Bark(20));
        var cork = new QuotedGood("cork-tile", "cork tile", StockUnit.SquareMeters, 0.25, 7);
        var after = OrderExamples.Option("Planted", 112, OrderExamples.Bark(28.5), cork);
        var change = OrderChange.Between((before, Today), (after, Today.AddDays(3)));
        Assert.Equal((12m, 14.28m, 3), (change.Net, change.Gross, change.Days));
        Assert.Equal(
            "14.28 more; 3 days later; 0.25 m² of cork tile, new, 8.5 L more of fine bark.",
            change.Words
        );
        Assert.Equal(
            "The price stays; the day stays; the materials stay.",
            OrderChange.Between((before, null), (before, Today)).Words
        );
    }

    /// <summary>
    /// Gross 119.00, deposit of 30 % is 35.70; the invoice asks for the rest of 83.30. A credit takes it back
    /// whole, and then another may be issued.
    /// </summary>
    [Fact]
    public void A_paid_deposit_reduces_what_is_due_and_a_credit_takes_the_invoice_back()
    {
        var quote = Quote(1, OrderExamples.Option("Kit", 100));
        var order = OrderQuotes.Accepted(
            OrderExamples.Enquiry() with
            {
                State = OrderState.Quoted,
            },
            quote,
            0,
            35.70m,
            OrderExamples.Act
        );
        Assert.Equal((OrderState.Accepted, 119m, 35.70m), (order.State, order.Gross, order.Deposit));
        Assert.Contains("9.00 more", OrderInvoices.PaymentRefusal(order, 128), StringComparison.Ordinal);
        order = order with { Payments = [new Payment(Today, 35.70m, "", "Tobin")] };
        var invoice = OrderInvoices.Bill(1, order, quote, OrderExamples.Head);
        Assert.Equal(83.30m, invoice.Due);
        Assert.Equal(Today.AddDays(14), invoice.PayBy);
        Assert.Contains("I-0001 stands", OrderInvoices.Refusal(order, [invoice]), StringComparison.Ordinal);
        var credit = OrderInvoices.Credit(1, order, invoice, OrderExamples.Head with { Note = "wrong name" });
        Assert.Equal(0, invoice.Gross + credit.Gross);
        Assert.Equal(0, invoice.Lines.Sum(l => l.Net) + credit.Lines.Sum(l => l.Net));
        Assert.Equal("I-0001", credit.TakesBack);
        Assert.Null(OrderInvoices.Refusal(order, [invoice, credit]));
        Assert.NotNull(OrderInvoices.CreditRefusal(invoice, [invoice, credit]));
        Assert.All(OrderInvoices.Delivery(1, order, quote, OrderExamples.Head).Lines, l =>
            Assert.Equal(0, l.Net)
        );
    }

    [Fact]
    public void A_change_after_acceptance_keeps_the_deposit_and_the_state()
    {
        var order = OrderExamples.Accepted(7, Today.AddDays(9)) with
        {
            State = OrderState.InWork,
            Deposit = 35.70m,
        };
        var next = Quote(2, OrderExamples.Option("Kit", 112));
        var sent = OrderQuotes.Sent(order, OrderExamples.Head, OrderExamples.Act);
        Assert.Equal((OrderState.InWork, 119m), (sent.State, sent.Gross));
        var changed = OrderQuotes.Accepted(sent, next, 0, 99, OrderExamples.Act);
        Assert.Equal((OrderState.InWork, 133.28m, 35.70m), (changed.State, changed.Gross, changed.Deposit));
        Assert.Equal(2, changed.AcceptedQuote);
    }
}
