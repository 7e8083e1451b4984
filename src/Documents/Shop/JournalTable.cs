using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Tables;
using Litterfall.Domain.Trade;

namespace Litterfall.Documents.Shop;

/// <summary>
/// The journal for the bookkeeper: invoices and credits as they were issued, and the payments, by day. Names
/// are guarded against spreadsheets that run them as formulas.
/// </summary>
public static class JournalTable
{
    private static readonly ImmutableArray<string> Columns =
    [
        "date",
        "kind",
        "number",
        "order",
        "customer",
        "currency",
        "net",
        "tax_percent",
        "tax",
        "gross",
        "paid_before",
        "pay_by",
        "takes_back",
        "note",
    ];

    /// <summary>The file.</summary>
    /// <param name="issued">Papers in the order they were issued; delivery notes are left out.</param>
    /// <param name="paid">Orders with their payments, and the customer's name.</param>
    /// <param name="currency">Currency of payments.</param>
    /// <param name="style">Separators.</param>
    public static byte[] Write(
        IEnumerable<Invoice> issued,
        IEnumerable<(Order Order, string Customer, Payment Payment)> paid,
        string currency,
        CsvStyle style
    ) =>
        CsvTable.Write(
            Columns,
            issued
                .Where(i => i.Kind is IssuedKind.Invoice or IssuedKind.Credit)
                .Select(i => (i.Day, Row: Paper(i)))
                .Concat(paid.Select(p => (p.Payment.Day, Row: Money(p, currency))))
                .OrderBy(r => r.Day)
                .Select(r => r.Row),
            style
        );

    private static ImmutableArray<CsvCell> Paper(Invoice paper) =>
        [
            CsvCell.Of(paper.Day),
            CsvCell.Of(paper.Kind == IssuedKind.Credit ? "credit" : "invoice"),
            CsvCell.Of(paper.Name),
            CsvCell.Of(Number(paper.Shop.OrderPrefix, paper.Order)),
            CsvCell.Of(paper.Customer.Name),
            CsvCell.Of(paper.Shop.Currency),
            Amount(paper.Net),
            Amount(paper.Shop.TaxPercent),
            Amount(paper.Tax),
            Amount(paper.Gross),
            Amount(paper.Paid),
            paper.PayBy is { } day ? CsvCell.Of(day) : CsvCell.Empty,
            CsvCell.Of(paper.TakesBack),
            CsvCell.Of(paper.Note),
        ];

    private static ImmutableArray<CsvCell> Money(
        (Order Order, string Customer, Payment Payment) paid,
        string currency
    ) =>
        [
            CsvCell.Of(paid.Payment.Day),
            CsvCell.Of("payment"),
            CsvCell.Empty,
            CsvCell.Of(Number("", paid.Order.Number)),
            CsvCell.Of(paid.Customer),
            CsvCell.Of(currency),
            CsvCell.Empty,
            CsvCell.Empty,
            CsvCell.Empty,
            Amount(paid.Payment.Amount),
            CsvCell.Empty,
            CsvCell.Empty,
            CsvCell.Empty,
            CsvCell.Of(paid.Payment.Note),
        ];

    private static CsvCell Amount(decimal amount) => CsvCell.Of((double)amount);

    private static string Number(string prefix, int number) =>
        prefix + number.ToString(CultureInfo.InvariantCulture);
}
