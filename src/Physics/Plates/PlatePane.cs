namespace Litterfall.Physics.Plates;

/// <summary>How the top edge of a pane is held. The bottom and both sides rest on a line in every
/// case.</summary>
public enum PlateEdge
{
    /// <summary>Nothing holds the top edge: a rimless front, or a strip under a vent.</summary>
    TopFree,

    /// <summary>The top edge rests on a line like the other three: a braced front, or a lid on four
    /// edges.</summary>
    TopHeld,
}

/// <summary>
/// A flat rectangular pane. Dimensions in meters, modulus in pascals. An estimate made with it is a talking
/// point for a glazier, never a structural design.
/// </summary>
/// <param name="WidthMeters">Size between the two side edges, x from 0 to this, m.</param>
/// <param name="HeightMeters">Size from the bottom edge to the top edge, y from 0 to this, m.</param>
/// <param name="ThicknessMeters">Thickness, m.</param>
/// <param name="YoungsModulusPascals">Young's modulus, Pa.</param>
/// <param name="PoissonRatio">Poisson's ratio, from 0 up to below 0.5.</param>
/// <param name="Top">How the top edge is held.</param>
public readonly record struct PlatePane(
    double WidthMeters,
    double HeightMeters,
    double ThicknessMeters,
    double YoungsModulusPascals,
    double PoissonRatio,
    PlateEdge Top
)
{
    /// <summary>Bending stiffness E t³ / (12 (1 − ν²)), N·m.</summary>
    public double StiffnessNewtonMeters =>
        YoungsModulusPascals
        * ThicknessMeters
        * ThicknessMeters
        * ThicknessMeters
        / (12.0 * (1.0 - (PoissonRatio * PoissonRatio)));

    /// <summary>
    /// Whether linear theory may be trusted: deflection below half the thickness. Above it the pane is
    /// stiffer than computed, so the stress given is on the high side and the deflection far too high.
    /// </summary>
    /// <param name="deflectionMeters">Largest deflection, m.</param>
    public bool IsLinear(double deflectionMeters) => deflectionMeters < 0.5 * ThicknessMeters;

    internal void ThrowIfImpossible(string parameter)
    {
        ThrowIfNotPositive(WidthMeters, parameter);
        ThrowIfNotPositive(HeightMeters, parameter);
        ThrowIfNotPositive(ThicknessMeters, parameter);
        ThrowIfNotPositive(YoungsModulusPascals, parameter);
        ArgumentOutOfRangeException.ThrowIfNegative(PoissonRatio, parameter);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(PoissonRatio, 0.5, parameter);
    }

    private static void ThrowIfNotPositive(double value, string parameter)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value, parameter);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, double.MaxValue, parameter);
    }
}

/// <summary>One point of the pressure line over the height of a pane. Two knots at one height make a
/// jump.</summary>
/// <param name="YMeters">Height above the bottom edge, m.</param>
/// <param name="Pascals">Pressure there, Pa.</param>
public readonly record struct PressureKnot(double YMeters, double Pascals);

/// <summary>What a pane does under its load, by linear thin-plate theory. An estimate, not a structural
/// design.</summary>
/// <param name="LargestStressPascals">Largest principal bending stress anywhere on the pane, Pa.</param>
/// <param name="StressXMeters">Where that is: distance from the left edge, m (mirrored on the right).</param>
/// <param name="StressYMeters">Where that is: height above the bottom edge, m.</param>
/// <param name="TopEdgeStressPascals">Largest principal bending stress along the top edge, Pa.</param>
/// <param name="LargestDeflectionMeters">Largest deflection, m.</param>
/// <param name="DeflectionYMeters">Height of the largest deflection on the middle line, m.</param>
public readonly record struct PlateResult(
    double LargestStressPascals,
    double StressXMeters,
    double StressYMeters,
    double TopEdgeStressPascals,
    double LargestDeflectionMeters,
    double DeflectionYMeters
)
{
}
