using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Building;

/// <summary>Carrying the box and what stands under it.</summary>
internal static class LiftSteps
{
    public static StepGroup? Of(DesignNumbers numbers)
    {
        var writer = new StepWriter(numbers);
        foreach (var lift in Lifts.Of(numbers))
        {
            var mass = lift.Mass is { } m ? $", {writer.Kilograms(m)}" : "";
            writer.Step(
                "box",
                $"{NumberText.Capital(lift.Item)}{mass}: {Lifts.People(lift.Persons)}. {lift.Note}",
                lift.Persons > 1 ? $"One person lifts at most {writer.Kilograms(Lifts.PerPerson)}." : null
            );
        }

        writer.Step(
            "box",
            "Never carry a filled box. "
                + (numbers.Design.Design.Floor.Drainage is null ? "Build" : "Draw off all water first; build")
                + " large boxes where they will stand.",
            "What is inside slides to one side and the seams open.",
            "Broken glass: gloves and shoes."
        );
        var weights = numbers.Weights;
        writer.Step(
            "shelf",
            $"Weight for the stand: dry {writer.Kilograms(weights.Dry)}, planted "
                + $"{writer.Kilograms(weights.Planted)}, at its wettest {writer.Kilograms(weights.Wet)}."
                + Rated(numbers, writer),
            "Furniture bends slowly. Level it, lay a mat under a frameless base, and ask an engineer about "
                + "racks and weak floors."
        );
        return writer.Group("Lift and stand", "lift", "whole");
    }

    private static string Rated(DesignNumbers numbers, StepWriter writer) =>
        numbers.Shelf.Rated is { } rated
            ? $" The shelf is rated for {writer.Kilograms(rated)}."
            : " Read the rating of the shelf and compare.";
}
