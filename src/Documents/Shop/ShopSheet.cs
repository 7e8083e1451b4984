using Litterfall.Documents.Drawings;
using Litterfall.Documents.Labels;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Pdf;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Shop;

/// <summary>What all papers of the workshop share.</summary>
/// <param name="Size">Sheet.</param>
/// <param name="Workshop">Name of the workshop.</param>
/// <param name="Day">Day they are printed.</param>
/// <param name="Version">Version of the program.</param>
public sealed record ShopSheet(PaperSize Size, string Workshop, DateOnly Day, string Version)
{
    /// <summary>True for a reader of gallons and pounds.</summary>
    public bool IsUs { get; init; }

    internal PageHead Head(string title, string about) =>
        new(
            title,
            about.Length > 0 ? $"{about}  ·  {Workshop}" : Workshop,
            NumberText.Day(Day),
            $"Litterfall {Version}"
        )
        {
            IsUs = IsUs,
        };

    internal PaperFile Pdf(string name, string title, IEnumerable<Drawing> pages) =>
        new(name, [.. pages], drawn => PdfWriter.Write($"{title} - {Workshop}", Day, drawn))
        {
            Title = title,
        };

    /// <summary>A paper with a code in its upper right corner; what stands beside it comes first.</summary>
    internal IReadOnlyList<Drawing> Coded(
        PageHead head,
        string code,
        IReadOnlyList<Block> beside,
        IReadOnlyList<Block> below
    )
    {
        const double module = 0.7;
        const double gap = 5;
        var inside = PageFrame.Inside(Size);
        var mark = QrMark.Draw(code, module);
        var upper = mark.Height + 2;
        return PageFrame.Sides(
            Size,
            head,
            (_, sketch) =>
            {
                sketch?.Place(mark, new(inside.X + inside.Width - mark.Width, inside.Y));
                return [.. beside, new ColumnBreak(), .. below];
            },
            _ =>
                [
                    inside with
                    {
                        Width = inside.Width - mark.Width - gap,
                        Height = upper,
                    },
                    inside with
                    {
                        Y = inside.Y + upper,
                        Height = inside.Height - upper,
                    },
                ]
        );
    }
}
