using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Rooms;
using Litterfall.Running.Service;
using Litterfall.Store;

namespace Litterfall.Web.Tanks.Loggers;

/// <summary>A species of a culture with the heat that its collapse may come from.</summary>
/// <param name="Species">Name.</param>
/// <param name="Trace">The heat.</param>
public sealed record CultureTrace(string Species, HeatTrace Trace);

/// <summary>A tank that was warmer than a species in it bears, within what frogs in general bear.</summary>
/// <param name="Tank">Its number.</param>
/// <param name="Spells">How often, for more than two hours each.</param>
/// <param name="LimitCelsius">What the species should avoid, °C.</param>
/// <param name="WarmestCelsius">Warmest reading, °C.</param>
public sealed record WarmTank(string Tank, int Spells, double LimitCelsius, double WarmestCelsius);

/// <summary>What the loggers of this bench say went wrong with the air.</summary>
public sealed class RoomEvents(BenchStore store)
{
    private const string Room = "room";
    private const string Shelf = "culture shelf";

    /// <summary>A shelf without a logger of its own is taken as so much warmer than the room, K.</summary>
    private const double ShelfKelvin = 0.9;

    private const double UsualCelsius = 20.0;
    private static readonly TimeSpan Past = TimeSpan.FromDays(400);

    /// <summary>Events of the last days with readings, the first first.</summary>
    /// <param name="view">The tanks.</param>
    /// <param name="days">Days before the last reading.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<ImmutableArray<Excursion>> FindAsync(
        TankView view,
        int days,
        CancellationToken cancel = default
    )
    {
        var places = Places(view, (_, _) => AirLimits.Frogs);
        return Excursions.Find(await SeriesAsync(places, days, cancel), places);
    }

    /// <summary>Tanks that were warmer than their species bears, beside the events of the room.</summary>
    /// <param name="view">The tanks.</param>
    /// <param name="days">Days before the last reading.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<ImmutableArray<WarmTank>> WarmAsync(
        TankView view,
        int days,
        CancellationToken cancel = default
    )
    {
        var places = Places(view, Limits);
        var limits = places.ToDictionary(p => p.Place, p => p.Limits.WarmestCelsius, StringComparer.Ordinal);
        var common = AirLimits.Frogs.WarmestCelsius;
        var strict = places.Where(p => p.Limits.WarmestCelsius < common).ToList();
        return
        [
            .. Excursions
                .Find(await SeriesAsync(strict, days, cancel), strict)
                .Where(e => e.Kind == ExcursionKind.Hot && e.Extreme < common)
                .GroupBy(e => e.Worst, StringComparer.Ordinal)
                .Select(g => new WarmTank(g.Key, g.Count(), limits[g.Key], g.Max(e => e.Extreme))),
        ];
    }

    private async Task<List<LogSeries>> SeriesAsync(
        List<WatchedPlace> places,
        int days,
        CancellationToken cancel
    )
    {
        var watched = places.Select(p => p.Place).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var channels = (await store.LogChannelsAsync(cancel)).Where(c => watched.Contains(c.Place)).ToList();
        if (channels.Count == 0)
        {
            return [];
        }

        var to = channels.Max(c => c.To);
        var series = new List<LogSeries>();
        foreach (
            var channel in channels.Where(c => c.Quantity is LogQuantity.Temperature or LogQuantity.Humidity)
        )
        {
            series.Add(await store.LogSpanAsync(channel, to.AddDays(-days), to, cancel));
        }

        return series;
    }

    /// <summary>Heat in the generation before cultures ended.</summary>
    /// <param name="view">The tanks; names the species.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<ImmutableArray<CultureTrace>> TracesAsync(
        TankView view,
        CancellationToken cancel = default
    )
    {
        var channels = await store.LogChannelsAsync(cancel);
        var warm = channels.Where(c => c.Quantity == LogQuantity.Temperature).ToList();
        var own = warm.FirstOrDefault(c => c.Place == Shelf);
        if ((own ?? warm.FirstOrDefault(c => c.Place == Room)) is not { } channel)
        {
            return [];
        }

        var shelf = await store.LogSpanAsync(channel, channel.To - Past, channel.To, cancel);
        var lost = (await store.RecordsAsync<Culture>(cancel))
            .Select(c => c.Value)
            .Where(c => c.End is { Reason: not CultureEnd.GoneOut and not CultureEnd.Old });
        var traces = ImmutableArray.CreateBuilder<CultureTrace>();
        foreach (var group in lost.GroupBy(c => c.Species, StringComparer.Ordinal))
        {
            if (view.Catalog.Find(group.Key) is not CrewEntry entry || Limit(entry) is not { } limit)
            {
                continue;
            }

            CultureLoss[] losses = [.. group.Select(c => new CultureLoss(c.Line, c.End!.Day))];
            var found = HatchTrace.Find(losses, shelf, own is null ? ShelfKelvin : 0.0, limit);
            traces.AddRange(found.Select(t => new CultureTrace(entry.Name, t)));
        }

        return traces.ToImmutable();
    }

    private static HatchLimit? Limit(CrewEntry entry) =>
        entry.HatchStopsAt?.Value is { } stops
        && entry.WarmthToHatching?.Value is { } egg
        && entry.WarmthToFirstEggs?.Value is { } young
        && entry.DevelopmentZero?.Value is { } zero
            ? new(stops, (egg + young) / (UsualCelsius - zero))
            : null;

    /// <summary>Running tanks by their rack, and the room.</summary>
    private static List<WatchedPlace> Places(TankView view, Func<TankView, Tank, AirLimits> limits)
    {
        var places = new List<WatchedPlace> { new(Room, "", AirLimits.Room) };
        foreach (var tank in view.Running.Where(t => t.Place.Room.Length > 0))
        {
            places.Add(new(tank.Code, tank.Place.Rack, limits(view, tank)));
        }

        return places;
    }

    /// <summary>What the species in a tank bear, where that is less than frogs in general.</summary>
    private static AirLimits Limits(TankView view, Tank tank)
    {
        var limits = AirLimits.Frogs;
        foreach (var species in AnimalCounts.Find(view.Care[tank.Code]).Where(c => c.Count > 0))
        {
            if (view.Catalog.Find(species.Species) is AnimalEntry { AvoidAbove.Value: var above })
            {
                limits = limits with { WarmestCelsius = Math.Min(limits.WarmestCelsius, above) };
            }
        }

        return limits;
    }
}
