using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Pdf;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Trade;

namespace Litterfall.Documents.Shop.Dispatch;

/// <summary>All papers of a cleared parcel.</summary>
public static class ShipPapers
{
    /// <summary>Width and size of the address on a letter, mm and points.</summary>
    private const double AddressWidth = 84;

    private const double AddressPoints = 11;

    /// <summary>Writes them; labels are left out where none may be printed.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="cleared">The cleared parcel.</param>
    /// <param name="shop">Terms of the workshop, for the letterhead.</param>
    /// <param name="logo">Sign of the workshop, PNG or JPEG; empty for none.</param>
    /// <param name="caution">Who decides on papers of animals.</param>
    public static IReadOnlyList<PaperFile> Write(
        ShopSheet sheet,
        ClearedParcel cleared,
        ShopTerms shop,
        ImmutableArray<byte> logo,
        string caution
    )
    {
        PaperFile?[] all =
        [
            PackingCard.Write(sheet, cleared),
            AnimalPapersSheet.Write(sheet, cleared.Parcel, cleared.Papers, caution),
            Letter(sheet, cleared, shop, logo),
            new("message.txt", Encoding.UTF8.GetBytes(string.Join("\n\n", cleared.Message) + "\n"))
            {
                Title = "Message to the customer",
            },
            CupLabels.Write(sheet, cleared),
            CartonLabel.Write(sheet, cleared),
        ];
        return [.. all.OfType<PaperFile>()];
    }

    /// <summary>What the customer is told, as a letter of the workshop.</summary>
    private static PaperFile Letter(
        ShopSheet sheet,
        ClearedParcel cleared,
        ShopTerms shop,
        ImmutableArray<byte> logo
    )
    {
        var number = cleared.Parcel.Number.ToString(CultureInfo.InvariantCulture);
        // A long name goes over several lines of the address.
        var name = Lettering.Wrap(cleared.Parcel.Recipient, AddressWidth, AddressPoints);
        var head = new ShopHead(
            "Your parcel",
            shop,
            new()
            {
                Key = "recipient",
                Name = name[0],
                Address = [.. name.Skip(1), .. cleared.Address],
            },
            [
                ("Parcel", number),
                ("Leaves", ShopWords.Day(cleared.Day.Day)),
                .. cleared.Day.Arrives is { } day
                    ? new[] { (Name: "Arrives", Value: ShopWords.Day(day)) }
                    : [],
            ]
        );
        return new(
            "customer-letter.pdf",
            CustomerLetter.Sides(new(sheet.Size, logo), head, _ =>
                [.. cleared.Message.Select(m => new Words(m) { After = 2.5 })]
            ),
            pages => PdfWriter.Write($"Your parcel {number}", sheet.Day, pages)
        )
        {
            Title = "Letter to the customer",
        };
    }
}
