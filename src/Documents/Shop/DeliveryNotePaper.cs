using System.Globalization;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Pdf;
using Litterfall.Domain.Trade;

namespace Litterfall.Documents.Shop;

/// <summary>What is handed over, to tick and sign; without prices.</summary>
public static class DeliveryNotePaper
{
    /// <summary>The paper.</summary>
    /// <param name="note">The delivery note.</param>
    /// <param name="wish">Sheet and sign.</param>
    public static PaperFile Write(Invoice note, ShopWish wish)
    {
        var head = new ShopHead(
            "Delivery note",
            note.Shop,
            note.Customer,
            [
                ("Number", note.Name),
                ("Date", ShopWords.Day(note.Day)),
                (
                    "Our order number",
                    note.Shop.OrderPrefix + note.Order.ToString(CultureInfo.InvariantCulture)
                ),
            ]
        );
        return new($"{note.Name}.pdf", CustomerLetter.Sides(wish, head, _ => Blocks(note)), pages =>
            PdfWriter.Write($"Delivery note {note.Name}", note.Day, pages)
        );
    }

    private static List<Block> Blocks(Invoice note) =>
        [
            new Words("Handed over to you:") { After = 3 },
            .. ShopTables.Ticks(note.Lines),
            new Air(4),
            new Words(
                "Please look at panes, plants and animals at once and tell us within 24 hours, with a "
                    + "photograph, what is broken or not well."
            )
            {
                After = 2,
            },
            new Words(
                "A planted tank is not lifted or carried: its place, a level stand and a plug with a "
                    + "residual-current device belong ready before it comes."
            )
            {
                After = 4,
            },
            .. note.Note.Length > 0 ? new Block[] { new Words(note.Note) { After = 4 } } : [],
            new Blank("Received on"),
            new Blank("Name and signature"),
        ];
}
