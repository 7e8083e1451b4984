using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>What is cut to size from a sheet or panel.</summary>
public abstract record PanelEntry : CatalogEntry
{
    /// <summary>Density, kg/m³.</summary>
    public Figure? Density => Number("density");

    /// <summary>Width of a saw cut, m.</summary>
    public Figure? Kerf => Number("kerf");

    /// <summary>Edge cut away first, m.</summary>
    public Figure? Trim => Number("trim");

    /// <summary>Tolerance of a cut, m.</summary>
    public Figure? CutTolerance => Number("toleranceCut");

    /// <summary>Thermal conductivity, W/(m·K).</summary>
    public Figure? ThermalConductivity => Number("thermalConductivity");
}
