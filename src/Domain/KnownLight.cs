using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>What is known of the light inside.</summary>
[Means("What is known of the light inside.")]
public sealed record KnownLight
{
    /// <summary>Light past dirt and lime.</summary>
    [Means("Share of the light that dirt and lime on the lid let through; 95 % if left out.")]
    public Typed<Share>? Clean { get; init; }

    /// <summary>Light past drops.</summary>
    [Means("Share of the light that drops under the lid let through; 97 % on glass, 85 % on plastic.")]
    public Typed<Share>? Drops { get; init; }

    /// <summary>A reading.</summary>
    [Means("A reading of a lux meter with all lamps at full light; it scales the whole map.")]
    public LightReading? Reading { get; init; }
}

/// <summary>A reading of a lux meter inside the box, facing up.</summary>
[Means("A reading of a lux meter inside the box, facing up.")]
public sealed record LightReading
{
    /// <summary>Where.</summary>
    [Means("Where the meter lay, facing up.")]
    public required Place At { get; init; }

    /// <summary>What it showed.</summary>
    [Means("What it showed.")]
    public required Typed<Illuminance> Lux { get; init; }

    /// <summary>Uncertainty of the meter.</summary>
    [Means("How far the meter may be off; 8 % if left out.")]
    public Typed<Share>? Meter { get; init; }
}
