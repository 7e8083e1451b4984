using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Documents.Shop.Dispatch;

/// <summary>Papers that must go with a parcel or must be asked for, to tick off.</summary>
public static class AnimalPapersSheet
{
    /// <summary>Writes it.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="parcel">The parcel.</param>
    /// <param name="papers">Papers of what lives in it.</param>
    /// <param name="caution">Who decides.</param>
    public static PaperFile Write(ShopSheet sheet, Parcel parcel, Seq<AnimalPaper> papers, string caution)
    {
        var title = string.Create(
            CultureInfo.InvariantCulture,
            $"Papers of the animals, parcel {parcel.Number}"
        );
        return sheet.Pdf(
            "animal-papers.pdf",
            title,
            PageFrame.Sides(sheet.Size, sheet.Head(title, parcel.Recipient), _ => Blocks(papers, caution))
        );
    }

    private static List<Block> Blocks(Seq<AnimalPaper> papers, string caution)
    {
        var blocks = new List<Block>
        {
            new Words(caution) { Sign = Sign.Caution, Tone = Tone.Caution },
        };
        Add(blocks, "Must go with the parcel", [.. papers.Where(p => p.IsNeeded)]);
        Add(blocks, "Ask before it leaves", [.. papers.Where(p => !p.IsNeeded)]);
        blocks.Add(new Blank("Looked at by, day"));
        return blocks;
    }

    private static void Add(List<Block> blocks, string title, List<AnimalPaper> papers)
    {
        if (papers.Count == 0)
        {
            return;
        }

        var table = Table.Of(
            title,
            (0.04, "", false),
            (0.66, "", false),
            (0.1, "", false),
            (0.2, "number, day", false)
        );
        foreach (var kind in papers.GroupBy(p => p.Species, StringComparer.Ordinal))
        {
            table.Group("", kind.Key.Length > 0 ? kind.Key : "The whole parcel", "", "");
            foreach (var paper in kind)
            {
                table.Tick("", "", paper.Text, paper.IsThere ? "there" : "", "__________________");
            }
        }

        blocks.AddRange(table.Blocks);
    }
}
