using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Tanks;

/// <summary>A rack in a room; lengths in m, counted from the room's front left corner.</summary>
public sealed record TankRack
{
    /// <summary>Letter or name: "A".</summary>
    public required string Name { get; init; }

    /// <summary>Left edge, m.</summary>
    public required double LeftMeters { get; init; }

    /// <summary>Front edge, m.</summary>
    public required double FrontMeters { get; init; }

    /// <summary>Length along the wall, m.</summary>
    public required double LengthMeters { get; init; }

    /// <summary>Depth, m.</summary>
    public required double DepthMeters { get; init; }

    /// <summary>Height of each shelf over the floor, m, the lowest first.</summary>
    public Seq<double> ShelfMeters { get; init; } = [];

    /// <summary>Tanks side by side on a shelf.</summary>
    public int Slots { get; init; } = 1;
}

/// <summary>A room with tanks.</summary>
public sealed record TankRoom
{
    /// <summary>Its key.</summary>
    public required string Key { get; init; }

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Length from left to right, m.</summary>
    public required double LengthMeters { get; init; }

    /// <summary>Depth from front to back, m.</summary>
    public required double DepthMeters { get; init; }

    /// <summary>The door's middle, m from the left on the front wall.</summary>
    public double DoorMeters { get; init; }

    /// <summary>Racks in walking order.</summary>
    public Seq<TankRack> Racks { get; init; } = [];

    /// <summary>
    /// Zone of the world's time zones, as the time zone database names it: "Europe/Berlin".
    /// </summary>
    public string TimeZone { get; init; } = "";

    /// <summary>What the room's heating or cooling is set to, °C; null where nobody said.</summary>
    public double? SetCelsius { get; init; }
}
