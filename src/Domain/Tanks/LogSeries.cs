using System.Collections.Immutable;

namespace Litterfall.Domain.Tanks;

/// <summary>What a channel of a logger measures.</summary>
public enum LogQuantity
{
    /// <summary>Temperature, °C.</summary>
    Temperature,

    /// <summary>Relative humidity, %.</summary>
    Humidity,

    /// <summary>Dew point, °C.</summary>
    DewPoint,

    /// <summary>Air pressure, hPa.</summary>
    Pressure,

    /// <summary>Light, lx or µmol/(m² s) as the file says.</summary>
    Light,

    /// <summary>Something else, in the file's unit.</summary>
    Other,
}

/// <summary>What is wrong with a reading; a reading is marked, never deleted.</summary>
[Flags]
public enum LogMarks
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The same value for so long that the sensor does not answer.</summary>
    Stuck = 1,

    /// <summary>At the end of the sensor's range: it is wet.</summary>
    Saturated = 2,

    /// <summary>Outside what such a sensor can measure.</summary>
    OutOfRange = 4,

    /// <summary>It wanders off from what stands beside it.</summary>
    Drift = 8,

    /// <summary>Its clock was set, or jumps.</summary>
    ClockStep = 16,
}

/// <summary>Readings of one channel in the order of time.</summary>
/// <param name="Place">Tank, or what else it hangs in: "A3", "room", "culture shelf".</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Unit">Unit of the values.</param>
public sealed record LogSeries(string Place, LogQuantity Quantity, string Unit)
{
    /// <summary>Times, UTC ticks, rising.</summary>
    public ImmutableArray<long> Ticks { get; init; } = [];

    /// <summary>Values, as many as times; no number where the file had none.</summary>
    public ImmutableArray<double> Values { get; init; } = [];

    /// <summary>Marks, as many as times.</summary>
    public ImmutableArray<LogMarks> Marks { get; init; } = [];

    /// <summary>Readings.</summary>
    public int Count => Ticks.Length;
}
