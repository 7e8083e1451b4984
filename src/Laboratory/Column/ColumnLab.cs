using System.Collections.Immutable;
using System.Diagnostics;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>The column at one hour, in the units of the case.</summary>
public sealed record ColumnHour
{
    public required double Hour { get; init; }
    public required ImmutableArray<double> HeadCm { get; init; }
    public required ImmutableArray<double> WaterContent { get; init; }
    public required ColumnTotals Totals { get; init; }
    public required double PondCm { get; init; }
    public required double? LevelCm { get; init; }
}

/// <summary>What a column did.</summary>
/// <param name="Result">Outcome of the engine.</param>
/// <param name="DepthCm">Depths of the values.</param>
/// <param name="Hours">The hours asked for.</param>
/// <param name="Milliseconds">Time of the solve alone.</param>
public sealed record ColumnOutcome(
    ColumnResult Result,
    ImmutableArray<double> DepthCm,
    ImmutableArray<ColumnHour> Hours,
    double Milliseconds
);

/// <summary>Solves a column case.</summary>
public static class ColumnLab
{
    private const double RoundOff = 1e-9;

    /// <summary>Runs the case to its end or to where the numbers would not come out.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="progress">Told how far it is.</param>
    /// <param name="cancel">Cancels between steps.</param>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public static ColumnOutcome Run(ColumnCase asked, LabProgress progress, CancellationToken cancel)
    {
        var watch = Stopwatch.StartNew();
        var result = Solve(LabAccuracy.First);
        if (LabAccuracy.Second(result, asked.Columns.Nodes, asked.Spans.Length) is { } finer)
        {
            var second = Solve(finer);
            result = second.StoppedEarly is null ? second : result;
        }

        double milliseconds = watch.Elapsed.TotalMilliseconds;
        return new ColumnOutcome(
            result,
            [.. asked.Shown.Select(p => p.DepthCm)],
            [.. result.Reports.Zip(asked.ReportHours, (report, hour) => Hour(asked, report, hour))],
            Math.Round(milliseconds, 3)
        );

        ColumnResult Solve(StepControl control) =>
            Richards.Run(
                asked.Columns,
                asked.Boundaries,
                asked.Start,
                progress.Follow(asked.Spans),
                control,
                cancel
            );
    }

    private static ColumnHour Hour(ColumnCase asked, ColumnReport report, double hour)
    {
        var heads = report.State.HeadMeters;
        bool standsOpen = asked.Boundaries.Top is TopBoundary.Air;
        return new ColumnHour
        {
            Hour = hour,
            HeadCm = [.. asked.Shown.Select(p => LabUnits.Cm(heads[p.Node]))],
            WaterContent = [.. asked.Shown.Select(p => p.WaterContent(asked.Columns, report.State))],
            Totals = report.Totals,
            PondCm = standsOpen ? Math.Max(0.0, LabUnits.Cm(heads[0])) : 0.0,
            LevelCm = LevelCm(asked.Boundaries.Foot, report.State),
        };
    }

    /// <summary>Height of free water against the foot, negative below it.</summary>
    private static double? LevelCm(LowerBoundary foot, ColumnState state)
    {
        double footHead = state.HeadMeters[^1];
        switch (foot)
        {
            case LowerBoundary.Closed:
                return LabUnits.Cm(footHead);
            case LowerBoundary.Store store:
                double below = (state.StoreMeters / store.Porosity) - store.DepthMeters;
                bool isFull = store.RoomMeters - state.StoreMeters <= RoundOff * store.RoomMeters;
                return LabUnits.Cm(isFull ? Math.Max(0.0, footHead) : below);
            default:
                return null;
        }
    }
}
