using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Doors of a front opening.</summary>
[Means("Doors of a front opening.")]
public sealed record Doors
{
    /// <summary>Number of panes.</summary>
    [Means("How many door panes."), Whole(1, 8)]
    public int Count { get; init; } = 2;

    /// <summary>Widest gap.</summary>
    [Means("Widest gap between the panes, or between pane and frame, when closed.")]
    public Typed<Length>? Gap { get; init; }
}
