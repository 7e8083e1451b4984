namespace Litterfall.Domain.Units;

/// <summary>
/// A unit of measure: value in SI = value × <paramref name="ToSi"/> + <paramref name="Offset"/>.
/// </summary>
/// <param name="Symbol">As printed, e.g. "mm".</param>
/// <param name="ToSi">Factor to the coherent SI unit (m, kg, s, K, lm).</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Offset">Kelvin at zero of the scale; only temperatures have one.</param>
public sealed partial record Unit(string Symbol, double ToSi, Dimension Dimension, double Offset = 0)
{
    /// <summary>The number in this unit of a value in SI.</summary>
    public double FromSi(double si) => (si - Offset) / ToSi;

    /// <summary>The SI value of a number in this unit.</summary>
    public double ToSiValue(double number) => number * ToSi + Offset;
}
