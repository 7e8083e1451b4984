using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Building;

/// <summary>Drain, aggregate or raised floor, and barrier.</summary>
internal static class DrainageSteps
{
    public static StepGroup? Of(DesignNumbers numbers, ImmutableArray<KitBag> bags)
    {
        var writer = new StepWriter(numbers);
        Drain(numbers, writer);
        Standing(numbers, writer);
        Layer(numbers, writer, bags);
        Barrier(numbers, writer);
        var floor = numbers.Design.Design.Floor;
        return writer.Group(
            (floor.Drainage, floor.Barrier) switch
            {
                (null, null) => "Pieces on the base",
                (null, _) => "Barrier",
                (_, null) => "Drainage",
                _ => "Drainage and barrier",
            },
            "drainage",
            "drainage"
        );
    }

    private static void Drain(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design;
        if (DrillSteps.Any(numbers))
        {
            writer.Step(
                "drain",
                "Cover the inlet with barrier mesh.",
                "Soil, springtails and small animals go down an open drain."
            );
        }

        if (DrainMark.Of(numbers.Layers) is not { } mark)
        {
            return;
        }

        writer.Cite(Citation.Habit("the highest level stays 1 cm below the barrier"));
        writer.Step(
            "drain",
            "Stand a dip tube in a back corner, from the base glass to above the soil."
                + (
                    mark.Si > 0
                        ? $" Mark it {writer.Depth(mark)} over the base: water must not rise above the mark."
                        : " The layer is too thin to hold water: draw off any that shows."
                ),
            design.Design.Drain is null
                ? "The level is read in it and water can be drawn off through it."
                : "The level is read in it; one reading corrects every forecast."
        );
    }

    /// <summary>Pieces that stand on the base glass go in before anything is poured round them.</summary>
    private static void Standing(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design;
        for (var i = 0; i < design.Design.Hardscape.Count; i++)
        {
            if (Displacement.SeatOf(design, i) != Seat.Base)
            {
                continue;
            }

            var key = $"hardscape[{NumberText.Integer(i)}]";
            var mass = HardscapeSize.Mass(design, i);
            writer.Step(
                key,
                $"Set {design.Entry($"{key}.material").Name} ({writer.Kilograms(mass)}) on the base glass on "
                    + $"a scrap of mat{Where(numbers, writer, i)}, before anything is poured. Rock it: it "
                    + "must not move.",
                "A heavy piece on loose soil can sink, tip and crush animals."
            );
        }
    }

    /// <summary>" 20 cm from the left, 15 cm from the front"; nothing where the place is left open.</summary>
    internal static string Where(DesignNumbers numbers, StepWriter writer, int piece) =>
        numbers.Design.Design.Hardscape[piece].At is { } at
            ? $" {PlantSteps.At(numbers, writer, $"hardscape[{NumberText.Integer(piece)}]", at)}"
            : "";

    private static void Layer(DesignNumbers numbers, StepWriter writer, ImmutableArray<KitBag> bags)
    {
        if (numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage) is not { } layer)
        {
            return;
        }

        if (layer.Material is { } aggregate)
        {
            string[] cautions = Goods.IsDusty(aggregate) ? [Goods.DustCaution] : [];
            writer.Step(
                "floor.drainage",
                $"Pour {KitBags.Name(bags, "floor.drainage")}{writer.Liters(layer.Mixed)} of "
                    + $"{aggregate.Name}, level, {writer.Depth(layer.Depth)} deep.",
                "Level it with a straight edge: water finds the low corner.",
                cautions
            );
            return;
        }

        var grid = numbers.Cuts.FirstOrDefault(c => c.Part == "grid");
        var size = grid is null
            ? "the raised floor"
            : $"the grid, {writer.Size(grid.Length, grid.Width)} with round corners,";
        writer.Step(
            "floor.drainage",
            $"Set {size} level on feet, {writer.Depth(layer.Depth)} over the base.",
            $"Feet every {Told.Feet}: it carries wet soil."
        );
    }

    private static string Cure(DesignNumbers numbers, StepWriter writer)
    {
        if (
            numbers.Design.Catalog.Find<AdhesiveEntry>("silicone-neutral")?.CureBeforePlanting is not { } days
        )
        {
            return "";
        }

        writer.Of(days);
        return $" Let it cure {NumberText.Count((int)Math.Ceiling(days.Value), "day", "days")} before soil "
            + "goes in.";
    }

    private static void Barrier(DesignNumbers numbers, StepWriter writer)
    {
        if (numbers.Cuts.FirstOrDefault(c => c.Part == "barrier") is not { } part)
        {
            return;
        }

        var design = numbers.Design;
        var upturn = design.Design.Floor.Barrier!.Upturn is { Si: > 0 } typed
            ? design.Figure("floor.barrier.upturn", "upturn", typed, Unit.Millimeter)
            : null;
        writer.Cite(Told.Spots.Origin);
        writer.Step(
            "floor.barrier",
            $"{Taken(numbers, writer, part)} "
                + (
                    upturn is null
                        ? "Lay it flat. "
                        : $"Turn {writer.Millimeters(upturn)} up on all four edges. "
                )
                + $"Fix it with a spot of silicone every {Told.Spots} and round {Through(numbers)}. "
                + $"No gap over {writer.Of(Gaps.Froglet)}."
                + Cure(numbers, writer),
            "Animals that get under the barrier are trapped and may die there."
        );
    }

    /// <summary>A kit brings it cut.</summary>
    private static string Taken(DesignNumbers numbers, StepWriter writer, CutPart part)
    {
        var name = numbers.Design.Entry<MeshEntry>("floor.barrier.material").Name;
        var size = writer.Size(part.Length, part.Width);
        return numbers.Design.Design.Form == BuildForm.Kit
            ? $"Take the barrier of {name}, {size}."
            : $"Cut {name} to {size}.";
    }

    /// <summary>What the barrier is cut round.</summary>
    private static string Through(DesignNumbers numbers) =>
        Enumerable
            .Range(0, numbers.Design.Design.Hardscape.Count)
            .Any(i => Displacement.SeatOf(numbers.Design, i) == Seat.Base)
            ? "every tube and every piece that stands on the base"
            : "every tube";
}
