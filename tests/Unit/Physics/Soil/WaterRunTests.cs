using Litterfall.Physics.Soil;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>
/// A floor through hours whose forcing changes, in one run: what fell less what left is what is stored (own
/// balance), and it stays as near to steps of a minute as a run begun anew each hour.
/// </summary>
public sealed class WaterRunTests
{
    private const double Minute = 60.0;
    private static readonly VanGenuchten Clay = VanGenuchten.Single((0.063, 0.48), 154.0, 2.8, 0.05);
    private static readonly FeddesHeads Heads = new(-0.01, -0.05, -3.0, -80.0);
    private static readonly StepControl Hourly = StepControl.Planning with
    {
        FirstStepSeconds = Columns.Hour,
        LongestStepSeconds = Columns.Hour,
    };

    /// <summary>
    /// Ten days: 1 mm of mist at 7 and at 19 h, thirst by day; drained by hand on the fifth.
    /// </summary>
    [Fact]
    public void Hours_in_one_run_lose_no_water()
    {
        var model = Model(Hourly);
        var start = new WaterState(model.Columns.AtRest(0.02), 0.0);
        var run = new WaterRun(model, start);
        double all = 0.0;
        double missed = 0.0;
        for (int hour = 0; hour < 240; hour++)
        {
            var step = run.Step(Forcing(hour), Columns.Hour, TestContext.Current.CancellationToken);
            Assert.Null(step.StoppedEarly);
            all += step.RainMeters - step.VaporMeters - step.DrainedMeters - step.RunOffMeters;
            missed += step.MassBalanceErrorMeters;
            if (hour == 120)
            {
                var drawn = run.DrawDown(0.005, TestContext.Current.CancellationToken);
                Assert.True(drawn.DrainedMeters > 0.0);
                all -= drawn.DrainedMeters;
            }
        }

        double before = model.Columns.StorageMeters(start.Column);
        double after = model.Columns.StorageMeters(run.State.Column) + run.State.LitterMeters;
        Assert.Equal(all, after - before, 1e-5);
        Assert.Equal(0.0, missed, 1e-7);
    }

    /// <summary>Water contents at full hours of three days against steps of at most a minute.</summary>
    [Fact]
    public void Hours_in_one_run_are_no_farther_from_fine_steps_than_hours_begun_anew()
    {
        var fine = Model(
            new StepControl
            {
                ErrorTolerance = 1e-5,
                ResidualTolerance = 1e-9,
                LongestStepSeconds = Minute,
            }
        );
        var model = Model(Hourly);
        var start = model.Columns.From((_, depth) => depth < 0.06 ? -0.3 : depth - 0.11);
        var (kept, exact) = (new WaterRun(model, new(start, 0.0)), new WaterRun(fine, new(start, 0.0)));
        var anew = new WaterState(start, 0.0);
        var (worstKept, worstAnew) = (0.0, 0.0);
        var cancel = TestContext.Current.CancellationToken;
        for (int hour = 0; hour < 72; hour++)
        {
            kept.Step(Forcing(hour), Columns.Hour, cancel);
            exact.Step(Forcing(hour), Columns.Hour, cancel);
            anew = new WaterRun(model, anew).Step(Forcing(hour), Columns.Hour, cancel).State;
            worstKept = Math.Max(worstKept, Apart(model, kept.State, exact.State));
            worstAnew = Math.Max(worstAnew, Apart(model, anew, exact.State));
        }

        Assert.InRange(worstKept, 0.0, Math.Max(worstAnew, Hourly.ErrorTolerance));
    }

    private static double Apart(WaterModel model, WaterState one, WaterState other) =>
        Enumerable
            .Range(0, model.Columns.Nodes)
            .Max(node =>
                Math.Abs(
                    model.Columns.WaterContent(one.Column, node, 0)
                        - model.Columns.WaterContent(other.Column, node, 0)
                )
            );

    private static SurfaceForcing Forcing(int hour) =>
        (hour % 24) switch
        {
            7 or 19 => new(0.001 / Columns.Hour, 2e-9, 0.0),
            >= 8 and < 20 => new(0.0, 1e-8, 1.5e-8),
            _ => new(0.0, 2e-9, 0.0),
        };

    private static WaterModel Model(StepControl control)
    {
        var roots = new RootZone(0.0, 0.06, Heads);
        var columns = new SoilColumns([
            new SoilProfile(
                [ColumnLayer.Even(Columns.Mix, 0.06, 24), ColumnLayer.Even(Clay, 0.05, 20)],
                roots
            ),
        ]);
        return new WaterModel(columns, new LitterStore(0.0015), DrainWay.Closed, 0.0, control);
    }
}
