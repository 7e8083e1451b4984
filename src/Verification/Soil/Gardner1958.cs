using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Gardner (1958), Soil Sci. 85:228 (recalled): steady flow up from a water table, dh/dZ = −(1 + q/K). For
/// K = Ks·e^(αh): e^(αh) = (1 + q/Ks)e^(−αZ) − q/Ks and at most q = Ks/(e^(αL) − 1), solved by hand. For the
/// mix and the moss the largest q solves L = ∫ dh/(1 + q/K), by adaptive quadrature with 60 digits.
/// </summary>
public static class Gardner1958
{
    private const double Alpha = 0.1;
    private const double SettleHours = 20000.0;
    private const double VeryDryMeters = -500.0;
    private static readonly double[] Heights = [5.0, 10.0, 20.0, 30.0, 40.0];
    private static readonly CaseSource Source = new(
        "Soil",
        "Gardner 1958",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    private static readonly Gardner Soil = new(
        0.06,
        0.4,
        Alpha / TestSoils.MetersPerCentimeter,
        TestSoils.CentimetersPerHour
    );

    // q up cm/h; h cm at the heights
    private static readonly (double Up, double[] Heads)[] Profiles =
    [
        (0.001, [-5.006489, -10.01720, -20.06410, -30.19270, -40.55088]),
        (0.01, [-5.065083, -10.17332, -20.66023, -32.11778, -47.67831]),
    ];

    // height of the surface cm, largest flux cm/h
    private static readonly (
        string Name,
        HydraulicCurve Curve,
        (double Height, double Up)[] Rows
    )[] Largest =
    [
        (
            "exponential soil",
            Soil,
            [(10.0, 0.5819767), (20.0, 0.1565176), (30.0, 0.0523957), (50.0, 0.006783655)]
        ),
        (
            "mix",
            TestSoils.Mix,
            [(3.0, 7.939514), (6.0, 2.2882686), (9.0, 0.94574142), (20.0, 0.11776583), (50.0, 0.0074326005)]
        ),
        (
            "moss",
            TestSoils.Moss,
            [(3.0, 31.919575), (6.0, 10.539173), (9.0, 5.198713), (20.0, 1.196024), (50.0, 0.20967506)]
        ),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Steady profiles and the largest steady evaporation.</returns>
    public static IEnumerable<VerificationCase> Cases() => Steady().Concat(Limits());

    private static IEnumerable<VerificationCase> Steady()
    {
        foreach (var (up, heads) in Profiles)
        {
            var run = new Lazy<(SoilColumns Columns, ColumnResult Result)>(() => Evaporate(up));
            for (int i = 0; i < heads.Length; i++)
            {
                double height = Heights[i];
                yield return Source.Case(
                    $"head {height} cm above the water table, {up} cm/h up",
                    "cm",
                    (heads[i], 0.01),
                    "Elements of 1/4 cm.",
                    () => TestSoils.HeadCentimeters(run.Value.Columns, run.Value.Result.State, 40.0 - height)
                );
            }
        }
    }

    private static IEnumerable<VerificationCase> Limits()
    {
        foreach (var (name, curve, rows) in Largest)
        {
            foreach (var (height, up) in rows)
            {
                yield return Source.Case(
                    $"largest flux up, {name}, water table {height} cm down",
                    "cm/h",
                    CaseSource.Within(0.01, up),
                    "400 elements; flux is steady to 1e-4.",
                    () => Up(curve, height)
                );
            }
        }
    }

    private static (SoilColumns Columns, ColumnResult Result) Evaporate(double upCentimetersPerHour)
    {
        var columns = TestSoils.Uniform(Soil, 40.0, 160);
        var forcing = new SurfaceForcing(-upCentimetersPerHour * TestSoils.CentimetersPerHour, 0.0, 0.0);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedFlux(), new LowerBoundary.FixedHead(0.0)),
                columns.AtRest(0.0),
                TestSoils.Spans(forcing, TestSoils.SecondsPerHour, SettleHours),
                new StepControl()
            )
        );
        return (columns, result);
    }

    private static double Up(HydraulicCurve curve, double heightCentimeters)
    {
        var columns = TestSoils.Uniform(curve, heightCentimeters, 400);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedHead(VeryDryMeters), new LowerBoundary.FixedHead(0.0)),
                columns.AtRest(0.0),
                TestSoils.Reports(TestSoils.SecondsPerHour, SettleHours, SettleHours + 100.0),
                new StepControl()
            )
        );
        double drawn = result.Reports[0].Totals.OutMeters - result.Reports[1].Totals.OutMeters;
        return drawn / 100.0 / TestSoils.MetersPerCentimeter;
    }
}
