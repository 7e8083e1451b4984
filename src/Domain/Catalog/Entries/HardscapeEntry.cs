using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>Wood, cork or stone that furnishes the box.</summary>
public sealed record HardscapeEntry : CatalogEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Hardscape;

    /// <summary>Mass over the outside volume, kg/m³.</summary>
    public Figure? EnvelopeDensity => Number("envelopeDensity");

    /// <summary>Whether it sinks or floats.</summary>
    public CatalogText? Sinks => Text("sinks");

    /// <summary>What it stands on: base or soil.</summary>
    public CatalogText? Seat => Text("seat");

    /// <summary>How to clean it before it goes in.</summary>
    public CatalogText? Preparation => Text("preparation");

    /// <summary>Share of visible light it throws back.</summary>
    public Figure? Reflectance => Number("reflectance");

    /// <summary>Share that decays at 24 °C, per second.</summary>
    public Figure? DecayAt24 => Number("decayAt24C");
}
