namespace Litterfall.Physics.Plates;

/// <summary>
/// Bending of a thin rectangular pane whose sides and bottom rest on lines and whose top is free or rests
/// too, under a pressure that depends on height only: Lévy's single-series solution of Kirchhoff's plate
/// equation (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, chapter 5;
/// recalled).
/// </summary>
/// <remarks>
/// Valid for a thickness below about a tenth of the smaller side and a deflection below half the thickness.
/// Results are estimates for sizing and for talking to a glazier; panes that hold water, overhead glass and
/// stacked or hung tanks go to a glazier or engineer.
/// </remarks>
public static class LevyPlate
{
    /// <summary>Finds the largest bending stress and the largest deflection of a pane.</summary>
    /// <param name="pane">The pane; all sizes positive.</param>
    /// <param name="load">
    /// Pressure over the height: at least two knots, rising in y from 0 to at most the pane height; linear
    /// between knots, zero below the first and above the last, two knots at one height for a jump.
    /// </param>
    /// <returns>Stress in Pa with its place, deflection in m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size, the Poisson ratio or a knot is out of
    /// range.</exception>
    public static PlateResult Solve(PlatePane pane, ReadOnlySpan<PressureKnot> load)
    {
        pane.ThrowIfImpossible(nameof(pane));
        return LevyScan.Of(pane, LoadShape.From(load, pane.HeightMeters)).Result();
    }

    /// <summary>
    /// Bending and twisting moments and deflection at one point, for comparison with published tables.
    /// </summary>
    /// <param name="pane">The pane; all sizes positive.</param>
    /// <param name="load">Pressure over the height, as for <see cref="Solve"/>.</param>
    /// <param name="xMeters">Distance from the left edge, 0 to the width, m.</param>
    /// <param name="yMeters">Height above the bottom edge, 0 to the height, m.</param>
    /// <returns>Moments in N (N·m per m) and deflection in m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size, a knot or the point is out of range.</exception>
    public static PlateMoments At(
        PlatePane pane,
        ReadOnlySpan<PressureKnot> load,
        double xMeters,
        double yMeters
    )
    {
        pane.ThrowIfImpossible(nameof(pane));
        ThrowIfOutside(xMeters, pane.WidthMeters, nameof(xMeters));
        ThrowIfOutside(yMeters, pane.HeightMeters, nameof(yMeters));
        return LevyScan.Of(pane, LoadShape.From(load, pane.HeightMeters)).At(xMeters, yMeters);
    }

    /// <summary>
    /// Largest depth of water behind a pane that keeps the estimated stress at or below an allowable stress.
    /// </summary>
    /// <param name="pane">The pane; all sizes positive.</param>
    /// <param name="allowablePascals">Allowable bending stress, Pa, above 0.</param>
    /// <returns>Depth in m, to 0.1 mm; the pane height when even brim-full stays below the allowable
    /// stress.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size or the allowable stress is out of
    /// range.</exception>
    public static double LargestWaterDepth(PlatePane pane, double allowablePascals)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(allowablePascals);
        pane.ThrowIfImpossible(nameof(pane));
        if (WaterStress(pane, pane.HeightMeters) <= allowablePascals)
        {
            return pane.HeightMeters;
        }

        double safe = 0.0;
        double tooDeep = pane.HeightMeters;
        while (tooDeep - safe > 1e-4)
        {
            double middle = 0.5 * (safe + tooDeep);
            if (WaterStress(pane, middle) <= allowablePascals)
            {
                safe = middle;
            }
            else
            {
                tooDeep = middle;
            }
        }

        return safe;
    }

    /// <summary>
    /// Thickness at which the estimated stress equals an allowable stress: exact in linear theory, since the
    /// moments do not depend on thickness. Not for loads that contain the pane's own weight.
    /// </summary>
    /// <param name="thicknessMeters">Thickness of the pane that was solved, m.</param>
    /// <param name="stressPascals">Its largest stress, Pa.</param>
    /// <param name="allowablePascals">Allowable bending stress, Pa, above 0.</param>
    /// <returns>Thickness in m, without the maker's tolerance and without any extra factor.</returns>
    public static double ThicknessNeeded(
        double thicknessMeters,
        double stressPascals,
        double allowablePascals
    ) => thicknessMeters * Math.Sqrt(stressPascals / allowablePascals);

    private static double WaterStress(PlatePane pane, double depthMeters) =>
        Solve(pane, PlateLoad.Water(depthMeters)).LargestStressPascals;

    private static void ThrowIfOutside(double value, double size, string name)
    {
        if (!(value >= 0.0 && value <= size))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must lie on the pane.");
        }
    }
}

/// <summary>Moments per unit width and deflection at a point of a pane.</summary>
/// <param name="AcrossNewtons">Mx, bending along the width, N·m per m; positive stretches the far
/// face.</param>
/// <param name="UpNewtons">My, bending along the height, N·m per m.</param>
/// <param name="TwistNewtons">Mxy, twisting, N·m per m.</param>
/// <param name="DeflectionMeters">Deflection in the direction of the pressure, m.</param>
public readonly record struct PlateMoments(
    double AcrossNewtons,
    double UpNewtons,
    double TwistNewtons,
    double DeflectionMeters
)
{
    /// <summary>The principal moment of larger magnitude, N·m per m, as a magnitude.</summary>
    public double LargestPrincipalNewtons
    {
        get
        {
            double mean = 0.5 * (AcrossNewtons + UpNewtons);
            double half = 0.5 * (AcrossNewtons - UpNewtons);
            return Math.Abs(mean) + Math.Sqrt((half * half) + (TwistNewtons * TwistNewtons));
        }
    }
}
