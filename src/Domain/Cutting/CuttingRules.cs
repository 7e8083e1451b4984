namespace Litterfall.Domain.Cutting;

/// <summary>How a material is cut.</summary>
public enum CutTool
{
    /// <summary>Scored and snapped: glass, thin acrylic.</summary>
    ScoreAndSnap,

    /// <summary>Sawn.</summary>
    Saw,

    /// <summary>Cut with a knife.</summary>
    Knife,

    /// <summary>Cut with shears.</summary>
    Shears,

    /// <summary>Cut by laser.</summary>
    Laser,
}

/// <summary>How one good is cut in this workshop. Lengths in millimeters.</summary>
public sealed record CuttingRules
{
    /// <summary>Key of the good.</summary>
    public required string Good { get; init; }

    /// <summary>False where panes of it are ordered cut to size.</summary>
    public bool IsCutHere { get; init; } = true;

    /// <summary>Tool.</summary>
    public CutTool Tool { get; init; } = CutTool.Knife;

    /// <summary>Width that a cut takes away.</summary>
    public double Kerf { get; init; }

    /// <summary>
    /// Taken off every edge of a sheet, its own cut included; off the two long edges of a roll.
    /// </summary>
    public double Trim { get; init; }

    /// <summary>Narrowest strip that the shop breaks off; 0 where any can.</summary>
    public double NarrowestStrip { get; init; }

    /// <summary>Added on each side, for what grinding takes off.</summary>
    public double EdgeAllowance { get; init; }

    /// <summary>True where parts may be turned by a quarter: no grain, no print, no weave.</summary>
    public bool MayTurn { get; init; } = true;

    /// <summary>Most stages of cuts; null for as many as wanted.</summary>
    public int? Stages { get; init; }

    /// <summary>Shorter edge of the smallest offcut that is kept.</summary>
    public double OffcutShort { get; init; } = 150;

    /// <summary>Longer edge of the smallest offcut that is kept.</summary>
    public double OffcutLong { get; init; } = 300;

    /// <summary>
    /// Worth of an offcut over the price of as much new material, 0.3 to 0.6: the chance that it is used. At
    /// 1 or more sheets would be bought to make offcuts.
    /// </summary>
    public double OffcutWorth { get; init; } = 0.45;

    /// <summary>Edge of a whole sheet where its lot does not say; null where nobody said.</summary>
    public double? SheetLength { get; init; }

    /// <summary>Other edge of a whole sheet, or width of the roll, where its lot does not say.</summary>
    public double? SheetWidth { get; init; }

    /// <summary>True where it comes on a roll.</summary>
    public bool IsRoll { get; init; }

    /// <summary>Where these figures are from, in words; "your own" once the shop changed them.</summary>
    public string Source { get; init; } = "";

    /// <summary>
    /// Narrowest strip that can be broken off: at least twice the thickness where glass is scored, mm.
    /// </summary>
    /// <param name="thickness">Thickness, mm; null where nobody said.</param>
    public double StripOf(double? thickness) =>
        Tool == CutTool.ScoreAndSnap ? Math.Max(NarrowestStrip, 2 * (thickness ?? 0)) : NarrowestStrip;
}
