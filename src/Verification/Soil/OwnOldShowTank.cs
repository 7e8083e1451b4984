using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Own worked example, a show tank that was overfilled: floor 44 × 44 cm, 4 cm of clay of which 42 % runs
/// out, 7
/// cm of old mix of which 20 % drains within a centimeter, level 1 cm. Four mistings of 60 mL a day, 9 mL
/// vented:
/// 231 mL a day stay. By hand: 3 cm × 42 % × 1936 cm² = 2.44 L full after 10.6 days; after 20 days 4.62 L,
/// 2.18
/// of them in the mix, 5.6 cm of its 20 %.
/// </summary>
public static class OwnOldShowTank
{
    private const double FloorSquareMeters = 0.1936;
    private const double MistLiters = 0.060;
    private const double VentedLiters = 0.009;
    private const double BarrierMeters = 0.04;
    private const int Days = 20;
    private static readonly int[] MistHours = [7, 11, 15, 19];
    private static readonly CaseSource Source = new(
        "Soil",
        "Own worked example, overfilled show tank",
        Evidence.WorkedExample,
        Provenance.Recomputed
    );

    private static readonly VanGenuchten Clay = TestSoils.PerHour((0.06, 0.48), 5.0, 4.0, 18_000.0);
    private static readonly VanGenuchten OldMix = new(
        new VanGenuchtenParameters
        {
            ThetaR = 0.10,
            ThetaS = 0.80,
            Modes = [new PoreMode(0.286, 200.0, 4.0), new PoreMode(0.714, 0.4, 1.3)],
            KsMetersPerSecond = 60.0 * TestSoils.CentimetersPerHour,
        }
    );

    private static readonly Lazy<(double BarrierDay, double LevelMeters)> Run = new(Fill);

    /// <summary>The cases.</summary>
    /// <returns>Day the reservoir is full, and the level on day 20.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"reservoir full",
            "day",
            (10.6, 1.5),
            "Water that the mix takes up before, and the fringe over the level, are left out by hand.",
            () => Run.Value.BarrierDay
        );
        yield return Source.Case(
            $"level over the barrier on day 20",
            "cm",
            (5.0, 1.0),
            "Read on a dip tube as 5 cm; by hand 5.6.",
            () => (Run.Value.LevelMeters - BarrierMeters) / TestSoils.MetersPerCentimeter
        );
    }

    private static (double BarrierDay, double LevelMeters) Fill()
    {
        var columns = new SoilColumns([
            new SoilProfile(
                [ColumnLayer.Even(OldMix, 0.07, 28), ColumnLayer.Even(Clay, BarrierMeters, 16)],
                null
            ),
        ]);
        var model = new WaterModel(columns, new LitterStore(0.0), DrainWay.Closed, 0.0, StepControl.Planning);
        var state = new WaterState(columns.AtRest(0.01), 0.0);
        double full = double.NaN;
        for (int hour = 0; hour < 24 * Days; hour++)
        {
            double rain = MistHours.Contains(hour % 24) ? MistLiters : 0.0;
            var forcing = new SurfaceForcing(
                MetersPerSecond(rain),
                MetersPerSecond(VentedLiters / 24.0),
                0.0
            );
            state = new WaterRun(model, state).Step(forcing, TestSoils.SecondsPerHour).State;
            if (double.IsNaN(full) && WaterModel.LevelMeters(state) >= BarrierMeters)
            {
                full = (hour + 1) / 24.0;
            }
        }

        return (full, WaterModel.LevelMeters(state));
    }

    private static double MetersPerSecond(double litersAnHour) =>
        litersAnHour / 1000.0 / FloorSquareMeters / TestSoils.SecondsPerHour;
}
