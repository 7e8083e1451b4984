using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Dispatch.Bands;
using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Packing;
using Litterfall.Dispatch.Routes;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Figures;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>What is asked of the journeys of a day.</summary>
internal sealed record JourneyNeed
{
    /// <summary>What a rule asks packs to do.</summary>
    public required PackDuty Duty { get; init; }

    /// <summary>True where a forecast is held without packs whose journey was computed.</summary>
    public required bool IsHeld { get; init; }

    /// <summary>True where only the depot is left.</summary>
    public required bool IsDepot { get; init; }

    /// <summary>True where nothing in the parcel but plants and moss.</summary>
    public required bool TakesIce { get; init; }
}

/// <summary>Looks for a way of packing by computed journeys, and says what they come to.</summary>
internal sealed class JourneyRule
{
    private const double EarlierHours = 4;
    private const double EarliestHandOver = 8;

    private readonly WeekTask task;
    private readonly DayFrame frame;
    private readonly SharedBand band;
    private readonly JourneyNeed need;
    private readonly CancellationToken cancel;
    private readonly double risk;

    /// <summary>Makes one.</summary>
    public JourneyRule(
        WeekTask task,
        DayFrame frame,
        SharedBand band,
        JourneyNeed need,
        CancellationToken cancel
    )
    {
        (this.task, this.frame, this.band, this.need, this.cancel) = (task, frame, band, need, cancel);
        risk = Math.Clamp(task.Rules.RiskPercent, 0, 100) / 100;
    }

    /// <summary>The answer.</summary>
    public JourneyAnswer Answer()
    {
        var (cartons, refusal) = Cartons(task.Rules.Cartons, c => task.InStock(c, 1) > 0);
        if (cartons.IsEmpty)
        {
            return new() { Reasons = [refusal!], Words = "no carton" };
        }

        var space = Space(cartons, [.. task.Rules.Packs], k => task.InStock(k, PackSpace.MostPacks));
        var usual = Search(frame.Usual(need.IsDepot));
        var plain = space
            .Plain()
            .Select(usual.Search.Try)
            .OrderBy(t => (t.Odds.Hold, Math.Round(t.Odds.MeanMissKelvin, 1), t.Way.Kilograms))
            .First();
        if (need is { Duty: PackDuty.None, IsHeld: false } && usual.Search.Bears(plain.Odds))
        {
            return Plain(space, usual, plain);
        }

        return Packed(space, usual, plain);
    }

    private JourneyAnswer Packed(PackSpace space, (RouteTimes Times, PackSearch Search) usual, TriedWay plain)
    {
        var ways = space.Packed().Where(w => w.Does(need.Duty)).ToList();
        (RouteTimes Times, PackSearch Search, TriedWay Way)? best = null;
        foreach (var times in Tries())
        {
            var search = times == usual.Times ? usual : Search(times);
            if (search.Search.Best(ways, Fits, cancel) is { } way)
            {
                var isGood = search.Search.Keeps(way.Odds);
                best = best is null || isGood ? (search.Times, search.Search, way) : best;
                if (isGood)
                {
                    return Good(search, way, plain);
                }
            }
        }

        return best is { } found
            ? Bad(space, (found.Times, found.Search), found.Way, plain)
            : NoPack(space, usual, plain);
    }

    /// <summary>The usual way first, then an earlier hand-over, then the depot.</summary>
    private IEnumerable<RouteTimes> Tries()
    {
        yield return frame.Usual(need.IsDepot);
        if (frame.Carrier.HandOverHour - EarlierHours >= EarliestHandOver)
        {
            yield return frame.Times(frame.Carrier.HandOverHour - EarlierHours, need.IsDepot);
        }

        if (!need.IsDepot && frame.Carrier.HasDepot)
        {
            yield return frame.Usual(isDepot: true);
        }
    }

    private (RouteTimes Times, PackSearch Search) Search(RouteTimes times)
    {
        var count = Math.Clamp(task.Rules.Journeys, PackSearch.FewJourneys, 100_000);
        ImmutableArray<Journey> Draw(int n) =>
            JourneySet.Draw(times, task.Rules, frame.Carrier.DayLateChance, frame.Forecasts, n);
        return (times, new PackSearch(Draw(PackSearch.FewJourneys), Draw(count), band.Limits, risk));
    }

    private PackSpace Space(
        ImmutableArray<PackedCarton> cartons,
        ImmutableArray<TransportPack> packs,
        Func<string, int> stock
    )
    {
        var (low, high) = (frame.Nodes.Min(n => n.LowCelsius), frame.Nodes.Max(n => n.HighCelsius));
        return new(cartons, packs, stock)
        {
            Lowest = low,
            RouteHours = frame.Usual(need.IsDepot).Hours,
            Warms = need.Duty is PackDuty.Warm or PackDuty.Both || low < band.Limits.KeepLow,
            Cools = need.Duty is PackDuty.Cool or PackDuty.Both || high > band.Limits.KeepHigh,
            TakesIce = need.TakesIce,
        };
    }

    private (ImmutableArray<PackedCarton> Cartons, ShipReason? Refusal) Cartons(
        IEnumerable<Carton> cartons,
        Func<string, bool> isThere
    )
    {
        var held = ImmutableArray.CreateBuilder<PackedCarton>();
        var last = "No carton is in stock.";
        foreach (var carton in cartons.Where(c => isThere(c.Key)).OrderBy(c => c.Liters))
        {
            var plan = frame.Plan(carton, []);
            if (plan.Refusal.Length > 0)
            {
                last = plan.Refusal;
                continue;
            }

            held.Add(new(carton, plan.ContentsKilogramsOfWater, plan.PaddingLiters));
        }

        return (
            held.ToImmutable(),
            held.Count > 0
                ? null
                : Hold("no-carton", last, "Enter or buy a carton that holds it.") with
                {
                    Rule = ShipRule.Packing,
                }
        );
    }

    private bool Fits(WayOfPacking way) => frame.Plan(way.Carton.Carton, [.. way.Uses]).Refusal.Length == 0;

    /// <summary>No rule asks for a pack; where one is better, it is the way that is named.</summary>
    private JourneyAnswer Plain(PackSpace space, (RouteTimes Times, PackSearch Search) usual, TriedWay plain)
    {
        var odds = plain.Odds;
        var words =
            $"It may go without a pack: {VerdictWords.Percent(odds.Hold)} of the journeys go below "
            + $"{VerdictWords.Celsius(band.Limits.HoldBelow)} or above "
            + $"{VerdictWords.Celsius(band.Limits.HoldAbove)} inside, {VerdictWords.Percent(odds.Out)} leave "
            + $"{Keep()}.";
        var way = plain;
        if (odds.Out > risk && usual.Search.Best(space.Packed(), Fits, cancel) is { } packed)
        {
            if (usual.Search.Keeps(packed.Odds))
            {
                way = packed;
                words +=
                    $" Better with {packed.Way.Words}: {VerdictWords.Percent(packed.Odds.Out)} leave it.";
            }
        }

        return new()
        {
            Reasons =
            [
                Made("journey-plain", ShipVerdict.Ship, words, odds.Hold) with
                {
                    Limit = 100 * PackLimits.PlainHoldShare,
                },
            ],
            Choice = Chosen(usual, way),
            Words = "no pack needed",
        };
    }

    private JourneyAnswer Good((RouteTimes Times, PackSearch Search) search, TriedWay way, TriedWay plain)
    {
        var isDepot = search.Times.IsDepot && !need.IsDepot;
        var hour = Regions.CalendarWords.Hour(search.Times.HandOverHour);
        var said =
            $"With {way.Way.Words}, handed over at {hour}{(isDepot ? " and picked up at the depot" : "")}, "
            + $"{VerdictWords.Percent(way.Odds.Out)} of the journeys leave {Keep()}; without a pack "
            + $"{VerdictWords.Percent(plain.Odds.Out)} do.";
        return new()
        {
            Reasons =
            [
                isDepot
                    ? Made("journey-depot", ShipVerdict.DepotOnly, said, way.Odds.Out)
                    : Made("journey-packs", ShipVerdict.ShipWithPacks, said, way.Odds.Out),
            ],
            Choice = Chosen(search, way),
            Passes = way.Way.Words,
            Words = isDepot ? "packs, depot pick-up only" : "packs keep the band",
        };
    }

    private JourneyAnswer Bad(
        PackSpace space,
        (RouteTimes Times, PackSearch Search) search,
        TriedWay way,
        TriedWay plain
    )
    {
        var better = plain.Odds.Out < way.Odds.Out ? plain : way;
        var choice = Chosen(search, better);
        var spent = choice.Hours.FirstOrDefault(h => h.OutShare > risk)?.Hour;
        var lasts = spent is { } hour
            ? string.Create(
                CultureInfo.InvariantCulture,
                $" It holds for about {Math.Max(0, hour - 1):0} hours; the route can take "
                    + $"{Math.Ceiling(search.Times.Hours):0}."
            )
            : "";
        var text = !search.Search.IsAlive(better.Odds)
            ? $"The best packing in stock ({better.Way.Words}) still lets "
                + $"{VerdictWords.Percent(better.Odds.Lethal)} of the journeys pass the absolute limits "
                + $"{VerdictWords.Celsius(band.Limits.BearsLow)} and "
                + $"{VerdictWords.Celsius(band.Limits.BearsHigh)}; "
                + $"{VerdictWords.Percent(risk * PackLimits.LethalRisk)} is the most."
            : $"The best packing in stock ({better.Way.Words}) lets "
                + $"{VerdictWords.Percent(better.Odds.Out)} of the journeys leave {Keep()}; "
                + $"{VerdictWords.Percent(risk)} is your limit.";
        return new()
        {
            Reasons =
            [
                Made("journey-odds", ShipVerdict.Hold, text + lasts, better.Odds.Out) with
                {
                    Cure = Buy(),
                },
                .. Refused(space),
            ],
            Choice = choice,
            Words = "no packing in stock keeps the band",
        };
    }

    private JourneyAnswer NoPack(
        PackSpace space,
        (RouteTimes Times, PackSearch Search) search,
        TriedWay plain
    )
    {
        var text =
            $"No pack in stock will do, and without one {VerdictWords.Percent(plain.Odds.Out)} of the "
            + $"journeys leave {Keep()}.";
        return new()
        {
            Reasons =
            [
                Made("no-pack", ShipVerdict.Hold, text, plain.Odds.Out) with
                {
                    Cure = Buy(),
                },
                .. Refused(space),
            ],
            Choice = Chosen(search, plain),
            Words = "no pack in stock will do",
        };
    }

    private static IEnumerable<ShipReason> Refused(PackSpace space) =>
        space.Refusals.Select(r =>
            Hold("pack-refused", r, "") with
            {
                Rule = ShipRule.Packing,
                Verdict = ShipVerdict.Ship,
            }
        );

    /// <summary>What would have to be bought; empty where nothing usual helps.</summary>
    private string Buy()
    {
        var usual = frame.Usual(need.IsDepot);
        var shop = task.Rules;
        var packs = shop.Packs.Concat(DispatchDefaults.Packs).DistinctBy(p => p.Name).ToList();
        var more = shop.Cartons.Concat(DispatchDefaults.Cartons).DistinctBy(c => c.Name).ToList();
        var isNew = task.Stock.Count > 0 || packs.Count + more.Count > shop.Packs.Count + shop.Cartons.Count;
        var (cartons, _) = isNew ? Cartons(more, _ => true) : ([], null);
        if (cartons.IsEmpty)
        {
            return "";
        }

        var space = Space(cartons, [.. packs], _ => PackSpace.MostPacks);
        var (_, search) = Search(usual);
        var rules = shop with { Packs = [.. packs] };
        var best = search.Best(
            space.Packed().Where(w => w.Does(need.Duty)),
            w => frame.Plan(w.Carton.Carton, [.. w.Uses], rules).Refusal.Length == 0,
            cancel
        );
        return best is not null && search.Keeps(best.Odds)
            ? $"Have ready {best.Way.Words}: then {VerdictWords.Percent(best.Odds.Out)} of the "
                + "journeys leave the band."
            : "";
    }

    private PackChoice Chosen((RouteTimes Times, PackSearch Search) search, TriedWay tried) =>
        new()
        {
            Carton = tried.Way.Carton.Carton.Key,
            Packs = [.. tried.Way.Uses],
            HandOverHour = search.Times.HandOverHour,
            OutShare = tried.Odds.Out,
            LethalShare = tried.Odds.Lethal,
            Hours = JourneyOdds.Hourly(tried.Way.Parcel, search.Search.All, band.Limits),
            Journeys = search.Search.All.Length,
            Seed = task.Rules.Seed,
        };

    private string Keep() =>
        $"{VerdictWords.Celsius(band.Limits.KeepLow)} to {VerdictWords.Celsius(band.Limits.KeepHigh)}";

    private ShipReason Made(string slug, ShipVerdict verdict, string text, double share) =>
        Hold(slug, text, "") with
        {
            Verdict = verdict,
            Measured = Math.Round(100 * share, 3),
            Limit = task.Rules.RiskPercent,
            IsProtective = verdict != ShipVerdict.Ship,
        };

    private static ShipReason Hold(string slug, string text, string cure) =>
        new()
        {
            Slug = slug,
            Rule = ShipRule.Journey,
            Verdict = ShipVerdict.Hold,
            Text = text,
            Cure = cure,
            IsProtective = true,
            Source = "own-derivation",
            SourcePlace = "heat of the parcel over drawn journeys",
            Provenance = Provenance.Recomputed,
        };
}
