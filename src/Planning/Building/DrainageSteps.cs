using System.Collections.Immutable;
using Litterfall.Domain.Designs;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Planning.Sizing;

namespace Litterfall.Planning.Building;

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
        return writer.Group("Drainage and barrier", "drainage", "drainage");
    }

    private static void Drain(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design;
        if (design.Design.Drain is { Kind: DrainKind.Bulkhead or DrainKind.Standpipe } drain)
        {
            Drilled(numbers, writer, drain);
        }

        if (design.Design.Floor.Drainage is null)
        {
            return;
        }

        writer.Cite(Citation.Habit("the highest level stays 1 cm below the barrier"));
        var mark = DrainMark.Of(numbers)!;
        writer.Step(
            "drain",
            $"Stand a dip tube in a back corner, from the base glass to above the soil. Mark it "
                + $"{writer.Depth(mark)} over the base: water must not rise above the mark.",
            design.Design.Drain is null
                ? "The level is read in it and water can be drawn off through it."
                : "The level is read in it; one reading corrects every forecast."
        );
    }

    private static void Drilled(DesignNumbers numbers, StepWriter writer, Drain drain)
    {
        var design = numbers.Design;
        var kind = drain.Kind == DrainKind.Standpipe ? "standpipe" : "bulkhead fitting";
        var hole = drain.Diameter is { } d
            ? $"a {writer.Millimeters(design.Figure("drain.diameter", "drain hole", d, Units.Millimeter))} "
                + $"hole"
            : "a hole to fit the fitting";
        var side = (drain.Side ?? Side.Back).ToString().ToLowerInvariant();
        var height = drain.Height is { } h
            ? $", outlet {writer.Depth(design.Figure("drain.height", "outlet height", h, Units.Centimeter))}"
                + " over the base"
            : "";
        var along = drain.Along is { } a
            ? $", its middle "
                + $"{writer.Millimeters(design.Figure("drain.along", "along", a, Units.Millimeter))} "
                + "from the end the drawing shows"
            : "";
        writer.Step(
            "drain",
            $"Drill {hole} in the {side} pane{along}. Fit the {kind}{height}, seal it and test it with "
                + $"water.",
            null,
            "Toughened glass cannot be drilled. Leave holes in glass to a glazier."
        );
        writer.Step(
            "drain",
            "Cover the inlet with barrier mesh.",
            "Soil, springtails and froglets go down an open drain."
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
                    + "a scrap of mat, before anything is poured. Rock it: it must not move.",
                "A stone on loose soil sinks, tips and crushes frogs."
            );
        }
    }

    private static void Layer(DesignNumbers numbers, StepWriter writer, ImmutableArray<KitBag> bags)
    {
        if (numbers.Layers.FirstOrDefault(l => l.Layer == "drainage") is not { } layer)
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
            "Feet every 15 cm: it carries wet soil."
        );
    }

    private static string Cure(DesignNumbers numbers, StepWriter writer)
    {
        if (numbers.Design.Catalog.Find("silicone-neutral")?.Figure("cureDaysBeforePlanting") is not { } days)
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
            ? design.Figure("floor.barrier.upturn", "upturn", typed, Units.Millimeter)
            : null;
        writer.Cite(Citation.Habit("silicone spots every 10 cm, no gap over 2 mm"));
        writer.Step(
            "floor.barrier",
            $"Cut {design.Entry("floor.barrier.material").Name} to {writer.Size(part.Length, part.Width)}. "
                + (
                    upturn is null
                        ? "Lay it flat. "
                        : $"Turn {writer.Millimeters(upturn)} up on all four edges. "
                )
                + "Fix it with a spot of silicone every 10 cm and round every tube. No gap over 2 mm."
                + Cure(numbers, writer),
            "Frogs that get under the barrier die there."
        );
    }
}
