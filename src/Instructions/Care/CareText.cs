using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Instructions.Care;

/// <summary>Temperatures and spans of care as printed.</summary>
internal static class CareText
{
    /// <summary>"28 °C", or "28 °C (82 °F)" for a maker who thinks in inches.</summary>
    public static string Degrees(Figure temperature, bool inches)
    {
        var celsius = Unit.Celsius.FromSi(temperature.Si);
        return inches ? $"{Number(celsius)} °C ({Fahrenheit(celsius)} °F)" : $"{Number(celsius)} °C";
    }

    /// <summary>"23 to 26 °C", with Fahrenheit behind it for a maker who thinks in inches.</summary>
    public static string Band(Figure low, Figure high, bool inches)
    {
        var (from, to) = (Unit.Celsius.FromSi(low.Si), Unit.Celsius.FromSi(high.Si));
        var text = $"{Number(from)} to {Number(to)} °C";
        return inches ? $"{text} ({Fahrenheit(from)} to {Fahrenheit(to)} °F)" : text;
    }

    /// <summary>When to act and when lamps go off.</summary>
    public static string Alarm(Figure act, Figure alarm, bool inches) =>
        alarm.Si - act.Si < 0.1
            ? $"At {Degrees(alarm, inches)} act at once: lamps off and cool the room."
            : $"At {Degrees(act, inches)} act; at {Degrees(alarm, inches)} lamps off and cool the room.";

    /// <summary>At most one decimal.</summary>
    public static string Number(double number) =>
        Math.Round(number, 6).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Fahrenheit(double celsius) =>
        Math.Round(celsius * 1.8 + 32).ToString("0", CultureInfo.InvariantCulture);
}
