using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Planning.Care;

namespace Litterfall.Planning.Building;

/// <summary>The first weeks after planting.</summary>
internal static class WeekSteps
{
    public static StepGroup? Of(DesignNumbers numbers)
    {
        var writer = new StepWriter(numbers);
        Mist(numbers, writer);
        writer.Cite(CareIntervals.Mold);
        writer.Step(
            "plants",
            "Mold on wood and leaves is normal for the first 4 to 6 weeks. Leave it to the crew. A sour or "
                + "rotten smell is not normal: draw off water at once.",
            "Some leaves die back after planting; new growth counts."
        );
        Level(numbers, writer);
        Animals(numbers, writer);
        return writer.Group("First weeks", "weeks", "whole");
    }

    private static void Mist(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design;
        if (MistingDay.Water(design) is { } day)
        {
            writer.Step(
                "misting",
                $"Let it mist as set, {writer.Milliliters(day)} a day, and look every day for a week: leaves "
                    + "wet after misting, dry before the next."
            );
            return;
        }

        var hand = design.Design.Habits?.HandMist is { } h
            ? $"{writer.Milliliters(design.Figure("habits.handMist", "hand misting", h, Units.Milliliter))} "
                + $"a day"
            : "once or twice a day, until leaves are wet and the soil is not";
        writer.Step("habits.handMist", $"Mist by hand: {hand}.");
    }

    private static void Level(DesignNumbers numbers, StepWriter writer)
    {
        if (DrainMark.Of(numbers) is not { } mark)
        {
            writer.Step(
                "floor.soil",
                "There is no drainage layer: dig a finger to the base in a corner every week. Standing water "
                    + "means less water or a wider lid."
            );
            return;
        }

        var every = CareIntervals.LevelCheck(numbers.Design);
        writer.Step(
            "drain",
            $"Read the level in the dip tube {CareRepeat.Days(Math.Max(1, Days(writer, every))).Words}. "
                + $"Draw it down to 1 cm when it "
                + $"reaches the mark, {writer.Depth(mark)} over the base. Write down both dates.",
            "Water at the barrier drowns the soil above it."
        );
    }

    private static void Animals(DesignNumbers numbers, StepWriter writer)
    {
        var design = numbers.Design.Design;
        if (design.Animals.Count + design.RatedFor.Count == 0)
        {
            return;
        }

        var (earliest, better) = (CareIntervals.EarliestAnimals, CareIntervals.BetterAnimals);
        var days = design.Planted is { } planted
            ? $" ({NumberText.Day(AnimalDates.Earliest(numbers, planted))}, better "
                + $"{NumberText.Day(planted.AddDays((int)better.Value))})"
            : "";
        writer.Step(
            "animals",
            $"No animals before {Weeks(writer, earliest)} after planting, better {Weeks(writer, better)}"
                + $"{days}: plants rooted, crew to be seen, level steady, humidity held, nothing smells.",
            "The crew must be breeding before something eats it."
        );
    }

    private static int Days(StepWriter writer, Figure span)
    {
        writer.Of(span);
        return CareDates.Whole(span);
    }

    private static string Weeks(StepWriter writer, Figure days)
    {
        writer.Of(days);
        return NumberText.Count((int)(days.Value / 7), "week", "weeks");
    }
}
