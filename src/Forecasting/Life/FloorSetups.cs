using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
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
internal sealed record SeededKind(string Path, CatalogEntry Entry, CrewSpecies Species, int Count);

/// <summary>A design as a floor with its crew and those that eat of it.</summary>
internal static class FloorSetups
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
                        var entry = design.Entry($"{path}.animal");
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
        double area = n.Box.OpenFloor.Si;
        double ratio = Value(litter?.Material, "carbonToNitrogen") ?? LifePolicy.UsualCarbonToNitrogen;
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
            DecayPerYear = Value(litter?.Material, "decayAt24C") ?? with.Decay.Use(),
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
        var leaves = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter)?.Material;
        IEnumerable<Figure?> figures =
        [
            .. crew.SelectMany(c =>
                new[] { n.Design.Count($"{c.Path}.count", $"number of {c.Entry.Name}", c.Count) }.Concat(
                    Rates.Select(c.Entry.Figure)
                )
            ),
            leaves?.Figure("decayAt24C"),
            n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter)?.DryMass,
            n.Box.OpenFloor,
            .. Amphibians(n).Select(a => a.Entry.Figure("mass")),
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
    private static readonly string[] Rates =
    [
        "T0",
        "KE",
        "KJ",
        "eggsPerLifeAt15C",
        "eggsPerLifeAt21C",
        "eggsPerLifeAt27C",
        "adultLifeAt15C",
        "adultLifeAt24C",
        "eggsPerDay",
        "adultLife",
        "hatch",
        "hatchBestTo",
        "hatchStopsAt",
        "survival",
        "KI",
        "KM",
        "KB",
        "brood",
        "femaleFraction",
        "birthSurvival",
        "growthFallsFrom",
        "growthZeroAt",
        "freshMass",
        "dryMass",
        "meanMobileDryMass",
        "litterRate",
    ];

    private static double? Value(CatalogEntry? entry, string name) =>
        entry?.Values.GetValueOrDefault(name)?.Number;

    private static IEnumerable<BoxAnimal> Amphibians(LifeInputs n) =>
        BoxAnimal.Of(n.Design).Where(a => a.Resident.Count > 0 && a.Class == AnimalClass.Amphibian);

    private static IEnumerable<CrewEater> Eaters(LifeInputs n, LifeCoefficients with) =>
        Amphibians(n)
            .Select(a =>
            {
                double grams = Value(a.Entry, "mass") ?? with.FrogMass.Use();
                bool eats = a.Entry.Text("food")?.Contains("springtail", StringComparison.Ordinal) == true;
                double share = with.CrewShareAtNothing.UseSi() - (with.CrewSharePerGram.UseSi() * grams);
                return new CrewEater(
                    a.Resident.Count,
                    grams,
                    with.Activity.Use(),
                    eats ? Math.Clamp(share, 0.0, with.MostCrewShare.UseSi()) : 0.0
                );
            });
}
