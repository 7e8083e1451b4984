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
            running = model.Begin(State.Column, stopAtLevelMeters);
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
