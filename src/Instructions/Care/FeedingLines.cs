using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Instructions.Parts;
using Litterfall.Physics.Crew;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>Food, feeding days and supplements.</summary>
internal static class FeedingLines
{
    private static readonly Citation Calendar = Cautions.Recalled(
        "feeding and supplement calendar of zoos and keepers for small frogs"
    );

    private static readonly Citation Powder = Cautions.Recalled(
        "powder falls off within hours; discard six months after opening; feed cultures a day before"
    );

    private static readonly Citation Needs = Cautions.Recalled(
        "resting metabolism of frogs, times 1.5 for activity, by 0.8 of food that is used; small flies of "
            + "7.35 J, other feeders by their dry mass"
    );

    /// <summary>Temperature and activity for which food is told, °C and times the resting rate.</summary>
    private const double Warmth = 24.0;

    private const double Activity = 1.5;

    public static IEnumerable<CareLine> Of(TradeCatalog catalog, BoxAnimal animal)
    {
        if (animal.Entry.Food?.Text is { } food)
        {
            yield return new CareLine("Food", $"{food}.", animal.Entry.Food!.Origin);
        }

        if (animal.Class == AnimalClass.Amphibian)
        {
            if (animal.Entry.Mass is { } mass)
            {
                yield return Daily(catalog, animal, mass);
            }

            foreach (var line in Powders())
            {
                yield return line;
            }
        }
        else if (animal.Class == AnimalClass.Reptile)
        {
            yield return new CareLine(
                "Supplements",
                "The library holds a plan for frogs only: ask the breeder or a reptile veterinarian for one.",
                null
            );
            yield return new CareLine(
                "Ultraviolet",
                "The library holds no need of this species: ask the breeder, and measure any UV-B lamp at "
                    + "the highest perch with a UV index meter, with full shade in reach.",
                Cautions.Recalled(
                    "ultraviolet is measured as an index where the animal sits, with shade in reach"
                )
            );
        }
    }

    /// <summary>How many of each feeder an adult eats a day; else crickets by mass.</summary>
    private static CareLine Daily(TradeCatalog catalog, BoxAnimal animal, Figure mass)
    {
        double joules = FrogNeeds.Usual.FoodJoulesPerDay(mass.Si * 1000.0, Warmth, Activity);
        var counts = catalog
            .Of<FeederEntry>()
            .Where(f => f is { Called: not null, DryMass.Si: > 0 } && !(f.LightestEater?.Si > mass.Si))
            .Where(f => f.Key != Diet.SmallFly || Diet.IsSmallFlies(animal))
            .OrderBy(f => f.LightestEater?.Si ?? 0)
            .Select(f =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{FrogNeeds.Usual.FlyDryMass(joules) / (f.DryMass!.Si * 1e6):0} {f.Called!.Text}"
                )
            )
            .ToArray();
        var much =
            counts.Length > 0
                ? $"about {string.Join(", or ", counts)}"
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"as much as {Diet.CricketGrams(joules):0.0#} g of crickets, no longer than its head "
                        + $"is wide,"
                );
        return new CareLine(
            "Food a day",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{much} for each adult of {mass.Si * 1000.0:0.#} g ({joules:0} J at {Warmth:0.#} °C), minus "
                    + $"what it forages; remove what's left after an hour"
            ),
            counts.Length > 0 ? Needs : Diet.Crickets
        );
    }

    private static IEnumerable<CareLine> Powders()
    {
        yield return new CareLine(
            "Feeding days a week",
            $"froglet {Told.FrogletDays}; adult {Told.AdultDays}; breeding {Told.BreedingDays}",
            Calendar
        );
        yield return new CareLine(
            "Calcium with D3",
            $"froglet under {Told.FrogletAge}: every feeding; adult: every second feeding; breeding "
                + $"female: every "
                + "feeding",
            Calendar
        );
        yield return new CareLine(
            "Vitamin A (retinyl) with multivitamin",
            $"froglet under {Told.FrogletAge}: once a week; adult: once in "
                + $"{NumberText.Whole(FoodDates.Vitamins)} "
                + $"days; breeding female: once in {Told.BreedingVitamins}",
            Calendar
        );
        yield return new CareLine(
            "Dusting",
            $"Feed the feeders for a day first. Dust only what is eaten in {Told.DustEaten}. More "
                + $"powder is not "
                + "better: a lack of vitamin A is a matter for the veterinarian.",
            Powder
        );
    }
}
