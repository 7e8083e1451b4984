using System.Collections.Immutable;
using System.Diagnostics;
using Litterfall.Physics.Air;
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
            hours.Add(Row(asked, row, celsius, liquid, packs));
            progress(row);
        }

        string? stop = Stop(asked, outcome);
        return new ParcelResult(
            hours.MoveToImmutable(),
            outcome,
            conductance,
            asked.HeatCapacity / conductance / SecondsPerHour,
            milliseconds
        )
        {
            Air =
                stop is null && asked.Air.IsAsked
                    ? ParcelAirOutcome.From(asked, outcome.WarmestCelsius)
                    : null,
            Stop = stop,
            Band = band.Length > 0 ? Band(band[0], band[1]) : null,
        };
    }

    private static ParcelHour Row(
        ParcelCase asked,
        int row,
        double[] celsius,
        double[] liquid,
        double[] packs
    )
    {
        int count = asked.Packs.Length;
        return new ParcelHour(
            Math.Min(row, asked.Hours),
            celsius[row],
            count == 0 ? null : liquid[row],
            count > 1 ? [.. packs.AsSpan(row * count, count)] : []
        );
    }

    /// <summary>Why the numbers did not come out; null where they did.</summary>
    private static string? Stop(ParcelCase asked, in ParcelOutcome outcome) =>
        !double.IsFinite(outcome.BalanceErrorJoules + outcome.TurnoverJoules + outcome.EndCelsius)
            ? "a temperature is not a number"
        : asked.Air.IsAsked && !MoistAir.Holds(outcome.WarmestCelsius)
            ? FormattableString.Invariant(
                $"contents reach {outcome.WarmestCelsius:0.#} °C, where laws of air and animals do not hold"
            )
        : null;

    private static ParcelBand Band(LevelExposure low, LevelExposure high) =>
        new(
            low.Celsius,
            high.Celsius,
            low.SecondsBelow / SecondsPerHour,
            high.SecondsAbove / SecondsPerHour,
            Hour(low.FirstBelow),
            Hour(high.FirstAbove)
        );

    private static double? Hour(double seconds) => double.IsFinite(seconds) ? seconds / SecondsPerHour : null;
}
