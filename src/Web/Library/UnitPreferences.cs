using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Web.Library;

/// <summary>Units that the user likes, one for each kind of quantity.</summary>
public sealed record UnitPreferences(ImmutableDictionary<string, string> Units)
{
    private static readonly Unit Ounce = new(
        "fl oz",
        231 * 0.0254 * 0.0254 * 0.0254 / 128,
        Unit.Liter.Dimension
    );

    private static readonly Unit Pound = new("lb", 0.45359237, Unit.Kilogram.Dimension);

    private static readonly Unit Fahrenheit = new("F", 5.0 / 9.0, Unit.Celsius.Dimension, 459.67 * 5.0 / 9.0);

    /// <summary>Metric throughout.</summary>
    public static readonly UnitPreferences Metric = new(ImmutableDictionary<string, string>.Empty);

    /// <summary>Kinds of quantity with their choices; the first is the usual one.</summary>
    public static readonly ImmutableArray<(string Kind, string Label, ImmutableArray<Unit> Choices)> Kinds =
    [
        ("length", "lengths and depths", [Unit.Centimeter, Unit.Millimeter, Unit.InchUnit]),
        ("volume", "volumes", [Unit.Liter, Unit.Gallon]),
        ("small", "small amounts of water", [Unit.Milliliter, Ounce]),
        ("mass", "weights", [Unit.Kilogram, Pound]),
        ("temperature", "temperatures", [Unit.Celsius, Fahrenheit]),
    ];

    /// <summary>The unit in which a value in another unit is shown.</summary>
    /// <param name="unit">The unit it is told in.</param>
    public Unit For(Unit unit)
    {
        foreach (var (kind, _, choices) in Kinds)
        {
            if (choices.Contains(unit) && Chosen(kind) is { } symbol)
            {
                return choices.FirstOrDefault(c => c.Symbol == symbol, unit);
            }
        }

        return unit;
    }

    /// <summary>The chosen unit of a kind; null for as it is told.</summary>
    /// <param name="kind">Such as "length".</param>
    public string? Chosen(string kind) => Units.GetValueOrDefault(kind);

    /// <summary>A figure in the user's unit, with as many digits as are known.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="unit">The unit it is told in.</param>
    public string Show(Figure figure, Unit unit)
    {
        var shown = For(unit);
        return $"{Digits(shown.FromSi(figure.Si))}{Symbol(shown)}";
    }

    /// <summary>A length in a unit.</summary>
    /// <param name="symbol">Symbol of a unit of length.</param>
    /// <param name="meters">The length, m.</param>
    public static string Of(string symbol, double meters)
    {
        var unit = Kinds[0].Choices.FirstOrDefault(c => c.Symbol == symbol, Unit.Centimeter);
        return $"{Digits(unit.FromSi(meters), 2)}{Symbol(unit)}";
    }

    /// <summary>Low to high in the user's unit; one number where they look the same.</summary>
    public string Show(Figure low, Figure high, Unit unit)
    {
        var shown = For(unit);
        var (from, to) = (Digits(shown.FromSi(low.Si), 2), Digits(shown.FromSi(high.Si), 2));
        return from == to ? $"{from}{Symbol(shown)}" : $"{from}–{to}{Symbol(shown)}";
    }

    /// <summary>A number with so many digits that count.</summary>
    public static string Digits(double value, int digits = 3)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return "0";
        }

        var places = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (places < 0)
        {
            var step = Math.Pow(10, -places);
            return (Math.Round(value / step) * step).ToString("#,0", Spaced);
        }

        var shown = Math.Round(value, Math.Min(places, 6));
        return shown.ToString("0." + new string('#', Math.Min(places, 6)), CultureInfo.InvariantCulture);
    }

    /// <summary>A unit as it is read, with the space before it.</summary>
    public static string Symbol(Unit unit) =>
        unit.Symbol switch
        {
            "1" or "money" => "",
            "C" => " °C",
            "F" => " °F",
            "%" => " %",
            "cm2" => " cm²",
            "1/m2" => " /m²",
            "kg/m3" => " kg/m³",
            "m3/m3" => " m³/m³",
            "1/y" => " a year",
            "1/h" => " /h",
            "g/m2" => " g/m²",
            "umol/m2/s" => " µmol/m²/s",
            "mol/m2/d" => " mol/m²/d",
            "d" => " days",
            _ => " " + unit.Symbol,
        };

    private static readonly NumberFormatInfo Spaced = new() { NumberGroupSeparator = "\u202f" };
}
