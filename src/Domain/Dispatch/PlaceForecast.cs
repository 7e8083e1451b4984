using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>Where on its way a parcel is.</summary>
public enum RouteNode
{
    /// <summary>At the workshop and on the first van.</summary>
    Origin,

    /// <summary>In the sorting hub.</summary>
    Hub,

    /// <summary>On the van that brings it, and at the door.</summary>
    Destination,
}

/// <summary>Air of an hour.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Celsius">Temperature in the shade, °C.</param>
public sealed record ForecastHour(DateTime At, double Celsius);

/// <summary>The forecast of one place of a route, as it was on the day it was taken.</summary>
public sealed record PlaceForecast
{
    /// <summary>Which place of the route.</summary>
    public required RouteNode Node { get; init; }

    /// <summary>Name of the place.</summary>
    public required string Place { get; init; }

    /// <summary>Zone of the tz database that its days count in.</summary>
    public string Zone { get; init; } = "Etc/UTC";

    /// <summary>When it was taken, UTC.</summary>
    public required DateTime TakenAt { get; init; }

    /// <summary>Where it is from, in words: "typed from the weather page", a file's name.</summary>
    public string From { get; init; } = "";

    /// <summary>Hours in the order of time.</summary>
    public required Seq<ForecastHour> Hours { get; init; }
}

/// <summary>A day of a typed forecast.</summary>
/// <param name="Day">Day at the place.</param>
/// <param name="LowCelsius">Coldest, °C.</param>
/// <param name="HighCelsius">Warmest, °C.</param>
public sealed record TypedForecastDay(DateOnly Day, double LowCelsius, double HighCelsius);
