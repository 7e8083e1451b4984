using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Loggers.Cells;

/// <summary>A unit as loggers write it, and how its values become those that are kept.</summary>
/// <param name="Quantity">What is measured in it.</param>
/// <param name="Kept">Unit in which values are kept.</param>
/// <param name="Scale">Factor to the kept unit, after the zero is taken off.</param>
/// <param name="Zero">What is taken off first, in the file's unit.</param>
/// <param name="Name">The unit as people write it.</param>
public sealed record UnitWord(LogQuantity Quantity, string Kept, double Scale, double Zero, string Name)
{
    /// <summary>Degrees Celsius.</summary>
    public static readonly UnitWord Celsius = new(LogQuantity.Temperature, "°C", 1.0, 0.0, "°C");

    /// <summary>Degrees Fahrenheit.</summary>
    public static readonly UnitWord Fahrenheit = new(LogQuantity.Temperature, "°C", 5.0 / 9.0, 32.0, "°F");

    /// <summary>Relative humidity.</summary>
    public static readonly UnitWord Percent = new(LogQuantity.Humidity, "%", 1.0, 0.0, "%");

    private static readonly UnitWord Kelvin = new(LogQuantity.Temperature, "°C", 1.0, 273.15, "K");

    private static readonly Dictionary<string, UnitWord> Known = new(StringComparer.Ordinal)
    {
        ["c"] = Celsius,
        ["degc"] = Celsius,
        ["gradc"] = Celsius,
        ["celsius"] = Celsius,
        ["degreescelsius"] = Celsius,
        ["gradcelsius"] = Celsius,
        ["℃"] = Celsius,
        ["f"] = Fahrenheit,
        ["degf"] = Fahrenheit,
        ["fahrenheit"] = Fahrenheit,
        ["degreesfahrenheit"] = Fahrenheit,
        ["℉"] = Fahrenheit,
        ["k"] = Kelvin,
        ["kelvin"] = Kelvin,
        ["%"] = Percent,
        ["%rh"] = Percent,
        ["rh%"] = Percent,
        ["rh"] = Percent,
        ["%rf"] = Percent,
        ["rf%"] = Percent,
        ["%hr"] = Percent,
        ["hr%"] = Percent,
        ["%ur"] = Percent,
        ["ur%"] = Percent,
        ["%rv"] = Percent,
        ["%lf"] = Percent,
        ["pct"] = Percent,
        ["percent"] = Percent,
        ["percentrh"] = Percent,
        ["prozent"] = Percent,
        ["hpa"] = Pressure("hPa", 1.0),
        ["mbar"] = Pressure("mbar", 1.0),
        ["mb"] = Pressure("mbar", 1.0),
        ["kpa"] = Pressure("kPa", 10.0),
        ["pa"] = Pressure("Pa", 0.01),
        // Conventional millimeter and inch of mercury, NIST SP 811 (2008), appendix B.8.
        ["mmhg"] = Pressure("mmHg", 1.333224),
        ["torr"] = Pressure("Torr", 1.333224),
        ["inhg"] = Pressure("inHg", 33.86389),
        ["lx"] = Light("lx"),
        ["lux"] = Light("lx"),
        ["klx"] = new(LogQuantity.Light, "lx", 1000.0, 0.0, "klx"),
        ["v"] = Other("V"),
        ["volt"] = Other("V"),
        ["volts"] = Other("V"),
        ["mv"] = Other("mV"),
        ["ma"] = Other("mA"),
        ["ppm"] = Other("ppm"),
        ["db"] = Other("dB"),
        ["dbm"] = Other("dBm"),
        ["m/s"] = Other("m/s"),
        ["g/m³"] = Other("g/m³"),
        ["kg"] = Other("kg"),
        ["g"] = Other("g"),
        ["mm"] = Other("mm"),
        ["kj"] = Other("kJ"),
    };

    /// <summary>A value of the file as it is kept.</summary>
    public double Convert(double value) => Scale == 1.0 && Zero == 0.0 ? value : (value - Zero) * Scale;

    /// <summary>The unit that a text names; null for none.</summary>
    public static UnitWord? Find(ReadOnlySpan<char> text)
    {
        Span<char> plain = stackalloc char[24];
        if (text.Length > plain.Length)
        {
            return null;
        }

        var length = 0;
        foreach (var c in text)
        {
            if (c is not (' ' or '.' or '_' or '(' or ')' or '[' or ']' or '"' or '\u00A0'))
            {
                plain[length++] = char.ToLowerInvariant(c);
            }
        }

        plain = plain[..length];
        if (Known.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(plain, out var unit))
        {
            return unit;
        }

        if (length == 2 && !char.IsAsciiLetterOrDigit(plain[0]))
        {
            // A degree sign of whatever code, whole or broken.
            return plain[1] == 'c' ? Celsius
                : plain[1] == 'f' ? Fahrenheit
                : null;
        }

        if (length == 3 && !char.IsAsciiLetterOrDigit(plain[0]) && !char.IsAsciiLetterOrDigit(plain[1]))
        {
            // UTF-8 read as an old code shows the sign as two letters.
            return plain[2] == 'c' ? Celsius
                : plain[2] == 'f' ? Fahrenheit
                : null;
        }

        return
            plain.Contains("mol", StringComparison.Ordinal)
            && plain.Length > 3
            && plain[0] is 'µ' or 'μ' or 'u'
            ? Light("µmol/(m² s)")
            : null;
    }

    private static UnitWord Pressure(string name, double scale) =>
        new(LogQuantity.Pressure, "hPa", scale, 0.0, name);

    private static UnitWord Light(string name) => new(LogQuantity.Light, name, 1.0, 0.0, name);

    private static UnitWord Other(string name) => new(LogQuantity.Other, name, 1.0, 0.0, name);
}
