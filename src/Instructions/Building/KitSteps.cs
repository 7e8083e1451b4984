using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Forecasting;
using Litterfall.Instructions.Buying;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Building;

/// <summary>What the workshop packs into each kit.</summary>
internal static class KitSteps
{
    /// <summary>The packing list of one kit; null when the design is no kit.</summary>
    public static StepGroup? Of(DesignNumbers numbers, ImmutableArray<KitBag> bags)
    {
        if (bags.Length == 0)
        {
            return null;
        }

        var writer = new StepWriter(numbers);
        SoilSteps.Mixing(numbers, writer);

        var design = numbers.Design.Design;
        var kits = design.Boxes == 1 ? "the kit" : $"each of {NumberText.Integer(design.Boxes)} kits";
        foreach (var bag in bags)
        {
            writer.Step(
                bag.Key,
                $"Bag {bag.Letter}, for {kits}: {writer.Liters(bag.Amount)} of {bag.Contents}.",
                bag.Key == "floor.soil" ? "Fill by measured liters: weight changes with moisture." : null
            );
        }

        foreach (var part in numbers.Cuts)
        {
            writer.Step(
                Key(part),
                $"Flat parts, for {kits}: {Words(part.Part)} of {Name(numbers, part.Material)}, "
                    + $"{writer.Size(part.Length, part.Width)}."
            );
        }

        Loose(numbers, writer, kits);
        Fittings(numbers, writer, kits);
        writer.Step(
            "name",
            $"Write \"{design.Name}\" and the batch of the soil on every bag, and add this sheet.",
            "A sheet for another size is the usual mistake."
        );
        return writer.Group("In the workshop: mix and pack the kit", "pack", "parts");
    }

    /// <summary>A part's name in words: "vent-mesh" as "vent mesh".</summary>
    internal static string Words(string part) => part.Replace('-', ' ');

    internal static string Name(DesignNumbers numbers, string key) =>
        numbers.Design.Catalog.Find(key)?.Name ?? key;

    private static string Key(CutPart part) =>
        part.Part switch
        {
            "barrier" => "floor.barrier",
            "grid" => "floor.drainage.grid",
            "vent-mesh" => "vents",
            "background" => "background",
            "door" => "box.doors",
            _ when part.Part.StartsWith("shelf", StringComparison.Ordinal) => "shelves",
            _ => "lid",
        };

    private static void Loose(DesignNumbers numbers, StepWriter writer, string kits)
    {
        var design = numbers.Design.Design;
        if (design.Hardscape.Count > 0)
        {
            var names = design.Hardscape.Select((_, i) => Piece(numbers, writer, i));
            writer.Step("hardscape", $"Loose, for {kits}: {string.Join("; ", names)}.");
        }

        foreach (var starter in CrewStarters.Of(numbers))
        {
            writer.Step(
                starter.Key,
                $"Last of all and only on the day it leaves, for {kits}: "
                    + $"{writer.Whole(starter.CupsPerBox)} × {starter.Pack?.Name ?? "culture cup"} "
                    + $"({writer.Whole(starter.CountPerBox)} {starter.Crew.Name}).",
                "Living cultures keep for days, not weeks."
            );
        }

        if (design.Plants.Count > 0)
        {
            var names = design.Plants.Select(
                (p, i) => $"{NumberText.Integer(p.Count)} {PlantSteps.Name(numbers, i)}"
            );
            writer.Step("plants", $"Plants, out of quarantine, for {kits}: {string.Join("; ", names)}.");
        }
    }

    /// <summary>Fittings and lamps as the shopping list names them, and silicone for what is glued.</summary>
    private static void Fittings(DesignNumbers numbers, StepWriter writer, string kits)
    {
        var boxes = numbers.Design.Design.Boxes;
        var items = ShoppingParts
            .Of(numbers)
            .Where(line =>
                line.Kind is ShoppingKind.Fitting or ShoppingKind.Electric or ShoppingKind.Lamp
                && line.Pieces is not null
            )
            .Select(line => $"{NumberText.Integer((long)(line.Pieces!.Si / boxes))} {line.Item}")
            .ToList();
        if (numbers.Sealants.Silicone.Si > 0)
        {
            items.Add($"silicone, {writer.Milliliters(numbers.Sealants.Silicone)}");
        }

        if (items.Count > 0)
        {
            writer.Step("drain", $"Fittings, for {kits}: {string.Join("; ", items)}.");
        }
    }

    private static string Piece(DesignNumbers numbers, StepWriter writer, int piece)
    {
        var entry = numbers.Design.Entry<HardscapeEntry>($"hardscape[{NumberText.Integer(piece)}].material");
        var mass = HardscapeSize.Mass(numbers.Design, piece);
        return $"{entry.Name}, {writer.Kilograms(mass)}";
    }
}
