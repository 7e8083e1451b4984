using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>An ultrasonic fogger.</summary>
[Means("An ultrasonic fogger; its fog is breathed, so pure water and a clean pot.")]
public sealed record Fogger
{
    /// <summary>Water it throws.</summary>
    [Means("Water it throws, measured over an hour, such as 100 mL/h.")]
    public required Typed<Flow> Rate { get; init; }

    /// <summary>Times.</summary>
    [Means("When it fogs, and for how long."), AtMost(PlausibleCounts.Mistings)]
    public Seq<MistTime> Times { get; init; } = [];
}
