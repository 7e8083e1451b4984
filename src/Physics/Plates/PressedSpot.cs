namespace Litterfall.Physics.Plates;

/// <summary>
/// A push on a small disc at the middle of a pane held on four edges: σ = 3W/(2π t²) · [(1 + ν) ln(2b/(π r))
/// + β] (Roark's Formulas for Stress and Strain, 7th ed., table 11.4 case 1b). An estimate, not a structural
/// design.
/// </summary>
public static class PressedSpot
{
    // Roark table 11.4 case 1b, β against long/short side; tabulated for ν = 0.3. The last entry is the
    // strip.
    private static readonly double[] Ratios = [1.0, 1.2, 1.4, 1.6, 1.8, 2.0];
    private static readonly double[] Betas = [0.435, 0.650, 0.789, 0.875, 0.927, 0.958];
    private const double BetaOfStrip = 1.0;

    /// <summary>Largest bending stress under the disc.</summary>
    /// <param name="pane">The pane; all four edges are taken as held.</param>
    /// <param name="forceNewtons">Force W, N, 0 or more.</param>
    /// <param name="discRadiusMeters">Radius r of the disc, m, at least half the thickness.</param>
    /// <returns>Stress, Pa. Between 2 and endless aspect ratio β is taken as 1, on the high side.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double StressPascals(PlatePane pane, double forceNewtons, double discRadiusMeters)
    {
        pane.ThrowIfImpossible(nameof(pane));
        ArgumentOutOfRangeException.ThrowIfNegative(forceNewtons);
        ArgumentOutOfRangeException.ThrowIfLessThan(discRadiusMeters, 0.5 * pane.ThicknessMeters);
        double shortSide = Math.Min(pane.WidthMeters, pane.HeightMeters);
        double longSide = Math.Max(pane.WidthMeters, pane.HeightMeters);
        double spread = (1.0 + pane.PoissonRatio) * Math.Log(2.0 * shortSide / (Math.PI * discRadiusMeters));
        return 3.0
            * forceNewtons
            / (2.0 * Math.PI * pane.ThicknessMeters * pane.ThicknessMeters)
            * (spread + Beta(longSide / shortSide));
    }

    private static double Beta(double ratio)
    {
        for (int i = 1; i < Ratios.Length; i++)
        {
            if (ratio <= Ratios[i])
            {
                double share = (ratio - Ratios[i - 1]) / (Ratios[i] - Ratios[i - 1]);
                return Betas[i - 1] + (share * (Betas[i] - Betas[i - 1]));
            }
        }

        return BetaOfStrip;
    }
}
