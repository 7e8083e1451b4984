using Litterfall.Documents.Drawings;
using Litterfall.Documents.Shapes;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Views;

/// <summary>Numbers of plants and letters of wood and stone, as the lists have them.</summary>
internal static class Symbols
{
    private const double Apart = 5.4;

    private static readonly (double X, double Y)[] Around =
    [
        (0, 0),
        (1.02, 0),
        (-1.02, 0),
        (0, -1.02),
        (0, 1.02),
        (1.02, -1.02),
        (-1.02, -1.02),
        (1.02, 1.02),
        (-1.02, 1.02),
    ];

    /// <summary>A number in a circle.</summary>
    private static void Balloon(Sketch sketch, Spot middle, int number)
    {
        sketch.Rings([new Ring(middle, number > 9 ? 2.6 : 2.1)], new Pen(Tone.Leaf, 0.3), Tone.Paper);
        sketch.Text(middle.Moved(0, 1.15), FormattableString.Invariant($"{number}"), 9, Align.Middle);
    }

    /// <summary>
    /// The nearest place that is free of other numbers and letters; null where all are taken and the same
    /// stands
    /// there already.
    /// </summary>
    /// <param name="at">Where it would be.</param>
    /// <param name="name">The number or letter.</param>
    /// <param name="taken">Those there already, each with its place; takes this one too.</param>
    public static Spot? Free(Spot at, string name, List<(Spot At, string Name)> taken)
    {
        foreach (var (dx, dy) in Around)
        {
            var there = at.Moved(dx * Apart, dy * Apart);
            if (
                taken.TrueForAll(t =>
                    Math.Abs(t.At.X - there.X) > Apart || Math.Abs(t.At.Y - there.Y) > Apart
                )
            )
            {
                taken.Add((there, name));
                return there;
            }
        }

        if (taken.Exists(t => t.Name == name))
        {
            return null;
        }

        taken.Add((at, name));
        return at;
    }

    /// <summary>The plants of a scene by their numbers.</summary>
    /// <param name="sketch">Takes them.</param>
    /// <param name="scene">The scene.</param>
    /// <param name="place">Where the number of a plant would be.</param>
    /// <param name="taken">Numbers and letters there already.</param>
    public static void Numbers(
        Sketch sketch,
        Scene scene,
        Func<Specimen, Spot> place,
        List<(Spot At, string Name)> taken
    )
    {
        foreach (var plant in scene.Specimens)
        {
            sketch.Key = plant.Spot.Key;
            var name = FormattableString.Invariant($"{plant.Spot.Number}");
            if (Free(place(plant), name, taken) is { } at)
            {
                Balloon(sketch, at, plant.Spot.Number);
            }
        }
    }

    /// <summary>The pieces of a scene by their letters.</summary>
    /// <param name="sketch">Takes them.</param>
    /// <param name="scene">The scene.</param>
    /// <param name="place">Where the letter of a piece would be.</param>
    /// <param name="taken">Numbers and letters there already.</param>
    public static void Letters(
        Sketch sketch,
        Scene scene,
        Func<PieceSpot, Spot> place,
        List<(Spot At, string Name)> taken
    )
    {
        foreach (var piece in scene.Pieces)
        {
            sketch.Key = piece.Key;
            var letter = SectionView.Letter(piece.Number);
            if (Free(place(piece), $"{letter}", taken) is { } at)
            {
                Tag(sketch, at, letter);
            }
        }
    }

    /// <summary>A letter in a square: wood and stone.</summary>
    public static void Tag(Sketch sketch, Spot middle, char letter)
    {
        sketch.Rectangle(middle.Moved(-2, -2), 4, 4, new Pen(Tone.Earth, 0.3), Tone.Paper);
        sketch.Text(middle.Moved(0, 1.15), letter.ToString(), 9, Align.Middle);
    }
}
