using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>Units that only coefficients have; SI factors.</summary>
internal static class CoefficientUnits
{
    private static readonly Dimension Watts = Unit.Watt.Dimension;
    private static readonly Dimension Area = Unit.SquareMeter.Dimension;
    private static readonly Dimension Length = Unit.Meter.Dimension;
    private static readonly Dimension Time = Unit.Second.Dimension;
    private static readonly Dimension Warmth = Unit.Kelvin.Dimension;
    private static readonly Dimension Mass = Unit.Kilogram.Dimension;
    private static readonly Dimension Energy = Watts * Time;

    /// <summary>Film, W/(m² K).</summary>
    public static readonly Unit Film = new("W/m2/K", 1, Watts / (Area * Warmth));

    /// <summary>Resistance to heat, m² K/W.</summary>
    public static readonly Unit Insulation = new("m2 K/W", 1, Area * Warmth / Watts);

    /// <summary>Conductivity of heat, W/(m K).</summary>
    public static readonly Unit Conductivity = new("W/m/K", 1, Watts / (Length * Warmth));

    /// <summary>Heat of a volume, MJ/(m³ K).</summary>
    public static readonly Unit VolumeHeat = new("MJ/m3/K", 1e6, Energy / (Area * Length * Warmth));

    /// <summary>Heat of a mass, J/(kg K).</summary>
    public static readonly Unit MassHeat = new("J/kg/K", 1, Energy / (Mass * Warmth));

    /// <summary>Heat of a surface, J/(m² K).</summary>
    public static readonly Unit SurfaceHeat = new("J/m2/K", 1, Energy / (Area * Warmth));

    /// <summary>Film of water, g/m².</summary>
    public static readonly Unit Water = new("g/m2", 1e-3, Mass / Area);

    /// <summary>Speed, m/s.</summary>
    public static readonly Unit Speed = new("m/s", 1, Length / Time);

    /// <summary>Conductance of leaves, mm/s.</summary>
    public static readonly Unit Conductance = new("mm/s", 1e-3, Length / Time);

    /// <summary>Resistance to vapor, s/m.</summary>
    public static readonly Unit Resistance = new("s/m", 1, Time / Length);

    /// <summary>Diffusion, cm²/s.</summary>
    public static readonly Unit Diffusion = new("cm2/s", 1e-4, Area / Time);

    /// <summary>Changes, 1/h.</summary>
    public static readonly Unit PerHour = new("1/h", 1 / 3600.0, Dimension.None / Time);

    /// <summary>Share of a day, 1/d.</summary>
    public static readonly Unit PerDay = new("1/d", 1 / 86400.0, Dimension.None / Time);

    /// <summary>Decay of a year of 365 days, 1/y.</summary>
    public static readonly Unit PerYear = new("1/y", 1 / (365 * 86400.0), Dimension.None / Time);

    /// <summary>Per length, 1/m.</summary>
    public static readonly Unit PerMeter = new("1/m", 1, Dimension.None / Length);

    /// <summary>Milligram.</summary>
    public static readonly Unit Milligram = new("mg", 1e-6, Mass);

    /// <summary>Gram.</summary>
    public static readonly Unit Gram = new("g", 1e-3, Mass);

    /// <summary>Microgram.</summary>
    public static readonly Unit Microgram = new("ug", 1e-9, Mass);

    /// <summary>Joule.</summary>
    public static readonly Unit Joule = new("J", 1, Energy);

    /// <summary>Energy of a mass, J/mg.</summary>
    public static readonly Unit JoulePerMilligram = new("J/mg", 1e6, Energy / Mass);

    /// <summary>Energy of a volume of gas, J/mL.</summary>
    public static readonly Unit JoulePerMilliliter = new("J/mL", 1e6, Energy / (Area * Length));

    /// <summary>Volume of gas in a time, mL/h.</summary>
    public static readonly Unit MilliliterPerHour = new("mL/h", 1e-6 / 3600.0, Area * Length / Time);

    /// <summary>Growth of a floor, g/(m² y).</summary>
    public static readonly Unit Growth = new("g/m2/y", 1e-3 / (365 * 86400.0), Mass / (Area * Time));

    /// <summary>Efficacy of a lamp, lm/W.</summary>
    public static readonly Unit LumenPerWatt = new("lm/W", 1, Unit.Lumen.Dimension / Watts);

    /// <summary>Water held by dry leaves, mm of water by kg/m² of leaves.</summary>
    public static readonly Unit Held = new("mm m2/kg", 1e-3, Length / (Mass / Area));
}
