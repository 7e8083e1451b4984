using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>Where a hole for a hose or cable is in its wall; lengths in meters.</summary>
internal static class PassageSpot
{
    private static readonly Figure FromTop = Figure.Choice(
        "middle of a hole below the top",
        6,
        Unit.Centimeter,
        "above soil and plants, clear of lid and ledge, where the design does not say"
    );

    private static readonly Figure FromEnd = Figure.Choice(
        "middle of a hole from the end of its wall",
        6,
        Unit.Centimeter,
        "out of sight in a corner, where the design does not say"
    );

    /// <summary>Its middle along the wall and over the base inside, its diameter, what it is for.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="index">Which passage.</param>
    public static (Figure Along, Figure Height, Figure Diameter, string For, string Key) InWall(
        CheckedDesign design,
        BoxGeometry box,
        int index
    )
    {
        var passage = design.Design.Passages[index];
        var path = FormattableString.Invariant($"passages[{index}]");
        return (
            passage.Along is { } along
                ? design.Figure($"{path}.along", "hole along its wall", along, Unit.Millimeter)
                : (FromEnd * Figure.Number(index + 1)).As("hole along its wall", Unit.Millimeter),
            passage.Height is { } height
                ? design.Figure($"{path}.height", "height of the hole", height, Unit.Millimeter)
                : Figure.NotNegative(box.InsideHeight - FromTop).As("height of the hole", Unit.Millimeter),
            design.Figure($"{path}.hole", "width of the hole", passage.Hole, Unit.Millimeter),
            passage.For,
            path
        );
    }
}
