using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>An animal.</summary>
[Means("An animal the box is for.")]
public sealed record Resident
{
    /// <summary>Catalog animal.</summary>
    [Key("animal"), Means("Animal."), Names(EntryKind.Animal)]
    public required string Kind { get; init; }

    /// <summary>Count.</summary>
    [Means("How many per box."), Whole(0, 1000)]
    public required int Count { get; init; }

    /// <summary>Males among them.</summary>
    [Means("How many of them are males, where the sexes are known."), Whole(0, 1000)]
    public int? Males { get; init; }

    /// <summary>Females among them.</summary>
    [Means("How many of them are females, where the sexes are known."), Whole(0, 1000)]
    public int? Females { get; init; }

    /// <summary>Locality or line.</summary>
    [Means("Locality or breeding line.")]
    public string? Line { get; init; }

    /// <summary>Origin.</summary>
    [Means("captive-bred, farm-bred or wild-caught.")]
    public AnimalOrigin? Origin { get; init; }

    /// <summary>Papers.</summary>
    [Means("held when proof of legal origin is on file, missing when it is not.")]
    public PaperState? Papers { get; init; }

    /// <summary>Time in quarantine.</summary>
    [Means("How long they have been in quarantine.")]
    public Typed<Duration>? Quarantined { get; init; }

    /// <summary>Swab for chytrid fungus and ranavirus.</summary>
    [Means("Result of the swab for chytrid fungus and ranavirus.")]
    public TestResult? Swab { get; init; }
}

/// <summary>Where an animal comes from.</summary>
public enum AnimalOrigin
{
    /// <summary>Captive bred.</summary>
    CaptiveBred,

    /// <summary>Farm bred.</summary>
    FarmBred,

    /// <summary>Wild caught.</summary>
    WildCaught,
}

/// <summary>State of the papers of an animal.</summary>
public enum PaperState
{
    /// <summary>Proof of legal origin is on file.</summary>
    Held,

    /// <summary>Proof of legal origin is missing.</summary>
    Missing,
}

/// <summary>Result of a pathogen test.</summary>
public enum TestResult
{
    /// <summary>Negative.</summary>
    Clear,

    /// <summary>Not back yet.</summary>
    Pending,

    /// <summary>Positive.</summary>
    Positive,
}
