using Litterfall.Domain.Figures;
using Litterfall.Physics.Plates;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Plates;

/// <summary>
/// Beam-strip limits of very long panes, in closed form. Uniform load: M = q L²/8, w = 5 q L⁴/(384 D). Load
/// falling linearly to nothing, ξ from the unloaded end: M = p L² (ξ − ξ³)/6, largest p L²/(9√3) at ξ = 1/√3,
/// and w = p L⁴ (7ξ − 10ξ³ + 3ξ⁵)/(360 D). For a plate D = E t³/(12 (1 − ν²)).
/// </summary>
public static class StripLimits
{
    private const double Nu = 0.22;
    private const double Thin = 0.01;
    private const double Long = 12.0;

    /// <summary>The cases.</summary>
    /// <returns>Limits of the plate solver and the two-edge formula itself.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        double plate = 12.0 * (1.0 - (Nu * Nu));
        yield return Case("σ t²/(q S²), four edges, very tall", 0.75, () => Stress(Tall()), 1e-3);
        yield return Case(
            "w E t³/(q S⁴), four edges, very tall",
            plate * 5.0 / 384.0,
            () => Sag(Tall()),
            1e-4
        );
        yield return Case("σ t²/(q S²), four edges, very wide", 0.75, () => Stress(Wide(1.0)), 1e-3);
        // 6/(9√3) = 0.3849
        yield return Case(
            "σ t²/(p b²), water, top held, very wide",
            6.0 / (9.0 * Math.Sqrt(3.0)),
            () => Stress(Wide(0.0)),
            1e-3
        );
        // w' = 0 at ξ² = 1 − √(8/15)
        double xi = Math.Sqrt(1.0 - Math.Sqrt(8.0 / 15.0));
        double sag = ((7.0 * xi) - (10.0 * Math.Pow(xi, 3)) + (3.0 * Math.Pow(xi, 5))) / 360.0;
        yield return Case(
            "w E t³/(p b⁴), water, top held, very wide",
            plate * sag,
            () => Sag(Wide(0.0)),
            1e-4
        );
        // q L²/8 over t²/6, and 5 q L⁴/(384 E t³/12): by hand for L/t = 100, q = 200 Pa, E = 70 GPa, L = 0.5
        // m.
        yield return Case(
            "two-edge stress, L/t = 100, 200 Pa, MPa",
            1.5,
            () => TwoEdgeSpan.StressPascals(200.0, 0.5, 0.005) / 1e6,
            1e-12
        );
        yield return Case(
            "two-edge deflection, 0.5 m × 5 mm, 200 Pa, mm",
            0.22321428571428573,
            () => TwoEdgeSpan.DeflectionMeters(200.0, 0.5, 0.005, 70e9) * 1e3,
            1e-12
        );
    }

    private static PlateResult Tall() =>
        LevyPlate.Solve(
            new PlatePane(1.0, Long, Thin, 1.0, Nu, PlateEdge.TopHeld),
            PlateLoad.Uniform(1.0, Long)
        );

    private static PlateResult Wide(double atTop) =>
        LevyPlate.Solve(
            new PlatePane(Long, 1.0, Thin, 1.0, Nu, PlateEdge.TopHeld),
            [new(0.0, 1.0), new(1.0, atTop)]
        );

    private static double Stress(PlateResult result) => result.LargestStressPascals * Thin * Thin;

    private static double Sag(PlateResult result) => result.LargestDeflectionMeters * Thin * Thin * Thin;

    private static VerificationCase Case(
        string quantity,
        double expected,
        Func<double> got,
        double tolerance
    ) =>
        new()
        {
            Source = "Beam theory, strip limits",
            Subject = "Plates",
            Quantity = quantity,
            Unit = "1",
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason =
                "The far ends of a pane twelve times as long as wide reach the middle by "
                + "e^(−6π); the rest is truncation, 2e-5, and the search grid. Exact formulas: rounding.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
        };
}
