using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>Stones or grains of a drainage layer.</summary>
public sealed record AggregateEntry : PorousEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Aggregate;

    /// <summary>Dry mass of a poured volume, kg/m³.</summary>
    public Figure? BulkDensity => Number("bulkDensity");

    /// <summary>Name in files of <see cref="InterparticleVoids"/>, for a measured value.</summary>
    public const string InterparticleVoidsKey = "interparticleVoids";

    /// <summary>Share of a poured volume that lies between the grains.</summary>
    public Figure? InterparticleVoids => Number(InterparticleVoidsKey);

    /// <summary>Both ends of the band of <see cref="InterparticleVoids"/>; null without one.</summary>
    public (Figure Low, Figure High)? InterparticleVoidsBand => Band(InterparticleVoidsKey);

    /// <summary>Smallest grain, m.</summary>
    public Figure? SmallestGrain => Number("particleLow");

    /// <summary>Largest grain, m.</summary>
    public Figure? LargestGrain => Number("particleHigh");

    /// <summary>Density of a single grain, kg/m³.</summary>
    public Figure? GrainDensity => Number("solidDensity");

    /// <summary>Share of its dry mass that a grain takes up in water.</summary>
    public Figure? WaterUptake => Number("waterUptake");

    /// <summary>How to rinse it.</summary>
    public CatalogText? Rinse => Text("rinse");

    /// <summary>Whether it floats.</summary>
    public CatalogText? Floats => Text("floatText");
}
