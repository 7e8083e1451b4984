using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Schedule;

/// <summary>A day on which something rests.</summary>
/// <param name="Day">The day.</param>
/// <param name="Name">As people call it.</param>
public sealed record Holiday(DateOnly Day, string Name)
{
    /// <summary>True where the workshop is closed.</summary>
    public bool IsClosed { get; init; } = true;

    /// <summary>True where no carrier fetches or brings a parcel.</summary>
    public bool IsWithoutCarrier { get; init; } = true;

    /// <summary>Last hour at which parcels leave on the day before; null for a whole day.</summary>
    public int? CarrierEndsEveAt { get; init; }
}

/// <summary>Somebody who works here.</summary>
/// <param name="Name">As the bench knows who writes.</param>
public sealed record Worker(string Name)
{
    /// <summary>Hours of work on Monday to Sunday.</summary>
    public Seq<double> Hours { get; init; } = [6, 6, 6, 6, 6, 0, 0];

    /// <summary>Keys of the stages this person usually does; empty for all.</summary>
    public Seq<string> Stages { get; init; } = [];

    /// <summary>First and last days away.</summary>
    public Seq<DaysAway> Away { get; init; } = [];
}

/// <summary>Days on which somebody does not work.</summary>
/// <param name="First">First day.</param>
/// <param name="Last">Last day, included.</param>
public sealed record DaysAway(DateOnly First, DateOnly Last);

/// <summary>When the workshop works and ships, who works, and how many places there are.</summary>
public sealed record ShopCalendar
{
    /// <summary>Key under which the one record is kept.</summary>
    public const string Key = "calendar";

    /// <summary>Days of the week on which there is work.</summary>
    public Seq<DayOfWeek> WorkDays { get; init; } =
    [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];

    /// <summary>Days of the week on which live goods leave.</summary>
    public Seq<DayOfWeek> ShipDays { get; init; } =
    [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday];

    /// <summary>Holidays, here and where goods go.</summary>
    public Seq<Holiday> Holidays { get; init; } = [];

    /// <summary>Working days a parcel travels.</summary>
    public int TransitDays { get; init; } = 1;

    /// <summary>Whole days kept clear between ready and the next work.</summary>
    public int ClearDays { get; init; }

    /// <summary>Who works here.</summary>
    public Seq<Worker> Workers { get; init; } = [];

    /// <summary>Places on the shelf where planted tanks grow in.</summary>
    public int BenchPlaces { get; init; } = 14;

    /// <summary>Places for plants in quarantine, one for the plants of a tank.</summary>
    public int QuarantinePlaces { get; init; } = 8;

    /// <summary>Places where tanks stand filled to see whether they leak.</summary>
    public int LeakTestPlaces { get; init; } = 2;
}
