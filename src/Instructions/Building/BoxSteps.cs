using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Building;

/// <summary>Checking the box and covering its walls.</summary>
internal static class BoxSteps
{
    private const string Edge = "Glass cuts: gloves and goggles, dry hands, no lifting by the rim.";

    private static readonly Figure CutPlay = Figure.Choice(
        "largest difference from the design that cut parts forgive",
        1,
        Unit.Millimeter,
        "parts are cut 2 mm smaller than the inside; half of that is left"
    );

    public static StepGroup? Of(DesignNumbers numbers)
    {
        var writer = new StepWriter(numbers);
        Measure(numbers, writer);
        DrillSteps.Of(numbers, writer);
        LeakTest(numbers, writer);
        Background(numbers, writer);
        Silicone(numbers, writer);
        return writer.Group(
            numbers.Design.Design.Background is null ? "Box" : "Box and background",
            "box",
            "background"
        );
    }

    private static void Measure(DesignNumbers numbers, StepWriter writer)
    {
        var box = numbers.Box;
        var size =
            $"{writer.Size(box.InsideLength, box.InsideDepth)}, {writer.Millimeters(box.InsideHeight)} high";
        writer.Step(
            "box",
            $"Measure the inside three times each way: {size}. The smallest counts. More than "
                + $"{writer.Of(CutPlay)} smaller than this: enter it and print new cut sizes.",
            $"Sizes sold by name differ by up to {Told.SizeByName} an edge."
        );
        writer.Step(
            "box",
            "Check every edge and corner for chips. Seam what hands or animals can touch.",
            null,
            Edge
        );
    }

    private static void LeakTest(DesignNumbers numbers, StepWriter writer)
    {
        if (numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage) is not { } layer)
        {
            return;
        }

        var water = (numbers.Box.GrossFloor * layer.Depth).As("water of the leak test", Unit.Liter);
        writer.Step(
            "box",
            $"Leak test: stand it level on a mat, {(DrillSteps.Any(numbers) ? "close the drain, " : "")}"
                + $"pour in {writer.Liters(water)} of water, "
                + $"{writer.Depth(layer.Depth)} deep and no deeper. Wait {Told.Day} with dry paper under the "
                + "seams.",
            $"These panes are only checked for {writer.Depth(layer.Depth)} of water, not for a full box.",
            "Draw the water off before you move the box."
        );
    }

    private static void Background(DesignNumbers numbers, StepWriter writer)
    {
        if (numbers.Design.Design.Background is null)
        {
            return;
        }

        var entry = numbers.Design.Entry<BackgroundEntry>("background.material");
        if (numbers.Sealants.FoamVolume is { } foam)
        {
            Foam(numbers, writer, foam);
            return;
        }

        var kit = numbers.Design.Design.Form == BuildForm.Kit;
        foreach (var part in numbers.Cuts.Where(c => c.Part == "background"))
        {
            var size = writer.Size(part.Length, part.Width);
            var taken = kit ? $"Take the {entry.Name}, {size}" : $"Cut {entry.Name} to {size}";
            writer.Step(
                "background",
                $"{taken}: {part.Note}{Round(numbers, part)}. Glue it on with silicone in lines "
                    + $"{Told.GlueLines} "
                    + "apart and press it on.",
                "A panel glued only at its edge leaves a space where animals get trapped."
            );
        }
    }

    /// <summary>A panel over a drilled wall leaves the fitting free.</summary>
    private static string Round(DesignNumbers numbers, CutPart part)
    {
        var drain = numbers.Design.Design.Drain;
        return
            drain?.Kind == DrainKind.Bulkhead
            && part.Note.StartsWith(DrillSteps.Word(drain.Side ?? Side.Back), StringComparison.Ordinal)
            ? "; cut it out round the drain"
            : "";
    }

    private static void Foam(DesignNumbers numbers, StepWriter writer, Figure foam)
    {
        var design = numbers.Design;
        var can = design.Catalog.Find<AdhesiveEntry>(
            design.Entry<BackgroundEntry>("background.material").PouredFrom?.Text ?? "expanding-foam"
        );
        var lift = design.Design.Background!.Poured?.Lift is { } typed
            ? design.Figure("background.poured.lift", "thickness of one pour", typed, Unit.Centimeter)
            : can?.LiftThickness;
        var thickness = lift is null ? "thin" : $"at most {writer.Depth(lift)} thick";
        var cans = numbers.Sealants.FoamCans is { } count
            ? $" ({NumberText.Count((int)count.Si, "can", "cans")}{ForAll(design.Design.Boxes)})"
            : "";
        var caution = writer.Text(can?.Caution)
            ?? "Never pour foam behind trapped wood: it has burst a tank.";
        writer.Step(
            "background",
            $"{Lying(design.Design.Background)} Pour foam in lifts {thickness}, {writer.Liters(foam)} when "
                + $"expanded{cans}. Leave one face open and let each lift set before the next."
                + (DrillSteps.Any(numbers) ? " Keep the drain and its fitting free of foam." : ""),
            "Foam goes on swelling; in a closed space it can break the glass.",
            caution
        );
        writer.Step(
            "background",
            "Carve the foam, cut off the whole smooth skin, and cover it.",
            "Silicone peels off the smooth skin.",
            "Foam dust: mask, and keep flames away."
        );
    }

    /// <summary>Foam is poured on a pane that lies flat, one after the other.</summary>
    private static string Lying(Background background)
    {
        string[] sides =
            background.Sides.Count == 0 ? ["back"] : [.. background.Sides.Select(DrillSteps.Word)];
        return sides.Length == 1
            ? $"Lay the box on its {sides[0]} pane."
            : $"Lay the box on the pane that is poured, one after the other: {string.Join(", ", sides)}.";
    }

    private static string ForAll(int boxes) => boxes == 1 ? "" : $" for {NumberText.Integer(boxes)} boxes";

    private static void Silicone(DesignNumbers numbers, StepWriter writer)
    {
        var seal = numbers.Sealants;
        if (seal.Silicone.Si <= 0 && seal.FoamVolume is null)
        {
            return;
        }

        if (seal.CureBeforePlanting is { } planting && seal.CureBeforeAnimals is { } animals)
        {
            writer.Cite(Citation.Habit("silicone without mildew inhibitor, cured until it no longer smells"));
            writer.Step(
                "background",
                $"Silicone in all: {writer.Milliliters(seal.Silicone)} a box, without mildew inhibitor. Let "
                    + $"everything cure {Days(writer, planting)} before planting and {Days(writer, animals)} "
                    + "before animals, and until it no longer smells."
            );
        }
    }

    private static string Days(StepWriter writer, Figure time)
    {
        writer.Of(time);
        return NumberText.Count((int)Math.Ceiling(time.Value - 1e-9), "day", "days");
    }
}
