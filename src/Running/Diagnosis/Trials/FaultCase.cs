using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.Running.Diagnosis.Trials;

/// <summary>A tank that goes wrong, and what is known of it.</summary>
public sealed record FaultCase
{
    /// <summary>The design, as it was built and set.</summary>
    public required CheckedDesign Design { get; init; }

    /// <summary>Symptoms that were told.</summary>
    public ImmutableArray<Symptom> Seen { get; init; } = [];

    /// <summary>Symptoms that were denied.</summary>
    public ImmutableArray<Symptom> Denied { get; init; } = [];

    /// <summary>Facts.</summary>
    public ImmutableArray<ToldFact> Facts { get; init; } = [];

    /// <summary>Readings by hand, in the order of time.</summary>
    public ImmutableArray<TankReading> Readings { get; init; } = [];

    /// <summary>Channels of a logger in the tank, times by the clock of its room.</summary>
    public ImmutableArray<LogSeries> Series { get; init; } = [];

    /// <summary>Sentences that were not understood.</summary>
    public ImmutableArray<string> Unknown { get; init; } = [];

    /// <summary>True where a fact was told and is so.</summary>
    public bool Is(TankFact fact) => Facts.Any(f => f.Fact == fact && f.IsSo);

    /// <summary>The day of a fact; null for none.</summary>
    public DateOnly? Day(TankFact fact) => Facts.FirstOrDefault(f => f.Fact == fact)?.Day;

    /// <summary>The number of a fact; null for none.</summary>
    public double? Number(TankFact fact) => Facts.FirstOrDefault(f => f.Fact == fact)?.Number;
}
