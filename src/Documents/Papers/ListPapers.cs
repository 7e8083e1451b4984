using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Views;
using Litterfall.Domain.Figures;
using Litterfall.Instructions.Buying;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>The shopping list and the calendar, printed.</summary>
internal static class ListPapers
{
    public static PaperFile Shopping(PaperJob job, ShoppingList list)
    {
        var sides = PageFrame.Sides(job.Wish.Size, job.Head("Shopping list"), _ => ShoppingBlocks(job, list));
        return job.Pdf("05-shopping-list.pdf", "Shopping list", sides);
    }

    public static PaperFile Calendar(PaperJob job)
    {
        var sides = PageFrame.Sides(job.Wish.Size, job.Head("Calendar"), _ => CalendarBlocks(job));
        return job.Pdf("06-calendar.pdf", "Calendar", sides);
    }

    private static List<Block> ShoppingBlocks(PaperJob job, ShoppingList list)
    {
        var isPriced = list.Total is not null;
        var table = isPriced
            ? Table.Of(
                "",
                (0.1, "pieces", true),
                (0.02, "", false),
                (0.5, "item", false),
                (0.2, "liters or size", false),
                (0.09, "each", true),
                (0.09, "price", true)
            )
            : Table.Of(
                "",
                (0.1, "pieces", true),
                (0.02, "", false),
                (0.66, "item", false),
                (0.22, "liters or size", false)
            );
        string[] none = isPriced ? ["", ""] : [];
        var inches = Imperial.IsUsed(job.Numbers.Design.Design);
        foreach (var kind in list.Lines.GroupBy(l => l.Kind).OrderBy(g => g.Key))
        {
            table.Group(["", "", Title(kind.Key), "", .. none]);
            foreach (var line in kind)
            {
                string[] prices = isPriced ? [Money(line.PriceEach), Money(line.Price)] : [];
                table.Tick(
                    line.Where,
                    [
                        line.Pieces is { } pieces ? NumberText.Whole(pieces) : "",
                        "",
                        Notes.Contains(line.Kind) && line.Note.Length > 0
                            ? $"{line.Item} ({line.Note})"
                            : line.Item,
                        Measure(line, inches),
                        .. prices,
                    ]
                );
            }
        }

        var blocks = new List<Block>(table.Blocks);
        blocks.Add(new Air(2));
        blocks.Add(new Words(Sum(job, list)) { Bold = true });
        return blocks;
    }

    /// <summary>Kinds whose notes a buyer needs; the cut list has those of cut parts.</summary>
    private static readonly ShoppingKind[] Notes =
    [
        ShoppingKind.Box,
        ShoppingKind.Fitting,
        ShoppingKind.Electric,
        ShoppingKind.Supply,
        ShoppingKind.Sealant,
        ShoppingKind.Crew,
    ];

    private static string Sum(PaperJob job, ShoppingList list)
    {
        var boxes = job.Boxes > 1 ? FormattableString.Invariant($" for {job.Boxes} boxes") : "";
        var total = list.Total is { } t
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"Priced lines{boxes}: {t.Si:0.00} {list.Currency}. "
            )
            : $"No prices are known{boxes}. ";
        return list.Unpriced > 0
            ? $"{total}{NumberText.Count(list.Unpriced, "line has", "lines have")} no price in the "
                + $"workshop folder."
            : total;
    }

    private static string Title(ShoppingKind kind) =>
        kind switch
        {
            ShoppingKind.FromStock => "From the workshop's stock",
            ShoppingKind.Bulk => "Packs to buy",
            ShoppingKind.Mesh => "Mesh and grid",
            ShoppingKind.Pane => "Panes",
            ShoppingKind.Background => "Background",
            ShoppingKind.Sealant => "Silicone and foam",
            ShoppingKind.Hardscape => "Wood and stone",
            ShoppingKind.Box => "Box",
            ShoppingKind.Fitting => "Fittings",
            ShoppingKind.Electric => "Power, timers, instruments",
            ShoppingKind.Lamp => "Lamps",
            ShoppingKind.Supply => "Pins, cups, cleaning, safety",
            ShoppingKind.Plant => "Plants",
            _ => "Clean-up crew",
        };

    private static string Measure(ShoppingLine line, bool inches)
    {
        if (line.Liters is { } liters)
        {
            var each =
                line.LitersEach is { } e && line.Pieces is { Si: > 1 }
                    ? $" ({NumberText.Liters(e)} each)"
                    : "";
            return NumberText.Liters(liters) + each;
        }

        if (line is { Length: { } length, Width: { } width })
        {
            var third =
                line.Height is { } height
                    ? string.Create(CultureInfo.InvariantCulture, $" × {height.Si * 1000:0.#}")
                : line.Thickness is { } thick
                    ? string.Create(CultureInfo.InvariantCulture, $" × {thick.Si * 1000:0.#}")
                : "";
            return string.Create(
                CultureInfo.InvariantCulture,
                $"{NumberText.Tape(length.Si)} × {NumberText.Tape(width.Si)}{third} mm"
            );
        }

        if (line.Length is { } alone)
        {
            return Lengths.Way(alone.Si, inches);
        }

        return line.Mass is { } mass ? NumberText.Kilograms(mass)
            : line.Area is { } area ? string.Create(CultureInfo.InvariantCulture, $"{area.Si:0.00} m²")
            : "";
    }

    private static string Money(Figure? price) =>
        price is null ? "" : price.Si.ToString("0.00", CultureInfo.InvariantCulture);

    private static List<Block> CalendarBlocks(PaperJob job)
    {
        var blocks = new List<Block>();
        if (job.Plan.Note is { } note)
        {
            blocks.Add(new Words(note) { Tone = Tone.Caution, Sign = Sign.Caution });
        }

        var table = Table.Of(
            "Dates",
            (0.17, "day", false),
            (0.26, "what", false),
            (0.42, "", false),
            (0.15, "again", false)
        );
        foreach (var date in job.Plan.Dates)
        {
            table.Row(date.Where, NumberText.Day(date.Day), date.Title, date.Text, date.Repeat?.Words ?? "");
        }

        blocks.AddRange(table.Blocks);
        blocks.Add(
            new Words(
                "The file 06-calendar.ics holds the same dates for a phone. They are fixed "
                    + "intervals of the trade; "
                    + "what you see in the tank comes first."
            )
            {
                Tone = Tone.Quiet,
            }
        );
        return blocks;
    }
}
