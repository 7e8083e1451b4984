using System.Collections.Immutable;

namespace Litterfall.Physics.Soil;

/// <summary>How water is taken out of the reservoir.</summary>
public enum DrainWay
{
    /// <summary>Not at all, or by hand between steps.</summary>
    Closed,

    /// <summary>By an outlet at a height, whenever the water stands above it.</summary>
    Outlet,
}

/// <summary>Water in the floor: in the leaves and in the columns.</summary>
/// <param name="Column">The columns.</param>
/// <param name="LitterMeters">Water in the leaves, m over the whole floor.</param>
public sealed record WaterState(ColumnState Column, double LitterMeters);

/// <summary>The next state and what crossed the surface and the outlet, m over the whole floor.</summary>
public sealed record WaterStep
{
    /// <summary>State at the end of the step.</summary>
    public required WaterState State { get; init; }

    /// <summary>Rain that fell, m.</summary>
    public required double RainMeters { get; init; }

    /// <summary>Evaporated from leaves and soil, m.</summary>
    public required double EvaporatedMeters { get; init; }

    /// <summary>Taken up by roots, m.</summary>
    public required double TranspiredMeters { get; init; }

    /// <summary>Evaporated from leaves and soil and taken up by roots, m.</summary>
    public double VaporMeters => EvaporatedMeters + TranspiredMeters;

    /// <summary>Left by the outlet or drawn by hand, m.</summary>
    public required double DrainedMeters { get; init; }

    /// <summary>Run off the surface, m.</summary>
    public required double RunOffMeters { get; init; }

    /// <summary>
    /// Rain − vapor − drained − run-off − change of what is stored, m: 0 but for round-off.
    /// </summary>
    public required double MassBalanceErrorMeters { get; init; }

    /// <summary>When the level asked for was reached, s; null when it was not.</summary>
    public double? ReachedSeconds { get; init; }

    /// <summary>Why the numbers did not come out; null when they did.</summary>
    public ColumnStop? StoppedEarly { get; init; }
}

/// <summary>
/// The water of a floor: leaves over one or more ground zones over one level reservoir. Immutable; each step
/// returns a new state with its balance, so that many may run side by side.
/// </summary>
public sealed class WaterModel
{
    private const double OutletPerSecond = 0.03;
    private const double HandPerSecond = 0.3;
    private const double DeepPondMeters = 1.0;
    private readonly SoilColumns columns;
    private readonly LitterStore litter;
    private readonly ColumnBoundaries boundaries;
    private readonly TopBoundary top;
    private readonly StepControl control;

    /// <summary>The water of a floor.</summary>
    /// <param name="columns">Its ground zones.</param>
    /// <param name="litter">Its leaves.</param>
    /// <param name="way">How water is taken out.</param>
    /// <param name="outletMeters">Height of the outlet over the base, m; of no matter when closed.</param>
    /// <param name="control">How finely time is cut.</param>
    public WaterModel(
        SoilColumns columns,
        LitterStore litter,
        DrainWay way,
        double outletMeters,
        StepControl control
    )
    {
        this.columns = columns;
        this.litter = litter;
        this.control = control;
        top = new TopBoundary.Air(DriestSurfaceMeters, DeepPondMeters);
        boundaries = new ColumnBoundaries(
            top,
            way == DrainWay.Outlet
                ? new LowerBoundary.Closed(outletMeters, OutletPerSecond)
                : new LowerBoundary.Closed()
        );
    }

    /// <summary>Driest head of a surface: in balance with air of about 93 %, 1e5 cm.</summary>
    public const double DriestSurfaceMeters = -1e3;

    /// <summary>The ground zones.</summary>
    public SoilColumns Columns => columns;

    /// <summary>Height of free water over the base, m: the head at the foot, 0 when it is negative.</summary>
    /// <param name="state">The state.</param>
    public static double LevelMeters(WaterState state) => Math.Max(0.0, state.Column.HeadMeters[^1]);

    /// <summary>A run of the columns that spans are asked of one after the other.</summary>
    internal RichardsRun Begin(ColumnState state, double stopAtLevelMeters) =>
        new(columns, boundaries, state, control with { StopAtLowerHeadMeters = stopAtLevelMeters })
        {
            KeepsStep = true,
        };

    /// <summary>What is left of a forcing under the leaves, and what they take and hold, m.</summary>
    internal (SurfaceForcing Below, (double Water, double Evaporated, double Rain) Leaves) UnderLeaves(
        double waterMeters,
        SurfaceForcing forcing,
        double seconds
    )
    {
        double rain = forcing.RainMetersPerSecond * seconds;
        var leaves = litter.Span(waterMeters, rain, forcing.EvaporationMetersPerSecond * seconds);
        return (
            forcing with
            {
                RainMetersPerSecond = leaves.Through / seconds,
                EvaporationMetersPerSecond =
                    forcing.EvaporationMetersPerSecond - (leaves.Evaporated / seconds),
            },
            (leaves.Water, leaves.Evaporated, rain)
        );
    }

    /// <summary>
    /// Days under one constant forcing, in one run of the solver: time is cut as coarsely as its error
    /// allows,
    /// not anew each day.
    /// </summary>
    /// <param name="state">State at the start.</param>
    /// <param name="forcing">What holds during all of it.</param>
    /// <param name="untilSeconds">Ends of the days, s on the clock of the state, rising.</param>
    /// <param name="stopAtLevelMeters">Ends the course when the level rises to this, m.</param>
    /// <param name="cancel">Cancels between steps of the solver.</param>
    /// <returns>States at the ends of whole days, and the whole booked as one step.</returns>
    public (ImmutableArray<WaterState> Days, WaterStep Whole) Course(
        WaterState state,
        SurfaceForcing forcing,
        IReadOnlyList<double> untilSeconds,
        double stopAtLevelMeters = double.PositiveInfinity,
        CancellationToken cancel = default
    )
    {
        var spans = new ForcingSpan[untilSeconds.Count];
        var leaves = new (double Water, double Evaporated, double Rain)[spans.Length];
        double from = state.Column.Seconds;
        double wet = state.LitterMeters;
        for (int i = 0; i < spans.Length; i++)
        {
            double seconds = untilSeconds[i] - from;
            var (below, booked) = UnderLeaves(wet, forcing, seconds);
            spans[i] = new ForcingSpan(untilSeconds[i], below, Report: true);
            leaves[i] = booked;
            (wet, from) = (booked.Water, untilSeconds[i]);
        }

        var result = Richards.Run(
            columns,
            boundaries,
            state.Column,
            spans,
            control with
            {
                StopAtLowerHeadMeters = stopAtLevelMeters,
            },
            cancel
        );
        int whole = result.Reports.Length;
        var days = result
            .Reports.Select((r, i) => new WaterState(r.State, leaves[i].Water))
            .ToImmutableArray();
        var start = whole == 0 ? state : days[^1];
        var sum = (
            Water: start.LitterMeters,
            Evaporated: leaves.Take(whole).Sum(l => l.Evaporated),
            Rain: leaves.Take(whole).Sum(l => l.Rain)
        );
        if (whole < spans.Length)
        {
            double share =
                (result.State.Seconds - start.Column.Seconds) / (untilSeconds[whole] - start.Column.Seconds);
            sum.Water += share * (leaves[whole].Water - start.LitterMeters);
            sum.Evaporated += share * leaves[whole].Evaporated;
            sum.Rain += share * leaves[whole].Rain;
        }

        return (days, Booked(state, result, sum, 1.0));
    }

    /// <summary>
    /// Draws water off by hand until the free water stands at a level, for five minutes:
    /// the soil above goes on draining afterwards.
    /// </summary>
    /// <param name="state">State before.</param>
    /// <param name="levelMeters">Level to draw down to, m.</param>
    /// <param name="cancel">Cancels between steps of the solver.</param>
    public WaterStep DrawDown(WaterState state, double levelMeters, CancellationToken cancel = default)
    {
        var hand = new ColumnBoundaries(top, new LowerBoundary.Closed(levelMeters, HandPerSecond));
        var result = Richards.Run(
            columns,
            hand,
            state.Column,
            [new ForcingSpan(state.Column.Seconds + HandSeconds, default)],
            control,
            cancel
        );
        return Booked(state, result, (state.LitterMeters, 0.0, 0.0), 1.0);
    }

    private const double HandSeconds = 300.0;

    /// <summary>
    /// Books a run; where it ended before its time, the leaves are booked for the same share of it.
    /// </summary>
    internal static WaterStep Booked(
        WaterState before,
        ColumnResult result,
        (double Water, double Evaporated, double Rain) leaves,
        double share
    )
    {
        double litterChange = share * (leaves.Water - before.LitterMeters);
        double evaporated = (share * leaves.Evaporated) + result.Totals.EvaporatedMeters;
        double rain = share * leaves.Rain;
        var totals = result.Totals;
        double vapor = evaporated + totals.TranspiredMeters;
        return new WaterStep
        {
            State = new WaterState(result.State, before.LitterMeters + litterChange),
            RainMeters = rain,
            EvaporatedMeters = evaporated,
            TranspiredMeters = totals.TranspiredMeters,
            DrainedMeters = totals.OutMeters,
            RunOffMeters = totals.RunOffMeters,
            MassBalanceErrorMeters =
                rain
                - vapor
                - totals.OutMeters
                - totals.RunOffMeters
                - totals.StorageChangeMeters
                - litterChange,
            ReachedSeconds = result.ReachedSeconds,
            StoppedEarly = result.StoppedEarly,
        };
    }
}
