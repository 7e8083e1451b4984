using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Dispatch.Bands;

/// <summary>What all that lives in one parcel bears together: the strictest of each limit, °C.</summary>
public sealed record SharedBand
{
    /// <summary>The strictest of them: the first that is held when it gets warm.</summary>
    public required LiveGood Strictest { get; init; }

    /// <summary>All of them that have a class.</summary>
    public required Seq<LiveGood> All { get; init; }

    /// <summary>All limits together; the letter is that of the strictest.</summary>
    public required TransportBand Limits { get; init; }

    /// <summary>Who sets the coldest that is to be kept.</summary>
    public required LiveGood ColdSide { get; init; }

    /// <summary>Who sets the warmest that is to be kept.</summary>
    public required LiveGood WarmSide { get; init; }

    /// <summary>True where no temperature suits all: they travel apart.</summary>
    public bool IsEmpty => Limits.KeepLow > Limits.KeepHigh;

    /// <summary>Puts the bands of a parcel together; null where nothing in it has a class.</summary>
    /// <param name="goods">What lives in it.</param>
    public static SharedBand? From(IEnumerable<LiveGood> goods)
    {
        ImmutableArray<LiveGood> all = [.. goods.Where(g => g.Band is not null)];
        if (all.IsEmpty)
        {
            return null;
        }

        var strictest = all.OrderBy(g => g.Band!.HoldAbove)
            .ThenBy(g => g.Band!.KeepHigh)
            .ThenBy(g => g.Band!.StopAbove)
            .ThenByDescending(g => g.Band!.HoldBelow)
            .First();
        var stops = all.Where(g => g.Band!.StopBelow is not null).Select(g => g.Band!.StopBelow!.Value);
        return new()
        {
            Strictest = strictest,
            All = [.. all],
            ColdSide = all.MaxBy(g => g.Band!.KeepLow)!,
            WarmSide = all.MinBy(g => g.Band!.KeepHigh)!,
            Limits = strictest.Band! with
            {
                KeepLow = all.Max(g => g.Band!.KeepLow),
                KeepHigh = all.Min(g => g.Band!.KeepHigh),
                HoldBelow = all.Max(g => g.Band!.HoldBelow),
                HoldAbove = all.Min(g => g.Band!.HoldAbove),
                StopBelow = stops.Any() ? stops.Max() : null,
                StopAbove = all.Min(g => g.Band!.StopAbove),
                BearsLow = all.Max(g => g.Band!.BearsLow),
                BearsHigh = all.Min(g => g.Band!.BearsHigh),
            },
        };
    }

    /// <summary>The shop's own bands that are stricter than the class, and those that would loosen.</summary>
    /// <param name="goods">What lives in the parcel.</param>
    /// <param name="own">The shop's bands.</param>
    /// <returns>
    /// Limits of the shop, null where it has none that count; letters of bands that would loosen.
    /// </returns>
    public static (OwnBand? Stricter, Seq<string> Looser) Own(IEnumerable<LiveGood> goods, Seq<OwnBand> own)
    {
        OwnBand? stricter = null;
        var looser = new List<string>();
        foreach (var band in goods.Select(g => g.Band).OfType<TransportBand>().DistinctBy(b => b.Letter))
        {
            foreach (var mine in own.Where(o => o.Class == band.Letter))
            {
                if (mine.HoldBelowCelsius < band.HoldBelow || mine.HoldAboveCelsius > band.HoldAbove)
                {
                    looser.Add(band.Letter);
                }

                var low = Math.Max(mine.HoldBelowCelsius, stricter?.HoldBelowCelsius ?? double.MinValue);
                var high = Math.Min(mine.HoldAboveCelsius, stricter?.HoldAboveCelsius ?? double.MaxValue);
                stricter = new(band.Letter, low, high);
            }
        }

        return (stricter, [.. looser]);
    }
}
