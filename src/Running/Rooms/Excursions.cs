using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Rooms;

/// <summary>What went wrong with the air.</summary>
public enum ExcursionKind
{
    /// <summary>Too warm.</summary>
    Hot,

    /// <summary>Too cold.</summary>
    Cold,

    /// <summary>Too dry.</summary>
    Dry,
}

/// <summary>Limits of the air at a place.</summary>
/// <param name="WarmestCelsius">Warmest air, °C.</param>
/// <param name="ColdestCelsius">Coldest air, °C.</param>
/// <param name="DriestPercent">Driest air, %; 0 where humidity does not matter.</param>
public sealed record AirLimits(double WarmestCelsius, double ColdestCelsius, double DriestPercent)
{
    /// <summary>
    /// Rainforest frogs in general: hot from 28 °C, cold below 18 °C, dry below 60 %. Own synthesis from
    /// husbandry texts; a species' own band is stricter where it is known.
    /// </summary>
    public static readonly AirLimits Frogs = new(28.0, 18.0, 60.0);

    /// <summary>A room or shelf without animals that need moist air.</summary>
    public static readonly AirLimits Room = Frogs with { DriestPercent = 0.0 };
}

/// <summary>Where a logger hangs and what limits count there.</summary>
/// <param name="Place">Tank or room.</param>
/// <param name="Zone">Rack or misting zone it belongs to; empty for the room itself.</param>
/// <param name="Limits">Limits of its air.</param>
public sealed record WatchedPlace(string Place, string Zone, AirLimits Limits);

/// <summary>Something that happened to the air of a room or a part of it.</summary>
/// <param name="Kind">What.</param>
/// <param name="Zone">Rack in which alone it happened; empty for the room.</param>
/// <param name="Places">Where it was measured.</param>
/// <param name="From">First reading beyond the limit, UTC.</param>
/// <param name="To">Last reading beyond it, UTC.</param>
/// <param name="Extreme">Furthest reading, °C or %.</param>
/// <param name="Worst">Where that was.</param>
public sealed record Excursion(
    ExcursionKind Kind,
    string Zone,
    ImmutableArray<string> Places,
    DateTime From,
    DateTime To,
    double Extreme,
    string Worst
);

/// <summary>
/// Air beyond a limit for more than two hours, from readings without a mark. What several loggers show at the
/// same time, or on days that follow each other, is one event of the room or of one zone.
/// </summary>
public static class Excursions
{
    private static readonly long Least = TimeSpan.FromHours(2).Ticks;
    private static readonly long Pause = TimeSpan.FromMinutes(45).Ticks;
    private static readonly long Together = TimeSpan.FromHours(24).Ticks;

    private readonly record struct Spell(
        ExcursionKind Kind,
        string Place,
        string Zone,
        long From,
        long To,
        double Extreme
    );

    /// <summary>All events, the first first.</summary>
    /// <param name="series">Readings.</param>
    /// <param name="places">Places that are watched; series of others are passed over.</param>
    public static ImmutableArray<Excursion> Find(
        IEnumerable<LogSeries> series,
        IReadOnlyList<WatchedPlace> places
    )
    {
        var all = series.ToList();
        var known = places.ToDictionary(p => p.Place, StringComparer.OrdinalIgnoreCase);
        var spells = new List<Spell>();
        foreach (var one in all)
        {
            if (known.TryGetValue(one.Place, out var place))
            {
                spells.AddRange(Spells(one, place));
            }
        }

        var zones = all.Select(s => known.GetValueOrDefault(s.Place)?.Zone ?? "")
            .Where(z => z.Length > 0)
            .Distinct(StringComparer.Ordinal)
            .Count();
        return
        [
            .. spells
                .GroupBy(s => s.Kind)
                .SelectMany(g => Joined([.. g.OrderBy(s => s.From)], zones))
                .OrderBy(e => e.From),
        ];
    }

    private static IEnumerable<Spell> Spells(LogSeries series, WatchedPlace place) =>
        series.Quantity switch
        {
            LogQuantity.Temperature =>
            [
                .. Beyond(series, place, ExcursionKind.Hot),
                .. Beyond(series, place, ExcursionKind.Cold),
            ],
            LogQuantity.Humidity when place.Limits.DriestPercent > 0.0 => Beyond(
                series,
                place,
                ExcursionKind.Dry
            ),
            _ => [],
        };

    private static IEnumerable<Spell> Beyond(LogSeries series, WatchedPlace place, ExcursionKind kind)
    {
        var (limit, isAbove) = kind switch
        {
            ExcursionKind.Hot => (place.Limits.WarmestCelsius, true),
            ExcursionKind.Cold => (place.Limits.ColdestCelsius, false),
            _ => (place.Limits.DriestPercent, false),
        };
        var spell = default(Spell?);
        for (var i = 0; i < series.Count; i++)
        {
            var value = series.Values[i];
            if (
                series.Marks[i] != LogMarks.None
                || double.IsNaN(value)
                || !(isAbove ? value > limit : value < limit)
            )
            {
                continue;
            }

            var at = series.Ticks[i];
            if (spell is { } open && at - open.To <= Pause)
            {
                var extreme = isAbove ? Math.Max(open.Extreme, value) : Math.Min(open.Extreme, value);
                spell = open with { To = at, Extreme = extreme };
                continue;
            }

            if (spell is { } ended && ended.To - ended.From > Least)
            {
                yield return ended;
            }

            spell = new(kind, series.Place, place.Zone, at, at, value);
        }

        if (spell is { } last && last.To - last.From > Least)
        {
            yield return last;
        }
    }

    private static IEnumerable<Excursion> Joined(List<Spell> spells, int zones)
    {
        var group = new List<Spell>();
        var end = long.MinValue;
        foreach (var spell in spells)
        {
            if (group.Count > 0 && spell.From - end > Together)
            {
                yield return Event(group, zones);
                group.Clear();
                end = long.MinValue;
            }

            group.Add(spell);
            end = Math.Max(end, spell.To);
        }

        if (group.Count > 0)
        {
            yield return Event(group, zones);
        }
    }

    private static Excursion Event(List<Spell> spells, int zones)
    {
        var isHot = spells[0].Kind == ExcursionKind.Hot;
        var worst = isHot ? spells.MaxBy(s => s.Extreme) : spells.MinBy(s => s.Extreme);
        var own = spells.Select(s => s.Zone).Distinct(StringComparer.Ordinal).ToList();
        return new(
            spells[0].Kind,
            own.Count == 1 && zones > 1 ? own[0] : "",
            [.. spells.Select(s => s.Place).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            new DateTime(spells[0].From, DateTimeKind.Utc),
            new DateTime(spells.Max(s => s.To), DateTimeKind.Utc),
            worst.Extreme,
            worst.Place
        );
    }
}
