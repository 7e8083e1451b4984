using Litterfall.Physics.Soil;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>Leaves over soil over a reservoir: the balance of each step, and taking water out.</summary>
public sealed class WaterModelTests
{
    private const double BalanceError = 1e-7;
    private static readonly VanGenuchten Clay = VanGenuchten.Single((0.063, 0.48), 154.0, 2.8, 0.05);
    private static readonly FeddesHeads Heads = new(-0.01, -0.05, -3.0, -80.0);

    /// <summary>90 days, mist by night and thirst by day: no step may lose water.</summary>
    [Fact]
    public void No_step_loses_water()
    {
        var model = Model(DrainWay.Closed, 0.0);
        var state = new WaterState(model.Columns.AtRest(0.01), 0.0);
        double all = 0.0;
        for (int half = 0; half < 180; half++)
        {
            var forcing =
                half % 2 == 0
                    ? new SurfaceForcing(0.0, 1e-8, 1.5e-8)
                    : new SurfaceForcing(0.002 / Columns.Day, 2e-9, 0.0);
            var step = Step(model, state, forcing, 0.5 * Columns.Day);
            Assert.Null(step.StoppedEarly);
            Assert.Equal(0.0, step.MassBalanceErrorMeters, BalanceError);
            all += step.RainMeters - step.VaporMeters - step.DrainedMeters - step.RunOffMeters;
            Assert.Equal(0.0, step.DrainedMeters);
            state = step.State;
        }

        double before = model.Columns.StorageMeters(model.Columns.AtRest(0.01));
        double after = model.Columns.StorageMeters(state.Column) + state.LitterMeters;
        Assert.Equal(all, after - before, 1e-5);
    }

    /// <summary>
    /// Thirty days in one course: what fell less what left is what is stored (own balance), day by day the
    /// leaves hold what thirty single steps leave in them, and the course ends at the same time.
    /// </summary>
    [Fact]
    public void A_course_of_days_loses_no_water_and_wets_leaves_as_steps_do()
    {
        var model = Model(DrainWay.Closed, 0.0);
        var start = new WaterState(model.Columns.AtRest(0.01), 0.0);
        var forcing = new SurfaceForcing(0.001 / Columns.Day, 5e-9, 5e-9);
        double[] ends = [.. Enumerable.Range(1, 30).Select(day => day * Columns.Day)];
        var (days, whole) = model.Course(start, forcing, ends, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(30, days.Length);
        Assert.Null(whole.StoppedEarly);
        Assert.Equal(30 * 0.001, whole.RainMeters, 1e-12);
        double before = model.Columns.StorageMeters(start.Column);
        double after = model.Columns.StorageMeters(days[^1].Column) + days[^1].LitterMeters;
        Assert.Equal(whole.RainMeters - whole.VaporMeters - whole.RunOffMeters, after - before, 1e-5);
        var state = start;
        foreach (var day in days)
        {
            state = Step(model, state, forcing, Columns.Day).State;
            Assert.Equal(state.LitterMeters, day.LitterMeters, 1e-12);
            Assert.Equal(state.Column.Seconds, day.Column.Seconds, 1e-6);
        }
    }

    /// <summary>1 mm on dry leaves that hold 1.5 mm stays there; the soil does not notice.</summary>
    [Fact]
    public void Leaves_keep_the_first_rain()
    {
        var model = Model(DrainWay.Closed, 0.0);
        var start = model.Columns.AtRest(0.01);
        var step = Step(
            model,
            new WaterState(start, 0.0),
            new SurfaceForcing(0.001 / Columns.Hour, 0.0, 0.0),
            Columns.Hour
        );
        Assert.Equal(0.001, step.State.LitterMeters, 1e-12);
        Assert.Equal(0.0, step.VaporMeters);
        Assert.Equal(
            model.Columns.StorageMeters(start),
            model.Columns.StorageMeters(step.State.Column),
            1e-9
        );
    }

    /// <summary>Wet leaves meet the demand before the soil does: 0.4 of 0.5 mm.</summary>
    [Fact]
    public void Leaves_dry_before_the_soil()
    {
        var model = Model(DrainWay.Closed, 0.0);
        var start = model.Columns.AtRest(0.01);
        var step = Step(
            model,
            new WaterState(start, 0.0004),
            new SurfaceForcing(0.0, 0.0005 / Columns.Day, 0.0),
            Columns.Day
        );
        Assert.Equal(0.0, step.State.LitterMeters, 1e-12);
        Assert.Equal(0.0005, step.VaporMeters, 1e-9);
        Assert.Equal(
            model.Columns.StorageMeters(start) - 0.0001,
            model.Columns.StorageMeters(step.State.Column),
            1e-7
        );
    }

    /// <summary>An outlet 2 cm up lets nothing stand higher for long, and nothing out below.</summary>
    [Fact]
    public void An_outlet_holds_the_level()
    {
        var model = Model(DrainWay.Outlet, 0.02);
        var state = new WaterState(model.Columns.AtRest(0.01), 0.0015);
        var rain = new SurfaceForcing(0.003 / Columns.Day, 0.0, 0.0);
        var early = Step(model, state, rain, Columns.Hour);
        Assert.Equal(0.0, early.DrainedMeters);
        state = early.State;
        for (int day = 0; day < 20; day++)
        {
            state = Step(model, state, rain, Columns.Day).State;
        }

        var late = Step(model, state, rain, Columns.Day);
        Assert.Equal(0.02, WaterModel.LevelMeters(late.State), 1e-4);
        Assert.Equal(0.003, late.DrainedMeters, 1e-5);
    }

    /// <summary>
    /// Rain that finds no more pores stands on the soil. What <see cref="SoilColumns.StorageMeters"/> counts
    /// is the water in the soil alone; the pond is the head at the surface, and both together are the rain.
    /// </summary>
    [Fact]
    public void Water_that_stands_on_the_soil_is_in_the_books()
    {
        var model = Model(DrainWay.Closed, 0.0);
        var columns = model.Columns;
        double foot = columns.LowerBoundaryMeters(0);
        var state = new WaterState(columns.AtRest(foot - 0.02), 0.0015);
        double before = columns.StorageMeters(state.Column);
        var step = Step(model, state, new SurfaceForcing(0.01 / Columns.Day, 0.0, 0.0), Columns.Day);
        Assert.Null(step.StoppedEarly);
        double pond = step.State.Column.HeadMeters[0];
        Assert.InRange(pond, 0.002, 0.01);
        Assert.Equal(0.0, step.RunOffMeters);
        Assert.Equal(0.0, step.MassBalanceErrorMeters, BalanceError);
        double gained = columns.StorageMeters(step.State.Column) - before + pond;
        Assert.Equal(step.RainMeters, gained + step.State.LitterMeters - 0.0015, 1e-4);
        Assert.Equal(foot + pond, WaterModel.LevelMeters(step.State), 1e-4);
    }

    /// <summary>Drawn down from 4 to 1 cm the water stands at 1 cm and the balance closes.</summary>
    [Fact]
    public void Drawing_down_by_hand_leaves_the_level_asked_for()
    {
        var model = Model(DrainWay.Closed, 0.0);
        var step = DrawDown(model, new WaterState(model.Columns.AtRest(0.04), 0.001), 0.01);
        Assert.Null(step.StoppedEarly);
        Assert.Equal(0.01, WaterModel.LevelMeters(step.State), 1e-3);
        Assert.Equal(0.001, step.State.LitterMeters);
        Assert.Equal(0.0, step.MassBalanceErrorMeters, BalanceError);
        double gone =
            model.Columns.StorageMeters(model.Columns.AtRest(0.04))
            - model.Columns.StorageMeters(step.State.Column);
        Assert.Equal(gone, step.DrainedMeters, 1e-7);
        // Between 1 and 4 cm the clay lets go of at most its pores, 3 cm · 0.48, and of most of them.
        Assert.InRange(step.DrainedMeters, 0.5 * 0.03 * 0.417, 0.03 * 0.48);
    }

    /// <summary>Nothing to draw: nothing drawn.</summary>
    [Fact]
    public void Drawing_down_to_a_higher_level_takes_nothing()
    {
        var model = Model(DrainWay.Closed, 0.0);
        Assert.Equal(
            0.0,
            DrawDown(model, new WaterState(model.Columns.AtRest(0.01), 0.0), 0.03).DrainedMeters
        );
    }

    /// <summary>
    /// Full pores, so the level rises by the rain: from 11 to 12 cm at 1 cm/h is an hour, and rain is booked
    /// for what fell until the end of the solver's step.
    /// </summary>
    [Fact]
    public void A_step_ends_when_the_level_is_reached()
    {
        var columns = Columns.OfMix(0.1);
        var model = new WaterModel(columns, new LitterStore(0.0), DrainWay.Closed, 0.0, new StepControl());
        var step = Step(
            model,
            new WaterState(columns.AtRest(0.11), 0.0),
            new SurfaceForcing(0.01 / Columns.Hour, 0.0, 0.0),
            3.0 * Columns.Hour,
            stopAtLevelMeters: 0.12
        );
        Assert.Equal(Columns.Hour, step.ReachedSeconds!.Value, 1.0);
        Assert.Equal(0.01 / Columns.Hour * step.State.Column.Seconds, step.RainMeters, 1e-9);
        Assert.Equal(0.0, step.MassBalanceErrorMeters, BalanceError);
    }

    private static WaterStep Step(
        WaterModel model,
        WaterState state,
        SurfaceForcing forcing,
        double seconds,
        double stopAtLevelMeters = double.PositiveInfinity
    ) =>
        new WaterRun(model, state, stopAtLevelMeters).Step(
            forcing,
            seconds,
            TestContext.Current.CancellationToken
        );

    private static WaterStep DrawDown(WaterModel model, WaterState state, double levelMeters) =>
        model.DrawDown(state, levelMeters, TestContext.Current.CancellationToken);

    private static WaterModel Model(DrainWay way, double outletMeters)
    {
        var roots = new RootZone(0.0, 0.06, Heads);
        var columns = new SoilColumns([
            new SoilProfile(
                [ColumnLayer.Even(Columns.Mix, 0.06, 24), ColumnLayer.Even(Clay, 0.05, 20)],
                roots
            ),
        ]);
        return new WaterModel(columns, new LitterStore(0.0015), way, outletMeters, new StepControl());
    }
}
