using System.Text;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Importing;

namespace Litterfall.UnitTests.Workshop.Importing;

/// <summary>
/// Price lists as spreadsheets of several countries save them. Expected values are read off the lists by
/// hand; 3.8 cu ft = 107.6 L is the bale pressed, 1.67 times that opened is the library's figure.
/// </summary>
public sealed class PriceListTests
{
    private static readonly TradeCatalog Catalog = Shop.Embedded();

    private static readonly PriceListPlace Place = new(
        Catalog,
        [],
        [
            new Supplier
            {
                Key = "north",
                Name = "North Quay Bulk",
                Currency = "EUR",
            },
        ],
        "north",
        "EUR",
        new DateOnly(2026, 8, 3)
    );

    private static PriceListRow[] Read(TypedTable table) =>
        [.. PriceList.Read(table, ColumnGuess.Guess(table), Place)];

    private static TypedTable Table(string text)
    {
        var table = TypedTable.Read(text, out var trouble);
        Assert.Equal("", trouble);
        return table!;
    }

    [Theory]
    [InlineData("Name,Pack,Price\r\nfine bark,20 L,9.80\r\n\"charcoal, fine\",5 L,7.90\r\n", ',')]
    [InlineData("Artikel;Packung;Preis\nfine bark;20 L;9,80\ncharcoal;5 L;7,90\n", ';')]
    [InlineData("Item\tSize\tNet price EUR\nfine bark\t20 L\t9.80\ncharcoal\t5 L\t7.90\n", '\t')]
    [InlineData("désignation|taille|prix\nfine bark|20 L|9,80 €\ncharcoal|5 L|7,90 €\n", '|')]
    public void Lists_of_any_dialect_read_alike(string text, char separator)
    {
        var table = Table(text);
        Assert.Equal(separator, table.Separator);
        var rows = Read(table);
        Assert.Equal(["", ""], rows.Select(r => r.Trouble));
        Assert.Equal((20, 9.80m), (rows[0].Offer!.Amount, rows[0].Offer!.PriceOf(1)));
        Assert.Equal((5, 7.90m), (rows[1].Offer!.Amount, rows[1].Offer!.PriceOf(1)));
        Assert.Equal("fine-bark", rows[0].Good!.Key);
        Assert.Equal("pack-fine-bark-20-l", rows[0].Offer!.LibraryPack);
    }

    [Theory]
    [InlineData("utf-8")]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("iso-8859-1")]
    public void Any_encoding_reads(string name)
    {
        var encoding = Encoding.GetEncoding(name);
        byte[] bytes =
        [
            .. encoding.GetPreamble(),
            .. encoding.GetBytes("Größe;Artikel;Preis\n20 L;fine bark;9,80\n"),
        ];
        var table = TypedTable.Read(bytes, out _)!;
        Assert.Equal(["Größe", "Artikel", "Preis"], table.Columns);
        Assert.Equal(9.80m, Read(table)[0].Offer!.PriceOf(1));
    }

    [Fact]
    public void Rows_of_one_pack_become_price_breaks()
    {
        var rows = Read(
            Table("name,pack,from,price\nfine bark,20 L,1,9.80\nfine bark,20 L,4,8.90\ncharcoal,5 L,3,6.90\n")
        );
        Assert.Equal([new PriceTier(1, 9.80m), new PriceTier(4, 8.90m)], rows[0].Offer!.Tiers);
        Assert.Equal("It has no price for one pack, only from 3 packs on.", rows[1].Trouble);
        Assert.Equal(2, rows.Length);
    }

    [Fact]
    public void A_bale_holds_what_it_opens_to()
    {
        var row = Assert.Single(Read(Table("name,pack,price\npeat,bale of 3.8 cu ft,28.50\n")));
        Assert.Equal("pack-peat-bale-3_8-cu-ft", row.Offer!.LibraryPack);
        Assert.Equal(3.8 * 28.316846592 * 1.67, row.Offer.Amount, 0.01 * row.Offer.Amount);
    }

    [Theory]
    [InlineData("fine bark,20 L,-3", "'-3' is no price of a pack.")]
    [InlineData("fine bark,20 L,$9.80", "Its price is in USD; the workshop counts in EUR.")]
    [InlineData("fine bark,20 L,9.80 CHF", "Its price is in CHF; the workshop counts in EUR.")]
    [InlineData("fine bark,,9.80", "It says no pack. Expected what one pack holds, such as 20 L or 500 g.")]
    [InlineData(
        "fine bark,8 qt,9.80",
        "'8 qt' is no amount. Expected such as 20 L, 8 dry qt, 500 g or 10 pieces."
    )]
    [InlineData(",20 L,9.80", "It names no good.")]
    public void A_bad_row_says_what_is_wrong_and_takes_nothing(string row, string trouble)
    {
        var rows = Read(Table($"name,pack,price\n{row}\ncharcoal,5 L,7.90\n"));
        Assert.Equal(trouble, rows[0].Trouble);
        Assert.Null(rows[0].Offer);
        Assert.NotNull(rows[1].Offer);
    }

    [Fact]
    public void The_line_of_a_row_is_that_of_the_file()
    {
        var table = Table("Prices of spring\n\nname,pack,price\n\nfine bark,20 L,9.80\n\ncharcoal,5 L,0\n");
        var rows = Read(table);
        Assert.Equal([5, 7], rows.Select(r => r.Line));
    }

    [Theory]
    [InlineData("")]
    [InlineData("only one column\nbark\n")]
    [InlineData("name,pack,price\n")]
    public void What_is_no_list_says_so(string text)
    {
        Assert.Null(TypedTable.Read(text, out var trouble));
        Assert.EndsWith(".", trouble, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1.234,50", 1234.50)]
    [InlineData("1 234,50 €", 1234.50)]
    [InlineData("9,80", 9.80)]
    [InlineData("12.90", 12.90)]
    [InlineData("1.000", 1000.0)]
    [InlineData("n/a", null)]
    public void Numbers_of_a_comma_list_read(string text, double? expected)
    {
        var table = Table("a;b\nx;1,50\ny;2,75\n");
        Assert.True(table.HasDecimalComma);
        Assert.Equal(expected, table.Number(text));
    }

    [Fact]
    public void Missing_columns_are_named()
    {
        Assert.Equal(
            ["the price of a pack", "what a pack holds"],
            PriceList.Missing([PriceColumn.Name, PriceColumn.None])
        );
    }
}
