using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>The floor.</summary>
[Means("The layers of the floor from the base up.")]
public sealed record Floor
{
    /// <summary>Drainage layer or raised floor.</summary>
    [Means("Drainage layer, raised floor, or none.")]
    public DrainageLayer? Drainage { get; init; }

    /// <summary>Barrier mesh.</summary>
    [Means("Mesh between drainage and soil, or none.")]
    public Barrier? Barrier { get; init; }

    /// <summary>Soil.</summary>
    [Means("The soil mix.")]
    public SoilLayer? Soil { get; init; }

    /// <summary>Moss.</summary>
    [Means("Moss on the soil, or none.")]
    public MossLayer? Moss { get; init; }

    /// <summary>Leaf litter.</summary>
    [Means("Leaf litter on top, or none.")]
    public LeafLitter? Litter { get; init; }
}

/// <summary>
/// A basin of open water let into the floor. Soil, moss and leaves lie beside it, not under it; its edge is
/// level with the soil around it.
/// </summary>
[Means("A basin of open water in the floor, kept full; soil, moss and leaves lie beside it.")]
public sealed record Basin
{
    /// <summary>Inside along the front.</summary>
    [Means("Its water along the front.")]
    public required Typed<Length> Length { get; init; }

    /// <summary>Inside from front to back.</summary>
    [Means("Its water from front to back.")]
    public required Typed<Length> Width { get; init; }

    /// <summary>Depth of the water when it is full.</summary>
    [Means("Depth of the water when it is full.")]
    public required Typed<Length> Depth { get; init; }

    /// <summary>Edge over the full water.</summary>
    [Means("How far its edge stands over the full water; 1 cm if left out.")]
    public Typed<Length>? Edge { get; init; }

    /// <summary>Its sides.</summary>
    [Means("steep, or ramp where a slope, stones or wood lead out from the bottom.")]
    public BasinSides? Sides { get; init; }

    /// <summary>Place of its middle.</summary>
    [Means("Where its middle is; along the front if left out.")]
    public Place? At { get; init; }

    /// <summary>Mass of the empty basin.</summary>
    [Means("What it weighs empty.")]
    public Typed<Mass>? Mass { get; init; }
}

/// <summary>How animals get out of a basin.</summary>
public enum BasinSides
{
    /// <summary>Upright or smooth all round.</summary>
    Steep,

    /// <summary>A slope, stones or wood lead from the bottom over the edge.</summary>
    Ramp,
}
