using System.Collections.Immutable;

namespace Litterfall.Running.Correcting;

/// <summary>An input with its band.</summary>
/// <param name="Key">Key, for code.</param>
/// <param name="Name">Name in plain words.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Mean">Mean.</param>
/// <param name="Low">5 of 100 times it is less.</param>
/// <param name="High">5 of 100 times it is more.</param>
public sealed record ParameterBand(
    string Key,
    string Name,
    string Unit,
    double Mean,
    double Low,
    double High
);

/// <summary>Level by the hour with its band, mm over the base.</summary>
/// <param name="Millimeters">Mean.</param>
/// <param name="Low">5 of 100 times it is less.</param>
/// <param name="High">5 of 100 times it is more.</param>
public sealed record LevelBand(
    ImmutableArray<double> Millimeters,
    ImmutableArray<double> Low,
    ImmutableArray<double> High
);

/// <summary>A forecast with its bands.</summary>
/// <param name="Parameters">Inputs.</param>
/// <param name="NextDrain">
/// The first drain after the last reading, days from the start; null where nobody drains it by hand, or where
/// most members do not come to it.
/// </param>
/// <param name="Level">Level, from hour 0 on.</param>
public sealed record CorrectedSide(
    ImmutableArray<ParameterBand> Parameters,
    DayBand? NextDrain,
    LevelBand Level
);

/// <summary>A measurement that would tighten the forecast.</summary>
/// <param name="Kind">Kind of the reading: level, drained, mist, weight, air.</param>
/// <param name="At">When.</param>
/// <param name="Why">What to do and why, in plain words.</param>
/// <param name="NarrowsPercent">
/// By how much the band of the next drain, or of the level, would narrow, %.
/// </param>
public sealed record MeasurementWish(string Kind, DateTime At, string Why, double NarrowsPercent);

/// <summary>What is asked of a correction.</summary>
/// <param name="Members">Members of the ensemble.</param>
/// <param name="Seed">Seed.</param>
/// <param name="Days">Days from the start; 0 for sixty after the last reading.</param>
public sealed record CorrectionWish(int Members = 64, int Seed = 1, int Days = 0);

/// <summary>A forecast before and after its readings.</summary>
public sealed record TankCorrection
{
    /// <summary>What was asked.</summary>
    public required CorrectionWish Wish { get; init; }

    /// <summary>Day 0.</summary>
    public required DateOnly First { get; init; }

    /// <summary>Days that were run.</summary>
    public required int Days { get; init; }

    /// <summary>Without the readings, but with what was drawn off.</summary>
    public required CorrectedSide Before { get; init; }

    /// <summary>With them.</summary>
    public required CorrectedSide After { get; init; }

    /// <summary>How many readings there were.</summary>
    public required int Readings { get; init; }

    /// <summary>What was read, as it counted.</summary>
    public required ImmutableArray<ReadingSight> Sights { get; init; }

    /// <summary>What to measure next; null where nothing helps.</summary>
    public required MeasurementWish? Next { get; init; }

    /// <summary>What was learned, in plain words.</summary>
    public required ImmutableArray<string> Learned { get; init; }

    /// <summary>What was no evidence, and why.</summary>
    public required ImmutableArray<string> Ignored { get; init; }

    /// <summary>Members that came out.</summary>
    public required int Members { get; init; }
}
