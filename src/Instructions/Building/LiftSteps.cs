using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Building;

/// <summary>
/// The stand, the heat mat and the empty box in its place, before anything makes it heavy: a planted box that
/// two people cannot carry is never moved.
/// </summary>
internal static class LiftSteps
{
    private const int MostPeople = 2;

    public static StepGroup? Of(DesignNumbers numbers)
    {
        var writer = new StepWriter(numbers);
        Stand(numbers, writer);
        Heating(numbers, writer);
        var lifts = Lifts.Of(numbers);
        var (empty, planted) = (lifts[0], lifts[1]);
        var mass = empty.Mass is { } m ? $", {writer.Kilograms(m)}" : "";
        writer.Step(
            "box",
            $"Set the empty box where it will stay{mass}: {Lifts.People(empty.Persons)}. {empty.Note}",
            empty.Persons > 1 ? $"One person lifts at most {writer.Kilograms(Lifts.PerPerson)}." : null
        );
        var water = numbers.Design.Design.Floor.Drainage is null ? "" : " with its water drawn off,";
        writer.Step(
            "box",
            planted.Persons > MostPeople
                ? $"Never move it planted: {writer.Kilograms(numbers.Weights.Planted)} are too much for "
                    + $"{Lifts.People(MostPeople)}. Build it where it will stand."
                : $"If it must be moved planted:{water} {writer.Kilograms(numbers.Weights.Planted)}, "
                    + $"{Lifts.People(planted.Persons)}. {planted.Note} Never carry it with water in it.",
            "What is inside slides to one side and the seams open.",
            "Broken glass: gloves and shoes."
        );
        return writer.Group("Stand and place", "stand", "whole");
    }

    private static void Stand(DesignNumbers numbers, StepWriter writer)
    {
        var weights = numbers.Weights;
        writer.Step(
            "shelf",
            "Level the stand both ways and lay a mat over all of it under a frameless base. It will carry "
                + $"{writer.Kilograms(weights.Wet)} at its wettest ({writer.Kilograms(weights.Dry)} dry, "
                + $"{writer.Kilograms(weights.Planted)} planted)."
                + Rated(numbers, writer),
            "Furniture bends slowly; ask an engineer about racks and weak floors."
        );
    }

    private static void Heating(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design;
        if (design.Design.Heating is not { } heating)
        {
            return;
        }

        var watts = design.Figure("heating.watts", "power of the heating", heating.Watts, Unit.Watt);
        var share = heating.Cover is { } cover
            ? writer.Of(design.Figure("heating.cover", "heated share of the floor", cover, Unit.Percent))
            : "half";
        writer.Step(
            "heating",
            $"Lay the heat mat or cable, {writer.Of(watts)}, outside under {share} of the base, "
                + "with room for air below. "
                + (
                    heating.Thermostat
                        ? "Hang the sensor of its thermostat in the warm half."
                        : "Put it on a thermostat before it is switched on."
                ),
            "Soil over a mat dries and heats: the cool half is the way out. It cannot be put under a "
                + "full box."
        );
    }

    private static string Rated(DesignNumbers numbers, StepWriter writer) =>
        numbers.Shelf.Rated is { } rated
            ? $" The shelf is rated for {writer.Kilograms(rated)}."
            : " Read the rating of the shelf and compare.";
}
