using System.Collections.Immutable;
using System.Diagnostics;
using Litterfall.Physics.Parcel;

namespace Litterfall.Laboratory.Parcel;

/// <summary>Runs a case of a parcel; the solve is one call of the model that dispatch uses.</summary>
public static class ParcelLab
{
    private const double SecondsPerHour = 3600.0;

    /// <summary>Runs it.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="progress">Told the hours done.</param>
    /// <param name="cancel">Cancels before the solve and between rows.</param>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public static ParcelResult Run(ParcelCase asked, Action<double> progress, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        var watch = Stopwatch.StartNew();
        double end = asked.Hours * SecondsPerHour;
        int rows = ParcelReport.Rows(end, SecondsPerHour);
        var celsius = new double[rows];
        var liquid = new double[rows];
        var packs = new double[rows * asked.Packs.Length];
        var band = asked.Band is { } one
            ? (LevelExposure[])[new LevelExposure(one.Low), new LevelExposure(one.High)]
            : [];
        double conductance = asked.Shell.Conductance;
        var outcome = new ParcelModel(asked.HeatCapacity, asked.Packs.AsSpan()).Run(
            new ParcelDrive
            {
                AmbientSeconds = asked.Ambient.Seconds,
                AmbientCelsius = asked.Ambient.Values,
                HeatSeconds = asked.Heat.Seconds,
                HeatWatts = asked.Heat.Values,
                Conductance = conductance,
                StartCelsius = asked.StartCelsius,
                EndSeconds = end,
            },
            new ParcelReport
            {
                EverySeconds = SecondsPerHour,
                Celsius = celsius,
                Liquid = liquid,
                PackLiquid = packs,
                Levels = band,
            }
        );
        double milliseconds = Math.Round(watch.Elapsed.TotalMilliseconds, 3);
        var hours = ImmutableArray.CreateBuilder<ParcelHour>(rows);
        for (int row = 0; row < rows; row++)
        {
            cancel.ThrowIfCancellationRequested();
            hours.Add(
                new ParcelHour(
                    Math.Min(row, asked.Hours),
                    celsius[row],
                    asked.Packs.IsEmpty ? null : liquid[row],
                    asked.Packs.Length > 1
                        ? [.. packs.AsSpan(row * asked.Packs.Length, asked.Packs.Length)]
                        : []
                )
            );
            progress(row);
        }

        return new ParcelResult(
            hours.ToImmutable(),
            outcome,
            conductance,
            asked.HeatCapacity / conductance / SecondsPerHour,
            milliseconds
        )
        {
            Air = ParcelAirOutcome.From(asked, outcome.WarmestCelsius),
            Band = band.Length > 0 ? (band[0], band[1]) : null,
        };
    }
}
