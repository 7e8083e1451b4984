using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Pdf;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;

namespace Litterfall.Documents.Shop.Tanks;

/// <summary>What the report of a visit says.</summary>
/// <param name="Shop">The workshop.</param>
/// <param name="Customer">The customer.</param>
/// <param name="Visit">The visit.</param>
/// <param name="Next">Day of the next one; null for none.</param>
/// <param name="Photos">Photos, JPEG.</param>
public sealed record VisitText(
    ShopTerms Shop,
    Customer Customer,
    TankVisit Visit,
    DateOnly? Next,
    ImmutableArray<ImmutableArray<byte>> Photos
);

/// <summary>The report of a visit for the customer, in plain words and with photos.</summary>
public static class VisitPaper
{
    /// <summary>The paper.</summary>
    /// <param name="report">What it says.</param>
    /// <param name="wish">Sheet and sign.</param>
    public static PaperFile Write(VisitText report, ShopWish wish)
    {
        var number = report.Visit.Number.ToString(CultureInfo.InvariantCulture);
        var head = new ShopHead(
            "Visit report",
            report.Shop,
            report.Customer,
            [("Visit", number), ("Date", ShopWords.Day(report.Visit.Day)), ("Made by", report.Visit.Who)]
        );
        return new($"visit-{number}.pdf", CustomerLetter.Sides(wish, head, _ => Blocks(report)), pages =>
            PdfWriter.Write($"Visit report {number}", report.Visit.Day, pages)
        );
    }

    private static List<Block> Blocks(VisitText report)
    {
        var blocks = new List<Block>();
        if (report.Visit.Note.Length > 0)
        {
            blocks.Add(new Words(report.Visit.Note) { After = 3 });
        }

        foreach (var tank in report.Visit.Steps.GroupBy(s => s.Tank))
        {
            blocks.Add(new Heading($"Tank {tank.Key}") { KeepsWithNext = true });
            blocks.AddRange(
                tank.Where(s => s.IsDone)
                    .Select(s => new Words(s.Found.Length > 0 ? $"{s.What}: {s.Found}" : s.What)
                    {
                        Sign = Sign.Tick,
                    })
            );
            blocks.AddRange(
                tank.Where(s => !s.IsDone && s.Found.Length > 0)
                    .Select(s => new Words($"{s.What}: not done, {s.Found}") { Sign = Sign.Dash })
            );
        }

        if (report.Visit.Parts.Count > 0)
        {
            blocks.Add(new Heading("Parts we used") { KeepsWithNext = true });
            blocks.AddRange(
                report.Visit.Parts.Select(p => new Words($"{ShopWords.Amount(p.Amount)} × {p.Name}")
                {
                    Sign = Sign.Dash,
                })
            );
        }

        if (report.Next is { } next)
        {
            blocks.Add(new Words($"We come again on {ShopWords.Day(next)}.") { Bold = true, After = 3 });
        }

        blocks.AddRange(report.Photos.Select((p, i) => new BesidePicture([new Words($"Photo {i + 1}")], p)));
        blocks.Add(
            new Words("An animal that does not look well needs a veterinarian; call us at once.")
            {
                After = 2,
            }
        );
        return blocks;
    }
}
