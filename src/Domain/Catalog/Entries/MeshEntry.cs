using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>A mesh over an opening or under the soil.</summary>
public sealed record MeshEntry : PorousEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Mesh;

    /// <summary>Clear width of a hole, m.</summary>
    public Figure? Aperture => Number("aperture");

    /// <summary>Thickness of the wire, m.</summary>
    public Figure? WireDiameter => Number("wireDiameter");

    /// <summary>Share of its area that is open.</summary>
    public Figure? OpenShare => Number("openShare");

    /// <summary>Mass over its area, kg/m².</summary>
    public Figure? AreaMass => Number("areaMass");

    /// <summary>yes for metal.</summary>
    public CatalogText? Metal => Text("metal");

    /// <summary>What it is good for.</summary>
    public CatalogText? Use => Text("use");

    /// <summary>Width of the roll, m.</summary>
    public Figure? RollWidth => Number("rollWidth");

    /// <summary>Thickness, m.</summary>
    public Figure? Thickness => Number("thickness");
}
