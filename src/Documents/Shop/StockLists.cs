using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Lists;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Shop;

/// <summary>A lot to count.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Number">Its number.</param>
/// <param name="Good">What it is.</param>
/// <param name="Book">What the book says, with its unit.</param>
public sealed record CountLine(string Place, string Number, string Good, string Book);

/// <summary>Goods to pick at one place.</summary>
/// <param name="Place">Where they stand.</param>
/// <param name="Good">What they are.</param>
/// <param name="Amount">How much, with its unit.</param>
/// <param name="Lots">From which lots, with their amounts; what is missing too.</param>
/// <param name="Note">What to mind; empty for nothing.</param>
public sealed record PickLine(string Place, string Good, string Amount, string Lots, string Note);

/// <summary>One who has some of a recalled lot.</summary>
/// <param name="Customer">Name.</param>
/// <param name="Reach">Address, mail, telephone.</param>
/// <param name="Order">Number of the order.</param>
/// <param name="Lots">What they have, with amounts.</param>
public sealed record RecallLine(string Customer, string Reach, string Order, string Lots);

/// <summary>What a recall sheet says.</summary>
/// <param name="Lot">Number of the lot.</param>
/// <param name="About">What it is, where it came from and when.</param>
/// <param name="Customers">Who has some.</param>
/// <param name="Here">Lots of it that are still here, with amounts.</param>
/// <param name="Into">Lots it went into.</param>
/// <param name="Sources">Lots it was made from.</param>
public sealed record RecallText(
    string Lot,
    string About,
    Seq<RecallLine> Customers,
    Seq<string> Here,
    Seq<string> Into,
    Seq<string> Sources
);

/// <summary>Lists of the store room: to count, to pick, to recall.</summary>
public static class StockLists
{
    /// <summary>The list for a count, in the order of the walk, a line to write on for each lot.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="lines">The lots.</param>
    public static PaperFile Count(ShopSheet sheet, Seq<CountLine> lines)
    {
        var table = Table.Of(
            "",
            (0.05, "", false),
            (0.16, "lot", false),
            (0.37, "good", false),
            (0.14, "book says", true),
            (0.02, "", false),
            (0.12, "found", false),
            (0.14, "why it differs", false)
        );
        foreach (var place in lines.GroupBy(l => l.Place, StringComparer.Ordinal))
        {
            table.Group("", place.Key.Length > 0 ? place.Key : "no place", "", "", "", "", "");
            foreach (var line in place)
            {
                table.Tick("", "", line.Number, line.Good, line.Book, "", "_______", "_________");
            }
        }

        return List(
            sheet,
            ("count-list.pdf", "Count list", ""),
            lines.Count == 0 ? [new Words("Nothing is on hand.")] : table.Blocks
        );
    }

    /// <summary>What is picked for an order, in the order of the walk.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="about">Order and customer.</param>
    /// <param name="lines">What is picked.</param>
    public static PaperFile Pick(ShopSheet sheet, string about, Seq<PickLine> lines)
    {
        var table = Table.Of(
            "",
            (0.05, "", false),
            (0.37, "good", false),
            (0.14, "all kits", true),
            (0.02, "", false),
            (0.42, "from lot", false)
        );
        foreach (var place in lines.GroupBy(l => l.Place, StringComparer.Ordinal))
        {
            table.Group("", place.Key.Length > 0 ? place.Key : "no place", "", "", "");
            foreach (var line in place)
            {
                var good = line.Note.Length > 0 ? $"{line.Good} ({line.Note})" : line.Good;
                table.Tick("", "", good, line.Amount, "", line.Lots);
            }
        }

        return List(sheet, ("pick-list.pdf", "Pick list", about), table.Blocks);
    }

    /// <summary>Who has some of a lot, and what is done with the rest; on one side.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="recall">What it says.</param>
    public static PaperFile Recall(ShopSheet sheet, RecallText recall)
    {
        var table = Table.Of(
            "Customers to call",
            (0.05, "", false),
            (0.25, "customer", false),
            (0.3, "reached at", false),
            (0.1, "order", false),
            (0.3, "what they have", false)
        );
        foreach (var line in recall.Customers)
        {
            table.Tick("", "", line.Customer, line.Reach, line.Order, line.Lots);
        }

        return List(
            sheet,
            ("recall.pdf", $"Recall of {recall.Lot}", ""),
            [
                new Words(recall.About) { Larger = 1 },
                new Words(
                    recall.Customers.Count == 0
                        ? "Nothing of it has left the workshop."
                        : $"{NumberText.Count(recall.Customers.Count, "order", "orders")} got it or "
                            + "something it is in."
                )
                {
                    Bold = true,
                },
                .. table.Blocks,
                .. Listed("Still here: put aside, mark and do not use", recall.Here, Sign.Tick),
                .. Listed("It is in", recall.Into, Sign.Dash),
                .. Listed("It was made from", recall.Sources, Sign.Dash),
                new Blank("Reason"),
                new Blank("Called by, day"),
            ]
        );
    }

    private static IEnumerable<Block> Listed(string title, Seq<string> lines, Sign sign) =>
        lines.Count == 0
            ? []
            :
            [
                new Heading(title) { KeepsWithNext = true },
                sign == Sign.Tick ? new Words(lines[0]) { Sign = sign } : new Words(string.Join(", ", lines)),
                .. sign == Sign.Tick ? lines.Skip(1).Select(l => new Words(l) { Sign = sign }) : [],
            ];

    private static PaperFile List(
        ShopSheet sheet,
        (string File, string Title, string About) named,
        IReadOnlyList<Block> blocks
    ) =>
        sheet.Pdf(
            named.File,
            named.Title,
            PageFrame.Sides(sheet.Size, sheet.Head(named.Title, named.About), _ => blocks)
        );
}
