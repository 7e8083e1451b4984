using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Own worked example, flood ledger: moss, mix and aggregate on a closed floor, water table 12 cm deep, three
/// storms of 4 cm/h for an hour a day apart, 0.004 cm/h evaporating between. By hand: in 12 − 69 · 0.004 =
/// 11.724; pores 2 · 0.679 + 6 · 0.8 + 5 · 0.36 = 7.958; pond 5.527416 + 11.724 − 7.958 = 9.293416 cm.
/// </summary>
public static class OwnFloodLedger
{
    private const double Storm = 4.0;
    private const double Drying = 0.004;
    private static readonly CaseSource Source = new(
        "Soil",
        "Own worked example, flood ledger",
        Evidence.WorkedExample,
        Provenance.Recomputed
    );

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> Run = new(Solve);

    /// <summary>The cases.</summary>
    /// <returns>Pond, head at the floor, water in and out, and the balance after three storms.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string start = "Storage at the start is a trapezoid sum of quarter centimeters: 1e-3 cm.";
        const string rate = "Rates times hours.";
        // Pond: h of the surface once it stands deeper than the knee of the pond.
        yield return Source.Case($"depth of the pond after 72 h", "cm", (9.293416, 1e-3), start, () =>
            Run.Value.Result.State.HeadMeters[0] / TestSoils.MetersPerCentimeter
        );
        yield return Source.Case($"head at the floor after 72 h", "cm", (22.293416, 1e-3), start, () =>
            Run.Value.Result.State.HeadMeters[^1] / TestSoils.MetersPerCentimeter
        );
        yield return Source.Case($"rain that went in", "cm", (12.0, 1e-6), rate, () =>
            Run.Value.Result.Totals.InMeters / TestSoils.MetersPerCentimeter
        );
        yield return Source.Case($"evaporated", "cm", (0.276, 1e-6), rate, () =>
            Run.Value.Result.Totals.EvaporatedMeters / TestSoils.MetersPerCentimeter
        );
        yield return Source.Case($"balance error", "cm", (0.0, 1e-5), "What the equations may miss.", () =>
            Run.Value.Result.BalanceErrorMeters / TestSoils.MetersPerCentimeter
        );
    }

    private static (SoilColumns Columns, ColumnResult Result) Solve()
    {
        var columns = TestSoils.Floor(4, TestSoils.Aggregate);
        var spans = new List<ForcingSpan>();
        for (int day = 0; day < 3; day++)
        {
            double hour = 24.0 * day;
            spans.Add(Span(hour + 1.0, new(Storm * TestSoils.CentimetersPerHour, 0.0, 0.0)));
            spans.Add(Span(hour + 24.0, new(0.0, Drying * TestSoils.CentimetersPerHour, 0.0)));
        }

        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.Air(-100.0, 1.0), new LowerBoundary.Closed()),
                columns.AtRest(0.01),
                spans,
                new StepControl()
            )
        );
        return (columns, result);
    }

    private static ForcingSpan Span(double hours, SurfaceForcing forcing) =>
        new(hours * TestSoils.SecondsPerHour, forcing);
}
