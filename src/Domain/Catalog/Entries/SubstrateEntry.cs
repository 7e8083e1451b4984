using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>What is laid on the floor above the drainage: a soil, a recipe, moss or leaves.</summary>
public abstract record SubstrateEntry : PorousEntry
{
    /// <summary>Dry mass of a loose volume, kg/m³.</summary>
    public Figure? DryDensity => Number("bulkDensityDry");

    /// <summary>Mass of a loose volume as it comes out of the bag, kg/m³.</summary>
    public Figure? DensityAsSold => Number("bulkDensityAsSold");

    /// <summary>Share of the mass as sold that is water.</summary>
    public Figure? MoistureAsSold => Number("moistureAsSold");

    /// <summary>Name of <see cref="SqueezeWater"/> in files, for those who write a measured value.</summary>
    public const string SqueezeWaterKey = "squeezeWater";

    /// <summary>Water of a handful squeezed until it stops dripping, by volume.</summary>
    public Figure? SqueezeWater => Number(SqueezeWaterKey);

    /// <summary>Both ends of the band of <see cref="SqueezeWater"/>; null without one.</summary>
    public (Figure Low, Figure High)? SqueezeWaterBand => Band(SqueezeWaterKey);

    /// <summary>Water held at a suction of 10 cm, by volume.</summary>
    public Figure? WaterAtTenCentimeters => Number("waterAt10cm");

    /// <summary>Share of visible light a wet surface throws back.</summary>
    public Figure? Reflectance => Number("reflectance");

    /// <summary>Share of the dry matter that decays at 24 °C, per second.</summary>
    public Figure? DecayAt24 => Number("decayAt24C");

    /// <summary>What to mind when handling it.</summary>
    public CatalogText? Caution => Text("caution");
}
