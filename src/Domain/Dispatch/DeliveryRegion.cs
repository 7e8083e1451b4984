using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>A day on which nothing is brought in a region.</summary>
/// <param name="Day">The day.</param>
/// <param name="Name">As people call it.</param>
public sealed record RestDay(DateOnly Day, string Name)
{
    /// <summary>
    /// Local hour on the day before from which nothing moves; null where the eve is a usual day.
    /// </summary>
    public int? EveEndsAtHour { get; init; }
}

/// <summary>Where parcels come from or go to: its clock, and the days on which nothing is brought.</summary>
public sealed record DeliveryRegion
{
    /// <summary>Own key.</summary>
    public required string Key { get; init; }

    /// <summary>As people call it.</summary>
    public required string Name { get; init; }

    /// <summary>ISO 3166 code of the country whose public holidays count; empty for own days alone.</summary>
    public string Country { get; init; } = "";

    /// <summary>Part of the country with holidays of its own; empty for the whole.</summary>
    public string Part { get; init; } = "";

    /// <summary>Zone of the tz database.</summary>
    public string Zone { get; init; } = "Etc/UTC";

    /// <summary>Own days on which nothing is brought.</summary>
    public Seq<RestDay> Days { get; init; } = [];

    /// <summary>Public holidays on which parcels are brought all the same.</summary>
    public Seq<DateOnly> Worked { get; init; } = [];
}
