using Litterfall.Domain.Keys;

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
