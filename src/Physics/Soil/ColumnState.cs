using System.Collections.Immutable;

namespace Litterfall.Physics.Soil;

/// <summary>Water in the columns at one time.</summary>
/// <param name="Seconds">Time on the run's clock, s.</param>
/// <param name="HeadMeters">
/// Pressure heads, m, node by node from the top, in each node zone by zone:
/// <c>[node × zones + zone]</c>. All zones share the last node, the foot.
/// </param>
/// <param name="StoreMeters">Water taken by the store below the foot, m over the whole area.</param>
public sealed record ColumnState(double Seconds, ImmutableArray<double> HeadMeters, double StoreMeters = 0.0)
{
    /// <summary>
    /// What the equations of the last step missed at each node, m: the next run makes it good, so that the
    /// misses of many short runs do not add up. Empty for none.
    /// </summary>
    public ImmutableArray<double> OwedMeters { get; init; } = [];
}

/// <summary>Running totals of a run, m of water over the whole area.</summary>
public sealed record ColumnTotals
{
    /// <summary>Through the top: rain or flux less what ran off.</summary>
    public double InMeters { get; init; }

    /// <summary>Out of the foot, negative when drawn in.</summary>
    public double OutMeters { get; init; }

    /// <summary>Evaporated from the surface.</summary>
    public double EvaporatedMeters { get; init; }

    /// <summary>Taken up by roots.</summary>
    public double TranspiredMeters { get; init; }

    /// <summary>Run off the surface; not part of <see cref="InMeters"/>.</summary>
    public double RunOffMeters { get; init; }

    /// <summary>Change of the water in soil, pond and sump.</summary>
    public double StorageChangeMeters { get; init; }

    /// <summary>In − out − evaporated − transpired − change of storage: 0 but for round-off.</summary>
    public double MassBalanceErrorMeters =>
        InMeters - OutMeters - EvaporatedMeters - TranspiredMeters - StorageChangeMeters;

    /// <summary>What has come to the totals since they were told before.</summary>
    /// <param name="before">The totals then.</param>
    internal ColumnTotals Since(ColumnTotals before) =>
        new()
        {
            InMeters = InMeters - before.InMeters,
            OutMeters = OutMeters - before.OutMeters,
            EvaporatedMeters = EvaporatedMeters - before.EvaporatedMeters,
            TranspiredMeters = TranspiredMeters - before.TranspiredMeters,
            RunOffMeters = RunOffMeters - before.RunOffMeters,
            StorageChangeMeters = StorageChangeMeters - before.StorageChangeMeters,
        };
}

/// <summary>State and totals at the end of a span that asked for a report.</summary>
public sealed record ColumnReport(ColumnState State, ColumnTotals Totals);

/// <summary>The numbers would not come out: when, where and how far off.</summary>
/// <param name="Seconds">Time on the run's clock, s.</param>
/// <param name="DepthMeters">Depth of the node with the largest miss, m.</param>
/// <param name="Residual">Largest miss of the water content in one step, m³/m³.</param>
/// <param name="Reason">Why, in one sentence.</param>
public sealed record ColumnStop(double Seconds, double DepthMeters, double Residual, string Reason);

/// <summary>Outcome of a run.</summary>
public sealed record ColumnResult
{
    /// <summary>State at its end.</summary>
    public required ColumnState State { get; init; }

    /// <summary>Totals at its end.</summary>
    public required ColumnTotals Totals { get; init; }

    /// <summary>One report for each span that asked for it.</summary>
    public required ImmutableArray<ColumnReport> Reports { get; init; }

    /// <summary>Largest absolute miss of the balance over all steps, m.</summary>
    public required double BalanceErrorMeters { get; init; }

    /// <summary>Steps taken.</summary>
    public required int Steps { get; init; }

    /// <summary>Linear systems solved.</summary>
    public required int Iterations { get; init; }

    /// <summary>
    /// Steps repeated because the equations did not come out; not those shortened for accuracy.
    /// </summary>
    public required int FailedSteps { get; init; }

    /// <summary>
    /// Steps that came out only with the conductivities of their start: balanced, but they lag.
    /// </summary>
    public required int FrozenSteps { get; init; }

    /// <summary>Why it stopped before the end; null when it did not.</summary>
    public ColumnStop? StoppedEarly { get; init; }

    /// <summary>
    /// When the foot rose to the head asked for, s, between two steps by straight line; null when it did not.
    /// The state is that of the step after.
    /// </summary>
    public double? ReachedSeconds { get; init; }
}

/// <summary>
/// How finely time is cut. Defaults suit checks; <see cref="Planning"/> is about twice as fast.
/// </summary>
public sealed record StepControl
{
    /// <summary>Largest local error of the water content in a step, m³/m³.</summary>
    public double ErrorTolerance { get; init; } = 1e-3;

    /// <summary>Largest miss of the water content of a node that counts as solved, m³/m³.</summary>
    public double ResidualTolerance { get; init; } = 1e-7;

    /// <summary>First step after a change of the forcing, s.</summary>
    public double FirstStepSeconds { get; init; } = 3.6;

    /// <summary>Longest step, s.</summary>
    public double LongestStepSeconds { get; init; } = 12.0 * 3600.0;

    /// <summary>The run ends when the head at the foot rises to this, m; never by default.</summary>
    public double StopAtLowerHeadMeters { get; init; } = double.PositiveInfinity;

    /// <summary>For interactive planning.</summary>
    public static readonly StepControl Planning = new()
    {
        ErrorTolerance = 1e-2,
        ResidualTolerance = 5e-7,
        FirstStepSeconds = 36.0,
    };
}
