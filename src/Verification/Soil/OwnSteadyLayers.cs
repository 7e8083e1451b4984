using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Own worked example, steady flow through layers: coarse 0 to 3, mix 3 to 9, moss 9 to 11 cm above a water
/// table; dh/dZ = −(1 + q/K) upward, solved layer by layer as an ordinary differential equation to 1e-11.
/// </summary>
public static class OwnSteadyLayers
{
    private const double SettleHours = 2000.0;
    private static readonly double[] Heights = [1.0, 2.0, 3.0, 4.0, 6.0, 9.0, 10.0, 11.0];
    private static readonly CaseSource Source = new(
        "Soil",
        "Own worked example, steady flow through layers",
        Evidence.WorkedExample,
        Provenance.Recomputed
    );

    // flux up cm/h (negative is rain); h cm at the heights
    private static readonly (double Up, double[] Heads)[] Fine =
    [
        (-2.4, [-0.99734, -1.91381, -2.36104, -2.88180, -3.61368, -4.15245, -4.81115, -5.38815]),
        (-0.1, [-0.99989, -1.99591, -2.94175, -3.91360, -5.81516, -8.50141, -9.45363, -10.39620]),
        (-0.01, [-0.99999, -1.99959, -2.99383, -3.99094, -5.98067, -8.94644, -9.94120, -10.93490]),
        (0.01, [-1.00001, -2.00041, -3.00625, -4.00916, -6.01953, -9.05447, -10.05983, -11.06627]),
    ];

    private static readonly (double Up, double[] Heads)[] Coarse =
    [
        (-2.4, [-0.69467, -0.69892, -0.69892, -1.47572, -2.70828, -3.77488, -4.47644, -5.09605]),
        (-0.1, [-0.94874, -1.10551, -1.10597, -2.09370, -4.04437, -6.86017, -7.82694, -8.78545]),
        (-0.01, [-0.99388, -1.51737, -1.53814, -2.53661, -4.53064, -7.50850, -8.50462, -9.49982]),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Heads at eight heights over two coarse layers.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Rows("aggregate", TestSoils.Aggregate, Fine)
            .Concat(Rows("coarser aggregate", TestSoils.CoarseAggregate, Coarse));

    private static IEnumerable<VerificationCase> Rows(
        string name,
        HydraulicCurve coarse,
        (double Up, double[] Heads)[] rows
    )
    {
        foreach (var (up, heads) in rows)
        {
            var run = new Lazy<(SoilColumns Columns, ColumnResult Result)>(() => Settle(coarse, up, 4));
            var fine = new Lazy<(SoilColumns Columns, ColumnResult Result)>(() => Settle(coarse, up, 32));
            for (int i = 0; i < heads.Length; i++)
            {
                double height = Heights[i];
                yield return Source.Case(
                    $"head {height} cm above the water table, {name}, {up} cm/h up",
                    "cm",
                    (heads[i], 0.01),
                    "Elements of 1/4 cm, in the coarse layer no thicker than 1/(4α).",
                    () => TestSoils.HeadCentimeters(run.Value.Columns, run.Value.Result.State, 11.0 - height)
                );
                yield return Source.Case(
                    $"head {height} cm above the water table, {name}, {up} cm/h up, elements of 1/32 cm",
                    "cm",
                    (heads[i], 0.002),
                    "The error falls with the square of the element where water rises, else with it.",
                    () =>
                        TestSoils.HeadCentimeters(fine.Value.Columns, fine.Value.Result.State, 11.0 - height)
                );
            }
        }
    }

    private static (SoilColumns Columns, ColumnResult Result) Settle(
        HydraulicCurve coarse,
        double up,
        int perCentimeter
    )
    {
        // As the lab cuts it: 1/(4α) is 0.22 cm of the one aggregate and 0.05 cm of the other.
        int inCoarse = Math.Max(perCentimeter, coarse == TestSoils.CoarseAggregate ? 20 : 5);
        var columns = new SoilColumns([
            new SoilProfile([
                ColumnLayer.Even(TestSoils.Moss, 0.02, 2 * perCentimeter),
                ColumnLayer.Even(TestSoils.Mix, 0.06, 6 * perCentimeter),
                ColumnLayer.Even(coarse, 0.03, 3 * inCoarse),
            ]),
        ]);
        var forcing = new SurfaceForcing(-up * TestSoils.CentimetersPerHour, 0.0, 0.0);
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
}
