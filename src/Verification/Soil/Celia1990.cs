using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Celia, Bouloutas and Zarba (1990), Water Resour. Res. 26:1483 (recalled): infiltration into dry soil of
/// New Mexico, 100 cm, h = −1000 cm, −75 cm at the surface from t = 0. Expected values from a second program
/// (vertex finite volumes, exact functions, arithmetic means, backward Euler): grids of 800, 1600 and 3200
/// elements and two step sizes, continued to zero; I counts the jump of the surface node.
/// </summary>
public static class Celia1990
{
    private const double Depth = 100.0;
    private const string OfGrid =
        "Elements of 2.5 cm are those of the paper, and coarse for this front: 2.5 %; of 0.25 cm: 0.3 %.";
    private static readonly CaseSource Source = new(
        "Soil",
        "Celia, Bouloutas and Zarba 1990",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // t h, infiltrated cm, depth of h = −500 and of h = −200, cm
    private static readonly (double Hours, double In, double Dry, double Wet)[] Rows =
    [
        (6.0, 1.7402, 25.44, 23.70),
        (12.0, 2.6331, 37.51, 35.25),
        (24.0, 4.1127, 56.49, 53.67),
    ];

    // 24 h: depth cm, h cm, and how far half an element of 0.25 cm of front moves it
    private static readonly (double Depth, double Head, double Tolerance)[] Profile =
    [
        (10.0, -76.87, 0.1),
        (20.0, -80.28, 0.1),
        (30.0, -86.73, 0.3),
        (40.0, -100.47, 0.6),
        (45.0, -114.41, 1.0),
        (50.0, -142.94, 2.0),
        (60.0, -1000.0, 0.1),
    ];

    private static readonly Lazy<Run> Coarse = new(() => Solve(40, new StepControl()));
    private static readonly Lazy<Run> Fine = new(() => Solve(400, new StepControl { ErrorTolerance = 1e-5 }));

    /// <summary>The cases.</summary>
    /// <returns>Infiltration, fronts, profile and mass-balance ratio on two grids.</returns>
    public static IEnumerable<VerificationCase> Cases() => Totals().Concat(Fronts()).Concat(Ratios());

    private static IEnumerable<VerificationCase> Totals()
    {
        for (int row = 0; row < Rows.Length; row++)
        {
            int at = row;
            yield return Source.Case(
                $"infiltrated in {Rows[row].Hours} h, elements of 0.25 cm",
                "cm",
                CaseSource.Within(0.003, Rows[row].In),
                OfGrid,
                () => Fine.Value.In(at)
            );
        }

        yield return Source.Case(
            $"infiltrated in 24 h, elements of 2.5 cm",
            "cm",
            CaseSource.Within(0.025, Rows[^1].In),
            OfGrid,
            () => Coarse.Value.In(2)
        );
    }

    private static IEnumerable<VerificationCase> Fronts()
    {
        const string element = "One element of 0.25 cm.";
        for (int row = 0; row < Rows.Length; row++)
        {
            int at = row;
            var (hours, _, dry, wet) = Rows[row];
            yield return Source.Case(
                $"depth of h = −500 cm after {hours} h, elements of 0.25 cm",
                "cm",
                (dry, 0.25),
                element,
                () => Fine.Value.Front(at, -500.0)
            );
            yield return Source.Case(
                $"depth of h = −200 cm after {hours} h, elements of 0.25 cm",
                "cm",
                (wet, 0.25),
                element,
                () => Fine.Value.Front(at, -200.0)
            );
        }

        foreach (var (depth, head, tolerance) in Profile)
        {
            yield return Source.Case(
                $"head {depth} cm deep after 24 h, elements of 0.25 cm",
                "cm",
                (head, tolerance),
                "A front one eighth of a centimeter off moves the head by this much there.",
                () => Fine.Value.Head(2, depth)
            );
        }
    }

    private static IEnumerable<VerificationCase> Ratios()
    {
        const string mixed = "The mixed form keeps mass; head forms lose up to half of it in this case.";
        yield return Source.Case(
            $"mass-balance ratio after 24 h, elements of 2.5 cm",
            "1",
            (1.0, 1e-6),
            mixed,
            () => Coarse.Value.Ratio()
        );
        yield return Source.Case(
            $"mass-balance ratio after 24 h, elements of 0.25 cm",
            "1",
            (1.0, 1e-6),
            mixed,
            () => Fine.Value.Ratio()
        );
    }

    private static Run Solve(int elements, StepControl control)
    {
        var columns = TestSoils.Uniform(TestSoils.NewMexico, Depth, elements);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedHead(-0.75), new LowerBoundary.FixedHead(-10.0)),
                columns.From((_, _) => -10.0),
                TestSoils.Reports(TestSoils.SecondsPerHour, 6.0, 12.0, 24.0),
                control
            )
        );
        return new Run(columns, result);
    }

    private sealed record Run(SoilColumns Columns, ColumnResult Result)
    {
        public double In(int at) => Result.Reports[at].Totals.InMeters / TestSoils.MetersPerCentimeter;

        public double Front(int at, double headCentimeters) =>
            TestSoils.DepthCentimeters(Columns, Result.Reports[at].State, headCentimeters);

        public double Head(int at, double depthCentimeters) =>
            TestSoils.HeadCentimeters(Columns, Result.Reports[at].State, depthCentimeters);

        public double Ratio()
        {
            double before = Columns.StorageMeters(Columns.From((_, _) => -10.0));
            double gained = Columns.StorageMeters(Result.State) - before;
            return gained / (Result.Totals.InMeters - Result.Totals.OutMeters);
        }
    }
}
