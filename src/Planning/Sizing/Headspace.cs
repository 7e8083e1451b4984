using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;

namespace Litterfall.Planning.Sizing;

/// <summary>Air left over the floor: mean height and volume.</summary>
public sealed record Headspace(Figure LayersHeight, Figure AirHeight, Figure Volume)
{
    /// <summary>Inside less layers; pieces of wood and stone take their volume once.</summary>
    public static Headspace Of(CheckedDesign design, BoxGeometry box, ImmutableArray<FloorLayer> layers)
    {
        var heights = layers
            .Select(l => l.Layer is "moss" or "litter" ? l.Depth * (l.Area / box.OpenFloor) : l.Depth)
            .ToList();
        var stack =
            box.OpenFloor.Si > 0
                ? Figure
                    .Total(heights, Units.Meter.Dimension)
                    .As("mean height of all layers", Units.Centimeter)
                : Figure.Choice("mean height of all layers", 0, Units.Centimeter, "there is no floor");
        var filled = Figure
            .Total([.. layers.Select(l => l.Finished)], Units.Liter.Dimension)
            .As("volume of all layers", Units.Liter);
        var pieces = Pieces(design);
        return new Headspace(
            stack,
            Figure.NotNegative(box.InsideHeight - stack).As("mean height of the air", Units.Centimeter),
            Figure
                .NotNegative(box.OpenFloor * box.InsideHeight - filled - pieces)
                .As("volume of the air", Units.Liter)
        );
    }

    private static Figure Pieces(CheckedDesign design)
    {
        var volumes = new List<Figure>();
        for (var i = 0; i < design.Design.Hardscape.Count; i++)
        {
            var piece = design.Design.Hardscape[i];
            if (piece.Volume is { } v)
            {
                volumes.Add(design.Figure($"hardscape[{i}].volume", "outside volume", v, Units.Liter));
            }
            else if (design.Entry($"hardscape[{i}].material").Figure("envelopeDensity") is { } density)
            {
                volumes.Add(
                    design.Figure(
                        $"hardscape[{i}].mass",
                        "mass of the piece",
                        piece.Mass!.Value,
                        Units.Kilogram
                    ) / density
                );
            }
        }

        return Figure.Total(volumes, Units.Liter.Dimension).As("volume of wood and stone", Units.Liter);
    }
}
