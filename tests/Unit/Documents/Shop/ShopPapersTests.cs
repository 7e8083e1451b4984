using System.Text;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Tables;
using Litterfall.Domain.Trade;
using Litterfall.UnitTests.Workshop.Orders;
using Litterfall.Workshop.Orders;

namespace Litterfall.UnitTests.Documents.Shop;

/// <summary>Papers for customers, on both sheets.</summary>
public sealed class ShopPapersTests
{
    private static readonly DateOnly Today = OrderExamples.Today;

    private static Quote Quote() =>
        OrderQuotes.Make(
            3,
            OrderExamples.Enquiry(),
            OrderExamples.Head with
            {
                Promised = Today.AddDays(60),
            },
            new[] { "Kit", "Planted", "Planted, with visits" }.Select(
                (name, i) =>
                    OrderExamples.Option(name, 933.59m + i) with
                    {
                        Changes = "Built, planted and grown in here for 6 weeks; handed over running.",
                        Gains =
                            "Moss and roots hold and the springtails are at work before an animal moves in.",
                        Lines =
                        [
                            new QuoteLine(
                                "Flat tank: planted tank, inside 59 × 44 × 44.5 cm, with 5 × poison frog",
                                1,
                                933.59m + i
                            ),
                            new QuoteLine("Care visits after delivery, in the price", 4, 0),
                        ],
                    }
            )
        );

    private static ShopWish Wish(string sheet) => new(sheet == "A4" ? PaperSize.A4 : PaperSize.Letter, []);

    private static string Text(PaperFile paper) =>
        string.Join(
            ' ',
            paper.Pages.SelectMany(p =>
                p.Marks.OfType<Litterfall.Documents.Drawings.TextMark>().Select(m => m.Text)
            )
        );

    private static PaperFile[] Papers(string sheet)
    {
        var order = OrderExamples.Accepted(7, Today.AddDays(60)) with { Deposit = 357.09m };
        var invoice = OrderInvoices.Bill(12, order, Quote(), OrderExamples.Head);
        var head = OrderExamples.Head with { Note = "wrong address" };
        return
        [
            QuotePaper.Write(Quote(), Wish(sheet), [333.29m, 333.65m, 334]),
            OrderConfirmation.Write(order with { AcceptedQuote = 3 }, Quote(), Wish(sheet)),
            InvoicePaper.Write(invoice, Wish(sheet)),
            InvoicePaper.Write(OrderInvoices.Credit(2, order, invoice, head), Wish(sheet)),
            DeliveryNotePaper.Write(
                OrderInvoices.Delivery(5, order, Quote(), OrderExamples.Head),
                Wish(sheet)
            ),
        ];
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void Each_paper_stands_on_one_side_without_a_fault(string sheet)
    {
        foreach (var paper in Papers(sheet))
        {
            var page = Assert.Single(paper.Pages);
            Assert.Empty(PageFaults.Of(page));
            Assert.NotEmpty(paper.Bytes);
        }
    }

    [Fact]
    public void A_quote_says_price_tax_day_deposit_and_how_long_it_holds()
    {
        var text = Text(Papers("A4")[0]);
        foreach (
            var said in new[]
            {
                "Q-0003",
                "Pernille Voss",
                "1,110.97",
                "Tax 19 %",
                "177.38",
                "3 October 2026",
                "2 November 2026",
                "333.29 EUR",
                "The price holds until the day named above.",
                "Signature",
            }
        )
        {
            Assert.Contains(said, text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void An_invoice_says_what_is_due_and_a_credit_what_it_takes_back()
    {
        var papers = Papers("A4");
        Assert.Contains("1,110.97", Text(papers[2]), StringComparison.Ordinal);
        Assert.Contains("Please pay", Text(papers[2]), StringComparison.Ordinal);
        Assert.Contains("takes our invoice I-0012 back", Text(papers[3]), StringComparison.Ordinal);
        Assert.Contains("-1,110.97", Text(papers[3]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_delivery_note_has_no_price() =>
        Assert.DoesNotContain("933", Text(Papers("A4")[4]), StringComparison.Ordinal);

    [Fact]
    public void Much_text_goes_on_to_the_next_side_and_nothing_is_left_out()
    {
        var long_ = Quote() with
        {
            Shop = OrderExamples.Terms with
            {
                Terms =
                [
                    .. Enumerable
                        .Range(1, 90)
                        .Select(i => $"Paragraph {i}: what was agreed on stands here in full."),
                ],
            },
        };
        var paper = QuotePaper.Write(long_, Wish("A4"), [0, 0, 0]);
        Assert.True(paper.Pages.Length > 1);
        Assert.Contains("Paragraph 90:", Text(paper), StringComparison.Ordinal);
        Assert.Contains("Signature", Text(paper), StringComparison.Ordinal);
    }

    /// <summary>
    /// The journal as RFC 4180 asks; a name that a spreadsheet would run is guarded by an apostrophe.
    /// </summary>
    [Fact]
    public void The_journal_guards_against_formulas_and_holds_payments()
    {
        var order = OrderExamples.Accepted(7, Today) with
        {
            Payments = [new Payment(Today.AddDays(-2), 35.70m, "transfer", "Tobin")],
        };
        var head = OrderExamples.Head with
        {
            Customer = OrderExamples.Customer with { Name = "=HYPERLINK(\"x\"), Ltd" },
        };
        var invoice = OrderInvoices.Bill(1, order, Quote(), head);
        var text = Encoding.UTF8.GetString(
            JournalTable.Write(
                [invoice],
                [(order, "Pernille Voss", order.Payments[0])],
                "EUR",
                CsvStyle.Invariant
            )
        );
        var lines = text.TrimStart('\uFEFF').Split("\r\n");
        Assert.StartsWith("date,kind,number,order,customer,currency,net", lines[0], StringComparison.Ordinal);
        Assert.Equal("2026-09-01,payment,,7,Pernille Voss,EUR,,,,35.7,,,,transfer", lines[1]);
        Assert.Equal(
            "2026-09-03,invoice,I-0001,7,\"'=HYPERLINK(\"\"x\"\"), Ltd\",EUR,933.59,19,177.38,1110.97,35.7,"
                + "2026-09-17,,",
            lines[2]
        );
    }
}
