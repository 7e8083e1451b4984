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
/// θ(h) and the matric flux potential Φ(h) of a material as cubic Hermite tables over u = ln(ε + |h|),
/// ε = 0.1 mm, down to <see cref="HydraulicCurve.DriestHeadMeters"/>. C, K and dK/dh are the derivatives of
/// the interpolants, so that Newton's method sees one consistent function. Φ is integrated by Simpson's rule
/// from the dry end.
/// </summary>
public sealed class CurveTable
{
    private const double Epsilon = 1e-4;
    private const int Intervals = 1024;
    private const int Stride = 8;
    private const int SimpsonPanels = 4;
    private static readonly double FirstU = Math.Log(Epsilon);
    private static readonly double StepU =
        (Math.Log(Epsilon - HydraulicCurve.DriestHeadMeters) - FirstU) / Intervals;

    private static readonly ConditionalWeakTable<HydraulicCurve, CurveTable> Known = [];

    private readonly double[] cubics = new double[Intervals * Stride];
    private readonly double saturatedPotential;
    private readonly double saturatedConductivity;

    private CurveTable(HydraulicCurve curve)
    {
        Curve = curve;
        saturatedConductivity = curve.SaturatedConductivityMetersPerSecond;
        SteepestHeadMeters = curve.SteepestHeadMeters;
        SaturatedWaterContent = curve.SaturatedWaterContent;
        var potential = Potentials(curve);
        saturatedPotential = potential[0];
        for (int i = 0; i < Intervals; i++)
        {
            var near = Knot(curve, i);
            var far = Knot(curve, i + 1);
            Cubic(i * Stride, (near.Theta, near.ThetaSlope), (far.Theta, far.ThetaSlope));
            Cubic(
                (i * Stride) + 4,
                (potential[i], near.PotentialSlope),
                (potential[i + 1], far.PotentialSlope)
            );
        }
    }

    /// <summary>The material.</summary>
    public HydraulicCurve Curve { get; }

    /// <summary>Head of the largest capacity, m.</summary>
    public double SteepestHeadMeters { get; }

    /// <summary>θs, m³/m³.</summary>
    public double SaturatedWaterContent { get; }

    /// <summary>The table of a material; made once for each curve object.</summary>
    /// <param name="curve">The material.</param>
    public static CurveTable Of(HydraulicCurve curve) => Known.GetValue(curve, c => new CurveTable(c));

    /// <summary>All values at a head.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    public CurvePoint At(double headMeters)
    {
        if (headMeters >= 0.0)
        {
            return new(
                SaturatedWaterContent,
                0.0,
                saturatedPotential + (saturatedConductivity * headMeters),
                saturatedConductivity,
                0.0
            );
        }

        double distance = Epsilon - headMeters;
        double place = (Math.Log(distance) - FirstU) / StepU;
        int i = Math.Min((int)place, Intervals - 1);
        double s = Math.Min(place - i, 1.0);
        var c = cubics.AsSpan(i * Stride, Stride);
        double perU = 1.0 / (StepU * distance);
        double thetaSlope = c[1] + (s * ((2.0 * c[2]) + (3.0 * s * c[3])));
        double slope = c[5] + (s * ((2.0 * c[6]) + (3.0 * s * c[7])));
        double bend = (2.0 * c[6]) + (6.0 * s * c[7]);
        return new(
            c[0] + (s * (c[1] + (s * (c[2] + (s * c[3]))))),
            -thetaSlope * perU,
            c[4] + (s * (c[5] + (s * (c[6] + (s * c[7]))))),
            -slope * perU,
            ((bend * perU) - (slope / distance)) * perU
        );
    }

    /// <summary>θ alone, m³/m³.</summary>
    /// <param name="headMeters">Pressure head, m.</param>
    public double WaterContent(double headMeters)
    {
        if (headMeters >= 0.0)
        {
            return SaturatedWaterContent;
        }

        double place = (Math.Log(Epsilon - headMeters) - FirstU) / StepU;
        int i = Math.Min((int)place, Intervals - 1);
        double s = Math.Min(place - i, 1.0);
        var c = cubics.AsSpan(i * Stride, 4);
        return c[0] + (s * (c[1] + (s * (c[2] + (s * c[3])))));
    }

    private static double Head(int knot) => Epsilon - Math.Exp(FirstU + (knot * StepU));

    private static (double Theta, double ThetaSlope, double PotentialSlope) Knot(HydraulicCurve curve, int knot)
    {
        double head = knot == 0 ? 0.0 : Head(knot);
        double distance = Epsilon - head;
        return (
            curve.WaterContent(head),
            -curve.CapacityPerMeter(head) * distance * StepU,
            -curve.ConductivityMetersPerSecond(head) * distance * StepU
        );
    }

    /// <summary>Φ at every knot: Simpson's rule in u on each interval, summed from the dry end.</summary>
    private static double[] Potentials(HydraulicCurve curve)
    {
        var potential = new double[Intervals + 1];
        for (int i = Intervals - 1; i >= 0; i--)
        {
            double sum = 0.0;
            double width = StepU / SimpsonPanels;
            for (int panel = 0; panel < SimpsonPanels; panel++)
            {
                double start = FirstU + (i * StepU) + (panel * width);
                sum +=
                    width
                    / 6.0
                    * (
                        Integrand(curve, start)
                        + (4.0 * Integrand(curve, start + (0.5 * width)))
                        + Integrand(curve, start + width)
                    );
            }

            potential[i] = potential[i + 1] + sum;
        }

        return potential;
    }

    private static double Integrand(HydraulicCurve curve, double u)
    {
        double distance = Math.Exp(u);
        return distance * curve.ConductivityMetersPerSecond(Math.Min(0.0, Epsilon - distance));
    }

    private void Cubic(int at, (double Value, double Slope) near, (double Value, double Slope) far)
    {
        double rise = far.Value - near.Value;
        cubics[at] = near.Value;
        cubics[at + 1] = near.Slope;
        cubics[at + 2] = (3.0 * rise) - (2.0 * near.Slope) - far.Slope;
        cubics[at + 3] = near.Slope + far.Slope - (2.0 * rise);
    }
}
