using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Building;

/// <summary>Mixing the soil, filling it and pressing wood into it.</summary>
internal static class SoilSteps
{
    /// <summary>A slope above this can slide without a retainer.</summary>
    private static readonly Figure SteepestFree = Figure.Given(
        "steepest slope that holds by itself",
        25 * Math.PI / 180,
        Unit.Degree,
        Citation.Habit("slopes steeper than 25 to 30 degrees need a retainer")
    );

    /// <summary>Soils that hold less than this at squeeze wetness bind without dripping.</summary>
    private static readonly Figure Dripping = Figure.Choice(
        "share of water below which a handful does not drip",
        20,
        Unit.Percent,
        "between sandy loam, 12 to 16 % by volume, and bark, peat and fiber mixes, 30 to 45 %"
    );

    public static StepGroup? Of(DesignNumbers numbers, ImmutableArray<KitBag> bags)
    {
        if (numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil) is not { } layer)
        {
            return null;
        }

        var writer = new StepWriter(numbers);
        if (bags.Length == 0)
        {
            Mixing(numbers, writer);
        }

        Slope(numbers, writer);
        OpenWater(numbers, writer);
        Fill(numbers, writer, layer, bags);
        Pieces(numbers, writer);
        return writer.Group(
            numbers.Design.Design.Hardscape.Count == 0 ? "Soil" : "Soil and hardscape",
            "soil",
            "soil"
        );
    }

    /// <summary>Bucket list and water: at the bench, or in the workshop that packs a kit.</summary>
    public static void Mixing(DesignNumbers numbers, StepWriter writer)
    {
        if (numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil) is { } layer)
        {
            Mix(numbers, writer, layer);
            Wet(writer, layer);
        }
    }

    private static void Mix(DesignNumbers numbers, StepWriter writer, FloorLayer layer)
    {
        if (layer.Components.Length == 0)
        {
            writer.Step(
                "floor.soil",
                $"Take {writer.Liters(layer.Loose)} of {layer.Material!.Name}, loose, for one box.",
                "Measure loose in a bucket: bags settle on the way."
            );
            return;
        }

        var parts = layer.Components.Select(c => $"{writer.Liters(c.Loose)} {c.Material.Name}").ToArray();
        string[] cautions = layer.Components.Any(c => Goods.IsDusty(c.Material)) ? [Goods.DustCaution] : [];
        writer.Step(
            "floor.soil",
            $"Mix for one box: {string.Join("; ", parts)}. That is {writer.Liters(layer.Loose)} of loose "
                + $"parts and makes {writer.Liters(layer.Mixed)} of {layer.Material!.Name}.",
            "Liters do not add up: small grains fill the gaps between the large.",
            cautions
        );
        Batch(numbers, writer, layer);
    }

    /// <summary>The same bucket list for all boxes, where there are several.</summary>
    private static void Batch(DesignNumbers numbers, StepWriter writer, FloorLayer layer)
    {
        var count = numbers.Design.Design.Boxes;
        if (count == 1)
        {
            return;
        }

        var boxes = numbers.Design.Count("boxes", "number of boxes", count);
        var parts = layer.Components.Select(c =>
            $"{writer.Liters((c.Loose * boxes).As($"{c.Material.Name} for all boxes", Unit.Liter))} "
            + c.Material.Name
        );
        var water = layer.WaterToAdd is { } one
            ? $"; then {writer.Liters((one * boxes).As("water for all boxes", Unit.Liter))} of water"
            : "";
        writer.Step(
            "floor.soil",
            $"For {NumberText.Integer(count)} boxes: {string.Join("; ", parts)}{water}."
        );
    }

    private static void Wet(StepWriter writer, FloorLayer layer)
    {
        if (layer.WaterToAdd is not { } water || layer.SqueezeWater is not { } all)
        {
            return;
        }

        var most =
            layer.MostWater is { } limit && limit.Si > all.Si
                ? $" Never more than {writer.Liters(limit)} in all."
                : "";
        var sandy = layer.Finished.Si > 0 && all.Si / layer.Finished.Si < Dripping.Si;
        writer.Cite(
            Citation.Habit(
                sandy
                    ? "squeeze test of sand and loam: a handful binds and does not drip"
                    : "squeeze test: a firm squeeze clumps and gives a few drops"
            )
        );
        var test = sandy
            ? "it binds and gives no drop; a drop is too wet, crumbs are too dry."
            : "a few drops is right, a stream is too wet, crumbs are too dry.";
        var added =
            water.Si > 0
                ? $"Add {writer.Liters(water)} of water to the mix of one box, in three batches "
                    + $"({writer.Liters(all)} counting the moisture already in the materials).{most}"
                : $"Add no water: the goods bring what the mix should hold, {writer.Liters(all)}.";
        writer.Step(
            "floor.soil",
            $"{added} Squeeze a handful hard: {test}",
            layer.Components.Any(c => Goods.RepelsWater(c.Material))
                ? "Too wet turns to mud and smells; dry peat and moss hardly take water later."
                : "Too wet turns to mud and smells."
        );
    }

    private static void Slope(DesignNumbers numbers, StepWriter writer)
    {
        var corners = CornerDepths.Soil(numbers.Design);
        var left = Angle(corners.FrontLeft, corners.BackLeft, numbers.Box.OpenDepth);
        var right = Angle(corners.FrontRight, corners.BackRight, numbers.Box.OpenDepth);
        var steepest = Figure.Max(left, right).As("steepest slope of the soil", Unit.Degree);
        var steep = steepest.Si > SteepestFree.Si;
        if (!numbers.Design.Design.Floor.Soil!.Retainer && !steep)
        {
            return;
        }

        writer.Step(
            "floor.soil.retainer",
            $"Set the retainer of wood, stone or grid first: the soil stands at {writer.Whole(steepest)} "
                + $"degrees, and above {writer.Whole(SteepestFree)} it can slide."
        );
    }

    /// <summary>A basin is set before the soil; the liters of the layers leave it out.</summary>
    private static void OpenWater(DesignNumbers numbers, StepWriter writer)
    {
        foreach (var basin in WaterBasins.Of(numbers.Design, numbers.Box))
        {
            writer.Step(
                basin.Path,
                $"Set the {(basin.IsAssumed ? "assumed " : "")}basin on the barrier before the soil: "
                    + $"{writer.Of(basin.Length)} × {writer.Of(basin.Width)}, water "
                    + $"{writer.Of(basin.Depth)} deep, its edge {writer.Of(basin.Edge)} over the water, "
                    + "level with the soil, with an easy way out. Soil, moss and leaves go only beside it.",
                "The liters below leave it out."
            );
            writer.Step(
                basin.Path,
                $"Fill it with {writer.Liters(basin.Volume)} of water low in minerals and keep it "
                    + $"full{Daily()}."
            );
        }

        string Daily() =>
            numbers.Water.Balance.Basins is { ToppedUp.Value: { Si: > 0 } more }
                ? $": about {writer.Milliliters(more)} a day for all open water"
                : "";
    }

    /// <summary>Slope between two depths over the open depth of the floor, in radians.</summary>
    private static Figure Angle(Figure front, Figure back, Figure depth) =>
        Figure.Computed(
            $"arc tangent (|{back.Name} − {front.Name}| ÷ {depth.Name})",
            depth.Si > 0 ? Math.Atan(Math.Abs(back.Si - front.Si) / depth.Si) : 0,
            Dimension.None,
            back,
            front,
            depth
        );

    private static void Fill(
        DesignNumbers numbers,
        StepWriter writer,
        FloorLayer layer,
        ImmutableArray<KitBag> bags
    )
    {
        var row = CornerDepths.Of(numbers).First(r => r.Kind == LayerKind.Soil);
        var bag = KitBags.Name(bags, "floor.soil");
        var settled = Depths(numbers, writer, row.Depth);
        var poured = Depths(numbers, writer, row.Poured!);
        writer.Step(
            "floor.soil",
            $"Fill in {bag}{writer.Liters(layer.Mixed)} of the mix: {poured} as poured. It settles to "
                + $"{settled}, {writer.Liters(layer.Finished)}.",
            $"Fresh mix sinks for {Told.Settling}."
        );
        writer.Step(
            "floor.soil",
            "Press lightly with a flat hand, once. Do not stamp and do not pour water on to settle it.",
            "Pressed soil has no air."
        );
    }

    private static string Depths(DesignNumbers numbers, StepWriter writer, Corners corners)
    {
        if (corners.IsLevel)
        {
            return $"{writer.Depth(corners.FrontLeft)} deep, level";
        }

        if (numbers.Design.Design.Floor.Soil!.Zones.Count == 0)
        {
            return $"{writer.Depth(corners.FrontLeft)} deep at the front, "
                + $"{writer.Depth(corners.BackLeft)} at the back";
        }

        return $"front left {writer.Depth(corners.FrontLeft)}, front right "
            + $"{writer.Depth(corners.FrontRight)}, back left {writer.Depth(corners.BackLeft)}, back right "
            + $"{writer.Depth(corners.BackRight)}";
    }

    private static void Pieces(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design;
        for (var i = 0; i < design.Design.Hardscape.Count; i++)
        {
            if (Displacement.SeatOf(design, i) == Seat.Base)
            {
                continue;
            }

            var key = $"hardscape[{NumberText.Integer(i)}]";
            var entry = design.Entry<HardscapeEntry>($"{key}.material");
            var sinks = entry.Sinks?.Text is { } s && s.StartsWith("floats", StringComparison.Ordinal);
            writer.Step(
                key,
                $"Press {entry.Name} ({writer.Kilograms(HardscapeSize.Mass(design, i))}) into the soil"
                    + $"{DrainageSteps.Where(numbers, writer, i)} until it stands firm.",
                sinks ? "It floats if the floor ever floods." : null
            );
        }
    }
}
