using Litterfall.Domain.Designs;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Planning.Building;

namespace Litterfall.Planning.Care;

/// <summary>When animals may move in, and when their quarantine has to begin for that.</summary>
public static class AnimalDates
{
    /// <summary>
    /// Earliest day for animals: 28 days after planting, or later while foam and silicone still cure.
    /// </summary>
    public static DateOnly Earliest(DesignNumbers numbers, DateOnly planting)
    {
        var grown = planting.AddDays(CareDates.Whole(CareIntervals.EarliestAnimals));
        if (numbers.Sealants is not { CureBeforePlanting: { } before, CureBeforeAnimals: { } all })
        {
            return grown;
        }

        var cured = planting.AddDays(CareDates.Whole(all) - CareDates.Whole(before));
        return cured > grown ? cured : grown;
    }

    internal static IEnumerable<CareDate> Of(DesignNumbers numbers, DateOnly planting)
    {
        var design = numbers.Design.Design;
        if (design.Animals.Count + design.RatedFor.Count == 0)
        {
            yield break;
        }

        var earliest = Earliest(numbers, planting);
        yield return new CareDate(
            "animals-earliest",
            earliest,
            "Earliest day for animals",
            "Only if crew breeds, plants have rooted, the level is steady and the humidity holds. Better wait "
                + "until 8 weeks after planting.",
            null,
            "animals"
        )
        {
            Interval = CareIntervals.EarliestAnimals,
        };
        var better = planting.AddDays(CareDates.Whole(CareIntervals.BetterAnimals));
        yield return new CareDate(
            "animals-better",
            better,
            "Better day for animals",
            "Eight weeks of grow-in: check crew, level and humidity once more, then animals in.",
            null,
            "animals"
        )
        {
            Interval = CareIntervals.BetterAnimals,
        };
        if (design.AnimalsIn is { } planned)
        {
            yield return new CareDate(
                "animals-in",
                planned,
                "Animals in",
                planned < earliest
                    ? $"The design plans this day, but the box is not ready before {NumberText.Day(earliest)}."
                    : "Animals in as planned, cleared from quarantine, one species in the box.",
                null,
                "animalsIn"
            );
        }

        foreach (var date in Quarantines(numbers, design.AnimalsIn ?? better))
        {
            yield return date;
        }
    }

    /// <summary>Start and end of the quarantine of the animals that are sold with the box.</summary>
    private static IEnumerable<CareDate> Quarantines(DesignNumbers numbers, DateOnly moveIn)
    {
        var animals = numbers.Design.Design.Animals;
        for (var i = 0; i < animals.Count; i++)
        {
            if (animals[i].Count == 0)
            {
                continue;
            }

            var path = $"animals[{NumberText.Integer(i)}]";
            var entry = numbers.Design.Entry($"{path}.animal");
            var time = CareIntervals.Of(animals[i]);
            var slug = $"{entry.Key}-{NumberText.Integer(i + 1)}";
            if (!(animals[i].Quarantined is { } done && done.Si >= time.Si))
            {
                yield return new CareDate(
                    $"quarantine-start-{slug}",
                    moveIn.AddDays(-CareDates.Whole(time)),
                    $"Quarantine begins: {entry.Name}",
                    "In quarantine by today, in a bare tank with tools of its own. A new arrival restarts it. "
                        + "Three fecal checks two weeks apart; swab for chytrid fungus and ranavirus.",
                    null,
                    path
                )
                {
                    Interval = time,
                };
            }

            yield return new CareDate(
                $"quarantine-release-{slug}",
                moveIn,
                $"Quarantine ends: {entry.Name}",
                $"{NumberText.Whole(time)} days in quarantine, tests clear, no unexplained death among the "
                    + "group in the last 30 days: released. If one is missing, they stay.",
                null,
                path
            )
            {
                Interval = time,
            };
        }
    }
}
