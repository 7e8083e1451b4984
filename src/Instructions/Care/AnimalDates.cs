using Litterfall.Domain.Figures;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Life;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>When animals may move in, and when their quarantine has to begin for that.</summary>
public static class AnimalDates
{
    /// <summary>"8 weeks".</summary>
    private static string Better =>
        NumberText.Count((int)(CareIntervals.BetterAnimals.Value / 7), "week", "weeks");

    internal static IEnumerable<CareDate> Of(TankPlan plan)
    {
        var numbers = plan.Numbers;
        var design = numbers.Design.Design;
        if (plan.Animals is not { Held: null } day)
        {
            yield break;
        }

        var (earliest, eight) = (day.Earliest, day.Better);
        yield return new CareDate(
            "animals-earliest",
            earliest,
            "Earliest day for animals",
            $"{Driven(numbers)}Only with all of these: {CareDates.Signs(design)}."
                + (eight > earliest ? $" Better wait until {Better} after planting." : ""),
            null,
            "animals"
        )
        {
            Interval = day.Waits,
        };
        if (eight > earliest)
        {
            yield return new CareDate(
                "animals-better",
                eight,
                "Better day for animals",
                $"{Better} of grow-in. Look once more: {CareDates.Signs(design)}. Then animals in.",
                null,
                "animals"
            )
            {
                Interval = CareIntervals.BetterAnimals,
            };
        }

        if (design.AnimalsIn is { } planned)
        {
            yield return new CareDate(
                "animals-in",
                planned,
                "Animals in",
                planned < earliest
                    ? $"The design plans this day, but the box is not ready before "
                        + $"{NumberText.Day(earliest)}."
                    : "Animals in as planned, cleared from quarantine, one species in the box.",
                null,
                "animalsIn"
            );
        }

        foreach (var date in Quarantines(numbers, design.AnimalsIn ?? day.Better))
        {
            yield return date;
        }
    }

    /// <summary>What sets the earliest day, and what keepers do, in words.</summary>
    private static string Driven(DesignNumbers numbers) =>
        numbers.Life?.Because.FirstOrDefault(r => r.Day is not null) is { } last
            ? $"Set by this: {last.Words}. "
                + (
                    last.Words.Contains("keepers", StringComparison.Ordinal)
                        ? ""
                        : "Keepers commonly wait at least a month (no source). "
                )
            : "";

    /// <summary>Start and end of the quarantine of the animals that are sold with the box.</summary>
    private static IEnumerable<CareDate> Quarantines(DesignNumbers numbers, DateOnly moveIn)
    {
        var animals = BoxAnimal
            .Of(numbers.Design)
            .Where(a => !a.IsRatedOnly && a.Resident.Count > 0)
            .ToArray();
        for (var i = 0; i < animals.Length; i++)
        {
            var (resident, entry, path, _) = animals[i];
            var time = CareIntervals.Of(resident);
            var slug = $"{entry.Key}-{NumberText.Integer(i + 1)}";
            if (resident.Quarantined is { } typed)
            {
                var left = Left(typed.Si, time);
                if (left > 0)
                {
                    yield return Rest(entry.Name, slug, (moveIn, left), typed.Text, time, path);
                }

                continue;
            }

            yield return new CareDate(
                $"quarantine-start-{slug}",
                moveIn.AddDays(-GrowIn.WholeDays(time)),
                $"Quarantine begins: {entry.Name}",
                $"In quarantine by today, in a bare tank with tools of its own. A new arrival restarts "
                    + $"it."
                    + Tests(animals[i].Class),
                null,
                path
            )
            {
                Interval = time,
            };

            foreach (var check in Checks(animals[i], slug, (moveIn, GrowIn.WholeDays(time))))
            {
                yield return check;
            }

            yield return new CareDate(
                $"quarantine-release-{slug}",
                moveIn,
                $"Quarantine ends: {entry.Name}",
                Release(time),
                null,
                path
            )
            {
                Interval = time,
            };
        }
    }

    /// <summary>Whole days of a quarantine that are still to come; a day is not counted.</summary>
    private static int Left(double done, Figure time) =>
        (int)Math.Ceiling((time.Si - done) / 86400.0 - 1.0 - 1e-9) is > 0 and var days ? days + 1 : 0;

    /// <summary>What is left of a quarantine that has begun.</summary>
    private static CareDate Rest(
        string name,
        string slug,
        (DateOnly Day, int Left) move,
        string done,
        Figure time,
        string path
    ) =>
        new(
            $"quarantine-release-{slug}",
            move.Day,
            $"Quarantine ends: {name}",
            $"{done} of it are entered; {NumberText.Count(move.Left, "day", "days")} more make "
                + $"{NumberText.Whole(time)}. {Release(time)}",
            null,
            path
        )
        {
            Interval = time,
        };

    private static string Release(Figure time) =>
        $"{NumberText.Whole(time)} days in quarantine, tests clear, no unexplained death among the group in "
        + $"the last {Told.NoDeath}: released. If any condition isn't met, keep them in quarantine.";

    /// <summary>
    /// Fecal checks two weeks apart, and the swab before release, where there is time for them.
    /// </summary>
    private static IEnumerable<CareDate> Checks(
        BoxAnimal animal,
        string slug,
        (DateOnly MoveIn, int Days) quarantine
    )
    {
        if (animal.Class == AnimalClass.Invertebrate)
        {
            yield break;
        }

        var start = quarantine.MoveIn.AddDays(-quarantine.Days);
        for (int check = 1; check <= FecalChecks; check++)
        {
            yield return new CareDate(
                $"quarantine-droppings-{NumberText.Integer(check)}-{slug}",
                start.AddDays((check - 1) * CheckDays),
                $"Fecal check {NumberText.Integer(check)} of {NumberText.Integer(FecalChecks)}",
                "Fresh droppings to the laboratory or the veterinarian.",
                null,
                animal.Path
            );
        }

        if (animal.Class == AnimalClass.Amphibian)
        {
            yield return new CareDate(
                $"quarantine-swab-{slug}",
                quarantine.MoveIn.AddDays(-CheckDays),
                "Swab before release",
                "For chytrid fungus and ranavirus; results take a week or two.",
                null,
                animal.Path
            );
        }
    }

    private const int FecalChecks = 3;
    private const int CheckDays = 14;

    private static string Tests(AnimalClass kind) =>
        kind switch
        {
            AnimalClass.Amphibian => " Swab at entry.",
            AnimalClass.Reptile => "",
            _ => " Look for mites.",
        };
}
