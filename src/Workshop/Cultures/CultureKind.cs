using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Life;
using Litterfall.Physics.Crew;

namespace Litterfall.Workshop.Cultures;

/// <summary>A crew animal as it is bred in cups.</summary>
public sealed record CultureKind
{
    private const double SearchFrom = 14;
    private const double SearchTo = 30;

    /// <summary>Its entry in the library.</summary>
    public required CrewEntry Entry { get; init; }

    /// <summary>Its rates at any temperature.</summary>
    public required CrewSpecies Species { get; init; }

    /// <summary>Animals that walk in a liter of substrate at most; null where nobody tells.</summary>
    public Figure? Plateau { get; init; }

    /// <summary>Share of females: the model counts them alone, people count all.</summary>
    public double Females { get; init; } = 1;

    /// <summary>The animal; null where the library lacks one of its rates.</summary>
    /// <param name="entry">Its entry.</param>
    public static CultureKind? From(CrewEntry entry) =>
        CrewKinds.Of(entry) is { } species
            ? new CultureKind
            {
                Entry = entry,
                Species = species,
                Plateau = entry.CulturePlateau,
                Females = entry.Brood is null ? 1 : entry.FemaleShare?.Si ?? 1,
            }
            : null;

    /// <summary>Rates of a day at an even temperature, in whole days.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public LifeTable Rates(double celsius) => Species.At(celsius).Whole;

    /// <summary>Females that a cup holds at most; infinite where nobody tells.</summary>
    /// <param name="liters">Substrate, liters.</param>
    public double PlateauOf(double liters) =>
        Plateau is { } most
            ? Females * most.Si * liters / CulturePractice.Filling.Si
            : double.PositiveInfinity;

    /// <summary>Share of the animals that can be taken each week while the rest keeps its number:
    /// 1 − λ^−7; half of it near the plateau; 0 where they do not grow.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="isNearPlateau">True near the plateau.</param>
    public double WeeklyShare(double celsius, bool isNearPlateau)
    {
        var growth = Rates(celsius).GrowthFactor();
        return growth <= 1
            ? 0
            : (1 - Math.Pow(growth, -7)) * (isNearPlateau ? CulturePractice.PlateauHarvest.Si : 1);
    }

    /// <summary>
    /// Cultures that give so many animals each week: portions times their size over what a culture at its
    /// plateau gives, failures counted, rounded up; null where nothing can be taken.
    /// </summary>
    /// <param name="animalsPerWeek">Animals that walk, for all portions of a week.</param>
    /// <param name="liters">Substrate of a culture, liters.</param>
    /// <param name="celsius">Temperature, °C.</param>
    public int? Needed(double animalsPerWeek, double liters, double celsius)
    {
        var gives = PlateauOf(liters) / Females * WeeklyShare(celsius, true);
        return gives > 0
            ? (int)Math.Ceiling((animalsPerWeek / (gives * (1 - CulturePractice.Failing.Si))) - 1e-9)
            : null;
    }

    /// <summary>The whole degree at which it grows fastest, °C.</summary>
    public double BestCelsius()
    {
        var (best, most) = (SearchFrom, 0.0);
        for (var celsius = SearchFrom; celsius <= SearchTo; celsius++)
        {
            if (Rates(celsius).GrowthFactor() is var growth && growth > most)
            {
                (best, most) = (celsius, growth);
            }
        }

        return best;
    }
}
