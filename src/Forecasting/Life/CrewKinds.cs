using Litterfall.Domain.Catalog;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Crew;

namespace Litterfall.Forecasting.Life;

/// <summary>Crew animals of the library as the model knows them.</summary>
public static class CrewKinds
{
    /// <summary>The rates of a crew animal; null where its entry lacks one.</summary>
    /// <param name="entry">An entry of the kind crew.</param>
    public static CrewSpecies? Of(CatalogEntry entry) =>
        Value(entry, "brood") is not null ? Isopod(entry)
        : Value(entry, "eggsPerDay") is not null ? Tropical(entry)
        : Springtail(entry);

    /// <summary>
    /// The same animal with young that live so many times as often, to ask what that moves.
    /// </summary>
    /// <param name="species">The animal.</param>
    /// <param name="times">Factor on the share that lives to lay; the share stays below the most.</param>
    /// <param name="with">Coefficients.</param>
    internal static CrewSpecies Hardier(CrewSpecies species, double times, LifeCoefficients with)
    {
        if (times == 1.0)
        {
            return species;
        }

        double most = with.MostSurvival.UseSi();
        double Share(double survival) => Math.Min(most, survival * times);
        return species switch
        {
            LifespanSpringtail s => s with { Survival = Share(s.Survival) },
            TropicalSpringtail s => s with { Survival = Share(s.Survival) },
            IsopodLife s => s with { Survival = (s.Survival.Birth, Share(s.Survival.Juvenile)) },
            _ => species,
        };
    }

    /// <summary>What it weighs, holds and eats.</summary>
    /// <param name="entry">An entry of the kind crew.</param>
    /// <param name="all">Coefficients.</param>
    public static CrewBody Body(CatalogEntry entry, ModelCoefficients all)
    {
        var with = all.Life;
        double adult = Milligrams(entry, "freshMass") ?? with.IsopodMass.Use();
        if (entry.Text("taxon") == "springtail")
        {
            double dry = Milligrams(entry, "dryMass") is { } d ? d / adult : with.SpringtailDry.UseSi();
            double mean =
                (Milligrams(entry, "meanMobileDryMass") ?? with.MeanOfAdult.UseSi() * adult * dry) / dry;
            double adults = with.AdultsAmongMobile.UseSi();
            double young = (mean - (adults * adult)) / (1.0 - adults);
            return new CrewBody(
                adult,
                Math.Max(young, 0.01 * adult),
                dry * all.FloorLife.SpringtailEnergy.Use() / with.AdultDry.Use(),
                with.SpringtailsExposed.UseSi(),
                0.0
            );
        }

        return new CrewBody(
            adult,
            with.YoungOfAdult.UseSi() * adult,
            with.IsopodEnergy.Use(),
            with.IsopodsExposed.UseSi(),
            Value(entry, "litterRate") ?? with.LitterRate.UseSi()
        );
    }

    private static double? Milligrams(CatalogEntry entry, string name) => entry.Figure(name)?.Si * 1e6;

    private static LifespanSpringtail? Springtail(CatalogEntry entry) =>
        Value(entry, "T0") is { } zero
        && Value(entry, "KE") is { } egg
        && Value(entry, "KJ") is { } juvenile
        && Value(entry, "eggsPerLifeAt15C") is { } cool
        && Value(entry, "eggsPerLifeAt21C") is { } middle
        && Value(entry, "eggsPerLifeAt27C") is { } warm
        && Value(entry, "adultLifeAt15C") is { } longest
        && Value(entry, "adultLifeAt24C") is { } shorter
        && Value(entry, "hatch") is { } hatch
        && Value(entry, "survival") is { } survival
        && Value(entry, "hatchBestTo") is { } best
        && Value(entry, "hatchStopsAt") is { } stops
            ? new LifespanSpringtail
            {
                ThresholdCelsius = zero,
                EggKelvinDays = egg,
                JuvenileKelvinDays = juvenile,
                EggsPerLife = [(15.0, cool), (21.0, middle), (27.0, warm)],
                Life = ((15.0, longest), (24.0, shorter)),
                Hatch = hatch,
                HatchBestTo = best,
                HatchStopsAt = stops,
                Survival = survival,
            }
            : null;

    private static TropicalSpringtail? Tropical(CatalogEntry entry) =>
        Value(entry, "T0") is { } zero
        && Value(entry, "KE") is { } egg
        && Value(entry, "KJ") is { } juvenile
        && Value(entry, "eggsPerDay") is { } eggs
        && Value(entry, "adultLife") is { } life
        && Value(entry, "hatch") is { } hatch
        && Value(entry, "survival") is { } survival
        && Value(entry, "hatchBestTo") is { } best
        && Value(entry, "hatchStopsAt") is { } stops
            ? new TropicalSpringtail
            {
                ThresholdCelsius = zero,
                EggKelvinDays = egg,
                JuvenileKelvinDays = juvenile,
                EggsPerDay = eggs,
                Hatch = hatch,
                HatchBestTo = best,
                HatchStopsAt = stops,
                Survival = survival,
                AdultDays = life,
            }
            : null;

    private static IsopodLife? Isopod(CatalogEntry entry) =>
        Value(entry, "T0") is { } zero
        && Value(entry, "KI") is { } pouch
        && Value(entry, "KM") is { } growth
        && Value(entry, "KB") is { } broods
        && Value(entry, "brood") is { } brood
        && Value(entry, "femaleFraction") is { } females
        && Value(entry, "birthSurvival") is { } birth
        && Value(entry, "survival") is { } survival
        && Value(entry, "adultLife") is { } life
        && Value(entry, "growthFallsFrom") is { } falls
        && Value(entry, "growthZeroAt") is { } none
            ? new IsopodLife
            {
                ThresholdCelsius = zero,
                EggKelvinDays = pouch,
                JuvenileKelvinDays = growth,
                BroodKelvinDays = broods,
                Brood = brood,
                FemaleShare = females,
                Survival = (birth, survival),
                AdultDays = life,
                Heat = (falls, none),
            }
            : null;

    /// <summary>A value as printed: °C, K d, d, 1/d or a share; null where the entry has none.</summary>
    private static double? Value(CatalogEntry entry, string name) =>
        entry.Values.GetValueOrDefault(name)?.Number;
}
