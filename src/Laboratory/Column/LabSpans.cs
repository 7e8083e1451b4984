using System.Collections.Immutable;
using Litterfall.Domain.Trees;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>Spans of constant forcing between all changes and reports.</summary>
public static class LabSpans
{
    /// <summary>The spans from hour 0 to the end.</summary>
    /// <param name="rain">Rain or top flux, cm/h.</param>
    /// <param name="evaporation">Demand of the air, cm/h.</param>
    /// <param name="transpiration">Demand of the leaves, cm/h.</param>
    /// <param name="hours">End.</param>
    /// <param name="reports">Hours of the reports, rising, at most the end.</param>
    public static ImmutableArray<ForcingSpan> Of(
        StepSeries rain,
        StepSeries evaporation,
        StepSeries transpiration,
        double hours,
        ImmutableArray<double> reports
    )
    {
        var ends = new SortedSet<double>(reports) { hours };
        foreach (var series in (ReadOnlySpan<StepSeries>)[rain, evaporation, transpiration])
        {
            ends.UnionWith(series.Hours.Where(h => h > 0.0 && h < hours));
        }

        var spans = ImmutableArray.CreateBuilder<ForcingSpan>(ends.Count);
        double from = 0.0;
        foreach (double end in ends)
        {
            var forcing = new SurfaceForcing(
                rain.At(from) * LabUnits.MetersPerSecondPerCmPerHour,
                evaporation.At(from) * LabUnits.MetersPerSecondPerCmPerHour,
                transpiration.At(from) * LabUnits.MetersPerSecondPerCmPerHour
            );
            bool report = reports.BinarySearch(end) >= 0;
            spans.Add(new ForcingSpan(end * LabUnits.SecondsPerHour, forcing, report));
            from = end;
        }

        return spans.ToImmutable();
    }
}
