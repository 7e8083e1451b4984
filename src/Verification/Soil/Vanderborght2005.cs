using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Vanderborght and others (2005), Vadose Zone J. 4:206, as restated with its soils by Schnepf and others
/// (2020) (read): infiltration as a traveling wave, and evaporation after the surface has dried. The wave by
/// quadrature of Δη = (θs − θi)∫ D dθ/[(Ks − Ki)(θ − θi) − (K − Ki)(θs − θi)]; evaporation J =
/// S/(2√(t − S²/4E²)) with the desorptivity S by shooting through the similarity (see Philip1957), no
/// gravity, and with gravity by the second program (see Celia1990) on a first element of 0.0025 cm.
/// </summary>
public static class Vanderborght2005
{
    private const double WaveHead = -4.0;
    private const double DriestHead = -100.0;
    private static readonly StepControl Fine = new()
    {
        ErrorTolerance = 1e-5,
        LongestStepSeconds = 0.05 * TestSoils.SecondsPerDay,
    };
    private static readonly StepControl WaveSteps = new() { ErrorTolerance = 1e-4 };
    private static readonly CaseSource Waves = new(
        "Soil",
        "Vanderborght and others 2005, infiltration",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    private static readonly CaseSource Compressed = new(
        "Soil",
        "Vanderborght and others 2005, evaporation",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    private static readonly CaseSource Programs = Compressed with { Evidence = Evidence.OtherCode };

    private static readonly double[] Shares = [0.05, 0.10, 0.25, 0.75, 0.90, 0.95];

    // θ before and behind the wave; its speed, cm/d; how far below its middle θ has a share of its rise, cm
    private static readonly WaveRow Sand = new(
        "sand",
        TestSoils.Sand,
        (0.045106944, 0.282405342, 421.41035),
        [0.5163, 0.5030, 0.4063, -1.0408, -2.7765, -4.2332]
    );

    private static readonly WaveRow Loam = new(
        "loam",
        TestSoils.Loam,
        (0.146020509, 0.43, 176.06757),
        [0.5860, 0.5452, 0.4131, -1.0558, -2.8684, -4.3895]
    );

    private static readonly WaveRow Clay = new("clay", TestSoils.Clay, (0.356531610, 0.40, 229.98526), []);

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> ClayRun = new(() =>
        Infiltrate(Clay, new TopBoundary.FixedHead(0.0), (200.0, 200), [0.5, 0.8])
    );

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> SandRun = new(() =>
        Infiltrate(Sand, new TopBoundary.FixedFlux(), (150.0, 600), [0.2, 0.3])
    );

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> FineSandRun = new(() =>
        Infiltrate(Sand, new TopBoundary.FixedFlux(), (150.0, 1200), [0.2, 0.3])
    );

    private static readonly Lazy<(SoilColumns Columns, ColumnResult Result)> LoamRun = new(() =>
        Infiltrate(Loam, new TopBoundary.FixedHead(0.0), (200.0, 800), [0.5, 1.0])
    );

    // E cm/d, desorptivity S cm/√d; J at days without gravity (closed) and with it (program), cm/d
    private static readonly DryingRow[] Drying =
    [
        new(
            "sand, 0.1 cm/d",
            TestSoils.Sand,
            (0.1, 0.008680062),
            [(1.0, 0.003818), (2.0, 0.002530), (5.0, 0.0014197), (10.0, 0.00088368)]
        )
        {
            StartMeters = -0.4,
        },
        new(
            "loam, 0.1 cm/d",
            TestSoils.Loam,
            (0.1, 0.13944929),
            [(2.0, 0.05444), (5.0, 0.03089), (10.0, 0.02092)]
        ),
        new(
            "loam, 0.3 cm/d",
            TestSoils.Loam,
            (0.3, 0.13944929),
            [(1.0, 0.06998), (2.0, 0.04848), (5.0, 0.02983), (10.0, 0.02059)]
        ),
        new(
            "clay, 0.3 cm/d",
            TestSoils.Clay,
            (0.3, 0.32406439),
            [(2.0, 0.11921), (5.0, 0.07111), (10.0, 0.04895)]
        ),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Waves in sand and loam, evaporation from loam and clay.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Wave(Sand, SandRun, 0.1)
            .Concat(Wave(Loam, LoamRun, 0.5))
            .Concat(ClaySpeed())
            .Concat(Tail())
            .Concat(Drying.SelectMany(Dry));

    private static IEnumerable<VerificationCase> ClaySpeed()
    {
        yield return Waves.Case(
            $"speed of the wave in clay, elements of 1 cm",
            "cm/d",
            CaseSource.Within(0.01, Clay.State.Speed),
            "Half an element of the way between two times.",
            () => (Place(Clay, ClayRun.Value, 1, 0.5) - Place(Clay, ClayRun.Value, 0, 0.5)) / 0.3
        );
    }

    /// <summary>The far end of the tail, on half the element.</summary>
    private static IEnumerable<VerificationCase> Tail()
    {
        yield return Waves.Case(
            $"wave in sand: 95 % of the rise of θ, below the middle, elements of 1/8 cm",
            "cm",
            (Sand.Below[^1], 0.04),
            "A third of an element.",
            () => Place(Sand, FineSandRun.Value, 1, 0.95) - Place(Sand, FineSandRun.Value, 1, 0.5)
        );
    }

    private static IEnumerable<VerificationCase> Wave(
        WaveRow row,
        Lazy<(SoilColumns Columns, ColumnResult Result)> run,
        double daysBetween
    )
    {
        yield return Waves.Case(
            $"speed of the wave in {row.Name}",
            "cm/d",
            CaseSource.Within(0.002, row.State.Speed),
            "An eighth of a centimeter of the way between two times.",
            () => (Place(row, run.Value, 1, 0.5) - Place(row, run.Value, 0, 0.5)) / daysBetween
        );
        for (int i = 0; i < Shares.Length; i++)
        {
            double share = Shares[i];
            yield return Waves.Case(
                $"wave in {row.Name}: {100.0 * share} % of the rise of θ, below the middle",
                "cm",
                (row.Below[i], 0.08),
                "A third of an element of 1/4 cm.",
                () => Place(row, run.Value, 1, share) - Place(row, run.Value, 1, 0.5)
            );
        }
    }

    private static IEnumerable<VerificationCase> Dry(DryingRow row)
    {
        var flat = new Lazy<ColumnResult>(() => Evaporate(row, gravity: false));
        var upright = new Lazy<ColumnResult>(() => Evaporate(row, gravity: true));
        var (demand, s) = row.State;
        for (int i = 0; i < row.Rates.Length; i++)
        {
            int at = i;
            var (days, rate) = row.Rates[i];
            if (days > s * s / (demand * demand))
            {
                yield return Compressed.Case(
                    $"evaporation from {row.Name}, at {days} d, no gravity",
                    "cm/d",
                    CaseSource.Within(0.05, s / 2.0 / Math.Sqrt(days - (s * s / (4.0 * demand * demand)))),
                    "Time compression is an approximation: 5 % from twice the time of drying on.",
                    () => Rate(flat.Value, at)
                );
            }

            yield return Programs.Case(
                $"evaporation from {row.Name}, at {days} d, with gravity",
                "cm/d",
                CaseSource.Within(0.01, rate),
                "Depends on the first element: the second program moves by 0.1 % from 0.005 to 0.0025 cm; "
                    + "here it is 0.01 cm.",
                () => Rate(upright.Value, at)
            );
        }
    }

    /// <summary>Depth at which θ has a share of its rise, cm; NaN when the run did not get there.</summary>
    private static double Place(
        WaveRow row,
        (SoilColumns Columns, ColumnResult Result) run,
        int at,
        double share
    )
    {
        if (at >= run.Result.Reports.Length)
        {
            return double.NaN;
        }

        double theta = row.State.Before + (share * (row.State.Behind - row.State.Before));
        double head = row.Soil.HeadMeters(theta) / TestSoils.MetersPerCentimeter;
        return TestSoils.DepthCentimeters(run.Columns, run.Result.Reports[at].State, head);
    }

    private static double Rate(ColumnResult result, int at)
    {
        var (before, after) = (result.Reports[2 * at].Totals, result.Reports[(2 * at) + 1].Totals);
        return (after.EvaporatedMeters - before.EvaporatedMeters)
            / HalfWindowDays
            / 2.0
            / TestSoils.MetersPerCentimeter;
    }

    private const double HalfWindowDays = 0.005;

    private static (SoilColumns Columns, ColumnResult Result) Infiltrate(
        WaveRow row,
        TopBoundary top,
        (double DepthCentimeters, int Elements) grid,
        params ReadOnlySpan<double> days
    )
    {
        var columns = TestSoils.Uniform(row.Soil, grid.DepthCentimeters, grid.Elements);
        var rain = new SurfaceForcing(100.0 * TestSoils.CentimetersPerDay, 0.0, 0.0);
        var result = Richards.Run(
            columns,
            new(top, new LowerBoundary.FreeDrainage()),
            columns.From((_, _) => WaveHead),
            TestSoils.Spans(rain, TestSoils.SecondsPerDay, days),
            WaveSteps
        );
        return (columns, result);
    }

    private static ColumnResult Evaporate(DryingRow row, bool gravity)
    {
        // Elements grow by 5 % from 0.01 cm to half a centimeter.
        var elements = new List<double>();
        double depth = 0.0;
        for (double next = 1e-4; depth < 1.0; next = Math.Min(1.05 * next, 5e-3))
        {
            elements.Add(Math.Min(next, 1.0 - depth));
            depth += elements[^1];
        }

        var columns = new SoilColumns([new SoilProfile([new ColumnLayer(row.Soil, [.. elements])])], gravity);
        var air = new SurfaceForcing(0.0, row.State.Demand * TestSoils.CentimetersPerDay, 0.0);
        double[] days =
        [
            .. row.Rates.SelectMany(r => new[] { r.Days - HalfWindowDays, r.Days + HalfWindowDays }),
        ];
        return TestSoils.Finished(
            Richards.Run(
                columns,
                new(new TopBoundary.Air(DriestHead, 1.0), new LowerBoundary.Closed()),
                columns.From((_, _) => row.StartMeters),
                TestSoils.Spans(air, TestSoils.SecondsPerDay, days),
                Fine
            )
        );
    }

    private sealed record WaveRow(
        string Name,
        VanGenuchten Soil,
        (double Before, double Behind, double Speed) State,
        double[] Below
    );

    private sealed record DryingRow(
        string Name,
        VanGenuchten Soil,
        (double Demand, double Desorptivity) State,
        (double Days, double Rate)[] Rates
    )
    {
        public double StartMeters { get; init; } = -2.0;
    }
}
