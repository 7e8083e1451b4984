using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Catalog;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Crew;

namespace Litterfall.Forecasting.Life;

/// <summary>Crew animals of the library as the model knows them.</summary>
public static class CrewKinds
{
    /// <summary>The rates of a crew animal; null where its entry lacks one.</summary>
    /// <param name="entry">An entry of the kind crew.</param>
    public static CrewSpecies? Of(CrewEntry entry) =>
        entry.Brood?.Value is not null ? Isopod(entry)
        : entry.EggRate?.Value is not null ? Tropical(entry)
        : Springtail(entry);

    /// <summary>
    /// The same animal with young that live so many times as often, to ask what that moves.
    /// </summary>
    /// <param name="species">The animal.</param>
    /// <param name="times">Factor on the share that lives to lay; the share stays below 1.</param>
    internal static CrewSpecies Hardier(CrewSpecies species, double times)
    {
        double Share(double survival) => Math.Min(LifePolicy.MostSurvival, survival * times);
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
    public static CrewBody Body(CrewEntry entry)
    {
        double adult = Milligrams(entry.FreshMass) ?? LifePolicy.UsualIsopodMilligrams;
        if (entry.Taxon?.Text == "springtail")
        {
            double dry = Milligrams(entry.DryMass) is { } d ? d / adult : LifePolicy.SpringtailDry;
            double mean =
                (Milligrams(entry.MeanMobileDryMass) ?? LifePolicy.MeanOfAdult * adult * dry) / dry;
            double young =
                (mean - (LifePolicy.AdultsAmongMobile * adult)) / (1.0 - LifePolicy.AdultsAmongMobile);
            return new CrewBody(
                adult,
                Math.Max(young, 0.01 * adult),
                dry * FrogNeeds.SpringtailJoules / LifePolicy.AdultDryMilligrams,
                LifePolicy.SpringtailsExposed,
                0.0
            );
        }

        return new CrewBody(
            adult,
            LifePolicy.YoungOfAdult * adult,
            LifePolicy.IsopodJoulesPerMilligram,
            LifePolicy.IsopodsExposed,
            entry.LitterRate?.Value ?? LifePolicy.UsualLitterRate
        );
    }

    private static double? Milligrams(Figure? mass) => mass?.Si * 1e6;

    private static LifespanSpringtail? Springtail(CrewEntry entry) =>
        entry.DevelopmentZero?.Value is { } zero
        && entry.WarmthToHatching?.Value is { } egg
        && entry.WarmthToFirstEggs?.Value is { } juvenile
        && entry.EggsPerLifeAt15?.Value is { } cool
        && entry.EggsPerLifeAt21?.Value is { } middle
        && entry.EggsPerLifeAt27?.Value is { } warm
        && entry.AdultLifeAt15?.Value is { } longest
        && entry.AdultLifeAt24?.Value is { } shorter
        && entry.Hatch?.Value is { } hatch
        && entry.Survival?.Value is { } survival
        && entry.HatchBestTo?.Value is { } best
        && entry.HatchStopsAt?.Value is { } stops
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

    private static TropicalSpringtail? Tropical(CrewEntry entry) =>
        entry.DevelopmentZero?.Value is { } zero
        && entry.WarmthToHatching?.Value is { } egg
        && entry.WarmthToFirstEggs?.Value is { } juvenile
        && entry.EggRate?.Value is { } eggs
        && entry.AdultLife?.Value is { } life
        && entry.Hatch?.Value is { } hatch
        && entry.Survival?.Value is { } survival
        && entry.HatchBestTo?.Value is { } best
        && entry.HatchStopsAt?.Value is { } stops
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

    private static IsopodLife? Isopod(CrewEntry entry) =>
        entry.DevelopmentZero?.Value is { } zero
        && entry.WarmthToFirstBrood?.Value is { } pouch
        && entry.WarmthOfYoung?.Value is { } growth
        && entry.WarmthBetweenBroods?.Value is { } broods
        && entry.Brood?.Value is { } brood
        && entry.FemaleShare?.Value is { } females
        && entry.BirthSurvival?.Value is { } birth
        && entry.Survival?.Value is { } survival
        && entry.AdultLife?.Value is { } life
        && entry.GrowthFallsFrom?.Value is { } falls
        && entry.GrowthZeroAt?.Value is { } none
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
}
