using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Haverkamp and others (1977), Soil Sci. Soc. Am. J. 41:285, the sand as used by Celia and others (1990)
/// (recalled): 40 cm at h = −61.5 cm, −20.7 cm at the surface. Expected values from a second program (see
/// Celia1990), grids of 800 to 3200 elements continued to zero.
/// </summary>
public static class Haverkamp1977
{
    private static readonly CaseSource Source = new(
        "Soil",
        "Haverkamp and others 1977",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    private static readonly HaverkampSoil Sand = new()
    {
        ThetaR = 0.075,
        ThetaS = 0.287,
        A = 1.611e6,
        Beta = 3.96,
        B = 1.175e6,
        Gamma = 4.74,
        KsMetersPerSecond = 0.00944 * TestSoils.MetersPerCentimeter,
    };

    // t s, infiltrated cm
    private static readonly (double Seconds, double In)[] Rows =
    [
        (120.0, 1.1924),
        (240.0, 1.8268),
        (360.0, 2.3811),
    ];

    // 360 s: depth cm, h cm, tolerance cm
    private static readonly (double Depth, double Head, double Tolerance)[] Profile =
    [
        (4.0, -21.605, 0.1),
        (8.0, -23.426, 0.2),
        (10.0, -25.076, 0.2),
        (12.0, -27.80, 0.4),
        (14.0, -32.87, 0.6),
        (18.0, -55.95, 0.6),
        (20.0, -60.79, 0.3),
        (22.0, -61.44, 0.1),
    ];

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> Fine = new(() => Solve(400));

    /// <summary>The cases.</summary>
    /// <returns>Infiltration and the last profile.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        for (int row = 0; row < Rows.Length; row++)
        {
            int at = row;
            yield return Source.Case(
                $"infiltrated in {Rows[row].Seconds} s, elements of 0.1 cm",
                "cm",
                CaseSource.Within(0.003, Rows[row].In),
                "As for Celia and others: 0.3 % on a fine grid.",
                () => Fine.Value.Result.Reports[at].Totals.InMeters / TestSoils.MetersPerCentimeter
            );
        }

        foreach (var (depth, head, tolerance) in Profile)
        {
            yield return Source.Case(
                $"head {depth} cm deep after 360 s, elements of 0.1 cm",
                "cm",
                (head, tolerance),
                "A front a tenth of a centimeter off moves the head by this much there.",
                () => TestSoils.HeadCentimeters(Fine.Value.Columns, Fine.Value.Result.State, depth)
            );
        }
    }

    private static (SoilColumns Columns, ColumnResult Result) Solve(int elements)
    {
        var columns = TestSoils.Uniform(Sand, 40.0, elements);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedHead(-0.207), new LowerBoundary.FixedHead(-0.615)),
                columns.From((_, _) => -0.615),
                TestSoils.Reports(1.0, 120.0, 240.0, 360.0),
                new StepControl { FirstStepSeconds = 0.01, ErrorTolerance = 1e-5 }
            )
        );
        return (columns, result);
    }
}
