namespace Litterfall.Physics;

/// <summary>Universal constants and molar masses, SI units unless the name says otherwise.</summary>
public static class Constants
{
    /// <summary>Standard acceleration of free fall, m/s² (defined, CGPM 1901).</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Molar gas constant, J/(mol K) (exact since the 2019 SI).</summary>
    public const double MolarGasConstant = 8.314462618;

    /// <summary>The ice point used as the zero of the Celsius scale, K (exact).</summary>
    public const double ZeroCelsiusKelvin = 273.15;

    /// <summary>Density of liquid water used for loads, kg/m³: the rounded value of cold water.</summary>
    public const double WaterDensity = 1000.0;

    /// <summary>Molar mass of water, kg/mol (IUPAC standard atomic weights).</summary>
    public const double WaterMolarMass = 18.01528e-3;

    /// <summary>Molar mass of chlorine gas Cl2, g/mol: 2 × 35.453.</summary>
    public const double ChlorineGramsPerMole = 70.906;

    /// <summary>Molar mass of sodium hypochlorite NaOCl, g/mol, as handbooks print it.</summary>
    public const double SodiumHypochloriteGramsPerMole = 74.44;
}
