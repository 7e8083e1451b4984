using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;

namespace Litterfall.Web.Shop.Orders;

/// <summary>All invoices, credits and delivery notes, and the journal for the bookkeeper.</summary>
public sealed partial class InvoicesPage
{
    private List<Row> rows = [];
    private string find = "";
    private DateOnly? from;
    private DateOnly? to;
    private decimal due;
    private string currency = "";

    private List<Row> Shown =>
        [
            .. rows.Where(r => !(r.Paper.Day < from) && !(r.Paper.Day > to))
                .Where(r =>
                    find.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                        .All(w => r.Text.Contains(w, StringComparison.OrdinalIgnoreCase))
                ),
        ];

    private string Told
    {
        get
        {
            var count = Shown.Count == 1 ? "1 paper" : FormattableString.Invariant($"{Shown.Count} papers");
            return due > 0
                ? $"{count}; {OrderShow.Money(due, currency)} of all invoices is still to be paid."
                : count;
        }
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        var today = DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);
        var papers = await Store.InvoicesAsync(null);
        var orders = (await OrderBook.AllAsync<Order>(Store)).ToDictionary(o => o.Number);
        currency = (await OrderBook.TermsAsync(Store)).Terms.Currency;
        rows = [.. papers.Reverse().Select(p => new Row(p, State(p, papers, orders, today)))];
        due = papers
            .Where(p => p.Kind == IssuedKind.Invoice && !OrderInvoices.IsTakenBack(p, papers))
            .Sum(p => Left(p, orders));
    }

    private static decimal Left(Invoice invoice, Dictionary<int, Order> orders) =>
        Math.Max(0, invoice.Gross - (orders.GetValueOrDefault(invoice.Order)?.Paid ?? invoice.Paid));

    private static string State(
        Invoice paper,
        IReadOnlyList<Invoice> papers,
        Dictionary<int, Order> orders,
        DateOnly today
    ) =>
        paper.Kind == IssuedKind.Credit ? $"takes {paper.TakesBack} back"
        : paper.Kind != IssuedKind.Invoice ? ""
        : OrderInvoices.IsTakenBack(paper, papers) ? "taken back"
        : Left(paper, orders) is var left && left == 0 ? "paid"
        : paper.PayBy < today ? $"{OrderText.Money(left)} overdue since {OrderText.Day(paper.PayBy.Value)}"
        : $"{OrderText.Money(left)} due";

    private string Journal(bool hasComma)
    {
        var parts = new List<string>();
        if (from is { } first)
        {
            parts.Add($"from={first.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}");
        }

        if (to is { } last)
        {
            parts.Add($"to={last.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}");
        }

        if (hasComma)
        {
            parts.Add("decimal=comma");
        }

        return "/journal.csv" + (parts.Count > 0 ? "?" + string.Join('&', parts) : "");
    }

    private sealed record Row(Invoice Paper, string State)
    {
        public string Text => $"{Paper.Name}\n{Paper.Customer.Name}\n{OrderBook.Key(Paper.Order)}\n{State}";
    }
}
