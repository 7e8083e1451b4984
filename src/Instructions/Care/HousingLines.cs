using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Judging.Animals;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>Climate, space, group and equipment of one animal in this box.</summary>
internal static class HousingLines
{
    public static IEnumerable<CareLine> Of(TankPlan tank, BoxAnimal animal)
    {
        var numbers = tank.Numbers;
        var inches = Imperial.IsUsed(numbers.Design.Design);
        var entry = animal.Entry;
        return new[]
        {
            Band("Day", entry.CoolestDay, entry.WarmestDay, inches),
            Band("Night", entry.CoolestNight, entry.WarmestNight, inches),
            Bound("Too warm", entry.AvoidAbove, "never above", inches),
            Heat(animal, inches),
            Critical(entry, inches),
            Bound("Too cold", entry.AvoidBelow, "never below", inches),
            Humidity(entry),
            Size(entry),
            Group(animal),
            Space(numbers, animal),
            tank.Animals is { } day ? new CareLine("Moves in", $"{day.Words}.", day.Waits.Origin) : null,
            Misting(numbers, tank.Mist),
            Water(numbers, animal),
            Equipment(numbers, animal),
            Note(entry),
        }.OfType<CareLine>();
    }

    private static CareLine? Band(string head, Figure? low, Figure? high, bool inches) =>
        low is { } from && high is { } to
            ? new CareLine(head, CareText.Band(from, to, inches), from.Origin)
            : null;

    private static CareLine? Bound(string head, Figure? value, string word, bool inches) =>
        value is { } bound
            ? new CareLine(head, $"{word} {CareText.Degrees(bound, inches)}", bound.Origin)
            : null;

    private static CareLine Heat(BoxAnimal animal, bool inches)
    {
        var (act, alarm) = AnimalCautions.HeatBounds(animal);
        return new CareLine(
            "Heat alarm",
            CareText.Alarm(act, alarm, inches),
            AnimalCautions.HeatAlarm.Origin
        );
    }

    /// <summary>What short trials found, and where heat stress is taken to begin.</summary>
    private static CareLine? Critical(AnimalEntry entry, bool inches)
    {
        var stress = HeatLimits.Stress(entry);
        return entry.CriticalMaximum is not { } most ? null
            : HeatLimits.Lethal(entry) is null
                ? new CareLine(
                    "Heat limit",
                    $"hours above {CareText.Degrees(stress, inches)} are taken as heat stress; no "
                        + "measurement of this species is known",
                    stress.Origin
                )
            : new CareLine(
                "Heat limit",
                $"loses its footing at {CareText.Degrees(most, inches)} in short trials (measured); "
                    + $"hours above {CareText.Degrees(stress, inches)} are taken as heat stress "
                    + "(keeping practice)",
                most.Origin
            );
    }

    private static CareLine? Humidity(AnimalEntry entry) =>
        entry.LeastHumidity is { } low && entry.LargestHumidity is { } high
            ? new CareLine(
                "Humidity",
                $"{CareText.Number(low.Value)} to {CareText.Number(high.Value)} % as a daily mean; a short "
                    + $"dip "
                    + "by day does little harm, still air does more",
                low.Origin
            )
            : null;

    private static CareLine? Size(AnimalEntry entry) =>
        entry.ShortestAdult is { } low && entry.LongestAdult is { } high
            ? new CareLine(
                "Adult size",
                $"{CareText.Number(low.Value)} to {CareText.Number(high.Value)} mm",
                low.Origin
            )
        : entry.LongestOnRecord is { } most
            ? new CareLine("Adult size", $"up to {CareText.Number(most.Value)} mm", most.Origin)
        : null;

    private static CareLine? Group(BoxAnimal animal) =>
        animal.Entry.Group is { } group
            ? new CareLine("Group", $"{group.Text}. One species and one locality in a box.", group.Origin)
            : null;

    /// <summary>The smallest box of the library beside the numbers of this box.</summary>
    private static CareLine? Space(DesignNumbers numbers, BoxAnimal animal)
    {
        var entry = animal.Entry;
        var box = numbers.Box;
        var inside = (box.InsideLength * box.InsideDepth * box.InsideHeight).As("inside volume", Unit.Liter);
        var own =
            $"This box is {NumberText.Size(box.InsideLength, box.InsideDepth)} and "
            + $"{NumberText.Millimeters(box.InsideHeight)} high inside, {NumberText.Liters(inside)}, with "
            + $"{NumberText.Of(box.OpenFloor)} of open floor";
        var each = Each(animal.Resident.Count, inside, box.OpenFloor);
        if (
            entry.SmallestBoxLength is not { } length
            || entry.SmallestBoxDepth is not { } depth
            || entry.SmallestBoxHeight is not { } height
            || entry.SmallestBoxCount is not { } count
        )
        {
            return new CareLine("Space", own + each, null);
        }

        return new CareLine(
            "Space",
            $"Smallest box for {NumberText.Whole(count)}: {CareText.Number(length.Value)} × "
                + $"{CareText.Number(depth.Value)} × {CareText.Number(height.Value)} cm. {own}{each} Where "
                + $"the "
                + "law of your place asks for more, the law holds.",
            length.Origin
        );
    }

    private static string Each(int count, Figure inside, Figure floor)
    {
        if (count < 1)
        {
            return ".";
        }

        var share = (floor / Figure.Number(count)).As("floor for each", Unit.SquareCentimeter);
        return $": {NumberText.Liters(inside / Figure.Number(count))} and {NumberText.Of(share)} for each of "
            + $"{NumberText.Integer(count)}.";
    }

    private static CareLine? Misting(DesignNumbers numbers, MistingPlan? mist)
    {
        string?[] ways =
        [
            mist is { Bursts.Length: > 0 } ? $"{mist.Times}: {mist.PerDay}" : null,
            MistingDay.ByHand(numbers.Design) is { } hand
                ? $"{NumberText.Milliliters(hand)} a day by hand"
                : null,
        ];
        var told = string.Join("; ", ways.OfType<string>());
        return told.Length > 0 ? new CareLine("Misting", told + ".", null) : null;
    }

    private static CareLine Water(DesignNumbers numbers, BoxAnimal animal)
    {
        var parts = new List<string>
        {
            $"Mist with purified or rain water, below {Told.MistSolids} of dissolved solids.",
            "Tap water: chlorine leaves in a day or two, chloramine does not; use carbon.",
        };
        if (animal.Entry.WaterShare is { } share)
        {
            parts.Add(
                $"Open water over {CareText.Number(share.Value)} % of the floor, with an easy way out."
            );
        }

        if (numbers.Design.Design.WaterCups is { } cups and > 0)
        {
            parts.Add($"{NumberText.Count(cups, "water cup", "water cups")} hung in the plants.");
        }

        return new CareLine("Water", string.Join(" ", parts), Told.MistSolids.Origin);
    }

    private static CareLine Equipment(DesignNumbers numbers, BoxAnimal animal)
    {
        var food = Diet.IsSmallFlies(animal) ? "food cultures" : "its food in stock";
        var items = ElectricalList.Of(numbers).Items.Select(i => i.Name).Distinct(StringComparer.Ordinal);
        var here = string.Join(", ", items);
        return new CareLine(
            "Equipment",
            (here.Length > 0 ? $"With this box: {here}. " : "")
                + "You also need: a thermometer and a hygrometer that keep the extremes, checked once "
                + $"against salt; {food}; a holding tub"
                + (animal.Class == AnimalClass.Invertebrate ? "." : "; a scale to a tenth of a gram."),
            Citation.Habit("what a keeper needs besides the box")
        );
    }

    private static CareLine? Note(AnimalEntry entry) =>
        entry.Note is { } note
            ? new CareLine("Habits", note, Cautions.Recalled("husbandry notes of the species"))
            : null;
}
