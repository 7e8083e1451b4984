namespace Litterfall.Domain.Stock;

/// <summary>What shape a lot of sheet goods has.</summary>
public enum SheetForm
{
    /// <summary>Whole sheets, all of one size.</summary>
    Sheets,

    /// <summary>A roll.</summary>
    Roll,

    /// <summary>One rectangle that was left over from cutting.</summary>
    Offcut,

    /// <summary>Parts that are cut already.</summary>
    Parts,
}

/// <summary>
/// So much of a good that came, or was made, at one time: what is told apart when something is wrong.
/// A tank or kit that leaves the workshop is a lot too.
/// </summary>
public sealed record Lot
{
    /// <summary>Number on its label, such as PEAT-31.</summary>
    public required string Id { get; init; }

    /// <summary>Key of the good.</summary>
    public required string Good { get; init; }

    /// <summary>Day it came or was made.</summary>
    public required DateOnly Since { get; init; }

    /// <summary>Key of the supplier; null for what was made or bred here.</summary>
    public string? Supplier { get; init; }

    /// <summary>Number that the supplier gave it.</summary>
    public string? SupplierLot { get; init; }

    /// <summary>
    /// What all of it cost, net: the price paid, or the cost of what went into it on the day it was made.
    /// What goes into it later comes on top, and so does all of it where this is 0.
    /// </summary>
    public decimal Cost { get; init; }

    /// <summary>Amount that came or was made, in the unit of the good.</summary>
    public required double Amount { get; init; }

    /// <summary>Day after which it is not used.</summary>
    public DateOnly? Expires { get; init; }

    /// <summary>First day out of quarantine; null where it never was in one.</summary>
    public DateOnly? QuarantinedUntil { get; init; }

    /// <summary>Breeding line or mother culture.</summary>
    public string? Line { get; init; }

    /// <summary>Order it was made for; null for stock.</summary>
    public int? Order { get; init; }

    /// <summary>Shape of sheet goods; null for what is no sheet, or where nobody said.</summary>
    public SheetForm? Form { get; init; }

    /// <summary>
    /// Edge of one sheet or offcut, mm; of a roll its whole length as it came. Null for what is no sheet.
    /// </summary>
    public double? LengthMillimeters { get; init; }

    /// <summary>The other edge, mm; of a roll its width.</summary>
    public double? WidthMillimeters { get; init; }

    /// <summary>Thickness, mm; null where the good has one alone, or nobody said.</summary>
    public double? ThicknessMillimeters { get; init; }

    /// <summary>What to remember.</summary>
    public string Note { get; init; } = "";
}
