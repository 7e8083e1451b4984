using System.Collections.Immutable;
using Litterfall.Physics.Numerics;

namespace Litterfall.Physics.Soil;

/// <summary>
/// Water held by a mix of known volume. Each component holds what it held alone, θ(h) = Σ Vᵢ θᵢ(h)/V, as far
/// as the pores of the mix go: θ(h) ≤ θs. Own working rule after the linear mixing of Blok and others (Acta
/// Horticulturae 819, abstract read): shrinkage and filled voids take the largest pores first, those that
/// drain wetter than a few centimeters.
/// </summary>
public sealed class MixRetention
{
    /// <summary>
    /// Where the pores of the mix must suffice for the water of its components, m: −100 cm.
    /// </summary>
    public const double RoomHeadMeters = -1.0;

    private const double BetweenParticlesN = 2.8;

    /// <summary>Keeps the bounds of θr apart where the mix dries out altogether, m³/m³.</summary>
    private const double LeastRoom = 1e-9;

    /// <summary>α·|h| at the steepest head of a pore system, ((n − 1)/n)^(1/n) for n = 2.8.</summary>
    private const double Steepest = 0.854;
    private static readonly double[] fineStarts = [0.03, 0.1, 0.5];
    private readonly ImmutableArray<MixPart> parts;
    private readonly double volume;
    private readonly double saturated;

    /// <summary>Heads the misfit is judged at, m: five parameters always meet five points.</summary>
    public static readonly ImmutableArray<double> MisfitHeadsMeters =
    [
        -0.01,
        -0.02,
        -0.03,
        -0.05,
        -0.1,
        -0.2,
        -0.5,
        -1.0,
        -3.0,
        -10.0,
        -150.0,
    ];

    /// <summary>Heads of the fit beside saturation, m: −3, −10, −50, −100 and −15000 cm.</summary>
    public static readonly ImmutableArray<double> FitHeadsMeters = [-0.03, -0.1, -0.5, -1.0, -150.0];

    private MixRetention(ImmutableArray<MixPart> parts, double volume, double saturated)
    {
        this.parts = parts;
        this.volume = volume;
        this.saturated = saturated;
    }

    /// <summary>
    /// A mix; null when it would have no room for what its components keep at
    /// <see cref="RoomHeadMeters"/>.
    /// </summary>
    /// <param name="parts">Its components.</param>
    /// <param name="volumeCubicMeters">Mixed volume, m³.</param>
    /// <param name="saturatedWaterContent">θs of the mix, m³/m³.</param>
    public static MixRetention? Of(
        ImmutableArray<MixPart> parts,
        double volumeCubicMeters,
        double saturatedWaterContent
    )
    {
        var mix = new MixRetention(parts, volumeCubicMeters, saturatedWaterContent);
        return saturatedWaterContent <= 1.0 && saturatedWaterContent > mix.Sum(RoomHeadMeters) ? mix : null;
    }

    /// <summary>Water content of the mix as estimated, before any curve is fitted, m³/m³.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    public double WaterContent(double headMeters) => Math.Min(Sum(headMeters), saturated);

    /// <summary>
    /// The curve of two pore systems closest to it (Durner 1994), by least squares at
    /// <see cref="FitHeadsMeters"/>: between particles n₁ = 2.8 and α₁ within the range of the components,
    /// inside them α₂ ≤ α₁. Ks is left at 1 m/s.
    /// </summary>
    /// <returns>The curve and its rms misfit at <see cref="MisfitHeadsMeters"/>, m³/m³.</returns>
    public (VanGenuchtenParameters Curve, double RmsMisfit) Refit()
    {
        var wanted = FitHeadsMeters.Select(WaterContent).ToArray();
        double finest = parts.Max(p => -p.Curve.SteepestHeadMeters);
        double coarsest = parts.Min(p => -p.Curve.SteepestHeadMeters);
        double[] lower = [0.0, 0.02, Math.Log(Steepest / 1.5 / finest), Math.Log(1e-3), Math.Log(0.05)];
        double[] upper =
        [
            Math.Max(wanted[^1], LeastRoom),
            0.98,
            Math.Log(Steepest * 1.5 / coarsest),
            0.0,
            Math.Log(2.2),
        ];
        void Misses(ReadOnlySpan<double> p, Span<double> misses)
        {
            var curve = new VanGenuchten(Curve(p));
            for (int i = 0; i < misses.Length; i++)
            {
                misses[i] = curve.WaterContent(FitHeadsMeters[i]) - wanted[i];
            }
        }

        LeastSquaresFit? best = null;
        foreach (double inner in fineStarts)
        {
            double[] start =
            [
                0.5 * wanted[^1],
                0.5,
                0.5 * (lower[2] + upper[2]),
                Math.Log(inner),
                Math.Log(0.25),
            ];
            var fit = LevenbergMarquardt.Fit(Misses, wanted.Length, start, lower, upper);
            best = best is null || fit.SumOfSquares < best.SumOfSquares ? fit : best;
        }

        var fitted = new VanGenuchten(Curve(best!.Parameters.AsSpan()));
        return (
            fitted.Parameters,
            Math.Sqrt(MisfitHeadsMeters.Average(h => Math.Pow(fitted.WaterContent(h) - WaterContent(h), 2)))
        );
    }

    private VanGenuchtenParameters Curve(ReadOnlySpan<double> p) =>
        new()
        {
            ThetaR = p[0],
            ThetaS = saturated,
            Modes =
            [
                new PoreMode(p[1], Math.Exp(p[2]), BetweenParticlesN),
                new PoreMode(1.0 - p[1], Math.Exp(p[2] + p[3]), 1.0 + Math.Exp(p[4])),
            ],
            KsMetersPerSecond = 1.0,
        };

    private double Sum(double headMeters) =>
        parts.Sum(p => p.VolumeCubicMeters * p.Curve.WaterContent(headMeters)) / volume;
}
