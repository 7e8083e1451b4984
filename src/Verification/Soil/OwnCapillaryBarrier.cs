using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Own worked example, wetting of a dry floor over a capillary barrier: moss, mix and aggregate; moss and mix
/// at −300 cm, a water table held 11 cm deep by an overflow of 1000 1/h. Mist of 6 cm/h for 0.25 h at 0 and
/// 12 h, of 2.4 cm/h for 0.25 h at 24, 36, 48 and 60 h; 0.004 cm/h evaporate between. Expected values from
/// the second program (see Celia1990) with elements of 1/16 to 1/128 cm and two step sizes, continued to
/// zero; a third program agrees to 0.002 cm.
/// </summary>
public static class OwnCapillaryBarrier
{
    private const double Start = -3.0;
    private const double LowerBoundaryMeters = 0.13;
    private const double MixFrom = 0.02;
    private const double MixTo = 0.08;
    private static readonly CaseSource Source = new(
        "Soil",
        "Own worked example, wetting over a capillary barrier",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // hours, water in the mix and drained, cm; what the programs leave open
    private static readonly (double Hours, double Mix, double? Drained)[] Fine =
    [
        (0.5, 2.690, null),
        (2.0, 2.994, null),
        (24.0, 3.970, null),
        (48.0, 4.020, 0.9292),
        (72.0, 4.020, 2.0352),
    ];

    private static readonly (double Hours, double Mix, double? Drained)[] Coarse =
    [
        (0.5, 2.4646, null),
        (2.0, 2.5746, null),
        (24.0, 3.8504, null),
        (48.0, 4.1739, 0.7168),
        (72.0, 4.1739, 1.8230),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Water in the mix and drained over two coarse layers.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Rows("aggregate", TestSoils.Aggregate, Fine)
            .Concat(Rows("coarser aggregate", TestSoils.CoarseAggregate, Coarse));

    private static IEnumerable<VerificationCase> Rows(
        string name,
        HydraulicCurve coarse,
        (double Hours, double Mix, double? Drained)[] rows
    )
    {
        var run = new Lazy<(SoilColumns Columns, ColumnResult Result)>(() => Solve(coarse));
        foreach (var (hours, mix, drained) in rows)
        {
            yield return Source.Case(
                $"water in the mix over {name} after {hours} h",
                "cm",
                hours < 24.0 ? CaseSource.Within(0.003, mix) : (mix, 0.01),
                "0.3 % while the front is sharp on elements of 1/4 cm, 0.01 cm from 24 h.",
                () => MixWater(run.Value.Columns, Report(run.Value.Result, hours).State)
            );
            if (drained is { } gone)
            {
                yield return Source.Case(
                    $"drained from {name} by {hours} h",
                    "cm",
                    (gone, 0.01),
                    "0.01 cm on elements of 1/4 cm.",
                    () => Report(run.Value.Result, hours).Totals.OutMeters / TestSoils.MetersPerCentimeter
                );
            }
        }
    }

    private static ColumnReport Report(ColumnResult result, double hours) =>
        result.Reports.Single(r => Math.Abs(r.State.Seconds - (hours * TestSoils.SecondsPerHour)) < 1.0);

    private static double MixWater(SoilColumns columns, ColumnState state)
    {
        double water = 0.0;
        for (int e = 0; e < columns.Nodes - 1; e++)
        {
            if (columns.DepthMeters[e] >= MixFrom - 1e-9 && columns.DepthMeters[e + 1] <= MixTo + 1e-9)
            {
                water +=
                    0.5
                    * columns.ElementMeters[e]
                    * (
                        TestSoils.Mix.WaterContent(state.HeadMeters[e])
                        + TestSoils.Mix.WaterContent(state.HeadMeters[e + 1])
                    );
            }
        }

        return water / TestSoils.MetersPerCentimeter;
    }

    private static (SoilColumns Columns, ColumnResult Result) Solve(HydraulicCurve coarse)
    {
        var columns = TestSoils.Floor(4, coarse);
        var foot = new LowerBoundary.Closed(0.02, 1000.0 / TestSoils.SecondsPerHour);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.Air(-1000.0, 1.0), foot),
                columns.From(
                    (_, depth) => depth <= MixTo + 1e-9 ? Start : depth - LowerBoundaryMeters + 0.02
                ),
                [.. Weather()],
                new StepControl()
            )
        );
        return (columns, result);
    }

    private static IEnumerable<ForcingSpan> Weather()
    {
        for (int half = 0; half < 6; half++)
        {
            double begin = 12.0 * half;
            double rain = half < 2 ? 6.0 : 2.4;
            yield return Span(begin + 0.25, new(rain * TestSoils.CentimetersPerHour, 0.0, 0.0));
            var dry = new SurfaceForcing(0.0, 0.004 * TestSoils.CentimetersPerHour, 0.0);
            if (half == 0)
            {
                yield return Span(0.5, dry);
                yield return Span(2.0, dry);
            }

            yield return Span(begin + 12.0, dry);
        }
    }

    private static ForcingSpan Span(double hours, SurfaceForcing forcing) =>
        new(hours * TestSoils.SecondsPerHour, forcing, Report: true);
}
