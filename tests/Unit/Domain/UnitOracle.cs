using Litterfall.Domain.Units;
using U = UnitsNet;

namespace Litterfall.UnitTests.Domain;

/// <summary>
/// What a unit word is worth in SI, by a units package that shares no code with ours. Where the package has
/// no such unit the definition is written out.
/// </summary>
internal static class UnitOracle
{
    private static readonly Dictionary<string, QuantityKind> Kinds = new(StringComparer.Ordinal)
    {
        ["Length"] = QuantityKinds.Length,
        ["Area"] = QuantityKinds.Area,
        ["Volume"] = QuantityKinds.Volume,
        ["Mass"] = QuantityKinds.Mass,
        ["Temperature"] = QuantityKinds.Temperature,
        ["TemperatureDifference"] = QuantityKinds.TemperatureDifference,
        ["Share"] = QuantityKinds.Share,
        ["Flow"] = QuantityKinds.Flow,
        ["Elevation"] = QuantityKinds.Elevation,
        ["Duration"] = QuantityKinds.Duration,
        ["Power"] = QuantityKinds.Power,
        ["LuminousFlux"] = QuantityKinds.LuminousFlux,
        ["AirChangeRate"] = QuantityKinds.AirChangeRate,
        ["ElectricCurrent"] = QuantityKinds.ElectricCurrent,
        ["Angle"] = QuantityKinds.Angle,
        ["Illuminance"] = QuantityKinds.Illuminance,
        ["PhotonFlux"] = QuantityKinds.PhotonFlux,
    };

    public static IReadOnlyCollection<string> Names => Kinds.Keys;

    public static QuantityKind Kind(string name) => Kinds[name];

    public static double Si(string kind, string word, double number) =>
        kind switch
        {
            "Length" => Length(word, number),
            "Area" => Area(word, number),
            "Volume" => Volume(word, number),
            "Mass" => Mass(word, number),
            "Temperature" => Temperature(word, number),
            "TemperatureDifference" => Difference(word, number),
            "Share" => U.Ratio.FromPercent(number).DecimalFractions,
            "Flow" => Flow(word, number),
            "Elevation" => Length(word, number),
            "Duration" => Duration(word, number),
            "Power" => (double)U.Power.FromWatts(number).Watts,
            "LuminousFlux" => U.LuminousFlux.FromLumens(number * (word == "klm" ? 1000 : 1)).Lumens,
            "AirChangeRate" => U.Frequency.FromCyclesPerHour(number).Hertz,
            "ElectricCurrent" => Current(word, number),
            "Angle" => U.Angle.FromDegrees(number).Radians,
            "Illuminance" => U.Illuminance.FromLux(number * (word == "klx" ? 1000 : 1)).Lux,
            // By definition of the prefix: the package counts moles only with mass.
            "PhotonFlux" => number / 1_000_000,
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "no oracle"),
        };

    private static double Length(string word, double n) =>
        word switch
        {
            "mm" => U.Length.FromMillimeters(n).Meters,
            "cm" => U.Length.FromCentimeters(n).Meters,
            "m" => U.Length.FromMeters(n).Meters,
            "in" or "inch" or "inches" or "\"" or "″" or "”" or "''" => U.Length.FromInches(n).Meters,
            "ft" or "foot" or "feet" or "'" or "′" or "’" => U.Length.FromFeet(n).Meters,
            _ => throw Unknown(word),
        };

    private static double Area(string word, double n) =>
        word switch
        {
            "mm2" or "mm²" => U.Area.FromSquareMillimeters(n).SquareMeters,
            "cm2" or "cm²" => U.Area.FromSquareCentimeters(n).SquareMeters,
            "m2" or "m²" => U.Area.FromSquareMeters(n).SquareMeters,
            "in2" or "in²" or "sq in" => U.Area.FromSquareInches(n).SquareMeters,
            "ft2" or "ft²" or "sq ft" => U.Area.FromSquareFeet(n).SquareMeters,
            _ => throw Unknown(word),
        };

    private static double Volume(string word, double n) =>
        word switch
        {
            "mL" or "cm3" or "cm³" => U.Volume.FromMilliliters(n).CubicMeters,
            "dm3" or "L" or "liter" or "liters" or "litre" or "litres" => U.Volume.FromLiters(n).CubicMeters,
            "m3" or "m³" => U.Volume.FromCubicMeters(n).CubicMeters,
            "gal" or "us gal" or "gallon" or "gallons" => U.Volume.FromUsGallons(n).CubicMeters,
            "liquid qt" or "liq qt" or "qt liquid" => U.Volume.FromUsQuarts(n).CubicMeters,
            // NIST Handbook 44, appendix C: the dry quart is 67.200625 cubic inches.
            "dry qt" or "qt dry" => n * U.Volume.FromCubicInches(67.200625).CubicMeters,
            "cu ft" or "ft3" or "ft³" => U.Volume.FromCubicFeet(n).CubicMeters,
            // The package rounds its ounce in the twelfth digit; by definition 128 of them are a gallon.
            "fl oz" => U.Volume.FromUsGallons(n / 128).CubicMeters,
            _ => throw Unknown(word),
        };

    private static double Mass(string word, double n) =>
        word switch
        {
            "mg" => U.Mass.FromMilligrams(n).Kilograms,
            "g" => U.Mass.FromGrams(n).Kilograms,
            "kg" => U.Mass.FromKilograms(n).Kilograms,
            "lb" or "lbs" => U.Mass.FromPounds(n).Kilograms,
            "oz" => U.Mass.FromOunces(n).Kilograms,
            _ => throw Unknown(word),
        };

    private static double Temperature(string word, double n) =>
        word switch
        {
            "C" or "°C" => U.Temperature.FromDegreesCelsius(n).Kelvins,
            "F" or "°F" => U.Temperature.FromDegreesFahrenheit(n).Kelvins,
            "K" => U.Temperature.FromKelvins(n).Kelvins,
            _ => throw Unknown(word),
        };

    private static double Difference(string word, double n) =>
        word switch
        {
            "K" or "C" or "°C" => U.TemperatureDelta.FromDegreesCelsius(n).Kelvins,
            "F" or "°F" => U.TemperatureDelta.FromDegreesFahrenheit(n).Kelvins,
            _ => throw Unknown(word),
        };

    private static double Flow(string word, double n) =>
        word switch
        {
            "mL/min" => U.VolumeFlow.FromMillilitersPerMinute(n).CubicMetersPerSecond,
            "mL/s" => U.VolumeFlow.FromMillilitersPerSecond(n).CubicMetersPerSecond,
            "mL/h" => U.VolumeFlow.FromMillilitersPerHour(n).CubicMetersPerSecond,
            "L/min" => U.VolumeFlow.FromLitersPerMinute(n).CubicMetersPerSecond,
            "m3/h" => U.VolumeFlow.FromCubicMetersPerHour(n).CubicMetersPerSecond,
            "L/h" => U.VolumeFlow.FromLitersPerHour(n).CubicMetersPerSecond,
            "gal/min" => U.VolumeFlow.FromUsGallonsPerMinute(n).CubicMetersPerSecond,
            "gal/h" => U.VolumeFlow.FromUsGallonsPerHour(n).CubicMetersPerSecond,
            "fl oz/min" or "oz/min" => U.Volume.FromUsGallons(n / 128).CubicMeters
                / U.Duration.FromMinutes(1).Seconds,
            _ => throw Unknown(word),
        };

    private static double Duration(string word, double n) =>
        word switch
        {
            "s" or "sec" => U.Duration.FromSeconds(n).Seconds,
            "min" => U.Duration.FromMinutes(n).Seconds,
            "h" or "hour" or "hours" => U.Duration.FromHours(n).Seconds,
            "d" or "day" or "days" => U.Duration.FromDays(n).Seconds,
            "week" or "weeks" => U.Duration.FromWeeks(n).Seconds,
            _ => throw Unknown(word),
        };

    private static double Current(string word, double n) =>
        word switch
        {
            "mA" => U.ElectricCurrent.FromMilliamperes(n).Amperes,
            "A" => U.ElectricCurrent.FromAmperes(n).Amperes,
            _ => throw Unknown(word),
        };

    private static ArgumentOutOfRangeException Unknown(string word) =>
        new(nameof(word), word, "a unit word without an outside value: add one here");
}
