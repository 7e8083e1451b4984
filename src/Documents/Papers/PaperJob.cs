using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Pdf;
using Litterfall.Documents.Views;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Instructions.Building;
using Litterfall.Instructions.Care;
using Litterfall.Instructions.Parts;
using Litterfall.Judging;
using Litterfall.Judging.Levers;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>
/// One file of the papers: its name below the folder, with "/" between folders, and its bytes.
/// </summary>
public sealed class PaperFile
{
    private readonly Lazy<byte[]> bytes;

    /// <summary>A file of bytes.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="bytes">Its bytes.</param>
    public PaperFile(string name, byte[] bytes)
    {
        Name = name;
        this.bytes = new(bytes);
    }

    /// <summary>A paper of pages, written when its bytes are asked for.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="pages">Its pages.</param>
    /// <param name="write">Writes them.</param>
    public PaperFile(string name, ImmutableArray<Drawing> pages, Func<ImmutableArray<Drawing>, byte[]> write)
    {
        Name = name;
        Pages = pages;
        bytes = new(() => write(pages));
    }

    /// <summary>Its name below the folder.</summary>
    public string Name { get; }

    /// <summary>What it is, for people; empty where only its name says so.</summary>
    public string Title { get; init; } = "";

    /// <summary>Millimeters in the file for each of the thing; null where it has no scale.</summary>
    public double? Scale { get; init; }

    /// <summary>Its pages; empty for a file that is no paper.</summary>
    public ImmutableArray<Drawing> Pages { get; } = [];

    /// <summary>Its bytes.</summary>
    public byte[] Bytes => bytes.Value;
}

/// <summary>How the papers are wanted.</summary>
/// <param name="Size">Sheet.</param>
/// <param name="From">Planting day from the command line; null for the design's own.</param>
/// <param name="Version">Version of the program, for the foot of each page.</param>
/// <param name="DecimalComma">True for tables with semicolon and decimal comma.</param>
public sealed record PaperWish(PaperSize Size, DateOnly? From, string Version, bool DecimalComma)
{
    /// <summary>True when the slips are wanted too.</summary>
    public bool Slips { get; init; }

    /// <summary>
    /// Address that codes of tanks lead to, their number behind it; empty where a code holds the number
    /// alone.
    /// </summary>
    public string Link { get; init; } = "";

    /// <summary>What the code of a tank holds: small letters would make it larger.</summary>
    /// <param name="tank">Its number.</param>
    public string Code(string tank) => (Link + tank).ToUpperInvariant();
}

/// <summary>One design with everything its papers are made from; computed once for all of them.</summary>
public sealed class PaperJob
{
    /// <summary>Reads what all papers share.</summary>
    /// <param name="result">The judged design.</param>
    /// <param name="wish">How the papers are wanted.</param>
    /// <param name="settings">Its settings season by season; null where it has none.</param>
    public PaperJob(DesignResult result, PaperWish wish, SettingsCard? settings)
    {
        Settings = settings;
        Result = result;
        Wish = wish;
        Told = TankPlan.Of(result.Numbers, result.Findings, settings, wish.From);
        Plan = CareDates.Of(Told);
        Tank = TankNumber.Of(result.Numbers);
        Views = new DesignViews(result.Numbers);
        Steps = BuildSteps.Of(Told);
        Corners = CornerDepths.Of(result.Numbers);
        Inches = Imperial.AreDepths(result.Numbers.Design.Design);
    }

    /// <summary>The judged design.</summary>
    public DesignResult Result { get; }

    /// <summary>Its settings season by season; null where it has none.</summary>
    public SettingsCard? Settings { get; }

    /// <summary>What all papers tell alike.</summary>
    public TankPlan Told { get; }

    /// <summary>Its misting, in the words of all papers; null without a misting system.</summary>
    public MistingPlan? Mist => Told.Mist;

    /// <summary>How the papers are wanted.</summary>
    public PaperWish Wish { get; }

    /// <summary>Its numbers.</summary>
    public DesignNumbers Numbers => Result.Numbers;

    /// <summary>Its dates.</summary>
    public CarePlan Plan { get; }

    /// <summary>Its number.</summary>
    public string Tank { get; }

    /// <summary>Its drawings.</summary>
    public DesignViews Views { get; }

    /// <summary>Its steps.</summary>
    public ImmutableArray<StepGroup> Steps { get; }

    /// <summary>Its layers at the corners.</summary>
    public ImmutableArray<LayerCorners> Corners { get; }

    /// <summary>True when the depths of the floor were typed in inches.</summary>
    public bool Inches { get; }

    /// <summary>True for a maker who thinks in inches: all papers tell US units first.</summary>
    public bool IsUs => Imperial.IsUsed(Numbers.Design.Design);

    /// <summary>The unit in the head of a column of sizes; in each cell for a reader of inches.</summary>
    public string MillimetersAhead => IsUs ? "" : ", mm";

    /// <summary>The unit in each cell of a column of sizes, where its head has none.</summary>
    public string MillimetersBehind => IsUs ? " mm" : "";

    /// <summary>How many equal boxes.</summary>
    public int Boxes => Numbers.Design.Design.Boxes;

    /// <summary>Head and foot of a page.</summary>
    public PageHead Head(string title, string? about = null) =>
        new(
            title,
            about is null ? Numbers.Design.Design.Name : $"{about}  ·  {Numbers.Design.Design.Name}",
            $"{Tank}  ·  {NumberText.Day(Plan.Planting)}",
            $"Litterfall {Wish.Version}  ·  design {DesignHash.Of(Numbers.Design.Document.Text)}  ·  "
                + (
                    Lettering.Clean(Numbers.Design.Design.Name).Contains(Lettering.Unknown)
                        ? "□ a character missing from the font"
                        : "the bench shows where each number comes from"
                )
        )
        {
            IsUs = IsUs,
        };

    /// <summary>A paper as PDF.</summary>
    public PaperFile Pdf(string name, string title, IEnumerable<Drawing> pages) =>
        new(name, [.. pages], drawn =>
            PdfWriter.Write($"{title} - {Numbers.Design.Design.Name}", Plan.Planting, drawn)
        )
        {
            Title = title,
        };

    /// <summary>A paper as text in UTF-8 without a mark.</summary>
    public static PaperFile Text(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    /// <summary>Open findings of one severity.</summary>
    public IEnumerable<Finding> Of(Severity severity) => Result.Open.Where(f => f.Severity == severity);

    /// <summary>Findings that somebody accepts, with the reason.</summary>
    public IEnumerable<Finding> Accepted => Result.Findings.Where(f => !f.IsOpen);

    /// <summary>A number with so many decimals.</summary>
    public static string Number(double value, string form) =>
        value.ToString(form, CultureInfo.InvariantCulture);

    /// <summary>A name as part of a file name: small letters, digits and hyphens, never empty.</summary>
    public static string FileWord(string text)
    {
        var word = new StringBuilder();
        foreach (var c in text.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                word.Append(c);
            }
            else if (word.Length > 0 && word[^1] != '-')
            {
                word.Append('-');
            }
        }

        var clean = word.ToString().Trim('-');
        return clean.Length == 0 ? "part" : clean[..Math.Min(clean.Length, 40)].Trim('-');
    }
}
