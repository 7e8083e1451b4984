using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>Moss of the ground, live or dried.</summary>
public sealed record MossEntry : SubstrateEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Moss;

    /// <summary>Water held over the dry mass.</summary>
    public Figure? WaterHoldingMass => Number("waterHoldingMass");

    /// <summary>Volume a dry mass of it swells to, m³/kg.</summary>
    public Figure? SwollenVolume => Number("hydratedPerKilogram");
}
