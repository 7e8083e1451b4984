using System.Collections.Immutable;

namespace Litterfall.Physics.Soil;

/// <summary>
/// Unsaturated and saturated flow in soil columns: Richards' equation in mixed form (Celia, Bouloutas and
/// Zarba 1990), vertex-centered finite volumes, backward Euler, exact Newton. Valid where water moves by
/// capillarity and gravity alone: no hysteresis, no repellency, no flow along the floor.
/// </summary>
public static class Richards
{
    /// <summary>Runs columns through spans of forcing, each landed on exactly.</summary>
    /// <param name="columns">The columns.</param>
    /// <param name="boundaries">Surface and foot.</param>
    /// <param name="start">State at the start; its clock goes on.</param>
    /// <param name="spans">Spans in rising order of time, the first ending after the start.</param>
    /// <param name="control">How finely time is cut.</param>
    /// <param name="cancel">Cancels between steps.</param>
    /// <returns>State and totals; <see cref="ColumnResult.StoppedEarly"/> where it gave up.</returns>
    /// <exception cref="ArgumentException">The state does not belong to the columns.</exception>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public static ColumnResult Run(
        SoilColumns columns,
        ColumnBoundaries boundaries,
        ColumnState start,
        IReadOnlyList<ForcingSpan> spans,
        StepControl control,
        CancellationToken cancel = default
    )
    {
        if (start.HeadMeters.Length != columns.Nodes * columns.Zones)
        {
            throw new ArgumentException("the state does not belong to the columns", nameof(start));
        }

        var run = new RichardsRun(columns, boundaries, start, control);
        var reports = ImmutableArray.CreateBuilder<ColumnReport>();
        foreach (var span in spans)
        {
            if (!run.Advance(span, cancel))
            {
                break;
            }

            if (span.Report)
            {
                reports.Add(new ColumnReport(run.State(), run.Totals));
            }
        }

        return run.Result(reports.ToImmutable());
    }
}
