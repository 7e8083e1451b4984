using System.Collections.Immutable;
using System.Diagnostics;
using Litterfall.Physics.Soil;

namespace Litterfall.App.Labs;

/// <summary>The column at one hour, in the units of the case.</summary>
internal sealed record ColumnHour
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
internal sealed record ColumnOutcome(
    ColumnResult Result,
    ImmutableArray<double> DepthCm,
    ImmutableArray<ColumnHour> Hours,
    double Milliseconds
);

/// <summary>Solves a column case.</summary>
internal static class ColumnLab
{
    // Depths are sums of thicknesses; a billionth of a cm is round-off of those sums.
    private const int DepthDigits = 9;

    public static StepControl Control { get; set; } = new();

    /// <summary>Runs the case to its end or to where the numbers would not come out.</summary>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public static ColumnOutcome Run(ColumnCase asked, CancellationToken cancel)
    {
        var watch = Stopwatch.StartNew();
        var result = Richards.Run(
            asked.Columns,
            asked.Boundaries,
            asked.Start,
            asked.Spans,
            Control,
            cancel
        );
        double milliseconds = watch.Elapsed.TotalMilliseconds;
        return new ColumnOutcome(
            result,
            [.. asked.ShownNodes.Select(n => DepthCm(asked, n))],
            [.. result.Reports.Zip(asked.ReportHours, (report, hour) => Hour(asked, report, hour))],
            Math.Round(milliseconds, 3)
        );
    }

    private static double DepthCm(ColumnCase asked, int node) =>
        Math.Round(LabUnits.Cm(asked.Columns.DepthMeters[node]), DepthDigits);

    private static ColumnHour Hour(ColumnCase asked, ColumnReport report, double hour)
    {
        var heads = report.State.HeadMeters;
        bool standsOpen = asked.Boundaries.Top is TopBoundary.Air;
        return new ColumnHour
        {
            Hour = hour,
            HeadCm = [.. asked.ShownNodes.Select(n => LabUnits.Cm(heads[n]))],
            WaterContent =
            [
                .. asked.ShownNodes.Select(n => asked.Columns.WaterContent(report.State, n, 0)),
            ],
            Totals = report.Totals,
            PondCm = standsOpen ? Math.Max(0.0, LabUnits.Cm(heads[0])) : 0.0,
            LevelCm = LevelCm(asked.Boundaries.Foot, report.State),
        };
    }

    /// <summary>Height of free water against the foot, negative below it.</summary>
    private static double? LevelCm(FootBoundary foot, ColumnState state)
    {
        double footHead = state.HeadMeters[^1];
        switch (foot)
        {
            case FootBoundary.Closed:
                return LabUnits.Cm(footHead);
            case FootBoundary.Store store:
                double below = (state.StoreMeters / store.Porosity) - store.DepthMeters;
                bool isFull = store.RoomMeters - state.StoreMeters <= 1e-9 * store.RoomMeters;
                return LabUnits.Cm(isFull ? Math.Max(0.0, footHead) : below);
            default:
                return null;
        }
    }
}
