using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Life;
using Litterfall.Instructions.Care;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Building;

/// <summary>The first weeks after planting.</summary>
internal static class WeekSteps
{
    public static StepGroup? Of(TankPlan tank)
    {
        var numbers = tank.Numbers;
        var writer = new StepWriter(numbers);
        Mist(numbers, tank.Mist, writer);
        Smell(numbers, writer);
        Level(numbers, writer);
        Animals(tank, writer);
        return writer.Group("First weeks", "weeks", "whole");
    }

    private static void Smell(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design.Design;
        var molds = (design.Floor.Litter, design.Hardscape.Any(Wood)) switch
        {
            (not null, true) => "wood and leaves",
            (not null, false) => "leaves",
            (null, true) => "wood",
            _ => null,
        };
        var crew = design.Crew.Count > 0 ? " Leave it to the crew." : "";
        var mold = molds is null ? "" : $"Mold on {molds} is normal for the first {Told.Mold}.{crew} ";
        var then = design.Floor.Drainage is null ? "give less water and more air" : "draw off water";
        writer.Cite(Told.Mold.Origin);
        writer.Step(
            "floor",
            $"{mold}A sour or rotten smell is not normal: {then} at once.",
            design.Plants.Count > 0 ? "Some leaves die back after planting; new growth counts." : null
        );

        bool Wood(HardscapePiece piece) =>
            numbers.Design.Catalog.Find<HardscapeEntry>(piece.Material)?.Seat?.Text != "base";
    }

    private static void Mist(DesignNumbers numbers, MistingPlan? mist, StepWriter writer)
    {
        var design = numbers.Design;
        if (mist is { Entered: { Si: > 0 } day })
        {
            writer.Milliliters(day);
            writer.Step(
                "misting",
                $"Let it mist as set, {mist.PerDay}{ByHand()}, and look every day for a "
                    + "week: leaves wet after misting, dry before the next."
            );
            return;
        }

        writer.Step("habits.handMist", $"Mist by hand: {Hand(numbers, writer)}.");

        string ByHand() =>
            MistingDay.ByHand(design) is { } hand ? $", mist {writer.Milliliters(hand)} more by hand" : "";
    }

    private static string Hand(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design;
        if (design.Design.Habits?.HandMist is { } typed)
        {
            var a = design.Figure("habits.handMist", "hand misting", typed, Unit.Milliliter);
            return $"{writer.Milliliters(a)} a day";
        }

        return design.Design.Plants.Count > 0
            ? "once or twice a day, until leaves are wet and the soil is not"
            : "until the surface is damp, and not before it has dried";
    }

    private static void Level(DesignNumbers numbers, StepWriter writer)
    {
        var every = CareRepeat
            .Days(Math.Max(1, Days(writer, CareIntervals.LevelCheck(numbers.Design))))
            .Words;
        if (DrainMark.Of(numbers.Layers) is not { } mark)
        {
            if (numbers.Design.Design.Floor.Soil is not null)
            {
                writer.Step(
                    "floor.soil",
                    $"There is no drainage layer: dig a finger to the base in a corner {every}. Standing "
                        + "water means less water or more air."
                );
            }

            return;
        }

        writer.Step(
            "drain",
            $"Read the level in the dip tube {every}. {Drawing(numbers, writer, mark)} Write down both "
                + "dates.",
            "Water at the barrier drowns the soil above it."
        );
    }

    /// <summary>A drilled drain draws down to its outlet, a hose to the last centimeter.</summary>
    private static string Drawing(DesignNumbers numbers, StepWriter writer, Figure mark)
    {
        var kind = numbers.Design.Design.Drain?.Kind;
        if (kind == DrainKind.Standpipe && DrillSteps.Outlet(numbers) is { } mouth)
        {
            return $"It stays at the mouth of the standpipe, {writer.Depth(mouth)} over the base; higher "
                + "means that the pipe is blocked.";
        }

        var down =
            kind == DrainKind.Bulkhead
                ? DrillSteps.Outlet(numbers) is { } outlet
                    ? $"Open the tap, which draws it down to {writer.Depth(outlet)},"
                    : "Open the tap"
                : mark.Si > Unit.Centimeter.ToSiValue(Told.DrawnDown.Least) + 1e-9
                    ? $"Draw it down to {Told.DrawnDown}"
                    : "Draw it off";
        return mark.Si > 0
            ? $"{down} when it reaches the mark, {writer.Depth(mark)} over the base."
            : "Draw off any water that shows.";
    }

    private static void Animals(TankPlan tank, StepWriter writer)
    {
        if (tank.Animals is not { } day)
        {
            return;
        }

        var design = tank.Numbers.Design.Design;
        writer.Of(day.Waits);
        writer.Step(
            "animals",
            day.Held is null ? $"{day.Words}: {CareDates.Signs(design)}." : $"{day.Words}.",
            design.Crew.Count > 0 ? "The crew must be breeding before something eats it." : null
        );
    }

    private static int Days(StepWriter writer, Figure span)
    {
        writer.Of(span);
        return GrowIn.WholeDays(span);
    }
}
