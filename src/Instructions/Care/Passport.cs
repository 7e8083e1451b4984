using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>One fact of a tank passport.</summary>
/// <param name="Group">box, floor, water, light or life.</param>
/// <param name="Head">What it is.</param>
/// <param name="Text">As printed.</param>
/// <param name="Figure">The number behind it; null for words.</param>
public sealed record PassportFact(string Group, string Head, string Text, Figure? Figure);

/// <summary>The facts that stay with one tank for its life.</summary>
/// <param name="Tank">Its number.</param>
/// <param name="Name">Name of the build.</param>
/// <param name="Planting">Planting day.</param>
/// <param name="Note">Said where the planting day is not the maker's own; null otherwise.</param>
/// <param name="Facts">Grouped, in reading order.</param>
/// <param name="Next">The next dates, at most six, from the planting day on.</param>
public sealed record Passport(
    string Tank,
    string Name,
    DateOnly Planting,
    string? Note,
    ImmutableArray<PassportFact> Facts,
    ImmutableArray<CareDate> Next
)
{
    private const int MostDates = 6;

    /// <summary>The passport of one box.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="box">1 for the first of equal boxes.</param>
    public static Passport Of(TankPlan tank, int box = 1)
    {
        var numbers = tank.Numbers;
        var plan = CareDates.Of(tank);
        return new Passport(
            TankNumber.Of(numbers, box),
            numbers.Design.Design.Name,
            plan.Planting,
            plan.Note,
            [
                .. BoxFacts(numbers),
                .. FloorFacts(numbers),
                .. WaterFacts(numbers, tank.Mist),
                .. LightFacts(numbers),
                .. LifeFacts(numbers),
            ],
            [.. plan.Dates.Where(d => d.Day > tank.Start).Take(MostDates)]
        );
    }

    private static IEnumerable<PassportFact> BoxFacts(DesignNumbers numbers)
    {
        var box = numbers.Box;
        if (box.OutsideLength is { } length)
        {
            yield return Fact("box", "Outside", Three(length, box.OutsideDepth!, box.OutsideHeight!), length);
        }

        yield return Fact(
            "box",
            "Inside",
            Three(box.InsideLength, box.InsideDepth, box.InsideHeight),
            box.InsideLength
        );
        if (box.Walls is { } walls)
        {
            yield return Fact("box", "Glass", $"walls {NumberText.Millimeters(walls)}", walls);
        }

        yield return Fact(
            "box",
            "Weight, wettest",
            NumberText.Kilograms(numbers.Weights.Wet),
            numbers.Weights.Wet
        );
    }

    private static string Three(Figure a, Figure b, Figure c) =>
        $"{NumberText.Size(a, b).Replace(" mm", "", StringComparison.Ordinal)} × {NumberText.Millimeters(c)}";

    private static IEnumerable<PassportFact> FloorFacts(DesignNumbers numbers)
    {
        var inches = Imperial.IsUsed(numbers.Design.Design);
        foreach (var layer in numbers.Layers)
        {
            var name = layer.Material?.Name ?? "raised floor";
            var depth =
                layer.Kind == LayerKind.Soil && numbers.Design.Design.Floor.Soil!.Zones.Count > 0
                    ? Stepped(CornerDepths.Soil(numbers.Design), inches)
                : Math.Abs(layer.FrontDepth.Si - layer.BackDepth.Si) < 1e-4
                    ? NumberText.Depth(layer.Depth, inches)
                : $"{NumberText.Depth(layer.FrontDepth, inches)} front, "
                    + $"{NumberText.Depth(layer.BackDepth, inches)} back";
            yield return Fact(
                "floor",
                NumberText.Capital(layer.Layer),
                $"{name}, {depth}, {NumberText.Liters(layer.Finished)}",
                layer.Finished
            );
        }

        if (numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil) is { Components.Length: > 0 } soil)
        {
            var parts = soil.Components.Select(c => $"{NumberText.Of(c.Share)} {c.Material.Name}");
            yield return Fact("floor", "Recipe, by loose volume", string.Join(", ", parts), null);
        }

        if (numbers.Design.Find<MeshEntry>("floor.barrier.material") is { } barrier)
        {
            yield return Fact("floor", "Barrier", barrier.Name, null);
        }
    }

    /// <summary>Steps from left to right, each end front to back.</summary>
    private static string Stepped(Corners corners, bool inches) =>
        $"left {NumberText.Depth(corners.FrontLeft, inches)} front, "
        + $"{NumberText.Depth(corners.BackLeft, inches)} back; right "
        + $"{NumberText.Depth(corners.FrontRight, inches)} front, "
        + $"{NumberText.Depth(corners.BackRight, inches)} back";

    private static IEnumerable<PassportFact> WaterFacts(DesignNumbers numbers, MistingPlan? mist)
    {
        var inches = Imperial.IsUsed(numbers.Design.Design);
        yield return Fact(
            "water",
            "Drain",
            numbers.Design.Design.Drain?.Kind switch
            {
                DrainKind.Bulkhead => "bulkhead fitting",
                DrainKind.Standpipe => "standpipe",
                DrainKind.Siphon => "siphon hose",
                _ => "none",
            },
            null
        );
        if (DrainMark.Of(numbers.Layers) is { } mark)
        {
            yield return Fact(
                "water",
                "Drain mark",
                $"{NumberText.Whole(mark)} mm over the base, "
                    + $"{NumberText.Depth(DrainMark.BelowBarrier, inches)} below the barrier",
                mark
            );
        }

        if (mist is not null)
        {
            yield return Fact(
                "water",
                "Misting",
                (mist.Bursts.Length > 0 ? $"{mist.Times}: " : "") + mist.PerDay,
                mist.Entered
            );
        }

        if (MistingDay.Fogged(numbers.Design) is { } fog)
        {
            yield return Fact("water", "Fogger", $"{NumberText.Milliliters(fog)} a day", fog);
        }

        if (MistingDay.ByHand(numbers.Design) is { } hand)
        {
            yield return Fact("water", "Misting", $"{NumberText.Milliliters(hand)} a day by hand", hand);
        }
    }

    private static IEnumerable<PassportFact> LightFacts(DesignNumbers numbers)
    {
        for (var i = 0; i < numbers.Design.Design.Lamps.Count; i++)
        {
            var entry = numbers.Design.Entry<LampEntry>($"lamps[{NumberText.Integer(i)}].lamp");
            var hours = LampHours.Of(numbers.Design, i);
            yield return Fact(
                "light",
                entry.Name,
                hours is null ? "hours not entered" : $"{NumberText.Of(hours)} a day",
                hours
            );
        }
    }

    private static IEnumerable<PassportFact> LifeFacts(DesignNumbers numbers)
    {
        var design = numbers.Design;
        for (var i = 0; i < design.Design.Plants.Count; i++)
        {
            yield return Counted(
                numbers,
                "Plant",
                $"plants[{NumberText.Integer(i)}]",
                ".plant",
                design.Design.Plants[i].Count
            );
        }

        for (var i = 0; i < design.Design.Crew.Count; i++)
        {
            yield return Counted(
                numbers,
                "Crew",
                $"crew[{NumberText.Integer(i)}]",
                ".animal",
                design.Design.Crew[i].Count
            );
        }

        foreach (var animal in BoxAnimal.Of(numbers.Design))
        {
            yield return Counted(
                numbers,
                animal.IsRatedOnly ? "Rated for" : "Animal",
                animal.Path,
                ".animal",
                animal.Resident.Count
            );
        }
    }

    private static PassportFact Counted(
        DesignNumbers numbers,
        string head,
        string path,
        string name,
        int count
    )
    {
        var figure = numbers.Design.Count($"{path}.count", "count", count);
        var entry = numbers.Design.Entry(path + name);
        return Fact("life", head, $"{NumberText.Integer(count)} {entry.Name}", figure);
    }

    private static PassportFact Fact(string group, string head, string text, Figure? figure) =>
        new(group, head, text, figure);
}
