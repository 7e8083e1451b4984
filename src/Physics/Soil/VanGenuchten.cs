using System.Collections.Immutable;

namespace Litterfall.Physics.Soil;

/// <summary>One pore system of a retention curve.</summary>
/// <param name="Weight">Share of the pore space between residual and saturated, above 0 to 1.</param>
/// <param name="AlphaPerMeter">α, 1/m, above 0.</param>
/// <param name="N">n, above 1.</param>
public readonly record struct PoreMode(double Weight, double AlphaPerMeter, double N);

/// <summary>Parameters of a van Genuchten-Mualem material with one or more pore systems.</summary>
public sealed record VanGenuchtenParameters
{
    /// <summary>Residual water content θr, m³/m³, 0 or more.</summary>
    public required double ThetaR { get; init; }

    /// <summary>
    /// Saturated water content θs, m³/m³, above θr, at most 1; times <see cref="WidthRatio"/>.
    /// </summary>
    public required double ThetaS { get; init; }

    /// <summary>Pore systems; their weights add to 1.</summary>
    public required ImmutableArray<PoreMode> Modes { get; init; }

    /// <summary>Saturated conductivity, m/s, above 0.</summary>
    public required double KsMetersPerSecond { get; init; }

    /// <summary>
    /// Area of the layer over that of the ground that its water is counted on, 1 or more: above 1 where a
    /// layer runs on under something that stands on it.
    /// </summary>
    public double WidthRatio { get; init; } = 1.0;

    /// <summary>Mualem's exponent l, any sign.</summary>
    public double L { get; init; } = 0.5;

    /// <summary>Air-entry suction hₑ, m, 0 or more: saturated at all h ≥ −hₑ.</summary>
    public double AirEntryMeters { get; init; }

    /// <summary>Equal where all values are, those of the pore systems included.</summary>
    /// <param name="other">The others.</param>
    public bool Equals(VanGenuchtenParameters? other) =>
        other is not null
        && ThetaR.Equals(other.ThetaR)
        && ThetaS.Equals(other.ThetaS)
        && KsMetersPerSecond.Equals(other.KsMetersPerSecond)
        && L.Equals(other.L)
        && AirEntryMeters.Equals(other.AirEntryMeters)
        && WidthRatio.Equals(other.WidthRatio)
        && Modes.AsSpan().SequenceEqual(other.Modes.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() =>
        HashCode.Combine(ThetaR, ThetaS, KsMetersPerSecond, L, AirEntryMeters);

    /// <summary>Above this the power (α|h|)ⁿ overflows on the dry side; no medium comes near it.</summary>
    private const double LargestN = 30.0;

    /// <summary>What is wrong with them in one sentence, or null.</summary>
    public string? Fault() =>
        !(ThetaR >= 0.0) ? "the residual water content is below 0"
        : !(ThetaS <= WidthRatio) ? "the saturated water content is above 1"
        : !(ThetaR < ThetaS) ? "the residual water content is not below the saturated one"
        : !(KsMetersPerSecond > 0.0 && double.IsFinite(KsMetersPerSecond))
            ? "the saturated conductivity is not above 0"
        : !(AirEntryMeters >= 0.0 && double.IsFinite(AirEntryMeters)) ? "the air entry is below 0"
        : !double.IsFinite(L) ? "the exponent l is not a number"
        : Modes.IsDefaultOrEmpty ? "there is no pore system"
        : Modes.Any(m => !(m.Weight > 0.0)) ? "the weight of a pore system is not above 0"
        : !(Math.Abs(Modes.Sum(m => m.Weight) - 1.0) <= 1e-6) ? "the weights do not add to 1"
        : Modes.Any(m => !(m.AlphaPerMeter > 0.0 && double.IsFinite(m.AlphaPerMeter)))
            ? "alpha is not above 0"
        : Modes.Any(m => !(m.N > 1.0 && m.N <= LargestN)) ? "n is not above 1 and at most 30"
        : LeastExponent() is var p && !(p > 0.0)
            ? "with this l and n the conductivity grows as the material dries"
        : null;

    /// <summary>K falls as |h|^−p on the dry side; p of the mode that stays wet longest.</summary>
    private double LeastExponent()
    {
        double slowest = Modes.Min(m => m.N - 1.0);
        return (slowest * L) + (2.0 * Modes.Min(m => m.N));
    }
}

/// <summary>
/// Retention by van Genuchten (1980), summed over pore systems after Durner (1994), conductivity by Mualem
/// (1976) in the closed form of Priesack and Durner (2006), air entry after Vogel, van Genuchten and
/// Cislerova (2001) and Ippisch, Vogel and Bastian (2006). With x = α|h|, t = xⁿ, m = 1 − 1/n:
/// Se = (1+t)⁻ᵐ and K = Ks·Seˡ·[Σ w α f / Σ w α]² with f = 1 − (t/(1+t))ᵐ.
/// Without air entry the slope of K is infinite at h = 0 where n &lt; 2.
/// </summary>
public sealed class VanGenuchten : HydraulicCurve
{
    private const double DryTail = 1e3;
    private readonly VanGenuchtenParameters parameters;
    private readonly PoreMode[] modes;
    private readonly double entrySaturation;
    private readonly double entryPores;

    /// <summary>A material.</summary>
    /// <param name="parameters">Its parameters.</param>
    /// <exception cref="ArgumentException">They are not physical.</exception>
    public VanGenuchten(VanGenuchtenParameters parameters)
    {
        if (parameters.Fault() is { } fault)
        {
            throw new ArgumentException(fault, nameof(parameters));
        }

        this.parameters = parameters;
        modes = [.. parameters.Modes];
        double entry = parameters.AirEntryMeters;
        entrySaturation = entry > 0.0 ? Saturation(entry) : 1.0;
        entryPores = entry > 0.0 ? Pores(entry) : modes.Sum(m => m.Weight * m.AlphaPerMeter);
        SteepestHeadMeters = -FindSteepest();
    }

    /// <summary>Its parameters.</summary>
    public VanGenuchtenParameters Parameters => parameters;

    /// <inheritdoc/>
    public override double SaturatedWaterContent => parameters.ThetaS;

    /// <inheritdoc/>
    public override double ResidualWaterContent => parameters.ThetaR;

    /// <inheritdoc/>
    public override double SaturatedConductivityMetersPerSecond => parameters.KsMetersPerSecond;

    /// <inheritdoc/>
    public override double SteepestHeadMeters { get; }

    /// <summary>A material with one pore system; α in 1/m, Ks in m/s.</summary>
    /// <exception cref="ArgumentException">The values are not physical.</exception>
    public static VanGenuchten Single(
        (double R, double S) theta,
        double alphaPerMeter,
        double n,
        double ksMetersPerSecond,
        double l = 0.5,
        double airEntryMeters = 0.0
    ) =>
        new(
            new VanGenuchtenParameters
            {
                ThetaR = theta.R,
                ThetaS = theta.S,
                Modes = [new PoreMode(1.0, alphaPerMeter, n)],
                KsMetersPerSecond = ksMetersPerSecond,
                L = l,
                AirEntryMeters = airEntryMeters,
            }
        );

    /// <inheritdoc/>
    public override double WaterContent(double headMeters)
    {
        double suction = -headMeters;
        double span = parameters.ThetaS - parameters.ThetaR;
        return suction <= parameters.AirEntryMeters
            ? parameters.ThetaS
            : parameters.ThetaR + (span * Saturation(suction) / entrySaturation);
    }

    /// <inheritdoc/>
    public override double CapacityPerMeter(double headMeters)
    {
        double suction = -headMeters;
        if (suction <= parameters.AirEntryMeters)
        {
            return 0.0;
        }

        double slope = 0.0;
        foreach (var mode in modes)
        {
            double x = mode.AlphaPerMeter * suction;
            double t = Math.Pow(x, mode.N);
            double se = Math.Pow(1.0 + t, (1.0 / mode.N) - 1.0);
            slope += mode.Weight * mode.AlphaPerMeter * (mode.N - 1.0) * (t / x) * se / (1.0 + t);
        }

        return (parameters.ThetaS - parameters.ThetaR) * slope / entrySaturation;
    }

    /// <inheritdoc/>
    public override double ConductivityMetersPerSecond(double headMeters)
    {
        double suction = -headMeters;
        if (suction <= parameters.AirEntryMeters)
        {
            return parameters.KsMetersPerSecond;
        }

        double pores = Pores(suction) / entryPores;
        return parameters.KsMetersPerSecond
            * Math.Pow(Saturation(suction) / entrySaturation, parameters.L)
            * pores
            * pores;
    }

    private double Saturation(double suction)
    {
        double sum = 0.0;
        foreach (var mode in modes)
        {
            double t = Math.Pow(mode.AlphaPerMeter * suction, mode.N);
            sum += mode.Weight * Math.Pow(1.0 + t, (1.0 / mode.N) - 1.0);
        }

        return sum;
    }

    /// <summary>Σ w α f; the dry form of f does not cancel.</summary>
    private double Pores(double suction)
    {
        double sum = 0.0;
        foreach (var mode in modes)
        {
            double m = 1.0 - (1.0 / mode.N);
            double x = mode.AlphaPerMeter * suction;
            double t = Math.Pow(x, mode.N);
            double f = t > DryTail ? -ExpM1(-m * Log1P(1.0 / t)) : 1.0 - (t / x * Math.Pow(1.0 + t, -m));
            sum += mode.Weight * mode.AlphaPerMeter * f;
        }

        return sum;
    }

    /// <summary>eˣ − 1 for small x ≤ 0, by its series; error below 1e-16 of itself for |x| ≤ 1e-3.</summary>
    private static double ExpM1(double x) => x * (1.0 + (x / 2.0 * (1.0 + (x / 3.0 * (1.0 + (x / 4.0))))));

    /// <summary>ln(1 + x) for 0 ≤ x ≤ 1e-3, by its series; error below 1e-16 of itself.</summary>
    private static double Log1P(double x) =>
        x * (1.0 - (x * (0.5 - (x * ((1.0 / 3.0) - (x * (0.25 - (x * (0.2 - (x / 6.0))))))))));

    /// <summary>Suction of the largest capacity: closed form for one pore system, a scan for more.</summary>
    private double FindSteepest()
    {
        double Knee(PoreMode mode) => Math.Pow((mode.N - 1.0) / mode.N, 1.0 / mode.N) / mode.AlphaPerMeter;
        double best = Math.Max(Knee(modes[0]), parameters.AirEntryMeters);
        foreach (var mode in modes)
        {
            double knee = Math.Max(Knee(mode), parameters.AirEntryMeters);
            if (CapacityPerMeter(-knee * 1.000001) > CapacityPerMeter(-best * 1.000001))
            {
                best = knee;
            }
        }

        return best;
    }
}
