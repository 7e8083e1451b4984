using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Lists;

namespace Litterfall.Documents.Shop;

/// <summary>Packs of one good to buy.</summary>
/// <param name="Good">What it is.</param>
/// <param name="Pack">As it is sold.</param>
/// <param name="Packs">How many.</param>
/// <param name="Each">Price of one, with its currency.</param>
/// <param name="Together">Price of all, with its currency.</param>
public sealed record BuyLine(string Good, string Pack, string Packs, string Each, string Together);

/// <summary>What a purchase list says.</summary>
/// <param name="Number">Number of the purchase.</param>
/// <param name="Supplier">Name of the supplier.</param>
/// <param name="About">What to remember of the supplier.</param>
/// <param name="Lines">What is bought.</param>
/// <param name="Delivery">Price of delivery, or that it is free.</param>
/// <param name="Total">All of it, net.</param>
public sealed record PurchaseText(
    string Number,
    string Supplier,
    string About,
    Seq<BuyLine> Lines,
    string Delivery,
    string Total
);

/// <summary>The list that goes to a supplier, or along to one.</summary>
public static class PurchaseList
{
    /// <summary>The paper.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="text">What it says.</param>
    public static PaperFile Write(ShopSheet sheet, PurchaseText text)
    {
        var table = Table.Of(
            "",
            (0.05, "", false),
            (0.31, "good", false),
            (0.3, "pack", false),
            (0.08, "packs", true),
            (0.13, "each", true),
            (0.13, "together", true)
        );
        foreach (var line in text.Lines)
        {
            table.Tick("", "", line.Good, line.Pack, line.Packs, line.Each, line.Together);
        }

        IReadOnlyList<Block> blocks =
        [
            new Words(text.About.Length > 0 ? $"{text.Supplier}. {text.About}" : text.Supplier)
            {
                Larger = 1,
            },
            .. table.Blocks,
            new Words($"Delivery: {text.Delivery}"),
            new Words($"Together, before tax: {text.Total}") { Bold = true },
            new Words("Tick what came; write the number of the pack beside it. Count before you sign."),
            new Blank("Came on, taken in by"),
        ];
        var title = $"Purchase list {text.Number}";
        return sheet.Pdf(
            $"purchase-{text.Number}.pdf",
            title,
            PageFrame.Sides(sheet.Size, sheet.Head(title, text.Supplier), _ => blocks)
        );
    }
}
