using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Own worked example, 90 days of misting: moss, mix and aggregate over a water table held 11 cm deep. Every
/// day at 0 and 12 h 2.4 cm/h for 0.05 h, none on days 31 to 37; 0.004 cm/h evaporate by day, 0.001 by night;
/// roots ask for 0.008 cm/h by day (heads −1, −5, −300, −8000 cm); on day 61 the mist of the morning is
/// followed by 3 cm/h up to a full hour. The second program (see Celia1990) gives 9.51873 cm on elements of
/// 1/4 cm; two more programs that share no code with either give 9.5189 with materials at nodes.
/// </summary>
public static class OwnMassBalance
{
    private const int Days = 90;
    private static readonly CaseSource Source = new(
        "Soil",
        "Own worked example, 90 days of misting",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // hours, water gone through the foot by then, cm, by the second program
    private static readonly (double Hours, double Out)[] Rows =
    [
        (720.0, 2.7797),
        (888.0, 1.7476),
        (1440.0, 3.8784),
        (1464.0, 6.8321),
        (2160.0, 9.51873),
    ];

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> Run = new(Solve);

    /// <summary>The cases.</summary>
    /// <returns>Outflow at five times, root uptake and the balance.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (var (hours, gone) in Rows)
        {
            yield return Source.Case(
                $"gone through the foot by {hours} h",
                "cm",
                (gone, 1e-3),
                "Programs agree to 2e-4 at equal elements.",
                () => Out(hours)
            );
        }

        yield return Source.Case(
            $"taken up by roots in 90 d",
            "cm",
            (7.85550, 1e-3),
            "Programs agree to 3e-4.",
            () => Run.Value.Result.Totals.TranspiredMeters / TestSoils.MetersPerCentimeter
        );
        // 165 mistings of 0.12 cm, one more before the hour of rain, and 0.95 h of 3 cm/h
        yield return Source.Case(
            $"rain that went in over 90 d",
            "cm",
            (22.77, 1e-6),
            "Rates times hours.",
            () => Run.Value.Result.Totals.InMeters / TestSoils.MetersPerCentimeter
        );
        yield return Source.Case(
            $"balance error over 90 d",
            "cm",
            (0.0, 2e-5),
            "What the equations may miss in 90 days.",
            () => Run.Value.Result.BalanceErrorMeters / TestSoils.MetersPerCentimeter
        );
    }

    private static double Out(double hours) =>
        Run.Value.Result.Reports.Single(r =>
            Math.Abs(r.State.Seconds - (hours * TestSoils.SecondsPerHour)) < 1.0
        ).Totals.OutMeters / TestSoils.MetersPerCentimeter;

    private static (SoilColumns Columns, ColumnResult Result) Solve()
    {
        // Roots reach half an element beyond the mix at both ends, so that its end nodes carry a whole
        // element of them, as in the programs compared with.
        var roots = new RootZone(0.01875, 0.08125, new FeddesHeads(-0.01, -0.05, -3.0, -80.0));
        var columns = TestSoils.Floor(4, TestSoils.Aggregate, roots);
        var result = TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.Air(-1000.0, 1.0), new LowerBoundary.FixedHead(0.02)),
                columns.AtRest(0.02),
                [.. Weather()],
                new StepControl()
            )
        );
        return (columns, result);
    }

    private static IEnumerable<ForcingSpan> Weather()
    {
        for (int day = 1; day <= Days; day++)
        {
            double hour = 24.0 * (day - 1);
            foreach (bool isNight in new[] { false, true })
            {
                double begin = isNight ? hour + 12.0 : hour;
                bool isDry = day is >= 31 and <= 37;
                if (!isDry)
                {
                    yield return Span(begin + 0.05, 2.4, isNight);
                }

                if (day == 61 && !isNight)
                {
                    yield return new ForcingSpan(
                        (begin + 1.0) * TestSoils.SecondsPerHour,
                        new SurfaceForcing(3.0 * TestSoils.CentimetersPerHour, 0.0, 0.0),
                        Report: true
                    );
                }

                yield return Span(begin + 12.0, 0.0, isNight);
            }
        }
    }

    private static ForcingSpan Span(double hours, double rainCentimetersPerHour, bool isNight) =>
        new(
            hours * TestSoils.SecondsPerHour,
            new SurfaceForcing(
                rainCentimetersPerHour * TestSoils.CentimetersPerHour,
                (isNight ? 0.001 : 0.004) * TestSoils.CentimetersPerHour,
                (isNight ? 0.0 : 0.008) * TestSoils.CentimetersPerHour
            ),
            Report: true
        );
}
