using System.Collections.Immutable;

namespace Litterfall.Domain.Units;

/// <summary>One spelling of a unit and its meaning: SI = number × factor + offset.</summary>
public readonly record struct UnitWord(string Word, double Factor, double Offset = 0);

/// <summary>How people write one kind of quantity.</summary>
public sealed record QuantityKind
{
    /// <summary>Its name in messages, e.g. "a length".</summary>
    public required string Name { get; init; }

    /// <summary>What to write, e.g. "45 cm, 17 3/4 in or 1' 6\"".</summary>
    public required string Expected { get; init; }

    /// <summary>Accepted unit words, matched without regard to case, longest first.</summary>
    public required ImmutableArray<UnitWord> Words { get; init; }

    /// <summary>Factor for a number without unit; null when a unit must be written.</summary>
    public double? BareFactor { get; init; }

    /// <summary>Largest believable value in SI.</summary>
    public required double Maximum { get; init; }

    /// <summary>Smallest value in SI; negative only for temperatures.</summary>
    public double Minimum { get; init; }

    /// <summary>Words that look like a unit of this kind but do not say enough, with the advice.</summary>
    public ImmutableDictionary<string, string> Ambiguous { get; init; } =
        ImmutableDictionary<string, string>.Empty;
}

/// <summary>The kinds of quantity a design file knows.</summary>
public static class QuantityKinds
{
    private const double Inch = 0.0254;
    private const double Liter = 1e-3;
    private const double Gal = 0.003785411784;

    /// <summary>Lengths; inches take halves to sixty-fourths, feet and inches together.</summary>
    public static readonly QuantityKind Length = new()
    {
        Name = "a length",
        Expected = "a length with its unit, such as 450 mm, 45 cm, 17 3/4 in or 1' 6\"",
        Maximum = 20,
        Words = Sorted(
            ("mm", 1e-3),
            ("cm", 1e-2),
            ("m", 1),
            ("in", Inch),
            ("inch", Inch),
            ("inches", Inch),
            ("\"", Inch),
            ("″", Inch),
            ("”", Inch),
            ("''", Inch),
            ("ft", 12 * Inch),
            ("foot", 12 * Inch),
            ("feet", 12 * Inch),
            ("'", 12 * Inch),
            ("′", 12 * Inch),
            ("’", 12 * Inch)
        ),
        Ambiguous = Advice(
            ("gal", "a size in gallons is only a name: measure the edges"),
            ("gallon", "a size in gallons is only a name: measure the edges"),
            ("gallons", "a size in gallons is only a name: measure the edges")
        ),
    };

    /// <summary>Areas.</summary>
    public static readonly QuantityKind Area = new()
    {
        Name = "an area",
        Expected = "an area with its unit, such as 60 cm2 or 9 sq in",
        Maximum = 100,
        Words = Sorted(
            ("mm2", 1e-6),
            ("mm²", 1e-6),
            ("cm2", 1e-4),
            ("cm²", 1e-4),
            ("m2", 1),
            ("m²", 1),
            ("in2", Inch * Inch),
            ("in²", Inch * Inch),
            ("sq in", Inch * Inch),
            ("sq ft", 144 * Inch * Inch),
            ("ft2", 144 * Inch * Inch),
            ("ft²", 144 * Inch * Inch)
        ),
    };

    /// <summary>Volumes; the two US quarts must be told apart.</summary>
    public static readonly QuantityKind Volume = new()
    {
        Name = "a volume",
        Expected = "a volume with its unit, such as 20 L, 2.5 gal, 8 dry qt or 8 liquid qt",
        Maximum = 100,
        Words = Sorted(
            ("mL", 1e-6),
            ("cm3", 1e-6),
            ("cm³", 1e-6),
            ("dm3", Liter),
            ("L", Liter),
            ("liter", Liter),
            ("liters", Liter),
            ("litre", Liter),
            ("litres", Liter),
            ("m3", 1),
            ("m³", 1),
            ("gal", Gal),
            ("us gal", Gal),
            ("gallon", Gal),
            ("gallons", Gal),
            ("liquid qt", Gal / 4),
            ("liq qt", Gal / 4),
            ("qt liquid", Gal / 4),
            ("dry qt", 0.001101220942715),
            ("qt dry", 0.001101220942715),
            ("cu ft", 0.028316846592),
            ("ft3", 0.028316846592),
            ("ft³", 0.028316846592),
            ("fl oz", Gal / 128)
        ),
        Ambiguous = Advice(
            ("qt", "say which quart: dry qt (1.101 L) or liquid qt (0.946 L)"),
            ("quart", "say which quart: dry qt (1.101 L) or liquid qt (0.946 L)"),
            ("quarts", "say which quart: dry qt (1.101 L) or liquid qt (0.946 L)")
        ),
    };

    /// <summary>Masses.</summary>
    public static readonly QuantityKind Mass = new()
    {
        Name = "a mass",
        Expected = "a mass with its unit, such as 0.8 kg, 250 g or 2 lb 3 oz",
        Maximum = 100_000,
        Words = Sorted(
            ("mg", 1e-6),
            ("g", 1e-3),
            ("kg", 1),
            ("lb", 0.45359237),
            ("lbs", 0.45359237),
            ("oz", 0.028349523125)
        ),
    };

    /// <summary>Points on the temperature scale.</summary>
    public static readonly QuantityKind Temperature = new()
    {
        Name = "a temperature",
        Expected = "a temperature with its unit, such as 22 C or 72 F",
        Maximum = 473.15,
        Minimum = 173.15,
        Words =
        [
            new("°C", 1, 273.15),
            new("°F", 5 / 9.0, 273.15 - 32 * 5 / 9.0),
            new("C", 1, 273.15),
            new("F", 5 / 9.0, 273.15 - 32 * 5 / 9.0),
            new("K", 1),
        ],
    };

    /// <summary>Differences of temperature.</summary>
    public static readonly QuantityKind TemperatureDifference = new()
    {
        Name = "a temperature difference",
        Expected = "a temperature difference with its unit, such as 1 K, 1 C or 2 F",
        Maximum = 100,
        Words = Sorted(("K", 1), ("°C", 1), ("C", 1), ("°F", 5 / 9.0), ("F", 5 / 9.0)),
    };

    /// <summary>Shares of a whole, written in percent.</summary>
    public static readonly QuantityKind Share = new()
    {
        Name = "a share",
        Expected = "a share between 0 % and 100 %, such as 45 %",
        Maximum = 1,
        Words = Sorted(("%", 0.01), ("percent", 0.01)),
    };

    /// <summary>Flows of water.</summary>
    public static readonly QuantityKind Flow = new()
    {
        Name = "a flow",
        Expected = "a flow with its unit, such as 90 mL/min",
        Maximum = 0.1,
        Words = Sorted(
            ("mL/min", 1e-6 / 60),
            ("mL/s", 1e-6),
            ("mL/h", 1e-6 / 3600),
            ("L/min", Liter / 60),
            ("L/h", Liter / 3600),
            ("m3/h", 1.0 / 3600),
            ("gal/h", Gal / 3600),
            ("gal/min", Gal / 60),
            ("fl oz/min", Gal / 128 / 60),
            ("oz/min", Gal / 128 / 60)
        ),
    };

    /// <summary>Heights over the sea.</summary>
    public static readonly QuantityKind Elevation = new()
    {
        Name = "a height over the sea",
        Expected = "a height over the sea with its unit, such as 500 m or 1600 ft",
        Maximum = 5000,
        Words = Sorted(("m", 1), ("ft", 0.3048)),
    };

    /// <summary>Time spans.</summary>
    public static readonly QuantityKind Duration = new()
    {
        Name = "a time span",
        Expected = "a time span with its unit, such as 20 s, 2 min, 12 h, 3 d or 6 weeks",
        Maximum = 100 * 365.25 * 86400,
        Words = Sorted(
            ("s", 1),
            ("sec", 1),
            ("min", 60),
            ("h", 3600),
            ("hour", 3600),
            ("hours", 3600),
            ("d", 86400),
            ("day", 86400),
            ("days", 86400),
            ("week", 604800),
            ("weeks", 604800)
        ),
    };

    /// <summary>Electrical power.</summary>
    public static readonly QuantityKind Power = new()
    {
        Name = "a power",
        Expected = "watts, such as 18 or 18 W",
        Maximum = 1e5,
        BareFactor = 1,
        Words = Sorted(("W", 1), ("watt", 1), ("watts", 1)),
    };

    /// <summary>Luminous flux.</summary>
    public static readonly QuantityKind LuminousFlux = new()
    {
        Name = "a luminous flux",
        Expected = "lumens, such as 2000 or 2000 lm",
        Maximum = 1e6,
        BareFactor = 1,
        Words = Sorted(("lm", 1), ("lumens", 1), ("klm", 1000)),
    };

    /// <summary>Air changes.</summary>
    public static readonly QuantityKind AirChangeRate = new()
    {
        Name = "air changes",
        Expected = "air changes per hour, such as 2 or 2 /h",
        Maximum = 1000 / 3600.0,
        BareFactor = 1 / 3600.0,
        Words = Sorted(("/h", 1 / 3600.0), ("per hour", 1 / 3600.0)),
    };

    /// <summary>Electric currents.</summary>
    public static readonly QuantityKind ElectricCurrent = new()
    {
        Name = "an electric current",
        Expected = "a current with its unit, such as 30 mA",
        Maximum = 100,
        Words = Sorted(("mA", 1e-3), ("A", 1)),
    };

    /// <summary>Angles.</summary>
    public static readonly QuantityKind Angle = new()
    {
        Name = "an angle",
        Expected = "an angle in degrees, such as 90 deg",
        Maximum = 2 * Math.PI,
        Words = Sorted(("deg", Math.PI / 180), ("°", Math.PI / 180), ("degrees", Math.PI / 180)),
    };

    /// <summary>Light on a surface as the eye weighs it.</summary>
    public static readonly QuantityKind Illuminance = new()
    {
        Name = "an illuminance",
        Expected = "an illuminance, such as 1450 lx",
        Maximum = 2e5,
        Words = Sorted(("lx", 1), ("lux", 1), ("klx", 1000)),
    };

    /// <summary>Photons of 400 to 700 nm that a lamp sends out.</summary>
    public static readonly QuantityKind PhotonFlux = new()
    {
        Name = "a photon flux",
        Expected = "the photons a lamp sends out, such as 32 umol/s",
        Maximum = 1e-2,
        Words = Sorted(("umol/s", 1e-6), ("µmol/s", 1e-6), ("μmol/s", 1e-6)),
    };

    private static ImmutableArray<UnitWord> Sorted(params ReadOnlySpan<(string Word, double Factor)> words)
    {
        var list = new List<UnitWord>(words.Length);
        foreach (var (word, factor) in words)
        {
            list.Add(new UnitWord(word, factor));
        }

        return [.. list.OrderByDescending(word => word.Word.Length)];
    }

    private static ImmutableDictionary<string, string> Advice(params (string Word, string Text)[] pairs) =>
        pairs.ToImmutableDictionary(pair => pair.Word, pair => pair.Text, StringComparer.OrdinalIgnoreCase);
}
