using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Scheduling.Cases;

/// <summary>An order of a case; days are counted from day 0, a Monday.</summary>
public sealed record CaseOrder
{
    /// <summary>Its number.</summary>
    public required int Id { get; init; }

    /// <summary>First day on which its plants can be here.</summary>
    public required int Release { get; init; }

    /// <summary>Day on which it is to be in hand.</summary>
    public required int Due { get; init; }

    /// <summary>Days of quarantine.</summary>
    public required int QuarantineDays { get; init; }

    /// <summary>Days of grow-in.</summary>
    public required int GrowInDays { get; init; }

    /// <summary>Hours of planting, on one day.</summary>
    public required double PlantHours { get; init; }

    /// <summary>Hours of packing, on one day.</summary>
    public required double PackHours { get; init; }

    /// <summary>Places that its plants take in quarantine.</summary>
    public required int QuarantinePlaces { get; init; }

    /// <summary>Places that it takes on the bench.</summary>
    public required int BenchPlaces { get; init; }

    /// <summary>How much a day of being late counts.</summary>
    public required int Weight { get; init; }
}

/// <summary>
/// Orders that share hands, bench and quarantine. Work is on Monday to Friday, parcels leave on Monday to
/// Wednesday.
/// </summary>
public sealed record ShopCase
{
    /// <summary>Days that are planned; all work lies in them.</summary>
    public required int HorizonDays { get; init; }

    /// <summary>Numbers of the days without work.</summary>
    public Seq<int> Holidays { get; init; } = [];

    /// <summary>Working days a parcel travels.</summary>
    public required int TransitWorkDays { get; init; }

    /// <summary>Hours of work on a day.</summary>
    public required double StaffHours { get; init; }

    /// <summary>Places on the bench.</summary>
    public required int BenchPlaces { get; init; }

    /// <summary>Places in quarantine.</summary>
    public required int QuarantinePlaces { get; init; }

    /// <summary>The orders.</summary>
    public required Seq<CaseOrder> Orders { get; init; }

    /// <summary>Whether there is work on a day.</summary>
    public bool IsWorkDay(int day) => day % 7 < 5 && !Holidays.Contains(day);

    /// <summary>Whether parcels leave on a day.</summary>
    public bool IsShipDay(int day) => day % 7 < 3 && !Holidays.Contains(day);

    /// <summary>Day on which a parcel arrives that leaves on a day.</summary>
    public int Arrival(int ship)
    {
        var day = ship;
        for (var left = TransitWorkDays; left > 0;)
        {
            day++;
            left -= IsWorkDay(day) ? 1 : 0;
        }

        return day;
    }

    /// <summary>
    /// The last day on which plants can come so that they are free on a day; below 0 for none.
    /// </summary>
    /// <param name="order">The order.</param>
    /// <param name="plant">Day of planting.</param>
    public int QuarantineStart(CaseOrder order, int plant)
    {
        var day = plant - order.QuarantineDays;
        while (day >= 0 && !IsWorkDay(day))
        {
            day--;
        }

        return day;
    }
}

/// <summary>Days of an order as they are planned.</summary>
/// <param name="Order">The order.</param>
/// <param name="QuarantineStart">Its plants come.</param>
/// <param name="Plant">It is planted.</param>
/// <param name="Ship">It is packed and leaves.</param>
/// <param name="Arrive">It arrives.</param>
public sealed record CaseDays(CaseOrder Order, int QuarantineStart, int Plant, int Ship, int Arrive)
{
    /// <summary>Days it comes late.</summary>
    public int Tardy => Math.Max(0, Arrive - Order.Due);
}

/// <summary>The days of all orders.</summary>
/// <param name="Orders">One for each order.</param>
/// <param name="Objective">100 × weight × days late + days of places.</param>
/// <param name="Bound">No plan has less.</param>
/// <param name="Blocking">What limits which order, in words.</param>
public sealed record CasePlan(Seq<CaseDays> Orders, long Objective, long Bound, Seq<string> Blocking)
{
    /// <summary>True where no better plan exists.</summary>
    public bool IsProved => Bound >= Objective;
}

/// <summary>Why there is no plan.</summary>
/// <param name="Order">Index of the order at fault; null where it is none alone.</param>
/// <param name="Key">Entry of the case or of the order at fault.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Expected">What would do.</param>
public sealed record CaseRefusal(int? Order, string Key, string Message, string Expected);
