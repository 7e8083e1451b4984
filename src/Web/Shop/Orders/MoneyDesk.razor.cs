using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>Deposit, payments, invoice, credit and delivery note of an order.</summary>
public sealed partial class MoneyDesk
{
    private string amount = "";
    private string how = "";
    private string reason = "";
    private DateOnly day;

    /// <summary>The order.</summary>
    [Parameter, EditorRequired]
    public required OrderWork Work { get; set; }

    /// <summary>Told with null when something was written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    private string Expected =>
        (
            Work.Order.Deposit > Work.Order.Paid
                ? Work.Order.Deposit - Work.Order.Paid
                : Math.Max(0, (Work.Order.Gross ?? 0) - Work.Order.Paid)
        ).ToString("0.00", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    protected override void OnInitialized() => day = Work.Today;

    private string Money(decimal sum) =>
        OrderShow.Money(sum, Work.Accepted?.Shop.Currency ?? Work.Terms.Currency);

    private async Task PayAsync()
    {
        var paid = OptionForm.Read(amount.Trim().Length > 0 ? amount : Expected);
        var refusal =
            paid is not { } sum ? $"“{amount}” is no amount; enter one such as {Expected}."
            : decimal.Round(sum, 2) != sum ? "Amounts have at most two decimals."
            : day > Work.Today ? "The day of a payment cannot be in the future."
            : OrderInvoices.PaymentRefusal(Work.Order, sum);
        if (refusal is not null)
        {
            await OnDone.InvokeAsync(refusal);
            return;
        }

        var act = await Work.ActAsync($"Paid: {Money(paid!.Value)} {how}".Trim());
        var order = OrderSteps.Told(Work.Order, act) with
        {
            Payments = [.. Work.Order.Payments, new Payment(day, paid.Value, how.Trim(), act.Who)],
        };
        var fault = await Work.KeepAsync(order, act.Note);
        if (fault is null)
        {
            (amount, how) = ("", "");
        }

        await OnDone.InvokeAsync(fault);
    }

    private Task BillAsync() =>
        IssueAsync(
            OrderInvoices.Refusal(Work.Order, Work.Papers),
            "Invoice issued.",
            (IssuedKind.Invoice, n => OrderInvoices.Bill(n, Work.Order, Work.Accepted!, Work.Head()))
        );

    private Task DeliverAsync() =>
        IssueAsync(
            Work.Accepted is null ? "A delivery note needs an accepted quote." : null,
            "Delivery note issued.",
            (IssuedKind.Delivery, n => OrderInvoices.Delivery(n, Work.Order, Work.Accepted!, Work.Head()))
        );

    private async Task CreditAsync(Invoice invoice)
    {
        var head = Work.Head(reason.Trim());
        await IssueAsync(
            head.Note.Length == 0
                ? "Say in a few words why the invoice is taken back; it stands on the credit."
                : OrderInvoices.CreditRefusal(invoice, Work.Papers),
            $"{invoice.Name} taken back: {head.Note}",
            (IssuedKind.Credit, n => OrderInvoices.Credit(n, Work.Order, invoice, head))
        );
        reason = "";
    }

    private async Task IssueAsync(
        string? refusal,
        string words,
        (IssuedKind Kind, Func<int, Invoice> Make) paper
    ) =>
        await OnDone.InvokeAsync(
            refusal
                ?? await Work.KeepAsync(OrderSteps.Told(Work.Order, await Work.ActAsync(words)), words, c =>
                    c.Issue(paper.Kind, Work.Order.Number, paper.Make)
                )
        );
}
