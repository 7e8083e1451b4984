using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Life;
using Litterfall.Physics.Crew;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>When fly cultures are set up, how many a week, and when vitamins are due.</summary>
internal static class FoodDates
{
    /// <summary>
    /// Small fruit flies: 107.7 K d over 12.34 °C, a line through 19 d at 18 and 8.5 d at 25 °C.
    /// </summary>
    private const double FlyKelvinDays = 107.7;

    private const double FlyThreshold = 12.34;

    /// <summary>Warmth of a culture shelf, °C; two days of laying and one to harden (recalled).</summary>
    private const double Shelf = 24.0;

    private const double LayAndHarden = 3.0;

    /// <summary>Flies of a cup, and share of cups that fail (recalled).</summary>
    private const double FliesPerCup = 700.0;

    private const double Failing = 0.15;

    public static readonly Figure Vitamins = Figure.Given(
        "time between vitamins for adults",
        Unit.Day.ToSiValue(14),
        Unit.Day,
        Cautions.Recalled("feeding and supplement calendar of zoos and keepers for small frogs")
    );

    private static readonly Figure Weekly = Figure.Choice(
        "time between sets of cultures",
        7,
        Unit.Day,
        "a set a week never leaves a gap; all on one day do"
    );

    /// <summary>The dates of a design; none without small frogs.</summary>
    /// <param name="tank">The tank; none while a stop takes the day of its animals away.</param>
    public static IEnumerable<CareDate> Of(TankPlan tank)
    {
        var numbers = tank.Numbers;
        var design = numbers.Design.Design;
        if (
            tank.Animals is { Held: not null }
            || !BoxAnimal
                .Of(numbers.Design)
                .Any(a => a.Class == AnimalClass.Amphibian && a.Resident.Count > 0)
        )
        {
            yield break;
        }

        var earliest = tank.Animals?.Earliest ?? tank.Start;
        var animals = !tank.IsRunning && design.AnimalsIn is { } day && day > earliest ? day : earliest;
        if (
            numbers.Life is { Masses.FliesPerWeek: { Si: > 0 } flies }
            && BoxAnimal.Of(numbers.Design).All(a => a.Class != AnimalClass.Amphibian || Diet.IsSmallFlies(a))
        )
        {
            double ahead = DegreeDays.DevelopmentDays(FlyKelvinDays, FlyThreshold, Shelf) + LayAndHarden;
            int cups = (int)Math.Ceiling(flies.Si / (FliesPerCup * (1.0 - Failing)) - 1e-9);
            yield return new CareDate(
                "fly-cultures",
                tank.IsRunning ? animals : animals.AddDays(-(int)Math.Ceiling(ahead)),
                "Set up fly cultures",
                $"Set up {NumberText.Count(cups, "cup", "cups")} of small flies at "
                    + FormattableString.Invariant($"{Shelf:0.#} °C, and as many every ")
                    + $"week: the animals need about {NumberText.Whole(flies)} a week. Keep two separate "
                    + $"strains.",
                CareRepeat.Days(GrowIn.WholeDays(Weekly)),
                "animals"
            )
            {
                Interval = Weekly,
            };
        }

        yield return new CareDate(
            "vitamins",
            animals.AddDays(GrowIn.WholeDays(Vitamins)),
            "Vitamins with the food",
            "Dust one feeding with vitamin A (retinyl) and multivitamin; calcium with D3 at every second "
                + "feeding. Froglets weekly and at every feeding.",
            CareRepeat.Days(GrowIn.WholeDays(Vitamins)),
            "animals"
        )
        {
            Interval = Vitamins,
        };
    }
}
