namespace Litterfall.Physics.Plates;

/// <summary>
/// A pane resting on two opposite edges, as a strip under uniform pressure: M = q L²/8 and w = 5 q L⁴/(384 E
/// I) with I = t³/12 per meter (beam theory). An estimate, not a structural design.
/// </summary>
public static class TwoEdgeSpan
{
    /// <summary>Largest bending stress, 0.75 q L²/t².</summary>
    /// <param name="loadPascals">Uniform pressure q, Pa, 0 or more.</param>
    /// <param name="spanMeters">Span L between the supports, m, above 0.</param>
    /// <param name="thicknessMeters">Thickness t, m, above 0.</param>
    /// <returns>Stress at the middle of the span, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double StressPascals(double loadPascals, double spanMeters, double thicknessMeters)
    {
        ThrowIfImpossible(loadPascals, spanMeters, thicknessMeters);
        double slenderness = spanMeters / thicknessMeters;
        return 0.75 * loadPascals * slenderness * slenderness;
    }

    /// <summary>Deflection at the middle, 5 q L⁴/(32 E t³).</summary>
    /// <param name="loadPascals">Uniform pressure q, Pa, 0 or more.</param>
    /// <param name="spanMeters">Span L between the supports, m, above 0.</param>
    /// <param name="thicknessMeters">Thickness t, m, above 0.</param>
    /// <param name="youngsModulusPascals">Young's modulus E, Pa, above 0.</param>
    /// <returns>Deflection, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double DeflectionMeters(
        double loadPascals,
        double spanMeters,
        double thicknessMeters,
        double youngsModulusPascals
    )
    {
        ThrowIfImpossible(loadPascals, spanMeters, thicknessMeters);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(youngsModulusPascals);
        return 5.0
            * loadPascals
            * Math.Pow(spanMeters, 4.0)
            / (32.0 * youngsModulusPascals * Math.Pow(thicknessMeters, 3.0));
    }

    private static void ThrowIfImpossible(double loadPascals, double spanMeters, double thicknessMeters)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(loadPascals);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spanMeters);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thicknessMeters);
    }
}
