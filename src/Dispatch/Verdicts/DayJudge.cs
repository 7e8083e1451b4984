using System.Collections.Immutable;
using Litterfall.Dispatch.Bands;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>Judges a parcel on one day: every rule alone, the strictest decides.</summary>
internal sealed class DayJudge
{
    private readonly WeekTask task;
    private readonly ImmutableArray<LiveGood> goods;
    private readonly SharedBand? band;
    private readonly ShipDays? ship;
    private readonly (PlaceClock Home, PlaceClock Away)? clocks;
    private readonly ImmutableArray<ShipReason> unknown;

    /// <summary>Makes one for a parcel; it judges any day.</summary>
    public DayJudge(WeekTask task)
    {
        this.task = task;
        goods = [.. task.Parcel.Contents.Select(c => LiveGood.Find(task.Catalog, c))];
        band = SharedBand.From(goods);
        var (home, away) = (task.Region(task.Rules.HomeRegion), task.Region(task.Parcel.Region));
        unknown = [.. PlaceRule.Reasons(task, home, away), .. BandRule.Known(goods, band)];
        if (home is not null && away is not null && task.Carrier is { } carrier)
        {
            ship = new(carrier, task.Calendar, task.Rests(home), task.Rests(away));
            clocks =
                PlaceClock.Find(home.Zone) is { } here && PlaceClock.Find(away.Zone) is { } there
                    ? (here, there)
                    : null;
        }
    }

    /// <summary>Limits of all that lives in it; null where nothing has a class.</summary>
    public SharedBand? Band => band;

    /// <summary>The verdict of a day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="cancel">Stops the search.</param>
    public DayVerdict Judge(DateOnly day, CancellationToken cancel)
    {
        var reasons = new List<ShipReason>(unknown);
        var days = ship?.Days(day);
        if (PlaceRule.Over(task, day) is { } over)
        {
            reasons.Add(over);
        }

        reasons.AddRange(ship?.Reasons(day) ?? []);
        if (task.Carrier is { } carrier)
        {
            reasons.AddRange(CarrierRule.Terms(carrier, goods, task.Rules, day));
        }

        reasons.AddRange(AnimalRule.Reasons(task, goods, day));
        // A day on which nothing leaves has no weather to look at.
        var isOpen = !reasons.Exists(r => r is { Rule: ShipRule.Calendar, Verdict: ShipVerdict.Never });
        return isOpen && days is not null && clocks is { } known && task.Carrier is { } terms
            ? Weather(day, reasons, new DayFrame(task, days, terms, known, band), cancel)
            : Made(day, days, reasons, []);
    }

    private DayVerdict Weather(
        DateOnly day,
        List<ShipReason> reasons,
        DayFrame frame,
        CancellationToken cancel
    )
    {
        var days = ship!.Days(day);
        var open = frame.Check();
        reasons.AddRange(open);
        if (!open.IsEmpty)
        {
            return Made(day, days, reasons, []);
        }

        var words = new Dictionary<ShipRule, string>();
        var hasFrogs = goods.Any(g => g.IsAmphibian);
        var guide = hasFrogs ? [.. GuideRule.Reasons(frame.Nodes, frame.Carrier.HasDepot)] : NoReasons;
        reasons.AddRange(guide);
        if (hasFrogs)
        {
            words[ShipRule.PublishedGuide] = GuideRule.Words(frame.Nodes);
        }

        reasons.AddRange(CarrierRule.Guarantee(frame.Carrier, frame.Nodes));
        ImmutableArray<ShipReason> bands =
        [
            .. band is null ? [] : BandRule.Class(band, frame.Nodes),
            .. BandRule.Own(goods, task.Rules, frame.Nodes),
        ];
        reasons.AddRange(bands);
        var isStopped = reasons.Exists(r => r.Verdict == ShipVerdict.Never);
        var canSearch = band is { IsEmpty: false } && !isStopped && goods.All(g => g.Band is not null);
        if (!canSearch)
        {
            return Made(day, days, reasons, words) with { Nodes = [.. frame.Nodes] };
        }

        var need = new JourneyNeed
        {
            Duty = hasFrogs ? GuideRule.Duty(frame.Nodes) : PackDuty.None,
            IsHeld = bands.Any(BandRule.IsPassable),
            IsDepot =
                task.Parcel.IsDepotPickUp
                || (frame.Carrier.HasDepot && guide.Any(r => r.Verdict == ShipVerdict.DepotOnly)),
            TakesIce = goods.All(g => !g.IsAnimal),
        };
        var answer = new JourneyRule(task, frame, band!, need, cancel).Answer();
        words[ShipRule.Journey] = answer.Words;
        return Made(day, days, Passed(reasons, answer), words) with
        {
            Choice = answer.Choice,
            Nodes = [.. frame.Nodes],
        };
    }

    private static readonly ImmutableArray<ShipReason> NoReasons = [];

    /// <summary>Holds of the forecast are passed by packs whose journeys keep the band.</summary>
    private static List<ShipReason> Passed(List<ShipReason> reasons, JourneyAnswer answer) =>
        [
            .. reasons.Select(r =>
                answer.Passes.Length > 0 && BandRule.IsPassable(r) ? BandRule.Passed(r, answer.Passes) : r
            ),
            .. answer.Reasons,
        ];

    private DayVerdict Made(
        DateOnly day,
        ParcelDays? days,
        List<ShipReason> reasons,
        Dictionary<ShipRule, string> words
    )
    {
        ImmutableArray<ShipReason> sorted =
        [
            .. reasons.OrderByDescending(r => r.Verdict).ThenBy(r => r.Rule).ThenBy(r => r.Node),
        ];
        var verdict = sorted.IsEmpty ? ShipVerdict.Hold : sorted.Max(r => r.Verdict);
        return new()
        {
            Day = day,
            Arrives = days?.Arrives,
            Verdict = verdict,
            Reasons = [.. sorted],
            Rules = [.. RuleTable.Rows(sorted, words, goods)],
            ForecastTakenAt =
                task.Forecasts.Count > 0 ? ForecastRule.Newest(task).Values.Min(f => f.TakenAt) : null,
            JudgedAt = task.Now,
        };
    }
}
