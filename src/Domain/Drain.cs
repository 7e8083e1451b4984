using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>How water is taken out.</summary>
[Means("How water is taken out.")]
public sealed record Drain
{
    /// <summary>Kind.</summary>
    [Means("siphon, bulkhead or standpipe.")]
    public required DrainKind Kind { get; init; }

    /// <summary>Height over the base inside.</summary>
    [Means("Height of the outlet above the base inside.")]
    public Typed<Length>? Height { get; init; }

    /// <summary>Diameter of the hole.</summary>
    [Means("Diameter of the hole to be drilled.")]
    public Typed<Length>? Diameter { get; init; }

    /// <summary>Side of the hole.</summary>
    [Means("The side it is drilled in; the back if left out.")]
    public Side? Side { get; init; }

    /// <summary>Distance of the middle of the hole along that side.</summary>
    [Means(
        "Distance of its middle from the left end of the front or back, or from the front end of a side wall."
    )]
    public Typed<Length>? Along { get; init; }
}

/// <summary>Ways to take water out.</summary>
public enum DrainKind
{
    /// <summary>A hose through which water is drawn by hand.</summary>
    Siphon,

    /// <summary>A drilled fitting in the wall or base.</summary>
    Bulkhead,

    /// <summary>A pipe that keeps a fixed level.</summary>
    Standpipe,
}
