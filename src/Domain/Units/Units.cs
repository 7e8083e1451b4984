using System.Collections.Frozen;

namespace Litterfall.Domain.Units;

/// <summary>
/// Units by symbol. Factors: inch 25.4 mm and pound 0.45359237 kg exactly (international yard and pound,
/// 1959); US gallon 231 in³, US dry quart 67.200625 in³ (NIST Handbook 44, appendix C).
/// </summary>
public sealed partial record Unit
{
    private static readonly Dimension L1 = new(1, 0, 0, 0, 0, 0);
    private static readonly Dimension L2 = new(2, 0, 0, 0, 0, 0);
    private static readonly Dimension L3 = new(3, 0, 0, 0, 0, 0);
    private static readonly Dimension M = new(0, 1, 0, 0, 0, 0);
    private static readonly Dimension T = new(0, 0, 1, 0, 0, 0);
    private static readonly Dimension Theta = new(0, 0, 0, 1, 0, 0);
    private static readonly Dimension Lm = new(0, 0, 0, 0, 1, 0);
    private static readonly Dimension Cash = new(0, 0, 0, 0, 0, 1);
    private static readonly Dimension Pressure = new(-1, 1, -2, 0, 0, 0);
    private static readonly Dimension PowerDimension = new(2, 1, -3, 0, 0, 0);
    private const double Inch = 0.0254;
    private const double CubicInch = Inch * Inch * Inch;

    /// <summary>Pure number.</summary>
    public static readonly Unit One = new("1", 1, Dimension.None);

    /// <summary>Percent.</summary>
    public static readonly Unit Percent = new("%", 0.01, Dimension.None);

    /// <summary>Millimeter.</summary>
    public static readonly Unit Millimeter = new("mm", 1e-3, L1);

    /// <summary>Centimeter.</summary>
    public static readonly Unit Centimeter = new("cm", 1e-2, L1);

    /// <summary>Meter.</summary>
    public static readonly Unit Meter = new("m", 1, L1);

    /// <summary>International inch.</summary>
    public static readonly Unit InchUnit = new("in", Inch, L1);

    /// <summary>International foot.</summary>
    public static readonly Unit Foot = new("ft", 12 * Inch, L1);

    /// <summary>Square centimeter.</summary>
    public static readonly Unit SquareCentimeter = new("cm2", 1e-4, L2);

    /// <summary>Square meter.</summary>
    public static readonly Unit SquareMeter = new("m2", 1, L2);

    /// <summary>Liter.</summary>
    public static readonly Unit Liter = new("L", 1e-3, L3);

    /// <summary>Milliliter.</summary>
    public static readonly Unit Milliliter = new("mL", 1e-6, L3);

    /// <summary>US gallon.</summary>
    public static readonly Unit Gallon = new("gal", 231 * CubicInch, L3);

    /// <summary>US liquid quart.</summary>
    public static readonly Unit LiquidQuart = new("liquid qt", 57.75 * CubicInch, L3);

    /// <summary>US dry quart.</summary>
    public static readonly Unit DryQuart = new("dry qt", 67.200625 * CubicInch, L3);

    /// <summary>Kilogram.</summary>
    public static readonly Unit Kilogram = new("kg", 1, M);

    /// <summary>Second.</summary>
    public static readonly Unit Second = new("s", 1, T);

    /// <summary>Day of 86 400 s.</summary>
    public static readonly Unit Day = new("d", 86400, T);

    /// <summary>Degree Celsius (a point on the scale).</summary>
    public static readonly Unit Celsius = new("C", 1, Theta, 273.15);

    /// <summary>Kelvin.</summary>
    public static readonly Unit Kelvin = new("K", 1, Theta);

    /// <summary>Kilogram per cubic meter.</summary>
    public static readonly Unit KilogramPerCubicMeter = new("kg/m3", 1, M / L3);

    /// <summary>Kilogram per square meter.</summary>
    public static readonly Unit KilogramPerSquareMeter = new("kg/m2", 1, M / L2);

    /// <summary>Kilogram per meter.</summary>
    public static readonly Unit KilogramPerMeter = new("kg/m", 1, M / L1);

    /// <summary>Kilopascal.</summary>
    public static readonly Unit Kilopascal = new("kPa", 1e3, Pressure);

    /// <summary>Megapascal.</summary>
    public static readonly Unit Megapascal = new("MPa", 1e6, Pressure);

    /// <summary>Money in the workshop's own currency.</summary>
    public static readonly Unit Money = new("money", 1, Cash);

    /// <summary>Liter per centimeter of level.</summary>
    public static readonly Unit LiterPerCentimeter = new("L/cm", 0.1, L2);

    /// <summary>Milliliter per liter.</summary>
    public static readonly Unit MilliliterPerLiter = new("mL/L", 1e-3, Dimension.None);

    /// <summary>Milligram per liter.</summary>
    public static readonly Unit MilligramPerLiter = new("mg/L", 1e-3, M / L3);

    /// <summary>Meter per second squared.</summary>
    public static readonly Unit MeterPerSecondSquared = new("m/s2", 1, new(1, 0, -2, 0, 0, 0));

    /// <summary>Milliampere.</summary>
    public static readonly Unit Milliampere = new("mA", 1e-3, new(0, 0, 0, 0, 0, 0, 1));

    /// <summary>Watt.</summary>
    public static readonly Unit Watt = new("W", 1, PowerDimension);

    /// <summary>Watt per square meter.</summary>
    public static readonly Unit WattPerSquareMeter = new("W/m2", 1, PowerDimension / L2);

    /// <summary>Hour.</summary>
    public static readonly Unit Hour = new("h", 3600, T);

    /// <summary>Minute.</summary>
    public static readonly Unit Minute = new("min", 60, T);

    /// <summary>Angle in degrees.</summary>
    public static readonly Unit Degree = new("°", Math.PI / 180, Dimension.None);

    /// <summary>Number per square meter.</summary>
    public static readonly Unit PerSquareMeter = new("1/m2", 1, Dimension.None / L2);

    /// <summary>Illuminance.</summary>
    public static readonly Unit Lux = new("lx", 1, Lm / L2);

    /// <summary>Luminous flux.</summary>
    public static readonly Unit Lumen = new("lm", 1, Lm);

    /// <summary>Photons on a surface.</summary>
    public static readonly Unit Micromole = new("umol/m2/s", 1e-6, Dimension.None / (L2 * T));

    /// <summary>Photons on a surface over a day.</summary>
    public static readonly Unit MolePerDay = new("mol/m2/d", 1 / 86400.0, Dimension.None / (L2 * T));

    /// <summary>Photons that a lamp sends out.</summary>
    public static readonly Unit MicromolePerSecond = new("umol/s", 1e-6, Dimension.None / T);

    /// <summary>Photons for each kilolumen.</summary>
    public static readonly Unit MicromolePerKilolumen = new("umol/s/klm", 1e-9, Dimension.None / (T * Lm));

    /// <summary>Gram.</summary>
    public static readonly Unit Gram = new("g", 1e-3, M);

    /// <summary>Times an hour, such as air changes.</summary>
    public static readonly Unit PerHour = new("1/h", 1 / 3600.0, Dimension.None / T);

    /// <summary>Milliliter per minute.</summary>
    public static readonly Unit MilliliterPerMinute = new("mL/min", 1e-6 / 60, L3 / T);

    /// <summary>Cubic meter per hour.</summary>
    public static readonly Unit CubicMeterPerHour = new("m3/h", 1 / 3600.0, L3 / T);

    private static readonly FrozenDictionary<string, Unit> BySymbol = new Unit[]
    {
        One,
        Percent,
        Millimeter,
        Centimeter,
        Meter,
        InchUnit,
        Foot,
        SquareCentimeter,
        SquareMeter,
        Liter,
        Milliliter,
        Gallon,
        LiquidQuart,
        DryQuart,
        Kilogram,
        Second,
        Day,
        Celsius,
        Kelvin,
        KilogramPerCubicMeter,
        KilogramPerSquareMeter,
        KilogramPerMeter,
        Kilopascal,
        Megapascal,
        Money,
        LiterPerCentimeter,
        MilliliterPerLiter,
        MilligramPerLiter,
        MeterPerSecondSquared,
        Milliampere,
        Watt,
        WattPerSquareMeter,
        Hour,
        Minute,
        Degree,
        PerSquareMeter,
        Lux,
        Lumen,
        Micromole,
        MolePerDay,
        MicromolePerSecond,
        MicromolePerKilolumen,
        new("mm2", 1e-6, L2),
        new("m3", 1, L3),
        new("cu ft", 1728 * CubicInch, L3),
        Gram,
        PerHour,
        new("mg", 1e-6, M),
        new("lb", 0.45359237, M),
        new("oz", 0.028349523125, M),
        new("g/L", 1, M / L3),
        new("g/m2", 1e-3, M / L2),
        new("1/cm", 100, Dimension.None / L1),
        new("cm/h", 0.01 / 3600, L1 / T),
        new("week", 7 * 86400, T),
        new("month", 30.4375 * 86400, T),
        new("year", 365.25 * 86400, T),
        new("1/d", 1 / 86400.0, Dimension.None / T),
        new("1/y", 1 / (365.25 * 86400), Dimension.None / T),
        new("lm/W", 1, Lm / PowerDimension),
        new("GPa", 1e9, Pressure),
        new("N/m", 1, M / T / T),
        new("1/K", 1, Dimension.None / Theta),
        new("W/m/K", 1, PowerDimension / L1 / Theta),
        new("kJ/kg", 1e3, L2 / T / T),
        new("K d", 86400, Theta * T),
        new("L/cm2", 10, L1),
        new("mL/m", 1e-6, L2),
        new("m/can", 1, L1),
        new("umol/m2/s/klx", 1e-9, Dimension.None / (T * Lm)),
        MilliliterPerMinute,
        new("mL/h", 1e-6 / 3600, L3 / T),
        CubicMeterPerHour,
    }.ToFrozenDictionary(unit => unit.Symbol, StringComparer.Ordinal);

    /// <summary>The unit with this symbol, or null.</summary>
    public static Unit? Find(string symbol) => BySymbol.GetValueOrDefault(symbol);
}
