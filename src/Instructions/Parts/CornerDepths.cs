using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Parts;

/// <summary>A depth or height in meters at the four corners of the floor, seen from the front.</summary>
public sealed record Corners(Figure FrontLeft, Figure FrontRight, Figure BackLeft, Figure BackRight)
{
    /// <summary>The same at all four.</summary>
    public static Corners Level(Figure depth) => new(depth, depth, depth, depth);

    /// <summary>Applies a sum to each corner.</summary>
    public Corners With(Func<Figure, string, Figure> change) =>
        new(
            change(FrontLeft, "front left"),
            change(FrontRight, "front right"),
            change(BackLeft, "back left"),
            change(BackRight, "back right")
        );

    /// <summary>True when the four differ by less than a tenth of a millimeter.</summary>
    public bool IsLevel
    {
        get
        {
            double[] all = [FrontLeft.Si, FrontRight.Si, BackLeft.Si, BackRight.Si];
            return all.Max() - all.Min() < 1e-4;
        }
    }
}

/// <summary>One layer at the corners.</summary>
/// <param name="Kind">Which layer.</param>
/// <param name="Name">Name of its material; "raised floor" where there is none.</param>
/// <param name="Depth">Its depth as settled, where it lies.</param>
/// <param name="Poured">Depth to pour before it settles; null for layers that do not.</param>
/// <param name="Top">Height of its upper surface over the base glass, as settled.</param>
public sealed record LayerCorners(LayerKind Kind, string Name, Corners Depth, Corners? Poured, Corners Top)
{
    /// <summary>Its word.</summary>
    public string Layer => Kind.Word();

    /// <summary>Share of the floor it covers; null when it covers all of it.</summary>
    public Figure? Cover { get; init; }
}

/// <summary>
/// Depths and running heights of the layers at the corners of the floor between the backgrounds. Steps of a
/// stepped soil run from left to right, so the left corners belong to the first and the right to the last.
/// A layer that covers only part of the floor counts where it lies.
/// </summary>
public static class CornerDepths
{
    /// <summary>The layers from the base up.</summary>
    public static ImmutableArray<LayerCorners> Of(DesignNumbers numbers)
    {
        var rows = ImmutableArray.CreateBuilder<LayerCorners>(numbers.Layers.Length);
        Corners? below = null;
        foreach (var layer in numbers.Layers)
        {
            var isSoil = layer.Kind == LayerKind.Soil;
            var depth = isSoil ? Soil(numbers.Design) : Corners.Level(layer.Depth);
            var top = Above(below, depth, layer.Layer);
            rows.Add(
                new LayerCorners(
                    layer.Kind,
                    layer.Material?.Name ?? "raised floor",
                    depth,
                    isSoil ? Poured(numbers.Design, depth) : null,
                    top
                )
                {
                    Cover = Cover(numbers.Design, layer.Kind),
                }
            );
            below = top;
        }

        return rows.ToImmutable();
    }

    /// <summary>Depths of the settled soil at the corners.</summary>
    public static Corners Soil(CheckedDesign design)
    {
        var soil = design.Design.Floor.Soil!;
        if (soil.Zones.Count == 0)
        {
            var whole = SoilDepths.Of(design, soil);
            return new Corners(whole.Front, whole.Front, whole.Back, whole.Back);
        }

        var (left, right) = (SoilDepths.Zone(design, 0), SoilDepths.Zone(design, soil.Zones.Count - 1));
        return new Corners(left.Front, right.Front, left.Back, right.Back);
    }

    /// <summary>A depth before settling: depth ÷ (1 − settling).</summary>
    public static Figure BeforeSettling(CheckedDesign design, Figure depth, string where) =>
        (depth / (Figure.Number(1) - FloorLayers.Settling(design))).As(
            $"soil depth as poured, {where}",
            Unit.Centimeter
        );

    private static Corners Poured(CheckedDesign design, Corners depth) =>
        depth.With((d, where) => BeforeSettling(design, d, where));

    private static Corners Above(Corners? below, Corners depth, string layer)
    {
        if (below is null)
        {
            return depth;
        }

        Figure Sum(Figure lower, Figure own, string where) =>
            (lower + own).As($"top of the {layer} over the base, {where}", Unit.Centimeter);
        return new Corners(
            Sum(below.FrontLeft, depth.FrontLeft, "front left"),
            Sum(below.FrontRight, depth.FrontRight, "front right"),
            Sum(below.BackLeft, depth.BackLeft, "back left"),
            Sum(below.BackRight, depth.BackRight, "back right")
        );
    }

    private static Figure? Cover(CheckedDesign design, LayerKind layer)
    {
        var typed = layer switch
        {
            LayerKind.Moss => design.Design.Floor.Moss?.Cover,
            LayerKind.Litter => design.Design.Floor.Litter?.Cover,
            _ => null,
        };
        return typed is { Si: < 1 } share
            ? design.Figure($"floor.{layer.Word()}.cover", "covered share", share, Unit.Percent)
            : null;
    }
}
