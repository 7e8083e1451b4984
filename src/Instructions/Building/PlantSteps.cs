using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Building;

/// <summary>Plants, moss and leaves.</summary>
internal static class PlantSteps
{
    public static StepGroup? Of(DesignNumbers numbers, ImmutableArray<KitBag> bags)
    {
        var writer = new StepWriter(numbers);
        for (var i = 0; i < numbers.Design.Design.Plants.Count; i++)
        {
            Plant(numbers, writer, i);
        }

        if (numbers.Design.Design.WaterCups is { } cups and > 0)
        {
            writer.Step(
                "waterCups",
                $"Hang {NumberText.Count(cups, "water cup", "water cups")} in the plants, with a "
                    + $"little water.",
                BoxAnimal.Of(numbers.Design).Any(a => a.Entry.WaterCupsPerPair is not null)
                    ? "Egg feeders raise each tadpole in its own water."
                    : null
            );
        }

        Cover(numbers, writer, bags);
        return writer.Group(Title(numbers.Design.Design), "plants", "plants");
    }

    /// <summary>"Plants, moss, leaves", without what the design lacks.</summary>
    private static string Title(Design design)
    {
        string?[] parts =
        [
            design.Plants.Count > 0 ? "plants" : null,
            design.Floor.Moss is null ? null : "moss",
            design.Floor.Litter is null ? null : "leaves",
        ];
        return NumberText.Capital(string.Join(", ", parts.OfType<string>()));
    }

    /// <summary>Name of a plant of the design.</summary>
    public static string Name(DesignNumbers numbers, int plant) => Entry(numbers, plant).Name;

    private static PlantEntry Entry(DesignNumbers numbers, int plant) =>
        numbers.Design.Entry<PlantEntry>($"plants[{NumberText.Integer(plant)}].plant");

    private static void Plant(DesignNumbers numbers, StepWriter writer, int i)
    {
        var plant = numbers.Design.Design.Plants[i];
        var key = $"plants[{NumberText.Integer(i)}]";
        var entry = Entry(numbers, i);
        var count = plant.Count == 1 ? "" : $"{NumberText.Integer(plant.Count)} × ";
        var place = plant.At is { } at ? $" {At(numbers, writer, key, at)}" : ", its place left open";
        var verb = plant.Mounted ? "Mount" : "Plant";
        var where = plant.Mounted ? $", {Mounting(numbers)}" : ", roots in the soil";
        string[] cautions = Irritant(entry) is { } warning ? [warning] : [];
        writer.Step(key, $"{verb} {count}{entry.Name}{place}{where}.", Why(numbers, entry, plant), cautions);
    }

    /// <summary>What carries a mounted plant, and how it is held until its roots do.</summary>
    private static string Mounting(DesignNumbers numbers)
    {
        var design = numbers.Design;
        var isWood = Mounts.Wood(design);
        string?[] on = [design.Design.Background is null ? null : "the background", isWood ? "wood" : null];
        var carriers = string.Join(" or ", on.OfType<string>());
        return carriers.Length == 0
            ? "not in soil; nothing in this design carries it"
            : $"on {carriers}, not in soil: "
                + (design.Design.Background is null ? "" : "a pin of plastic or stainless steel, ")
                + (isWood ? "a tie of plastic-coated wire, " : "")
                + "or a dot of gel superglue on dry bark, roots free";
    }

    private static string? Why(DesignNumbers numbers, PlantEntry entry, Planting plant)
    {
        if (plant.Mounted)
        {
            return null;
        }

        if (entry.RootPlace?.Text == "epiphyte")
        {
            return "It grows on wood in nature: its base rots in wet soil, so keep the crown above it.";
        }

        if (entry.WetFeet?.Text != "no")
        {
            return null;
        }

        var higher =
            plant.At is null
            && numbers.Design.Design.Floor.Soil is not null
            && !CornerDepths.Soil(numbers.Design).IsLevel;
        return higher
            ? "It does not stand wet roots: take the higher end of the floor."
            : "It does not stand wet roots: keep the crown above the soil and the level low.";
    }

    /// <summary>Sap that irritates; null for harmless plants.</summary>
    private static string? Irritant(PlantEntry entry) =>
        entry.Toxicity?.Text is { } note && !note.StartsWith("none", StringComparison.Ordinal)
            ? $"{entry.Name}: {note}. Gloves, and wash hands."
            : null;

    internal static string At(DesignNumbers numbers, StepWriter writer, string key, Place at)
    {
        string Edge(string axis, string name, Typed<Length> typed) =>
            writer.Depth(numbers.Design.Figure($"{key}.at.{axis}", name, typed, Unit.Centimeter));
        var x = Edge("x", "distance from the left", at.X);
        var y = Edge("y", "distance from the front", at.Y);
        var z = at.Z is { } up ? $", {Edge("z", "height over the base", up)} over the base" : "";
        return $"{x} from the left, {y} from the front{z}";
    }

    private static void Cover(DesignNumbers numbers, StepWriter writer, ImmutableArray<KitBag> bags)
    {
        if (numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Moss) is { Material: { } moss } mossLayer)
        {
            string[] cautions = Goods.IsSphagnum(moss) ? [Goods.MossCaution] : [];
            writer.Step(
                "floor.moss",
                $"{(IsAlive(moss) ? "Press on" : "Lay")} {KitBags.Name(bags, "floor.moss")}"
                    + $"{writer.Liters(mossLayer.Finished)} of {moss.Name}, "
                    + $"{writer.Depth(mossLayer.Depth)} deep, {Share(numbers, writer, "moss")}. "
                    + (
                        IsAlive(moss)
                            ? "Its underside must touch damp soil everywhere."
                            : "Loose, not pressed."
                    ),
                null,
                cautions
            );
        }

        if (numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter) is { Material: { } leaves } litter)
        {
            var free =
                numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Moss) is { Material: { } green }
                && IsAlive(green)
                    ? " Keep the living moss free of leaves: under them it goes dark and rots."
                    : "";
            writer.Step(
                "floor.litter",
                $"Scatter {KitBags.Name(bags, "floor.litter")}{writer.Liters(litter.Finished)} of "
                    + $"{leaves.Name}, {writer.Depth(litter.Depth)} loose, "
                    + $"{Share(numbers, writer, "litter")}.{free}",
                "Leaves feed the crew and hide the animals. Two kinds last longer than one."
            );
        }
    }

    /// <summary>Dried moss is laid loose, living moss is pressed on.</summary>
    private static bool IsAlive(CatalogEntry moss) => !Goods.RepelsWater(moss);

    private static string Share(DesignNumbers numbers, StepWriter writer, string layer)
    {
        var row = CornerDepths.Of(numbers).First(r => r.Layer == layer);
        return row.Cover is { } share ? $"over {writer.Of(share)} of the floor" : "over the whole floor";
    }
}
