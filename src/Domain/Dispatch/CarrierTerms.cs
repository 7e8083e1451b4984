using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>
/// A service of a carrier as the workshop knows it. Its rules are the carrier's own: they are dated and asked
/// for again.
/// </summary>
public sealed record CarrierTerms
{
    /// <summary>Own key.</summary>
    public required string Key { get; init; }

    /// <summary>As the workshop calls it: "overnight".</summary>
    public required string Name { get; init; }

    /// <summary>Days it travels, counted in days on which the carrier works.</summary>
    public int TransitDays { get; init; } = 1;

    /// <summary>Days of the week on which it brings parcels.</summary>
    public Seq<DayOfWeek> ArrivalDays { get; init; } =
    [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];

    /// <summary>Local hour by which it is handed over.</summary>
    public double HandOverHour { get; init; } = 17;

    /// <summary>Local hour from which it brings parcels.</summary>
    public double DeliversFromHour { get; init; } = 9;

    /// <summary>Local hour until which it brings parcels.</summary>
    public double DeliversUntilHour { get; init; } = 12;

    /// <summary>Local hour at which it reaches the hub in the night.</summary>
    public double HubFromHour { get; init; } = 22;

    /// <summary>Hours that it lies in the hub.</summary>
    public double HubHours { get; init; } = 5;

    /// <summary>Chance of one working day more, 0 to 1.</summary>
    public double DayLateChance { get; init; } = 0.03;

    /// <summary>True where a depot keeps parcels to be picked up.</summary>
    public bool HasDepot { get; init; } = true;

    /// <summary>Whether it takes live animals of these groups; null while nobody asked.</summary>
    public bool? TakesAnimals { get; init; }

    /// <summary>Day on which its rules were read last; null for never.</summary>
    public DateOnly? RulesReadOn { get; init; }

    /// <summary>Coldest forecast at which it guarantees arrival alive, °C; null where it says none.</summary>
    public double? GuaranteedFromCelsius { get; init; }

    /// <summary>Warmest forecast at which it guarantees arrival alive, °C; null where it says none.</summary>
    public double? GuaranteedToCelsius { get; init; }

    /// <summary>Price of a parcel, net; null where nobody entered it.</summary>
    public decimal? Price { get; init; }

    /// <summary>What to remember of its rules.</summary>
    public string Note { get; init; } = "";
}
