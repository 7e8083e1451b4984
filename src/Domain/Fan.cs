using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>A small fan.</summary>
[Means("A small fan, inside or at a vent; behind mesh, out of reach of animals.")]
public sealed record Fan
{
    /// <summary>Free flow.</summary>
    [Means("Free flow by its label, such as 6 m3/h; through mesh four tenths are counted.")]
    public required Typed<Flow> Flow { get; init; }

    /// <summary>What it does.</summary>
    [Means("Stirs the air inside, or blows through a vent.")]
    public FanUse Use { get; init; } = FanUse.Stir;

    /// <summary>Time it goes on.</summary>
    [Means("Time it goes on, as \"09:00\"; all day if left out.")]
    public TimeOnly? On { get; init; }

    /// <summary>Time it goes off.</summary>
    [Means("Time it goes off, as \"09:20\".")]
    public TimeOnly? Off { get; init; }
}

/// <summary>What a fan does.</summary>
public enum FanUse
{
    /// <summary>Moves the air inside.</summary>
    Stir,

    /// <summary>Blows through a vent.</summary>
    Vent,
}
