using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Cultures;

/// <summary>Temperature of a shelf as it was read, from a day on.</summary>
/// <param name="Day">Day; it holds until the next reading.</param>
/// <param name="Celsius">Mean of the day, °C.</param>
public sealed record ShelfReading(DateOnly Day, double Celsius);

/// <summary>A rack on which cultures stand: boards, places on each, and how warm it is.</summary>
public sealed record CultureShelf
{
    /// <summary>Own key.</summary>
    public required string Key { get; init; }

    /// <summary>As people call it.</summary>
    public required string Name { get; init; }

    /// <summary>Temperature while nobody reads it, °C.</summary>
    public required double Celsius { get; init; }

    /// <summary>Temperatures that were read, oldest first.</summary>
    public Seq<ShelfReading> Readings { get; init; } = [];

    /// <summary>Boards, counted from the floor.</summary>
    public int Boards { get; init; } = 3;

    /// <summary>Places on a board, counted from the left.</summary>
    public int PlacesPerBoard { get; init; } = 8;

    /// <summary>Width between the sides, mm.</summary>
    public double WidthMillimeters { get; init; } = 900;

    /// <summary>Clear height between boards, mm.</summary>
    public double GapMillimeters { get; init; } = 240;

    /// <summary>Mean temperature of a day, °C: the last reading up to it, else what the shelf usually
    /// has.</summary>
    /// <param name="day">The day.</param>
    public double CelsiusOn(DateOnly day) =>
        Readings.Where(r => r.Day <= day).OrderBy(r => r.Day).LastOrDefault()?.Celsius ?? Celsius;
}
