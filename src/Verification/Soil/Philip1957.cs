using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Philip (1957), Soil Sci. 83:345 (recalled): absorption without gravity, I = S√t, and θ is a function of
/// x/√t alone. Loam at −400 cm, −10 cm at its end. S and the profile by shooting in ln|h| through the
/// ordinary differential equation of the similarity, tolerance 1e-11.
/// </summary>
public static class Philip1957
{
    private const double Dry = 0.146020509;
    private const double Wet = 0.403775143;
    private static readonly CaseSource Source = new(
        "Soil",
        "Philip 1957",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    // share of θ between dry and wet, x/√t in cm/√d
    private static readonly (double Share, double Place)[] Profile =
    [
        (0.10, 36.0886),
        (0.25, 34.9667),
        (0.50, 31.6770),
        (0.75, 24.0904),
        (0.90, 13.9582),
    ];

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> Run = new(Solve);

    /// <summary>The cases.</summary>
    /// <returns>Sorptivity at two times and the profile.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string grid = "0.2 % on 800 elements.";
        yield return Source.Case(
            $"sorptivity from 1 d",
            "cm/√d",
            CaseSource.Within(0.002, 7.270768),
            grid,
            () => Sorptivity(0, 1.0)
        );
        yield return Source.Case(
            $"sorptivity from 4 d",
            "cm/√d",
            CaseSource.Within(0.002, 7.270768),
            grid,
            () => Sorptivity(1, 4.0)
        );
        foreach (var (share, place) in Profile)
        {
            yield return Source.Case(
                $"x/√t where θ has {100.0 * share} % of its rise, at 4 d",
                "cm/√d",
                CaseSource.Within(0.005, place),
                "Half an element either way, 0.25 % of the depth, and the time error of the front.",
                () => Place(share)
            );
        }
    }

    private static (SoilColumns Columns, ColumnResult Result) Solve()
    {
        var columns = TestSoils.Uniform(TestSoils.Loam, 100.0, 800, gravity: false);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedHead(-0.10), new LowerBoundary.FixedHead(-4.0)),
                columns.From((_, _) => -4.0),
                TestSoils.Reports(TestSoils.SecondsPerDay, 1.0, 4.0),
                new StepControl { ErrorTolerance = 1e-4 }
            )
        );
        return (columns, result);
    }

    private static double Sorptivity(int at, double days) =>
        Run.Value.Result.Reports[at].Totals.InMeters / TestSoils.MetersPerCentimeter / Math.Sqrt(days);

    private static double Place(double share)
    {
        double head = TestSoils.Loam.HeadMeters(Dry + (share * (Wet - Dry)));
        double place = TestSoils.DepthCentimeters(
            Run.Value.Columns,
            Run.Value.Result.State,
            head / TestSoils.MetersPerCentimeter
        );
        return place / Math.Sqrt(4.0);
    }
}
