using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Own worked example after the linearization of Srivastava and Yeh (1991): two exponential soils of equal α,
/// Ks 1 cm/h below and 10 cm/h above, 100 cm each, otherwise as there. The Laplace transform is solved
/// exactly in each layer, head and flux continuous between, and inverted by Talbot's method with 50 digits.
/// </summary>
public static class OwnLayeredWetting
{
    private const double LowerDepth = 200.0;
    private static readonly double[] Heights = [25.0, 50.0, 90.0, 100.0, 110.0, 150.0, 175.0, 200.0];
    private static readonly CaseSource Source = new(
        "Soil",
        "Own worked example, wetting of two layers",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    // t h; h cm at the heights above the water table
    private static readonly (double Hours, double[] Heads)[] Rows =
    [
        (5.0, [-17.49410, -22.42784, -16.01540, -10.31751, -17.50596, -24.21747, -24.14116, -24.08919]),
        (10.0, [-17.41806, -20.26585, -7.267727, -4.605076, -12.58212, -23.73754, -24.05402, -24.07756]),
        (20.0, [-12.76337, -9.235085, -2.763248, -2.009052, -10.31136, -23.56155, -24.03654, -24.07596]),
        (50.0, [-2.040087, -1.606430, -1.138599, -1.098992, -9.507978, -23.49411, -24.03012, -24.07540]),
    ];

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> Run = new(Solve);

    /// <summary>The cases.</summary>
    /// <returns>Heads at four times.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        for (int row = 0; row < Rows.Length; row++)
        {
            int at = row;
            for (int i = 0; i < Heights.Length; i++)
            {
                double height = Heights[i];
                yield return Source.Case(
                    $"head {height} cm above the water table after {Rows[row].Hours} h",
                    "cm",
                    (Rows[row].Heads[i], 0.1),
                    "Elements of 1/4 cm, as for one layer.",
                    () =>
                        TestSoils.HeadCentimeters(
                            Run.Value.Columns,
                            Run.Value.Result.Reports[at].State,
                            LowerDepth - height
                        )
                );
            }
        }
    }

    private static (SoilColumns Columns, ColumnResult Result) Solve()
    {
        var upper = Exponential(10.0);
        var lower = Exponential(1.0);
        var columns = new SoilColumns([
            new SoilProfile([ColumnLayer.Even(upper, 1.0, 400), ColumnLayer.Even(lower, 1.0, 400)]),
        ]);
        var rain = new SurfaceForcing(SrivastavaYeh1991.WetFlux * TestSoils.CentimetersPerHour, 0.0, 0.0);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedFlux(), new LowerBoundary.FixedHead(0.0)),
                columns.From((_, depth) => Start(LowerDepth - (depth / TestSoils.MetersPerCentimeter))),
                TestSoils.Spans(rain, TestSoils.SecondsPerHour, 5.0, 10.0, 20.0, 50.0),
                SrivastavaYeh1991.Fine
            )
        );
        return (columns, result);
    }

    private static Gardner Exponential(double ksCentimetersPerHour) =>
        new(
            0.06,
            0.4,
            SrivastavaYeh1991.Alpha / TestSoils.MetersPerCentimeter,
            ksCentimetersPerHour * TestSoils.CentimetersPerHour
        );

    /// <summary>Steady dry flux, m of head: e^(αh) = q/Ks + (e^(αh₀) − q/Ks)·e^(−αZ) per layer.</summary>
    private static double Start(double heightCentimeters)
    {
        double alpha = SrivastavaYeh1991.Alpha;
        double dry = SrivastavaYeh1991.DryFlux;
        double lower = dry + ((1.0 - dry) * Math.Exp(-alpha * Math.Min(heightCentimeters, 100.0)));
        double share =
            heightCentimeters <= 100.0
                ? lower
                : (dry / 10.0) + ((lower - (dry / 10.0)) * Math.Exp(-alpha * (heightCentimeters - 100.0)));
        return TestSoils.MetersPerCentimeter / alpha * Math.Log(share);
    }
}
