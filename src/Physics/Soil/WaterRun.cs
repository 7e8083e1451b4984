namespace Litterfall.Physics.Soil;

/// <summary>
/// The water of a floor through spans whose forcing changes from one to the next, as the air above asks: one
/// run of the solver, which keeps its slopes and its step through all of them. Drawing off by hand is a run
/// of its own, after which it begins anew.
/// </summary>
/// <param name="model">The floor.</param>
/// <param name="start">Where it starts.</param>
/// <param name="stopAtLevelMeters">A span ends when the level rises to this, m.</param>
public sealed class WaterRun(
    WaterModel model,
    WaterState start,
    double stopAtLevelMeters = double.PositiveInfinity
)
{
    private RichardsRun? running;
    private ColumnTotals booked = new();
    private double stopAt = stopAtLevelMeters;

    /// <summary>Where it stands.</summary>
    public WaterState State { get; private set; } = start;

    /// <summary>One span under constant forcing.</summary>
    /// <param name="forcing">What holds during it.</param>
    /// <param name="seconds">Its length, s.</param>
    /// <param name="cancel">Cancels between steps of the solver.</param>
    public WaterStep Step(SurfaceForcing forcing, double seconds, CancellationToken cancel = default)
    {
        if (running is null)
        {
            running = model.Begin(State.Column, stopAt);
            booked = running.Totals;
        }

        double from = State.Column.Seconds;
        var (below, leaves) = model.UnderLeaves(State.LitterMeters, forcing, seconds);
        bool isDone = running.Advance(new ForcingSpan(from + seconds, below), cancel);
        var result = running.Result([]);
        double share = (result.State.Seconds - from) / seconds;
        var totals = result.Totals.Since(booked);
        booked = result.Totals;
        running = isDone ? running : null;
        var step = WaterModel.Booked(State, result with { Totals = totals }, leaves, share);
        State = step.State;
        return step;
    }

    /// <summary>Has spans end at another level from now on.</summary>
    /// <param name="levelMeters">The level, m.</param>
    public void StopAt(double levelMeters)
    {
        if (levelMeters != stopAt)
        {
            stopAt = levelMeters;
            running = null;
        }
    }

    /// <summary>
    /// Draws an amount of water off by hand, to a micrometer, or all the free water where that is less.
    /// </summary>
    /// <param name="meters">Amount, m over the whole floor.</param>
    /// <param name="cancel">Cancels between steps of the solver.</param>
    public WaterStep Draw(double meters, CancellationToken cancel = default)
    {
        running = null;
        var step = model.DrawDown(State, 0.0, cancel);
        var (low, high) = (0.0, WaterModel.LevelMeters(State));
        var (over, under) = (step.DrainedMeters - meters, -meters);
        for (int i = 0; i < MostDraws && over > 0.0 && Math.Abs(step.DrainedMeters - meters) > 1e-6; i++)
        {
            // The line between the ends, and half of the worse end each time so that both move (Illinois).
            double level = low + ((high - low) * over / (over - under));
            step = model.DrawDown(State, level, cancel);
            double miss = step.DrainedMeters - meters;
            (low, over, high, under) =
                miss > 0.0 ? (level, miss, high, 0.5 * under) : (low, 0.5 * over, level, miss);
        }

        State = step.State;
        return step;
    }

    private const int MostDraws = 30;

    /// <summary>Draws water off by hand until the free water stands at a level.</summary>
    /// <param name="levelMeters">Level to draw down to, m.</param>
    /// <param name="cancel">Cancels between steps of the solver.</param>
    public WaterStep DrawDown(double levelMeters, CancellationToken cancel = default)
    {
        running = null;
        var step = model.DrawDown(State, levelMeters, cancel);
        State = step.State;
        return step;
    }
}
