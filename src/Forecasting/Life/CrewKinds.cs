using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
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
    public static CrewBody Body(CrewEntry entry, ModelCoefficients all)
    {
        var with = all.Life;
        double adult = Milligrams(entry.FreshMass) ?? with.IsopodMass.Use();
        if (entry.Taxon?.Text == "springtail")
        {
            double dry = Milligrams(entry.DryMass) is { } d ? d / adult : with.SpringtailDry.UseSi();
            double mean =
                (Milligrams(entry.MeanMobileDryMass) ?? with.MeanOfAdult.UseSi() * adult * dry) / dry;
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
            entry.LitterRate?.Value ?? with.LitterRate.UseSi()
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
                Laying = Laying(entry),
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
                Laying = Laying(entry),
                Heat =
                    entry.HeatLimit?.Value is { } heat && entry.AdultLifeInHeat?.Value is { } left
                        ? (heat, left)
                        : null,
            }
            : null;

    /// <summary>The warmth it lays at; the same values tell the rules where it does not breed.</summary>
    private static LayingWarmth Laying(CrewEntry entry) =>
        new()
        {
            FromCelsius = entry.BreedsFrom?.Value ?? double.NegativeInfinity,
            ToCelsius = entry.BreedsTo?.Value ?? double.PositiveInfinity,
            LessFromCelsius = entry.BreedsTo is null ? null : entry.BreedsLessFrom?.Value,
        };

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
                Laying = Laying(entry),
            }
            : null;
}
