using System.Collections.Immutable;
using Litterfall.Dispatch.Bands;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Figures;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>What the classes of temperature and the shop's own bands say of a day.</summary>
internal static class BandRule
{
    /// <summary>Slug of a hold that a pack may pass whose journey was computed.</summary>
    public const string ClassHold = "class-hold";

    /// <summary>Slug of the shop's own hold.</summary>
    public const string OwnHold = "own-band-hold";

    /// <summary>Reasons about what lives in the parcel, whatever the weather.</summary>
    public static IEnumerable<ShipReason> Known(ImmutableArray<LiveGood> goods, SharedBand? band)
    {
        foreach (var good in goods.Where(g => g.Band is null))
        {
            yield return new()
            {
                Slug = "no-band",
                Rule = ShipRule.Knowledge,
                Verdict = ShipVerdict.Hold,
                Text = good.Kind is null
                    ? $"“{good.Name}” is not in the library, so nobody knows what it bears on its way."
                    : $"No class of transport is entered for the {good.Name}.",
                Cure = good.Kind is null
                    ? "Enter the species in your library with its class of transport, A to G."
                    : "Enter its class of transport, A to G, in your library.",
                IsProtective = true,
            };
        }

        foreach (var good in goods.Where(g => g.Tightening.Length > 0))
        {
            yield return new()
            {
                Slug = "species-stricter",
                Rule = ShipRule.ClassBands,
                Verdict = ShipVerdict.Ship,
                Text = $"Measured limits of the {good.Name} are stricter: it {good.Tightening}.",
            };
        }

        if (band is { IsEmpty: true })
        {
            yield return new()
            {
                Slug = "send-apart",
                Rule = ShipRule.ClassBands,
                Verdict = ShipVerdict.Hold,
                Text =
                    $"No temperature suits all: the {band.ColdSide.Name} needs at least "
                    + $"{VerdictWords.Celsius(band.Limits.KeepLow)}, the {band.WarmSide.Name} at most "
                    + $"{VerdictWords.Celsius(band.Limits.KeepHigh)}.",
                Cure = "Send them apart, in two parcels.",
                IsProtective = true,
            };
        }
    }

    /// <summary>Reasons of the classes by the forecast.</summary>
    public static IEnumerable<ShipReason> Class(SharedBand band, ImmutableArray<NodeRange> nodes)
    {
        var limits = band.Limits;
        foreach (var node in nodes)
        {
            if (node.HighCelsius > limits.StopAbove)
            {
                yield return Made(band, node, node.HighCelsius, limits.StopAbove, isStop: true);
            }
            else if (node.HighCelsius > limits.HoldAbove)
            {
                yield return Made(band, node, node.HighCelsius, limits.HoldAbove, isStop: false);
            }

            if (node.LowCelsius < limits.StopBelow)
            {
                yield return Made(band, node, node.LowCelsius, limits.StopBelow.Value, isStop: true);
            }
            else if (node.LowCelsius < limits.HoldBelow)
            {
                yield return Made(band, node, node.LowCelsius, limits.HoldBelow, isStop: false);
            }
        }
    }

    /// <summary>Reasons of the shop's own bands, as far as they are stricter.</summary>
    public static IEnumerable<ShipReason> Own(
        ImmutableArray<LiveGood> goods,
        DispatchRules rules,
        ImmutableArray<NodeRange> nodes
    )
    {
        var (own, looser) = SharedBand.Own(goods, rules.Bands);
        foreach (var letter in looser)
        {
            yield return Shop(
                "own-band-looser",
                ShipVerdict.Ship,
                $"Your own band of class {letter} would allow more than the class: the class counts."
            );
        }

        foreach (var node in own is null ? [] : nodes)
        {
            if (node.HighCelsius > own!.HoldAboveCelsius)
            {
                yield return Held(node, node.HighCelsius, own.HoldAboveCelsius, "above");
            }

            if (node.LowCelsius < own.HoldBelowCelsius)
            {
                yield return Held(node, node.LowCelsius, own.HoldBelowCelsius, "below");
            }
        }
    }

    /// <summary>The same hold, passed by a way of packing whose journey keeps the band.</summary>
    public static ShipReason Passed(ShipReason hold, string packing) =>
        hold with
        {
            Verdict = ShipVerdict.ShipWithPacks,
            Text = $"{hold.Text} Passed by packing: {packing}.",
        };

    /// <summary>True for a hold that such a way of packing may pass.</summary>
    public static bool IsPassable(ShipReason reason) => reason.Slug is ClassHold or OwnHold;

    private static ShipReason Made(SharedBand band, NodeRange node, double celsius, double limit, bool isStop)
    {
        var side = celsius > limit ? "above" : "below";
        var by = Who(band, limit, isStop, celsius > limit);
        var told = $"{side} {VerdictWords.Celsius(limit)}";
        return new()
        {
            Slug = isStop ? "class-stop" : ClassHold,
            Rule = ShipRule.ClassBands,
            Verdict = isStop ? ShipVerdict.Never : ShipVerdict.Hold,
            Text =
                $"{VerdictWords.Celsius(celsius)} {VerdictWords.At(node)}: {by.Name} "
                + (
                    isStop
                        ? $"never travels {told}"
                        : $"is held {told} without packs whose journey was computed"
                )
                + $" (class {by.Band!.Letter}).",
            IsProtective = true,
            Node = node.Node,
            Measured = celsius,
            Limit = limit,
            Source = by.Band.Origin.Source,
            SourcePlace = by.Band.Origin.Place,
            Provenance = by.Band.Origin.Provenance,
        };
    }

    /// <summary>Who of them sets a limit.</summary>
    private static LiveGood Who(SharedBand band, double limit, bool isStop, bool isWarm) =>
        band.All.FirstOrDefault(g =>
            (isStop, isWarm) switch
            {
                (true, true) => g.Band!.StopAbove,
                (true, false) => g.Band!.StopBelow,
                (false, true) => g.Band!.HoldAbove,
                _ => g.Band!.HoldBelow,
            } == limit
        ) ?? band.Strictest;

    private static ShipReason Held(NodeRange node, double celsius, double limit, string side) =>
        Shop(
            OwnHold,
            ShipVerdict.Hold,
            $"{VerdictWords.Celsius(celsius)} {VerdictWords.At(node)}: your own rule holds it {side} "
                + $"{VerdictWords.Celsius(limit)}."
        ) with
        {
            Node = node.Node,
            Measured = celsius,
            Limit = limit,
        };

    private static ShipReason Shop(string slug, ShipVerdict verdict, string text) =>
        new()
        {
            Slug = slug,
            Rule = ShipRule.ShopPolicy,
            Verdict = verdict,
            Text = text,
            IsProtective = verdict != ShipVerdict.Ship,
            Source = "workshop",
            Provenance = Provenance.Entered,
        };
}
