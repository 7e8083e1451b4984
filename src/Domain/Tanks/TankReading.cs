namespace Litterfall.Domain.Tanks;

/// <summary>What was measured.</summary>
public enum ReadingKind
{
    /// <summary>Water over the base, mm.</summary>
    Level,

    /// <summary>Water taken out at that time, mL.</summary>
    Drained,

    /// <summary>What one nozzle gives, mL a minute.</summary>
    Mist,

    /// <summary>Weight of the whole tank, kg.</summary>
    Weight,

    /// <summary>Air: °C, and relative humidity beside it.</summary>
    Air,

    /// <summary>Drops out of a squeezed fist of soil.</summary>
    Squeeze,
}

/// <summary>A reading of a tank on the design's own calendar.</summary>
public sealed record TankReading
{
    /// <summary>When, by the clock of the tank's room.</summary>
    public required DateTime At { get; init; }

    /// <summary>What.</summary>
    public required ReadingKind Kind { get; init; }

    /// <summary>Amount in the unit of its kind; null where only the humidity was read.</summary>
    public double? Amount { get; init; }

    /// <summary>Relative humidity, %; null where it was not read.</summary>
    public double? HumidityPercent { get; init; }
}
