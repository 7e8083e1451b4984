using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Forecasting.Climate;
using Litterfall.Running.Correcting;
using Litterfall.Store;

namespace Litterfall.Web.Tanks.Forecasts;

/// <summary>Loads what is known of a tank: its design, its log, its loggers.</summary>
public sealed class TankCases(TankDesk desk, TankForecasts forecasts, BenchStore store)
{
    private const int LoggerDays = 15;

    /// <summary>What is known of a tank, or why its forecast cannot be corrected.</summary>
    /// <param name="view">The tanks.</param>
    /// <param name="tank">The tank.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<(TankCase? Case, string? Why)> LoadAsync(
        TankView view,
        Tank tank,
        CancellationToken cancel = default
    )
    {
        if (tank.Design is null)
        {
            return (
                null,
                "This tank has no design, so there is nothing to forecast. Choose its design first."
            );
        }

        if (await forecasts.FindAsync(tank, cancel) is not { } numbers)
        {
            return (null, "The design of this tank can't be computed. Open it and clear what is wrong.");
        }

        var known = TankEvidence.From(
            view.Care[tank.Code],
            await LoggersAsync(tank.Code, cancel),
            desk.Local
        );
        var first = tank.Planted ?? numbers.Design.Design.Planted ?? tank.Since;
        var midnight = first.ToDateTime(TimeOnly.MinValue);
        var made = TankCase.From(
            new BoxSetup(numbers.Design),
            [.. known.Readings.Where(r => r.At >= midnight)],
            first
        );
        var begun = made.First.ToDateTime(TimeOnly.MinValue);
        return (made with { Poured = [.. known.Poured.Where(p => p.At >= begun)] }, null);
    }

    /// <summary>The last days of each logger in the tank.</summary>
    private async Task<IReadOnlyList<LogSeries>> LoggersAsync(string code, CancellationToken cancel)
    {
        var series = new List<LogSeries>();
        foreach (var channel in await store.LogChannelsAsync(cancel))
        {
            if (channel.Place == code)
            {
                var from = channel.To.AddDays(-LoggerDays);
                series.Add(await store.LogSpanAsync(channel, from, channel.To, cancel));
            }
        }

        return series;
    }
}
