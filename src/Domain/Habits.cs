using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>What the keeper does and how often.</summary>
[Means("What the keeper does and how often.")]
public sealed record Habits
{
    /// <summary>Looks at the level every.</summary>
    [Means("How often the water level is looked at.")]
    public Typed<Duration>? LevelCheck { get; init; }

    /// <summary>Feeds every.</summary>
    [Means("How often the animals are fed.")]
    public Typed<Duration>? Feeding { get; init; }

    /// <summary>Away at a stretch.</summary>
    [Means("Longest time nobody is there.")]
    public Typed<Duration>? Away { get; init; }

    /// <summary>Hand misting per day.</summary>
    [Means("Water misted by hand per day.")]
    public Typed<Volume>? HandMist { get; init; }

    /// <summary>Water.</summary>
    [Means("Water used for misting.")]
    public MistWater? Water { get; init; }
}
