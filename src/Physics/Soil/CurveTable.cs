using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Soil;

/// <summary>Everything the flow equations need of a material at one head, in m and s.</summary>
/// <param name="WaterContent">θ, m³/m³.</param>
/// <param name="Capacity">dθ/dh, 1/m.</param>
/// <param name="FluxPotential">Φ = ∫ K dh from the dry end, m²/s.</param>
/// <param name="Conductivity">K = dΦ/dh, m/s.</param>
/// <param name="ConductivitySlope">dK/dh, 1/s.</param>
public readonly record struct CurvePoint(
    double WaterContent,
    double Capacity,
    double FluxPotential,
    double Conductivity,
    double ConductivitySlope
);

/// <summary>
/// θ(h) and the matric flux potential Φ(h) of a material as cubic Hermite tables over x = ε + |h|,
/// ε = 2⁻¹³ m, with 64 equal intervals to each doubling of x down to
/// <see cref="HydraulicCurve.DriestHeadMeters"/>: the bits of x give the interval without a logarithm. C, K
/// and dK/dh are the derivatives of the interpolants, so that Newton's method sees one consistent function.
/// Φ is integrated by Simpson's rule from the dry end. θ is within 1e-5 and K within 1e-4 of itself of the
/// curve, but where it falls too steeply below h = 0 (see <see cref="IsSteep"/>).
/// </summary>
public sealed class CurveTable
{
    private const double Epsilon = 1.0 / 8192.0;
    private const double SteepShare = 0.988;
    private const double StraightMeters = 5e-4;
    private const int Octaves = 30;
    private const int BitsPerOctave = 6;
    private const int PerOctave = 1 << BitsPerOctave;
    private const int Intervals = Octaves * PerOctave;
    private const int Stride = 8;
    private const int MantissaBits = 52;
    private const int PlaceBits = MantissaBits - BitsPerOctave;
    private const long PlaceMask = (1L << PlaceBits) - 1;
    private const double PerPlace = 1.0 / (1L << PlaceBits);
    private static readonly long FirstInterval = BitConverter.DoubleToInt64Bits(Epsilon) >> PlaceBits;
    private static readonly ConditionalWeakTable<HydraulicCurve, CurveTable> Known = [];

    private readonly double[] cubics = new double[Intervals * Stride];
    private readonly double[] perMeter = new double[Octaves];
    private readonly CurvePoint saturated;

    private CurveTable(HydraulicCurve curve)
    {
        Curve = curve;
        SteepestHeadMeters = curve.SteepestHeadMeters;
        for (int octave = 0; octave < Octaves; octave++)
        {
            perMeter[octave] = PerOctave / (Epsilon * (1L << octave));
        }

        double full = curve.SaturatedConductivityMetersPerSecond;
        IsSteep = curve.ConductivityMetersPerSecond(HeadAt(Distance(1))) < SteepShare * full;
        double potential = Fill(curve);
        saturated = new CurvePoint(
            curve.SaturatedWaterContent,
            0.0,
            potential,
            curve.SaturatedConductivityMetersPerSecond,
            0.0
        );
    }

    /// <summary>The material.</summary>
    public HydraulicCurve Curve { get; }

    /// <summary>Head of the largest capacity, m.</summary>
    public double SteepestHeadMeters { get; }

    /// <summary>True where K falls so fast below h = 0 that its slope is of no use there.</summary>
    public bool IsSteep { get; }

    /// <summary>The table of a material; made once for each curve object.</summary>
    /// <param name="curve">The material.</param>
    public static CurveTable Of(HydraulicCurve curve) => Known.GetValue(curve, c => new CurveTable(c));

    /// <summary>All values at a head.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    /// <param name="point">The values.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void At(double headMeters, out CurvePoint point)
    {
        if (headMeters >= 0.0)
        {
            point = saturated with
            {
                FluxPotential = saturated.FluxPotential + (saturated.Conductivity * headMeters),
            };
            return;
        }

        long bits = BitConverter.DoubleToInt64Bits(Epsilon - headMeters);
        int i = Math.Min((int)((bits >> PlaceBits) - FirstInterval), Intervals - 1);
        double s = (bits & PlaceMask) * PerPlace;
        double scale = perMeter[i >> BitsPerOctave];
        ref double c = ref cubics[i * Stride];
        double c1 = Unsafe.Add(ref c, 1);
        double c2 = Unsafe.Add(ref c, 2);
        double c3 = Unsafe.Add(ref c, 3);
        double p1 = Unsafe.Add(ref c, 5);
        double p2 = Unsafe.Add(ref c, 6);
        double p3 = Unsafe.Add(ref c, 7);
        point = new CurvePoint(
            c + (s * (c1 + (s * (c2 + (s * c3))))),
            -scale * (c1 + (s * ((2.0 * c2) + (3.0 * s * c3)))),
            Unsafe.Add(ref c, 4) + (s * (p1 + (s * (p2 + (s * p3))))),
            -scale * (p1 + (s * ((2.0 * p2) + (3.0 * s * p3)))),
            scale * scale * ((2.0 * p2) + (6.0 * s * p3))
        );
    }

    /// <summary>θ alone, m³/m³.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    public double WaterContent(double headMeters)
    {
        if (headMeters >= 0.0)
        {
            return saturated.WaterContent;
        }

        long bits = BitConverter.DoubleToInt64Bits(Epsilon - headMeters);
        int i = Math.Min((int)((bits >> PlaceBits) - FirstInterval), Intervals - 1);
        double s = (bits & PlaceMask) * PerPlace;
        var c = cubics.AsSpan(i * Stride, 4);
        return c[0] + (s * (c[1] + (s * (c[2] + (s * c[3])))));
    }

    /// <summary>Fills the intervals from the dry end up.</summary>
    /// <returns>Φ at h = 0.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Fill(HydraulicCurve curve)
    {
        double potential = 0.0;
        var dry = KnotAt(curve, Distance(Intervals));
        for (int i = Intervals - 1; i >= 0; i--)
        {
            double near = Distance(i);
            double width = Distance(i + 1) - near;
            var wet = KnotAt(curve, near);
            double middle = Conductivity(curve, HeadAt(near + (0.5 * width)));
            double risen = potential + (width / 6.0 * (wet.Conductivity + (4.0 * middle) + dry.Conductivity));
            Cubic(
                i * Stride,
                (wet.WaterContent, -width * wet.Capacity),
                (dry.WaterContent, -width * dry.Capacity)
            );
            Cubic(
                (i * Stride) + 4,
                (risen, -width * wet.Conductivity),
                (potential, -width * dry.Conductivity)
            );
            potential = risen;
            dry = wet;
        }

        return potential;
    }

    private Knot KnotAt(HydraulicCurve curve, double distance)
    {
        double head = HeadAt(distance);
        return new(curve.WaterContent(head), curve.CapacityPerMeter(head), Conductivity(curve, head));
    }

    /// <summary>
    /// K; where it is steep a straight line over the last half millimeter of suction, of which nothing
    /// is known, so that its slope has a bound.
    /// </summary>
    private double Conductivity(HydraulicCurve curve, double head)
    {
        if (!IsSteep || head <= -StraightMeters)
        {
            return curve.ConductivityMetersPerSecond(head);
        }

        double full = curve.SaturatedConductivityMetersPerSecond;
        return full + ((full - curve.ConductivityMetersPerSecond(-StraightMeters)) * head / StraightMeters);
    }

    private static double Distance(int knot) =>
        Epsilon * (1L << (knot >> BitsPerOctave)) * (1.0 + ((double)(knot & (PerOctave - 1)) / PerOctave));

    private static double HeadAt(double distance) => Math.Min(0.0, Epsilon - distance);

    /// <summary>
    /// Slopes are held to three times the rise, so that no interval overshoots (Fritsch and Carlson 1980,
    /// recalled); it matters only where a curve dies faster than the intervals widen.
    /// </summary>
    private void Cubic(int at, (double Value, double Slope) near, (double Value, double Slope) far)
    {
        double rise = far.Value - near.Value;
        double nearSlope = Math.Max(near.Slope, 3.0 * rise);
        double farSlope = Math.Max(far.Slope, 3.0 * rise);
        cubics[at] = near.Value;
        cubics[at + 1] = nearSlope;
        cubics[at + 2] = (3.0 * rise) - (2.0 * nearSlope) - farSlope;
        cubics[at + 3] = nearSlope + farSlope - (2.0 * rise);
    }

    private readonly record struct Knot(double WaterContent, double Capacity, double Conductivity);
}
