using System.Collections.Immutable;
using Litterfall.Dispatch.Bands;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Packing;
using Litterfall.Dispatch.Regions;
using Litterfall.Dispatch.Routes;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>A day of a parcel: its route, its forecasts and the ranges that count.</summary>
internal sealed class DayFrame
{
    private readonly WeekTask task;
    private readonly ParcelDays days;
    private readonly (PlaceClock Home, PlaceClock Away) clocks;
    private readonly SharedBand? band;

    public DayFrame(
        WeekTask task,
        ParcelDays days,
        CarrierTerms carrier,
        (PlaceClock Home, PlaceClock Away) clocks,
        SharedBand? band
    )
    {
        (this.task, this.days, this.clocks, this.band) = (task, days, clocks, band);
        Carrier = carrier;
        Forecasts = ForecastRule.Newest(task);
    }

    /// <summary>Terms of the carrier.</summary>
    public CarrierTerms Carrier { get; }

    /// <summary>Forecasts by place.</summary>
    public ImmutableDictionary<RouteNode, PlaceForecast> Forecasts { get; }

    /// <summary>Ranges of the days on which it is there; none before the forecasts were checked.</summary>
    public ImmutableArray<NodeRange> Nodes { get; private set; } = [];

    /// <summary>Times with the carrier's last hand-over.</summary>
    public RouteTimes Usual(bool isDepot) => Times(Carrier.HandOverHour, isDepot);

    /// <summary>Times with an hour of hand-over.</summary>
    public RouteTimes Times(double handOverHour, bool isDepot) =>
        RouteTimes.Create(days, Carrier, clocks, (handOverHour, task.Rules.DoorstepHours, isDepot));

    /// <summary>What the forecasts leave open; where nothing, the ranges are known from here on.</summary>
    public ImmutableArray<ShipReason> Check()
    {
        // The longer wait of the two, so that the depot can be tried.
        var isDepot = Carrier.HasDepot && task.Rules.DoorstepHours < RouteChoices.DepotHours;
        ImmutableArray<ShipReason> open =
        [
            .. ForecastRule.Reasons(
                task,
                Usual(task.Parcel.IsDepotPickUp || isDepot),
                Forecasts,
                Carrier.DayLateChance
            ),
        ];
        if (open.IsEmpty)
        {
            Nodes = ForecastRule.Ranges(Usual(isDepot: false), Forecasts);
        }

        return open;
    }

    /// <summary>How it is packed in a carton with packs.</summary>
    public PackingPlan Plan(Carton carton, Seq<PackUse> packs, DispatchRules? rules = null) =>
        PackingPlanner.Plan(
            new()
            {
                Parcel = task.Parcel,
                Catalog = task.Catalog,
                Rules = rules ?? task.Rules,
                Carton = carton,
                Packs = packs,
                BandLowCelsius = band?.Limits.KeepLow,
                BandHighCelsius = band?.Limits.KeepHigh,
            }
        );
}
