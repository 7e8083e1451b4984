using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>A soil material, alone or as a part of a recipe.</summary>
public sealed record SoilEntry : GroundEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Soil;

    /// <summary>How its grains look.</summary>
    public CatalogText? Particle => Text("particle");

    /// <summary>Share of its volume that is pores.</summary>
    public Figure? Porosity => Number("porosity");

    /// <summary>Smallest grain, m.</summary>
    public Figure? SmallestGrain => Number("particleLow");

    /// <summary>Largest grain, m.</summary>
    public Figure? LargestGrain => Number("particleHigh");

    /// <summary>Whether it floats.</summary>
    public CatalogText? Floats => Text("floatText");
}
