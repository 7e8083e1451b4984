using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Crew;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Forecasting.Life;

/// <summary>A kind of crew animal of a design.</summary>
/// <param name="Path">Its key in the design.</param>
/// <param name="Entry">Its entry of the library.</param>
/// <param name="Species">Its rates.</param>
/// <param name="Count">How many are seeded.</param>
public sealed record SeededKind(string Path, CrewEntry Entry, CrewSpecies Species, int Count);

/// <summary>A design as a floor with its crew and those that eat of it.</summary>
public static class FloorSetups
{
    /// <summary>Crew animals whose rates the library has.</summary>
    /// <param name="design">The design.</param>
    public static ImmutableArray<SeededKind> Crew(CheckedDesign design) =>
        [
            .. design
                .Design.Crew.Select(
                    (c, i) =>
                    {
                        string path = FormattableString.Invariant($"crew[{i}]");
                        var entry = design.Entry<CrewEntry>($"{path}.animal");
                        return (Path: path, Entry: entry, Species: CrewKinds.Of(entry), c.Count);
                    }
                )
                .Where(c => c is { Count: > 0, Species: not null })
                .Select(c => new SeededKind(c.Path, c.Entry, c.Species!, c.Count)),
        ];

    /// <summary>The floor, nobody eating of it yet.</summary>
    /// <param name="n">The design.</param>
    /// <param name="crew">Its crew.</param>
    /// <param name="all">Coefficients.</param>
    public static FloorLifeSetup Of(LifeInputs n, ImmutableArray<SeededKind> crew, ModelCoefficients all)
    {
        var with = all.Life;
        var litter = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter);
        double area = WaterBasins.Ground(n.Design, n.Box).Si;
        var leaves = litter?.Material as LitterEntry;
        double ratio = leaves?.CarbonToNitrogen?.Value ?? LifePolicy.UsualCarbonToNitrogen;
        return new FloorLifeSetup
        {
            SquareMeters = area,
            Crew =
            [
                .. crew.Select(c => new CrewStock(
                    CrewKinds.Hardier(c.Species, with.YoungThatLive.Use(), with),
                    CrewKinds.Body(c.Entry, all),
                    c.Count,
                    c.Species.NeedsDamp ? double.PositiveInfinity : with.IsopodsBySpace.Use()
                )),
            ],
            LitterGrams = (litter?.DryMass?.Si ?? 0.0) * 1000.0,
            DecayPerYear = leaves?.DecayAt24?.Value ?? with.Decay.Use(),
            LitterNitrogen = LifePolicy.Carbon / ratio,
            Eaters = [.. Eaters(n, with)],
            Rates = FloorRates.Of(all.FloorLife),
            PlantGramsPerDay =
                n.Design.Design.Plants.Count == 0
                    ? 0.0
                    : area * (with.Growth.Use() / 365.0) * with.PlantNitrogen.UseSi(),
        };
    }

    /// <summary>What the life of the floor rests on.</summary>
    /// <param name="n">The design.</param>
    /// <param name="crew">Its crew.</param>
    /// <param name="all">Coefficients that were taken.</param>
    public static ImmutableArray<Figure> Inputs(
        LifeInputs n,
        ImmutableArray<SeededKind> crew,
        ModelCoefficients all
    )
    {
        var leaves = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter)?.Material as LitterEntry;
        IEnumerable<Figure?> figures =
        [
            .. crew.SelectMany(c =>
                new[] { n.Design.Count($"{c.Path}.count", $"number of {c.Entry.Name}", c.Count) }.Concat(
                    Rates(c.Entry)
                )
            ),
            leaves?.DecayAt24,
            n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter)?.DryMass,
            WaterBasins.Ground(n.Design, n.Box),
            .. Amphibians(n).Select(a => a.Entry.Mass),
            .. Amphibians(n)
                .Select(a =>
                    n.Design.Count($"{a.Path}.count", $"number of {a.Entry.Name}", a.Resident.Count)
                ),
            .. FloorGround.Inputs(n),
            .. all.Used,
        ];
        return [.. figures.OfType<Figure>().Distinct()];
    }

    /// <summary>Values of a crew animal that its rates are made of.</summary>
    private static Figure?[] Rates(CrewEntry crew) =>
        [
            crew.DevelopmentZero,
            crew.WarmthToHatching,
            crew.WarmthToFirstEggs,
            crew.EggsPerLifeAt15,
            crew.EggsPerLifeAt21,
            crew.EggsPerLifeAt27,
            crew.AdultLifeAt15,
            crew.AdultLifeAt24,
            crew.EggRate,
            crew.AdultLife,
            crew.Hatch,
            crew.HatchBestTo,
            crew.HatchStopsAt,
            crew.BreedsFrom,
            crew.BreedsTo,
            crew.BreedsLessFrom,
            crew.HeatLimit,
            crew.AdultLifeInHeat,
            crew.Survival,
            crew.WarmthToFirstBrood,
            crew.WarmthOfYoung,
            crew.WarmthBetweenBroods,
            crew.Brood,
            crew.FemaleShare,
            crew.BirthSurvival,
            crew.GrowthFallsFrom,
            crew.GrowthZeroAt,
            crew.FreshMass,
            crew.DryMass,
            crew.MeanMobileDryMass,
            crew.LitterRate,
        ];

    private static IEnumerable<BoxAnimal> Amphibians(LifeInputs n) =>
        BoxAnimal.Of(n.Design).Where(a => a.Resident.Count > 0 && a.Class == AnimalClass.Amphibian);

    private static IEnumerable<CrewEater> Eaters(LifeInputs n, LifeCoefficients with) =>
        Amphibians(n)
            .Select(a =>
            {
                double grams = a.Entry.Mass?.Value ?? with.FrogMass.Use();
                bool eats = a.Entry.Food?.Text.Contains("springtail", StringComparison.Ordinal) == true;
                double share = with.CrewShareAtNothing.UseSi() - (with.CrewSharePerGram.UseSi() * grams);
                return new CrewEater(
                    a.Resident.Count,
                    grams,
                    with.Activity.Use(),
                    eats ? Math.Clamp(share, 0.0, with.MostCrewShare.UseSi()) : 0.0
                );
            });
}
