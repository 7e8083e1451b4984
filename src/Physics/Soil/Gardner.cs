namespace Litterfall.Physics.Soil;

/// <summary>
/// The exponential soil of Gardner (1958): K = Ks·e^(αh), θ = θr + (θs − θr)·e^(αh). It makes Richards'
/// equation linear, so closed forms exist; no real mix follows it over more than a decade of suction.
/// </summary>
public sealed class Gardner : HydraulicCurve
{
    private readonly double alphaPerMeter;

    /// <summary>An exponential soil.</summary>
    /// <param name="thetaR">θr, m³/m³, 0 or more.</param>
    /// <param name="thetaS">θs, m³/m³, above θr, at most 1.</param>
    /// <param name="alphaPerMeter">α, 1/m, above 0.</param>
    /// <param name="ksMetersPerSecond">Ks, m/s, above 0.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    public Gardner(double thetaR, double thetaS, double alphaPerMeter, double ksMetersPerSecond)
    {
        if (!(thetaR >= 0.0 && thetaR < thetaS && thetaS <= 1.0))
        {
            throw new ArgumentException("must be in order 0 ≤ θr < θs ≤ 1", nameof(thetaR));
        }

        if (!(alphaPerMeter > 0.0 && ksMetersPerSecond > 0.0))
        {
            throw new ArgumentException("α and Ks must be above 0", nameof(alphaPerMeter));
        }

        ResidualWaterContent = thetaR;
        SaturatedWaterContent = thetaS;
        this.alphaPerMeter = alphaPerMeter;
        SaturatedConductivityMetersPerSecond = ksMetersPerSecond;
    }

    /// <inheritdoc/>
    public override double SaturatedWaterContent { get; }

    /// <inheritdoc/>
    public override double ResidualWaterContent { get; }

    /// <inheritdoc/>
    public override double SaturatedConductivityMetersPerSecond { get; }

    /// <summary>The capacity falls from h = 0 on, so there is no knee: a suction of no weight.</summary>
    public override double SteepestHeadMeters => -1e-6;

    /// <inheritdoc/>
    public override double WaterContent(double headMeters) =>
        ResidualWaterContent + ((SaturatedWaterContent - ResidualWaterContent) * Share(headMeters));

    /// <inheritdoc/>
    public override double CapacityPerMeter(double headMeters) =>
        headMeters >= 0.0
            ? 0.0
            : (SaturatedWaterContent - ResidualWaterContent) * alphaPerMeter * Share(headMeters);

    /// <inheritdoc/>
    public override double ConductivityMetersPerSecond(double headMeters) =>
        SaturatedConductivityMetersPerSecond * Share(headMeters);

    private double Share(double headMeters) => Math.Exp(alphaPerMeter * Math.Min(headMeters, 0.0));
}
