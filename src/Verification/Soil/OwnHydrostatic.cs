using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Own worked example, water at rest: moss 0 to 2, mix 2 to 8, aggregate 8 to 13 cm deep, h = z − depth of
/// the water table. Storage by adaptive quadrature of θ(h) with 40 digits.
/// </summary>
public static class OwnHydrostatic
{
    private const int PerCentimeter = 4;
    private const int FinePerCentimeter = 64;
    private const double LowerBoundaryCentimeters = 13.0;
    private const double SlopeSum = 0.27;
    private static readonly CaseSource Source = new(
        "Soil",
        "Own worked example, water at rest",
        Evidence.WorkedExample,
        Provenance.Recomputed
    );

    // depth of the water table, cm; water in moss, mix and aggregate, cm
    private static readonly (double Table, double Moss, double Mix, double Aggregate)[] Rows =
    [
        (13.0, 0.650778605, 3.788397260, 0.632881540),
        (12.0, 0.670398695, 3.906038720, 0.950978965),
        (11.0, 0.693104432, 4.032043190, 1.257473660),
        (10.0, 0.719686700, 4.165339470, 1.538756870),
        (9.0, 0.751218473, 4.303053050, 1.749991820),
        (8.0, 0.789177817, 4.438608480, 1.800000000),
        (7.0, 0.835620985, 4.557596230, 1.800000000),
    ];

    // height of a saturated core of the mix drained to its foot, cm; water it keeps, cm
    private static readonly (double Height, double Water)[] Cores =
    [
        (3.0, 2.32458831),
        (6.0, 4.43860848),
        (7.6, 5.48339656),
        (8.0, 5.73659063),
    ];

    private static readonly Lazy<ColumnResult> Rest = new(RunAtRest);

    /// <summary>The cases.</summary>
    /// <returns>Storage at rest, a run that must stay at rest, and container capacity.</returns>
    public static IEnumerable<VerificationCase> Cases() => Storages().Concat(Still()).Concat(Containers());

    private static IEnumerable<VerificationCase> Storages()
    {
        const string rule =
            "Half cells are the trapezoid rule: Δz²/12 times the jumps of dθ/dh, at most 0.27 1/cm.";
        var fine = new Lazy<SoilColumns>(() => TestSoils.Floor(FinePerCentimeter, TestSoils.Aggregate));
        var usual = new Lazy<SoilColumns>(() => TestSoils.Floor(PerCentimeter, TestSoils.Aggregate));
        foreach (var (table, moss, mix, aggregate) in Rows)
        {
            double total = moss + mix + aggregate;
            yield return Source.Case(
                $"water in the column over a water table {table} cm deep, elements of 1/64 cm",
                "cm",
                (total, SlopeSum / FinePerCentimeter / FinePerCentimeter / 12.0),
                rule,
                () => Stored(fine.Value, LowerBoundaryCentimeters - table)
            );
            yield return Source.Case(
                $"water in the column over a water table {table} cm deep, elements of 1/4 cm",
                "cm",
                (total, SlopeSum / PerCentimeter / PerCentimeter / 12.0),
                rule,
                () => Stored(usual.Value, LowerBoundaryCentimeters - table)
            );
        }
    }

    private static IEnumerable<VerificationCase> Still()
    {
        const string rest = "Water at rest stays at rest; round-off and the tables are all that may show.";
        yield return Source.Case($"flux through the foot at rest, 24 h", "cm/h", (0.0, 1e-10), rest, () =>
            Rest.Value.Totals.OutMeters / TestSoils.MetersPerCentimeter / 24.0
        );
        yield return Source.Case($"change of storage at rest, 24 h", "cm", (0.0, 1e-12), rest, () =>
            Rest.Value.Totals.StorageChangeMeters / TestSoils.MetersPerCentimeter
        );
        yield return Source.Case($"largest change of head at rest, 24 h", "cm", (0.0, 1e-9), rest, () =>
            LargestChange()
        );
    }

    private static IEnumerable<VerificationCase> Containers()
    {
        foreach (var (height, water) in Cores)
        {
            yield return Source.Case(
                $"water kept by a core of mix {height} cm high, drained 10 days to its foot",
                "cm",
                CaseSource.Within(5e-4, water),
                "Elements of 1/20 cm; what still drips after 10 days is below 1e-4 cm.",
                () => Drained(height)
            );
        }
    }

    private static double Stored(SoilColumns columns, double levelCentimeters) =>
        columns.StorageMeters(columns.AtRest(levelCentimeters * TestSoils.MetersPerCentimeter))
        / TestSoils.MetersPerCentimeter;

    private static ColumnResult RunAtRest()
    {
        var columns = TestSoils.Floor(PerCentimeter, TestSoils.Aggregate);
        return TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedFlux(), new LowerBoundary.FixedHead(0.02)),
                columns.AtRest(0.02),
                TestSoils.Reports(TestSoils.SecondsPerHour, 24.0),
                new StepControl()
            )
        );
    }

    private static double LargestChange()
    {
        var columns = TestSoils.Floor(PerCentimeter, TestSoils.Aggregate);
        var before = columns.AtRest(0.02).HeadMeters;
        var after = Rest.Value.State.HeadMeters;
        double worst = 0.0;
        for (int i = 0; i < before.Length; i++)
        {
            worst = Math.Max(worst, Math.Abs(after[i] - before[i]));
        }

        return worst / TestSoils.MetersPerCentimeter;
    }

    private static double Drained(double heightCentimeters)
    {
        var columns = TestSoils.Uniform(
            TestSoils.Mix,
            heightCentimeters,
            (int)Math.Round(20.0 * heightCentimeters)
        );
        var full = columns.From((_, depth) => depth);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.FixedFlux(), new LowerBoundary.SeepageFace()),
                full,
                TestSoils.Reports(TestSoils.SecondsPerDay, 10.0),
                new StepControl()
            )
        );
        return columns.StorageMeters(result.State) / TestSoils.MetersPerCentimeter;
    }
}
