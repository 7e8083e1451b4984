using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Ross (1990), Water Resour. Res. 26:2625 (recalled), capillary barriers: under a steady flux q the foot of
/// the fine layer stays at h*, where K of the coarse layer is q, however deep the water table; a slope tan φ
/// diverts up to tan φ·[Φ(h*) − Φ(h_q)] along the fine layer, K_fine(h_q) = q. Roots and the integral with
/// 40 digits; the engine's column of 30 cm of coarse must find h* by itself.
/// </summary>
public static class Ross1990
{
    private const double Slope = 0.05;
    private const double SettleHours = 4000.0;
    private static readonly CaseSource Source = new(
        "Soil",
        "Ross 1990",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    // q cm/h, h* cm
    private static readonly (string Name, VanGenuchten Coarse, (double Flux, double Head)[] Rows)[] Layers =
    [
        (
            "aggregate",
            TestSoils.Aggregate,
            [(0.001, -8.644796), (0.01, -5.973764), (0.1, -4.119752), (1.0, -2.825502), (2.4, -2.440385)]
        ),
        (
            "coarser aggregate",
            TestSoils.CoarseAggregate,
            [(0.001, -2.138398), (0.01, -1.538369), (0.1, -1.105972), (1.0, -0.7936849), (2.4, -0.6989195)]
        ),
    ];

    // q cm/h, h* and h_q cm, water diverted cm²/h
    private static readonly (double Flux, double Barrier, double Fine, double Diverted)[] Diversions =
    [
        (0.01, -1.538369, -38.56738, 1.1077128),
        (0.1, -1.105972, -17.81320, 1.2781737),
    ];

    /// <summary>The cases.</summary>
    /// <returns>The head at a barrier, of the curve and of a column, and the diversion.</returns>
    public static IEnumerable<VerificationCase> Cases() => Barriers().Concat(Diverted());

    private static IEnumerable<VerificationCase> Barriers()
    {
        foreach (var (name, coarse, rows) in Layers)
        {
            foreach (var (flux, head) in rows)
            {
                yield return Source.Case(
                    $"K of {name} at h* of {flux} cm/h",
                    "cm/h",
                    CaseSource.Within(1e-5, flux),
                    "Seven digits of h*; K falls with its sixth power.",
                    () => ConductivityOf(coarse, head)
                );
                yield return Source.Case(
                    $"head at the foot of mix over 30 cm of {name}, {flux} cm/h",
                    "cm",
                    (head, 0.01),
                    "Elements of 1/4 cm.",
                    () => AtBarrier(coarse, flux)
                );
            }
        }
    }

    private static IEnumerable<VerificationCase> Diverted()
    {
        foreach (var (flux, barrier, fine, diverted) in Diversions)
        {
            yield return Source.Case(
                $"diverted by mix over coarser aggregate, slope 5 %, {flux} cm/h",
                "cm²/h",
                CaseSource.Within(1e-5, diverted),
                "Tables are within 1e-5 of the curve.",
                () => Slope * (Potential(barrier) - Potential(fine))
            );
        }
    }

    private static double ConductivityOf(VanGenuchten soil, double headCentimeters) =>
        soil.ConductivityMetersPerSecond(headCentimeters * TestSoils.MetersPerCentimeter)
        / TestSoils.CentimetersPerHour;

    private static double Potential(double headCentimeters)
    {
        CurveTable.Of(TestSoils.Mix).At(headCentimeters * TestSoils.MetersPerCentimeter, out var point);
        return point.FluxPotential / TestSoils.CentimetersPerHour / TestSoils.MetersPerCentimeter;
    }

    private static double AtBarrier(VanGenuchten coarse, double fluxCentimetersPerHour)
    {
        var columns = new SoilColumns([
            new SoilProfile([ColumnLayer.Even(TestSoils.Mix, 0.06, 24), ColumnLayer.Even(coarse, 0.30, 120)]),
        ]);
        var forcing = new SurfaceForcing(fluxCentimetersPerHour * TestSoils.CentimetersPerHour, 0.0, 0.0);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedFlux(), new LowerBoundary.FixedHead(0.0)),
                columns.From((_, depth) => Math.Max(-0.05, depth - 0.36)),
                TestSoils.Spans(forcing, TestSoils.SecondsPerHour, SettleHours),
                new StepControl()
            )
        );
        return TestSoils.HeadCentimeters(columns, result.State, 6.0);
    }
}
