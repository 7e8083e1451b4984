using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>What holds or passes water by its pores: soils, mixes, moss, leaves, aggregates, nets.</summary>
public abstract record PorousEntry : CatalogEntry
{
    /// <summary>Water that stays in the pores at any suction, by volume.</summary>
    public Figure? ResidualWater => Number("thetaR");

    /// <summary>Water of the saturated material, by volume.</summary>
    public Figure? SaturatedWater => Number("thetaS");

    /// <summary>Share of the first pore class of the retention curve; the second has the rest.</summary>
    public Figure? FirstPoreWeight => Number("weight1");

    /// <summary>Scale of the retention curve of van Genuchten, first pore class, 1/m.</summary>
    public Figure? FirstPoreAlpha => Number("alpha1");

    /// <summary>Shape of the retention curve of van Genuchten, first pore class, above 1.</summary>
    public Figure? FirstPoreShape => Number("n1");

    /// <summary>Scale of the retention curve, second pore class, 1/m; none with one class.</summary>
    public Figure? SecondPoreAlpha => Number("alpha2");

    /// <summary>Shape of the retention curve, second pore class, above 1; none with one class.</summary>
    public Figure? SecondPoreShape => Number("n2");

    /// <summary>Conductivity of the saturated material, m/s.</summary>
    public Figure? SaturatedConductivity => Number("ks");

    /// <summary>Exponent of connected pores in the conductivity of Mualem.</summary>
    public Figure? PoreConnectivity => Number("l");
}
