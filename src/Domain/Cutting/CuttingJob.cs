using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Cutting;

/// <summary>How far a cutting plan is.</summary>
public enum CuttingJobState
{
    /// <summary>Planned; what it needs is set aside.</summary>
    Planned,

    /// <summary>Cut and written into the book of stock.</summary>
    Cut,

    /// <summary>Given up.</summary>
    Dropped,
}

/// <summary>Where a sheet of a plan is from.</summary>
public enum CutSourceKind
{
    /// <summary>An offcut of the rack.</summary>
    Offcut,

    /// <summary>A whole sheet in stock.</summary>
    Sheet,

    /// <summary>A roll in stock.</summary>
    Roll,

    /// <summary>A sheet or roll to buy.</summary>
    Buy,
}

/// <summary>What a sheet of the task is in the workshop.</summary>
/// <param name="Stock">Its name in the task.</param>
/// <param name="Kind">Where it is from.</param>
/// <param name="Lot">Number of its lot; null for what is bought.</param>
/// <param name="Offer">Key of the offer it is bought by; null for what is in stock.</param>
/// <param name="Name">As people call it.</param>
/// <param name="UnitsPerSquareMeter">Units of the good in one square meter of it.</param>
public sealed record CutSource(
    string Stock,
    CutSourceKind Kind,
    string? Lot,
    string? Offer,
    string Name,
    double UnitsPerSquareMeter
);

/// <summary>One part to cut, with its number on the label. Lengths in millimeters.</summary>
public sealed record CutPiece
{
    /// <summary>Running number in its plan, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Name of the demand in the task that it is one of.</summary>
    public required string Demand { get; init; }

    /// <summary>Number of the order; null for stock.</summary>
    public int? Order { get; init; }

    /// <summary>Tank or kit it is for, as the customer knows it; "for stock" else.</summary>
    public required string For { get; init; }

    /// <summary>What it is: "barrier", "lid".</summary>
    public required string Part { get; init; }

    /// <summary>Finished length.</summary>
    public required double Length { get; init; }

    /// <summary>Finished width.</summary>
    public required double Width { get; init; }

    /// <summary>Holes, notches and fit, in words; empty for none.</summary>
    public string Note { get; init; } = "";
}

/// <summary>An offcut that was put on the rack.</summary>
/// <param name="Sheet">Index of its sheet in the plan.</param>
/// <param name="Offcut">Index of the offcut on the sheet.</param>
/// <param name="Lot">Number of its lot.</param>
public sealed record KeptOffcut(int Sheet, int Offcut, string Lot);

/// <summary>Minutes of cutting that were written to an order.</summary>
/// <param name="Order">Number of the order.</param>
/// <param name="Minutes">Minutes.</param>
public sealed record CutMinutes(int Order, double Minutes);

/// <summary>A cutting plan of the workshop, as it was made and what became of it.</summary>
public sealed record CuttingJob
{
    /// <summary>Running number.</summary>
    public required int Number { get; init; }

    /// <summary>Day it was planned.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Key of the good.</summary>
    public required string Good { get; init; }

    /// <summary>Name of the good.</summary>
    public required string Name { get; init; }

    /// <summary>Thickness, mm; null where the good has one alone.</summary>
    public double? Millimeters { get; init; }

    /// <summary>What was to be cut from what.</summary>
    public required CuttingTask Task { get; init; }

    /// <summary>How it is cut.</summary>
    public required CuttingPlan Plan { get; init; }

    /// <summary>What the sheets of the task are.</summary>
    public required Seq<CutSource> Sources { get; init; }

    /// <summary>Every part, the ones that are wanted first in front.</summary>
    public required Seq<CutPiece> Pieces { get; init; }

    /// <summary>Price of a square meter of new material, net; null where nobody said.</summary>
    public decimal? PricePerSquareMeter { get; init; }

    /// <summary>Worth of an offcut over the price of as much new material.</summary>
    public double OffcutWorth { get; init; }

    /// <summary>Day the parts are wanted; null where no order has one.</summary>
    public DateOnly? Wanted { get; init; }

    /// <summary>State.</summary>
    public CuttingJobState State { get; init; }

    /// <summary>Who planned it.</summary>
    public required string Who { get; init; }

    /// <summary>Day it was cut; null before.</summary>
    public DateOnly? CutOn { get; init; }

    /// <summary>Who cut it; empty before.</summary>
    public string CutBy { get; init; } = "";

    /// <summary>Offcuts that were put on the rack.</summary>
    public Seq<KeptOffcut> Kept { get; init; } = [];

    /// <summary>Minutes that were written to orders.</summary>
    public Seq<CutMinutes> Minutes { get; init; } = [];

    /// <summary>What its lines in the book of stock begin with.</summary>
    public string Mark => FormattableString.Invariant($"cutting plan {Number}");
}
