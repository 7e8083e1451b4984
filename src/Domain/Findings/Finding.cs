using System.Collections.Immutable;
using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Findings;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Build it only with a reason.</summary>
    Caution,

    /// <summary>Do not build it so.</summary>
    Stop,
}

/// <summary>Whom or what a rule protects.</summary>
public enum Protects
{
    /// <summary>The build itself.</summary>
    Build,

    /// <summary>The animals.</summary>
    Animal,

    /// <summary>People.</summary>
    Person,
}

/// <summary>What a rule found in a design.</summary>
/// <param name="Slug">Its stable name, e.g. "soil-above-sill".</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Protects">Whom or what the rule protects.</param>
/// <param name="Text">One plain sentence.</param>
/// <param name="Measured">What the design has; null where nothing is measured.</param>
/// <param name="Limit">What the rule allows; null where the rule is no limit.</param>
/// <param name="Fix">What would make it disappear.</param>
public sealed record Finding(
    string Slug,
    Severity Severity,
    Protects Protects,
    string Text,
    Figure? Measured,
    Figure? Limit,
    string Fix
)
{
    /// <summary>
    /// Path of the key whose control resolves it, written yet or not, e.g. "lid.latched".
    /// </summary>
    public string Where { get; init; } = "";

    /// <summary>
    /// The key or part the sentence speaks of, e.g. "plants[2]"; it may be resolved elsewhere, at a lamp.
    /// </summary>
    public string About { get; init; } = "";

    /// <summary>Who accepts it and why; null where it is open.</summary>
    public Acceptance? Accepted { get; init; }

    /// <summary>True while nobody accepts it.</summary>
    public bool IsOpen => Accepted is null;

    /// <summary>False for a stop that protects an animal or a person: nobody can accept that.</summary>
    public bool MayBeAccepted => Severity != Severity.Stop || Protects == Protects.Build;

    /// <summary>Source of the rule where it has no numeric limit.</summary>
    public Citation Rule { get; init; } = Citation.OwnDerivation;

    /// <summary>Values of single settings at which it disappears; empty where none was looked for.</summary>
    public ImmutableArray<LeverFix> Levers { get; init; } = [];

    /// <summary>Source of the limit.</summary>
    public Citation Source => Limit?.Origin ?? Rule;

    /// <summary>The weakest provenance among rule, measured value and limit.</summary>
    public Provenance Provenance =>
        new[] { Measured?.Trust, Limit?.Trust, Rule.Provenance }.Max(p => p ?? Provenance.Entered);
}
