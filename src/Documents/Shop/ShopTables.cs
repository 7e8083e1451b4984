using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Domain.Trade;

namespace Litterfall.Documents.Shop;

/// <summary>Lines and sums of papers for customers.</summary>
internal static class ShopTables
{
    private static readonly ImmutableArray<TableColumn> Wide =
    [
        new(0.68),
        new(0.12, Align.End),
        new(0.2, Align.End),
    ];

    private static readonly ImmutableArray<TableColumn> Narrow = [new(0.62), new(0.38, Align.End)];

    private static readonly ImmutableArray<TableColumn> Ticked = [new(0.04), new(0.76), new(0.2, Align.End)];

    /// <summary>Lines with their price before tax; what is in the price of another says so.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="isNarrow">True in a column: the amount stands before the text.</param>
    public static IEnumerable<Block> Lines(IReadOnlyList<QuoteLine> lines, bool isNarrow)
    {
        yield return isNarrow
            ? new TableRow(Narrow, ["", "before tax"]) { IsHead = true }
            : new TableRow(Wide, ["", "Amount", "Before tax"]) { IsHead = true };
        foreach (var line in lines)
        {
            var price = line.Net == 0 ? "in the price" : ShopWords.Money(line.Net);
            yield return isNarrow
                ? new TableRow(
                    Narrow,
                    [line.Amount == 1 ? line.Text : $"{ShopWords.Amount(line.Amount)} × {line.Text}", price]
                )
                : new TableRow(Wide, [line.Text, ShopWords.Amount(line.Amount), price]);
        }
    }

    /// <summary>Lines without prices, to tick.</summary>
    public static IEnumerable<Block> Ticks(IReadOnlyList<QuoteLine> lines)
    {
        yield return new TableRow(Ticked, ["", "", "Amount"]) { IsHead = true };
        foreach (var line in lines)
        {
            yield return new TableRow(Ticked, ["", line.Text, ShopWords.Amount(line.Amount)])
            {
                HasTick = true,
            };
        }
    }

    /// <summary>Price before tax, tax, price with tax.</summary>
    public static IEnumerable<Block> Sums(QuoteOption option, ShopTerms shop) =>
        Sums((option.Net, option.Tax, option.Gross), shop);

    /// <summary>The same of any paper.</summary>
    public static IEnumerable<Block> Sums((decimal Net, decimal Tax, decimal Gross) sum, ShopTerms shop)
    {
        yield return new Air(1.5);
        if (shop.TaxPercent > 0)
        {
            yield return new TableRow(Narrow, ["Price before tax", ShopWords.Money(sum.Net)]);
            yield return new TableRow(
                Narrow,
                [$"Tax {ShopWords.Percent(shop.TaxPercent)}", ShopWords.Money(sum.Tax)]
            );
        }

        yield return Strong(
            $"{(shop.TaxPercent > 0 ? "Price with tax" : "Price")}, {shop.Currency}",
            ShopWords.Money(sum.Gross)
        );
    }

    /// <summary>A sum that counts.</summary>
    public static Block Strong(string name, string value) =>
        new TableRow(Narrow, [name, value]) { IsGroup = true };

    /// <summary>A sum on the way.</summary>
    public static Block Plain(string name, string value) => new TableRow(Narrow, [name, value]);
}
