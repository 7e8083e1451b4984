using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>Air left over the floor: mean height and volume.</summary>
public sealed record AirSpace(Figure LayersHeight, Figure AirHeight, Figure Volume)
{
    /// <summary>Inside less layers; pieces of wood and stone take their volume once.</summary>
    public static AirSpace Of(CheckedDesign design, BoxGeometry box, ImmutableArray<FloorLayer> layers)
    {
        var stack =
            box.OpenFloor.Si > 0
                ? Figure
                    .Total([.. layers.Select(l => Mean(l, box))], Unit.Meter.Dimension)
                    .As("mean height of all layers", Unit.Centimeter)
                : Figure.Choice("mean height of all layers", 0, Unit.Centimeter, "there is no floor");
        var filled = Figure
            .Total([.. layers.Select(l => l.Finished)], Unit.Liter.Dimension)
            .As("volume of all layers", Unit.Liter);
        var pieces = Pieces(design);
        var soil = layers.FirstOrDefault(l => l.Kind == LayerKind.Soil)?.Depth;
        var basins = WaterBasins.Taken(WaterBasins.Of(design, box), soil);
        var left = Room(box) - filled - pieces;
        return new AirSpace(
            stack,
            Figure.NotNegative(box.InsideHeight - stack).As("mean height of the air", Unit.Centimeter),
            Figure.NotNegative(basins is null ? left : left - basins).As("volume of the air", Unit.Liter)
        );
    }

    /// <summary>Height of a layer spread over the whole floor.</summary>
    private static Figure Mean(FloorLayer layer, BoxGeometry box) =>
        layer.Kind is LayerKind.Moss or LayerKind.Litter
            ? layer.Depth * (layer.Area / box.OpenFloor)
            : layer.Depth;

    private static Figure Pieces(CheckedDesign design) =>
        Figure
            .Total(
                [
                    .. Enumerable
                        .Range(0, design.Design.Hardscape.Count)
                        .Select(i => HardscapeSize.Volume(design, i)),
                ],
                Unit.Liter.Dimension
            )
            .As("volume of wood and stone", Unit.Liter);

    /// <summary>Inside volume less the background, which may end above the base.</summary>
    private static Figure Room(BoxGeometry box)
    {
        var open = box.OpenFloor * box.InsideHeight;
        return box.BackgroundFrom is { Si: > 0 } from
            ? open + (box.GrossFloor - box.OpenFloor) * Figure.Min(from, box.InsideHeight)
            : open;
    }
}
