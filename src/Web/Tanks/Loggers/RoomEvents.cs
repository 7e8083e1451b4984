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
        var places = Places(view);
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

        return Excursions.Find(series, places);
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

    /// <summary>Running tanks by their rack, and the room; a species' own limits are stricter.</summary>
    private static List<WatchedPlace> Places(TankView view)
    {
        var places = new List<WatchedPlace> { new(Room, "", AirLimits.Room) };
        foreach (var tank in view.Running.Where(t => t.Place.Room.Length > 0))
        {
            places.Add(new(tank.Code, tank.Place.Rack, Limits(view, tank)));
        }

        return places;
    }

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
