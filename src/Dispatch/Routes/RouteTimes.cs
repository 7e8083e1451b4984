using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Routes;

/// <summary>When a parcel is where, UTC.</summary>
public sealed record RouteTimes
{
    private const double HoursOfDay = 24;

    /// <summary>Its days.</summary>
    public required ParcelDays Days { get; init; }

    /// <summary>Hour on the wall at which it is given to the carrier.</summary>
    public required double HandOverHour { get; init; }

    /// <summary>Given to the carrier.</summary>
    public required DateTime HandOver { get; init; }

    /// <summary>Comes to the hub.</summary>
    public required DateTime HubIn { get; init; }

    /// <summary>Leaves the hub on the van that brings it.</summary>
    public required DateTime HubOut { get; init; }

    /// <summary>Brought at the earliest.</summary>
    public required DateTime BroughtFrom { get; init; }

    /// <summary>Brought at the latest.</summary>
    public required DateTime BroughtUntil { get; init; }

    /// <summary>Hours that a late parcel comes later.</summary>
    public required double LateHours { get; init; }

    /// <summary>Hour on the wall of the destination at hand-over.</summary>
    public required double AwayHour { get; init; }

    /// <summary>Longest wait at the door or in the depot, h.</summary>
    public required double WaitHours { get; init; }

    /// <summary>True where it is picked up at the depot.</summary>
    public required bool IsDepot { get; init; }

    /// <summary>Last hour at which a parcel that is not late is on its way, UTC.</summary>
    public DateTime End => BroughtUntil.AddHours(WaitHours);

    /// <summary>Last hour at which a late parcel is on its way, UTC.</summary>
    public DateTime LateEnd => End.AddHours(LateHours);

    /// <summary>Hours of the longest usual journey.</summary>
    public double Hours => (End - HandOver).TotalHours;

    /// <summary>Times of a parcel.</summary>
    /// <param name="days">Its days.</param>
    /// <param name="carrier">Terms of the carrier.</param>
    /// <param name="clocks">Clock of the workshop and of where it goes.</param>
    /// <param name="way">Hour of hand-over, hours at the door, and whether it goes to the depot.</param>
    public static RouteTimes Create(
        ParcelDays days,
        CarrierTerms carrier,
        (PlaceClock Home, PlaceClock Away) clocks,
        (double HandOverHour, double DoorstepHours, bool IsDepot) way
    )
    {
        var handOver = clocks.Home.Utc(days.Leaves, way.HandOverHour);
        var hubHour = carrier.HubFromHour <= way.HandOverHour ? HoursOfDay : 0;
        var hubIn = clocks.Home.Utc(days.Leaves, carrier.HubFromHour + hubHour);
        var from = clocks.Away.Utc(days.Arrives, carrier.DeliversFromHour);
        var until = clocks.Away.Utc(
            days.Arrives,
            Math.Max(carrier.DeliversFromHour, carrier.DeliversUntilHour)
        );
        var extra = Math.Max(0, days.Arrives.DayNumber - days.Leaves.DayNumber - 1);
        var hubOut = hubIn.AddHours(carrier.HubHours + (HoursOfDay * extra));
        hubIn = hubIn < from ? hubIn : from;
        return new()
        {
            Days = days,
            HandOverHour = way.HandOverHour,
            HandOver = handOver,
            HubIn = hubIn,
            HubOut = hubOut < from ? hubOut : from,
            BroughtFrom = from,
            BroughtUntil = until,
            LateHours = HoursOfDay * (days.Late.DayNumber - days.Arrives.DayNumber),
            AwayHour = clocks.Away.Hour(handOver),
            WaitHours = way.IsDepot ? RouteChoices.DepotHours : way.DoorstepHours,
            IsDepot = way.IsDepot,
        };
    }

    /// <summary>Span in which a parcel that is not late is at a place, UTC.</summary>
    /// <param name="node">The place.</param>
    public (DateTime From, DateTime To) At(RouteNode node) =>
        node switch
        {
            RouteNode.Origin => (HandOver, HubIn),
            RouteNode.Hub => (HubIn, HubOut),
            _ => (HubOut, End),
        };
}
