using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Openings;

/// <summary>What fills a part of an opening.</summary>
public enum CellKind
{
    /// <summary>A pane of the lid or of a wall.</summary>
    Pane,

    /// <summary>A lift-out strip for hoses and cables.</summary>
    HoseStrip,

    /// <summary>A strip of plastic that carries the mesh of a vent.</summary>
    VentStrip,

    /// <summary>Mesh in a frame, or over an opening between panes.</summary>
    Mesh,

    /// <summary>The sill of a front opening.</summary>
    Sill,

    /// <summary>A bar that carries a track or an edge.</summary>
    Bar,

    /// <summary>Doors.</summary>
    Doors,
}

/// <summary>An opening for air in a cell, from its left and lower corner, in meters.</summary>
/// <param name="Vent">The vent.</param>
/// <param name="Left">Its left edge from that of the plan.</param>
/// <param name="Low">Its lower (front) edge from that of the plan.</param>
public sealed record CellOpening(VentShape Vent, Figure Left, Figure Low)
{
    /// <summary>Along.</summary>
    public Figure Length => Vent.Length;

    /// <summary>Across.</summary>
    public Figure Width => Vent.Width;

    /// <summary>True where a strip of the pane is left between it and another.</summary>
    /// <param name="other">The other.</param>
    public bool IsClearOf(CellOpening other)
    {
        var apart = OpeningPolicy.WallSliver.Si - 1e-9;
        return other.Left.Si - Left.Si - Length.Si >= apart
            || Left.Si - other.Left.Si - other.Length.Si >= apart
            || other.Low.Si - Low.Si - Width.Si >= apart
            || Low.Si - other.Low.Si - other.Width.Si >= apart;
    }
}

/// <summary>
/// A rectangle of an opening and what fills it; from the left and from the lower edge of the opening (the
/// front edge of a lid), in meters. The cells of a plan fill it, once.
/// </summary>
/// <param name="Kind">What fills it.</param>
/// <param name="Name">Its name among the parts, such as lid or lid-2.</param>
public sealed record OpeningCell(CellKind Kind, string Name)
{
    /// <summary>Left edge.</summary>
    public required Figure Left { get; init; }

    /// <summary>Lower edge.</summary>
    public required Figure Low { get; init; }

    /// <summary>Along.</summary>
    public required Figure Length { get; init; }

    /// <summary>Across.</summary>
    public required Figure Width { get; init; }

    /// <summary>What is cut out of it.</summary>
    public ImmutableArray<CellOpening> Openings { get; init; } = [];

    /// <summary>True where its front or lower edge lies on nothing but another part.</summary>
    public bool LowHangs { get; init; }

    /// <summary>True where its back or upper edge lies on nothing but another part.</summary>
    public bool HighHangs { get; init; }

    /// <summary>Right edge, m.</summary>
    public double RightSi => Left.Si + Length.Si;

    /// <summary>Upper (back) edge, m.</summary>
    public double HighSi => Low.Si + Width.Si;
}

/// <summary>An opening of the box and the cells that fill it.</summary>
/// <param name="Side">The side it is in.</param>
/// <param name="Length">Along, m.</param>
/// <param name="Width">Across, m.</param>
public sealed record OpeningPlan(Side Side, Figure Length, Figure Width)
{
    /// <summary>The cells, from the lower (front) edge up.</summary>
    public required ImmutableArray<OpeningCell> Cells { get; init; }

    /// <summary>What the design leaves open and was assumed, in words.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>Vents that do not fit into it.</summary>
    public ImmutableArray<VentShape> Outside { get; init; } = [];

    /// <summary>Nothing, as a length.</summary>
    internal static readonly Figure Zero = Figure.Choice("edge", 0, Unit.Millimeter, "measured from here");
}
