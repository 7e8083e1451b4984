using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>Leaves on the soil.</summary>
public sealed record LitterEntry : SubstrateEntry
{
    /// <inheritdoc/>
    public override EntryKind Kind => EntryKind.Litter;

    /// <summary>Mass of carbon over nitrogen.</summary>
    public Figure? CarbonToNitrogen => Number("carbonToNitrogen");

    /// <summary>Share of the dry matter that is lignin.</summary>
    public Figure? Lignin => Number("lignin");

    /// <summary>Share of the mass as laid that is dry matter.</summary>
    public Figure? DryMatter => Number("dryMatter");

    /// <summary>Dry mass of one layer over its area, kg/m².</summary>
    public Figure? LayerMass => Number("layerMass");

    /// <summary>Time until a layer has gone, s.</summary>
    public Figure? LayerLife => Number("lifeMonths");

    /// <summary>How to clean it before it goes in.</summary>
    public CatalogText? Preparation => Text("preparation");

    /// <summary>Water held over the dry mass.</summary>
    public Figure? WaterHoldingMass => Number("waterHoldingMass");
}
