using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Life;
using Litterfall.Physics.Crew;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>When fly cultures are set up, how many a week, and when vitamins are due.</summary>
internal static class FoodDates
{
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
            && Cups(numbers) is { } set
            && Cultures(set, flies, (animals, tank.IsRunning)) is { } cultures
        )
        {
            yield return cultures;
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

    /// <summary>Cups of flies to set up each week for one box; null where nothing eats them.</summary>
    /// <param name="numbers">The design.</param>
    public static (FeederEntry Fly, Figure Cups)? Cups(DesignNumbers numbers)
    {
        if (
            numbers.Life is not { Masses.FliesPerWeek: { Si: > 0 } flies }
            || !BoxAnimal.Of(numbers.Design).Any(a => a.Class == AnimalClass.Amphibian)
            || !BoxAnimal
                .Of(numbers.Design)
                .All(a => a.Class != AnimalClass.Amphibian || Diet.IsSmallFlies(a))
            || numbers.Design.Catalog.Find<FeederEntry>(Diet.SmallFly)
                is not { PerCulture: { Si: > 0 } adults, FailingShare: { Si: < 1 } failing } fly
        )
        {
            return null;
        }

        var living = (adults * (Figure.Number(1) - failing)).As("flies of a cup, less failures", Unit.One);
        return (fly, EquipmentPick.Whole("cups of small flies a week", flies, living));
    }

    /// <summary>When to set up fly cultures; null where the entry does not say what that needs.</summary>
    private static CareDate? Cultures(
        (FeederEntry Fly, Figure Cups) set,
        Figure flies,
        (DateOnly Day, bool AreIn) animals
    )
    {
        if (
            set.Fly
                is not
                {
                    WarmthToAdults: { Si: > 0 } warmth,
                    DevelopmentZero: { } zero,
                    Shelf: { } shelf,
                    LayAndHarden: { } laying,
                }
            || shelf.Si <= zero.Si
        )
        {
            return null;
        }

        double celsius = Unit.Celsius.FromSi(shelf.Si);
        double days =
            DegreeDays.DevelopmentDays(Unit.Day.FromSi(warmth.Si), Unit.Celsius.FromSi(zero.Si), celsius)
            + Unit.Day.FromSi(laying.Si);
        int cups = (int)set.Cups.Si;
        return new CareDate(
            "fly-cultures",
            animals.AreIn ? animals.Day : animals.Day.AddDays(-(int)Math.Ceiling(days)),
            "Set up fly cultures",
            $"Set up {NumberText.Count(cups, "cup", "cups")} of small flies at "
                + FormattableString.Invariant($"{celsius:0.#} °C, and as many every ")
                + $"week: the animals need about {NumberText.Whole(flies)} a week. Keep two separate "
                + $"strains.",
            CareRepeat.Days(GrowIn.WholeDays(Weekly)),
            "animals"
        )
        {
            Interval = Weekly,
        };
    }
}
