using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>
/// Volumes of the floor: area × mean depth less displacement is finished; finished ÷ (1 − settling) is mixed;
/// mixed ÷ mixing yield is loose; loose × (1 + loss) is to buy.
/// </summary>
public static class FloorLayers
{
    private static readonly Figure One = Figure.Number(1);

    /// <summary>The layers from the base up.</summary>
    public static ImmutableArray<FloorLayer> Of(CheckedDesign design, BoxGeometry box)
    {
        var below = DrainageDepth(design);
        var depths = design.Design.Floor.Soil is { } forms ? SoilDepths.Of(design, forms) : null;
        var displaced = Displacement.Of(design, below, depths?.Mean);
        var ground = WaterBasins.Ground(design, box);
        var layers = ImmutableArray.CreateBuilder<FloorLayer>();
        if (below is not null)
        {
            layers.Add(Drainage(design, box, (below, depths?.Mean), displaced));
        }

        if (depths is not null)
        {
            layers.Add(Soil(design, box, depths, displaced, below));
        }

        if (design.Design.Floor.Moss is { } moss)
        {
            layers.Add(Moss(design, ground, moss));
        }

        if (design.Design.Floor.Litter is { } litter)
        {
            layers.Add(Litter(design, ground, litter));
        }

        return layers.ToImmutable();
    }

    /// <summary>Depth of the aggregate, or height of a raised floor; null without either.</summary>
    private static Figure? DrainageDepth(CheckedDesign design) =>
        design.Design.Floor.Drainage switch
        {
            null => null,
            { Raised: { } raised } => design.Figure(
                "floor.drainage.raised",
                "height of the raised floor",
                raised,
                Unit.Centimeter
            ),
            { Depth: var depth } => design.Figure(
                "floor.drainage.depth",
                "drainage depth",
                depth!.Value,
                Unit.Centimeter
            ),
        };

    /// <summary>Aggregate, or the water space under a raised floor, which has no material.</summary>
    private static FloorLayer Drainage(
        CheckedDesign design,
        BoxGeometry box,
        (Figure Below, Figure? Soil) depths,
        Displacement displaced
    )
    {
        var depth = depths.Below;
        var area = LayerArea(box, LayerKind.Drainage, null, depth);
        var sunk = WaterBasins.Sunk(WaterBasins.Of(design, box), depths.Soil, depth);
        var whole = area * depth - displaced.FromDrainage;
        var finished = Figure
            .NotNegative(sunk is null ? whole : whole - sunk)
            .As("drainage volume", Unit.Liter);
        var material = design.Find<AggregateEntry>("floor.drainage.material");
        var loss = Loss(design, "floor.drainage.loss", design.Design.Floor.Drainage!.Loss);
        var layer = Flat(LayerKind.Drainage, depth, area, finished, loss) with { Material = material };
        return layer with
        {
            Mass = Dry(material?.BulkDensity, layer.Loose, "mass of aggregate"),
            DryMass = Dry(material?.BulkDensity, finished, "dry mass of aggregate"),
        };
    }

    /// <summary>Share of depth the soil loses as it settles: as entered, else the recipe's, else
    /// ours.</summary>
    public static Figure Settling(CheckedDesign design) =>
        design.Design.Floor.Soil!.Settling is { } s
            ? design.Figure("floor.soil.settling", "settling", s, Unit.Percent)
            : design.Entry<GroundEntry>("floor.soil.recipe").Settling ?? SizingPolicy.Settling;

    private static FloorLayer Soil(
        CheckedDesign design,
        BoxGeometry box,
        SoilDepths depths,
        Displacement displaced,
        Figure? below
    )
    {
        var soil = design.Design.Floor.Soil!;
        var recipe = design.Entry<GroundEntry>("floor.soil.recipe");
        var under = LayerArea(box, LayerKind.Soil, below, depths.Mean);
        var water = WaterBasins.Area(design, box);
        var area = water is null
            ? under
            : Figure
                .NotNegative(under - water)
                .As("area of the soil beside the water", Unit.SquareCentimeter);
        var gross = water is null
            ? under * depths.Mean
            : under * depths.Mean - WaterBasins.InPlaceOfSoil(design, box);
        var finished = Figure.NotNegative(gross - displaced.FromSoil).As("finished soil", Unit.Liter);
        var settling = Settling(design);
        var yield =
            soil.MixingYield is { } y
                ? design.Figure("floor.soil.mixingYield", "mixing yield", y, Unit.Percent)
            : recipe.Parts.IsDefaultOrEmpty ? recipe.MixingYield ?? SizingPolicy.WholeYield
            : recipe.MixingYield ?? SizingPolicy.MixingYield;
        var mixed = (finished / (One - settling)).As("mixed soil", Unit.Liter);
        var loose = (mixed / yield).As("loose soil parts", Unit.Liter);
        var loss = Loss(design, "floor.soil.loss", soil.Loss);
        var layer = new FloorLayer
        {
            Kind = LayerKind.Soil,
            Material = recipe,
            Depth = depths.Mean,
            FrontDepth = depths.Front,
            BackDepth = depths.Back,
            Highest = depths.Highest,
            Lowest = depths.Lowest,
            Area = area,
            Finished = finished,
            Mixed = mixed,
            Loose = loose,
            ToBuy = (loose * (One + loss)).As("soil parts to buy", Unit.Liter),
        };
        layer = layer with { Components = MixComponents.Of(design.Catalog, layer, loss) };
        var settlings = soil.Settling is null ? recipe.SettlingBand : null;
        var yields = soil.MixingYield is null ? recipe.MixingYieldBand : null;
        if (settlings is not null || yields is not null)
        {
            layer = layer with
            {
                ToBuyLow = ToBuy("least", finished, settlings?.Low ?? settling, yields?.High ?? yield, loss),
                ToBuyHigh = ToBuy("most", finished, settlings?.High ?? settling, yields?.Low ?? yield, loss),
            };
        }

        return SoilWater.Add(design, soil, layer);
    }

    private static Figure ToBuy(string which, Figure finished, Figure settling, Figure yield, Figure loss) =>
        (finished / (One - settling) / yield * (One + loss)).As($"{which} soil parts to buy", Unit.Liter);

    private static FloorLayer Moss(CheckedDesign design, Figure ground, MossLayer moss)
    {
        var depth = design.Figure("floor.moss.depth", "moss depth", moss.Depth, Unit.Centimeter);
        var cover = Cover(design, "floor.moss.cover", moss.Cover);
        var area = (ground * cover).As("area under moss", Unit.SquareCentimeter);
        var finished = (area * depth).As("moss volume", Unit.Liter);
        var material = design.Entry<MossEntry>("floor.moss.material");
        var layer = Flat(
            LayerKind.Moss,
            depth,
            area,
            finished,
            Loss(design, "floor.moss.loss", moss.Loss)
        ) with
        {
            Material = material,
        };
        var squeeze = material.SqueezeWater ?? SizingPolicy.SqueezeWater;
        var water = (finished * squeeze).As("water in the moss at squeeze wetness", Unit.Liter);
        return layer with
        {
            Mass = Dry(material.DryDensity, layer.Loose, "mass of moss"),
            DryMass = Dry(material.DryDensity, finished, "dry mass of moss"),
            SqueezeWater = water,
            WaterToAdd = water,
            SaturatedWater = material.SaturatedWater is { } full
                ? Figure.Max(finished * full, water).As("water in the saturated moss", Unit.Liter)
                : water,
        };
    }

    private static FloorLayer Litter(CheckedDesign design, Figure ground, LeafLitter litter)
    {
        var depth = design.Figure("floor.litter.depth", "loose litter depth", litter.Depth, Unit.Centimeter);
        var cover = Cover(design, "floor.litter.cover", litter.Cover);
        var area = (ground * cover).As("area under litter", Unit.SquareCentimeter);
        var finished = (area * depth).As("loose litter volume", Unit.Liter);
        var material = design.Entry<LitterEntry>("floor.litter.material");
        var layer = Flat(
            LayerKind.Litter,
            depth,
            area,
            finished,
            Loss(design, "floor.litter.loss", litter.Loss)
        ) with
        {
            Material = material,
        };
        return layer with
        {
            Mass = Dry(material.DryDensity, layer.Loose, "mass of leaves"),
            DryMass = Dry(material.DryDensity, finished, "dry mass of leaves"),
        };
    }

    /// <summary>A layer that is neither mixed nor settles.</summary>
    private static FloorLayer Flat(LayerKind kind, Figure depth, Figure area, Figure finished, Figure loss)
    {
        var layer = kind.Word();
        var mixed = (finished / (One - SizingPolicy.NoSettling)).As($"{layer} before settling", Unit.Liter);
        var loose = (mixed / SizingPolicy.WholeYield).As($"loose {layer}", Unit.Liter);
        return new FloorLayer
        {
            Kind = kind,
            Depth = depth,
            FrontDepth = depth,
            BackDepth = depth,
            Highest = depth,
            Lowest = depth,
            Area = area,
            Finished = finished,
            Mixed = mixed,
            Loose = loose,
            ToBuy = (loose * (One + loss)).As($"{layer} to buy", Unit.Liter),
        };
    }

    /// <summary>Floor less what the background covers between the bottom and top of the layer.</summary>
    private static Figure LayerArea(BoxGeometry box, LayerKind kind, Figure? below, Figure depth)
    {
        var layer = kind.Word();
        if (box.BackgroundFrom is not { Si: > 0 } from)
        {
            return box.OpenFloor;
        }

        var bottom = below?.Si ?? 0;
        var share = depth.Si <= 0 ? 0 : Math.Clamp((bottom + depth.Si - from.Si) / depth.Si, 0, 1);
        var height = Figure.Computed(
            $"share of the {layer} depth that the background covers",
            share,
            Dimension.None,
            below is null ? [from, depth] : [from, depth, below]
        );
        return (box.GrossFloor - (box.GrossFloor - box.OpenFloor) * height).As(
            $"area of the {layer}",
            Unit.SquareCentimeter
        );
    }

    private static Figure Cover(CheckedDesign design, string path, Typed<Share>? cover) =>
        cover is { } c ? design.Figure(path, "covered share", c, Unit.Percent) : SizingPolicy.FullCover;

    private static Figure Loss(CheckedDesign design, string path, Typed<Share>? loss) =>
        loss is { } l ? design.Figure(path, "handling loss", l, Unit.Percent) : SizingPolicy.NoLoss;

    private static Figure? Dry(Figure? density, Figure volume, string name) =>
        density is { } d ? (volume * d).As(name, Unit.Kilogram) : null;
}
