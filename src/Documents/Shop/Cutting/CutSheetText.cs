using Litterfall.Domain.Lists;

namespace Litterfall.Documents.Shop.Cutting;

/// <summary>
/// A part as a cut sheet shows it; millimeters from the lower left corner of the raw sheet.
/// </summary>
/// <param name="Number">Number on its label: "12-7".</param>
/// <param name="Name">What it is, with its finished size.</param>
/// <param name="For">Order and tank.</param>
/// <param name="X">Its left edge.</param>
/// <param name="Y">Its lower edge.</param>
/// <param name="Length">Its edge along x as it lies.</param>
/// <param name="Width">Its edge along y as it lies.</param>
/// <param name="IsTurned">True where it is turned by a quarter.</param>
public sealed record SheetPart(
    string Number,
    string Name,
    string For,
    double X,
    double Y,
    double Length,
    double Width,
    bool IsTurned
);

/// <summary>A cut as a cut sheet tells it.</summary>
/// <param name="Number">Its turn, from 1.</param>
/// <param name="IsUpright">True for a cut along y, at one x.</param>
/// <param name="At">Its place, millimeters from the corner of the raw sheet.</param>
/// <param name="From">Where it begins along its own axis.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Words">In words.</param>
public sealed record SheetCut(int Number, bool IsUpright, double At, double From, double To, string Words);

/// <summary>An offcut that is kept.</summary>
/// <param name="Number">Number on its label.</param>
/// <param name="X">Its left edge.</param>
/// <param name="Y">Its lower edge.</param>
/// <param name="Length">Its edge along x.</param>
/// <param name="Width">Its edge along y.</param>
public sealed record SheetOffcut(string Number, double X, double Y, double Length, double Width);

/// <summary>One sheet of a plan as it lies on the bench. Lengths in millimeters.</summary>
public sealed record CutSheetText
{
    /// <summary>Number of the plan.</summary>
    public required int Plan { get; init; }

    /// <summary>Which sheet, from 1.</summary>
    public required int Sheet { get; init; }

    /// <summary>Of how many.</summary>
    public required int Sheets { get; init; }

    /// <summary>Material with its thickness.</summary>
    public required string Material { get; init; }

    /// <summary>Which sheet to pull.</summary>
    public required string Stock { get; init; }

    /// <summary>Edge along x; of a roll, what is taken off.</summary>
    public required double Length { get; init; }

    /// <summary>Edge along y.</summary>
    public required double Width { get; init; }

    /// <summary>Width that a cut takes away.</summary>
    public double Kerf { get; init; }

    /// <summary>Taken off the left and right edges.</summary>
    public double TrimAcross { get; init; }

    /// <summary>Taken off the upper and lower edges.</summary>
    public double TrimAlong { get; init; }

    /// <summary>True where the part must not be turned: an arrow shows the grain.</summary>
    public bool HasGrain { get; init; }

    /// <summary>True where the cuts are scored and snapped.</summary>
    public bool IsScored { get; init; }

    /// <summary>What the code holds.</summary>
    public required string Code { get; init; }

    /// <summary>Parts.</summary>
    public required Seq<SheetPart> Parts { get; init; }

    /// <summary>Cuts in cutting order.</summary>
    public required Seq<SheetCut> Cuts { get; init; }

    /// <summary>Offcuts to keep.</summary>
    public required Seq<SheetOffcut> Offcuts { get; init; }

    /// <summary>Where the area goes, in a sentence.</summary>
    public required string Areas { get; init; }

    /// <summary>Cautions.</summary>
    public Seq<string> Cautions { get; init; } = [];
}

/// <summary>A row of the totals of a plan.</summary>
/// <param name="Name">What.</param>
/// <param name="Size">How large.</param>
/// <param name="Count">How many, or how much.</param>
/// <param name="Where">Where from, or what for.</param>
public sealed record TotalsRow(string Name, string Size, string Count, string Where);

/// <summary>What a plan takes and gives, for the page that comes first.</summary>
public sealed record CutTotalsText
{
    /// <summary>What the plan is and how good, in sentences.</summary>
    public required Seq<string> Told { get; init; }

    /// <summary>Sheets, rolls and offcuts to pull.</summary>
    public required Seq<TotalsRow> Pull { get; init; }

    /// <summary>Sheets to buy.</summary>
    public required Seq<TotalsRow> Buy { get; init; }

    /// <summary>Offcuts to store.</summary>
    public required Seq<TotalsRow> Store { get; init; }

    /// <summary>Parts, the ones of a tank together.</summary>
    public required Seq<TotalsRow> Parts { get; init; }
}
