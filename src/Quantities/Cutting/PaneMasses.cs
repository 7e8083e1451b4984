using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>Masses of lid, doors and shelves as they are cut.</summary>
public static class PaneMasses
{
    /// <summary>The loose panes of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="cuts">Its parts to cut.</param>
    public static LoosePanes Of(CheckedDesign design, BoxGeometry box, IReadOnlyList<CutPart> cuts)
    {
        var missing = ImmutableArray.CreateBuilder<string>();
        var doors = DoorPanes.Of(design, box);
        if (design.Design.Box.Doors?.Kind is not null && doors?.Mass is null)
        {
            missing.Add("the doors (no thickness or no density)");
        }

        var shelves = ShelfPanes.Of(design, box);
        if (shelves.Any(s => s.Mass is null))
        {
            missing.Add("a shelf inside (no density in the library)");
        }

        var weighed = shelves.Select(s => s.Mass).OfType<Figure>().ToArray();
        return new LoosePanes(LidMass.Of(design, box, cuts))
        {
            Doors = doors?.Mass is { } one
                ? (Figure.Number(doors.Count) * one).As("mass of the doors", Unit.Kilogram)
                : null,
            DoorOpening = doors is null
                ? null
                : (box.InsideLength * doors.OpeningHeight).As("opening of the doors", Unit.SquareCentimeter),
            Shelves =
                weighed.Length == 0
                    ? null
                    : Figure
                        .Total(weighed, Unit.Kilogram.Dimension)
                        .As("mass of the shelves inside", Unit.Kilogram),
            Missing = missing.ToImmutable(),
        };
    }
}
