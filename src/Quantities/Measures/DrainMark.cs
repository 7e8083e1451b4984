using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Measures;

/// <summary>The highest water level that is allowed, in meters over the base glass.</summary>
public static class DrainMark
{
    /// <summary>What the level keeps from the barrier.</summary>
    public static readonly Figure BelowBarrier = Figure.Given(
        "clearance of the water below the barrier",
        0.01,
        Unit.Centimeter,
        Citation.Habit("the water stays at least 1 cm below the barrier")
    );

    /// <summary>Drainage depth less the clearance, not below 0; null without a drainage layer.</summary>
    public static Figure? Of(ImmutableArray<FloorLayer> layers) =>
        layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage) is { } layer ? Of(layer) : null;

    /// <summary>Depth of a drainage layer less the clearance, not below 0.</summary>
    public static Figure Of(FloorLayer drainage) =>
        Figure.NotNegative(drainage.Depth - BelowBarrier).As("highest water level", Unit.Millimeter);

    /// <summary>
    /// True where someone has to draw the water off: no drain, a siphon, or a drain without a height that
    /// keeps the level.
    /// </summary>
    public static bool IsDrawnOff(Design design) =>
        design.Drain is null or { Kind: DrainKind.Siphon } or { Height: null };
}
