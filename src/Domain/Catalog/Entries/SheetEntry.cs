using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>Glass or another sheet a box is built of.</summary>
public sealed record SheetEntry : PanelEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Sheet;

    /// <summary>Young's modulus, Pa.</summary>
    public Figure? YoungsModulus => Number("youngsModulus");

    /// <summary>Modulus left after years under a load, Pa; null where it does not creep.</summary>
    public Figure? CreepModulus => Number("creepModulus");

    /// <summary>Poisson's ratio.</summary>
    public Figure? Poisson => Number("poisson");

    /// <summary>Growth in length over the warming, 1/K.</summary>
    public Figure? ThermalExpansion => Number("thermalExpansion");

    /// <summary>Refractive index of visible light.</summary>
    public Figure? RefractiveIndex => Number("refractiveIndex");

    /// <summary>Extinction of visible light in it, 1/m.</summary>
    public Figure? Extinction => Number("extinction");

    /// <summary>Allowable stress under a permanent load, Pa.</summary>
    public Figure? AllowablePermanent => Number("allowablePermanent");

    /// <summary>Allowable stress at a free cut edge under a permanent load, Pa.</summary>
    public Figure? AllowableFreeEdge => Number("allowableFreeEdge");

    /// <summary>Allowable stress under a short load, Pa.</summary>
    public Figure? AllowableShort => Number("allowableShort");

    /// <summary>Allowance of a ground edge, m.</summary>
    public Figure? EdgeAllowance => Number("edgeGround");

    /// <summary>Tolerance of its thickness, m.</summary>
    public Figure? ThicknessTolerance => Number("thicknessTolerance");

    /// <summary>Its tolerance as a thin and as a thick sheet.</summary>
    public (Figure Low, Figure High)? ThicknessToleranceBand => Band("thicknessTolerance");

    /// <summary>Thicknesses in stock, mm.</summary>
    public CatalogText? Thicknesses => Text("thicknesses");

    /// <summary>Difference of temperature from center to edge that cracks it, K.</summary>
    public Figure? CrackDifference => Number("crackDifference");

    /// <summary>no for a sheet that cannot be cut or drilled.</summary>
    public CatalogText? Recut => Text("recut");

    /// <summary>Growth in length from dry to wet.</summary>
    public Figure? MoistureExpansion => Number("moistureExpansion");
}
