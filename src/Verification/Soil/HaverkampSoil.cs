using Litterfall.Physics.Soil;

namespace Litterfall.Verification.Soil;

/// <summary>
/// The rational soil of Haverkamp and others (1977): θ = θr + A(θs − θr)/(A + |h|^β),
/// K = Ks·B/(B + |h|^γ), with h in centimeters inside the powers as published. Test soil only.
/// </summary>
internal sealed class HaverkampSoil : HydraulicCurve
{
    private const double CentimetersPerMeter = 100.0;

    /// <summary>θr, m³/m³.</summary>
    public required double ThetaR { get; init; }

    /// <summary>θs, m³/m³.</summary>
    public required double ThetaS { get; init; }

    /// <summary>A, cm^β.</summary>
    public required double A { get; init; }

    /// <summary>β.</summary>
    public required double Beta { get; init; }

    /// <summary>B, cm^γ.</summary>
    public required double B { get; init; }

    /// <summary>γ.</summary>
    public required double Gamma { get; init; }

    /// <summary>Ks, m/s.</summary>
    public required double KsMetersPerSecond { get; init; }

    /// <inheritdoc/>
    public override double SaturatedWaterContent => ThetaS;

    /// <inheritdoc/>
    public override double ResidualWaterContent => ThetaR;

    /// <inheritdoc/>
    public override double SaturatedConductivityMetersPerSecond => KsMetersPerSecond;

    /// <summary>dC/dh = 0 at |h|^β = A(β − 1)/(β + 1).</summary>
    public override double SteepestHeadMeters =>
        -Math.Pow(A * (Beta - 1.0) / (Beta + 1.0), 1.0 / Beta) / CentimetersPerMeter;

    /// <inheritdoc/>
    public override double WaterContent(double headMeters) =>
        ThetaR + (A * (ThetaS - ThetaR) / (A + Math.Pow(Suction(headMeters), Beta)));

    /// <inheritdoc/>
    public override double CapacityPerMeter(double headMeters)
    {
        double suction = Suction(headMeters);
        if (suction <= 0.0)
        {
            return 0.0;
        }

        double power = Math.Pow(suction, Beta);
        double below = A + power;
        return CentimetersPerMeter * A * (ThetaS - ThetaR) * Beta * power / suction / (below * below);
    }

    /// <inheritdoc/>
    public override double ConductivityMetersPerSecond(double headMeters) =>
        KsMetersPerSecond * B / (B + Math.Pow(Suction(headMeters), Gamma));

    private static double Suction(double headMeters) => Math.Max(0.0, -headMeters * CentimetersPerMeter);
}
