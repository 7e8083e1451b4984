using Litterfall.Domain.Catalog.Entries;
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
internal sealed record SeededKind(string Path, CrewEntry Entry, CrewSpecies Species, int Count);

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
    public static FloorLifeSetup Of(LifeInputs n, ImmutableArray<SeededKind> crew)
    {
        var litter = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter);
        double area = n.Box.OpenFloor.Si;
        var leaves = litter?.Material as LitterEntry;
        double ratio = leaves?.CarbonToNitrogen?.Value ?? LifePolicy.UsualCarbonToNitrogen;
        return new FloorLifeSetup
        {
            SquareMeters = area,
            Crew =
            [
                .. crew.Select(c => new CrewStock(
                    c.Species,
                    CrewKinds.Body(c.Entry),
                    c.Count,
                    c.Species.NeedsDamp ? double.PositiveInfinity : LifePolicy.IsopodsPerSquareMeter
                )),
            ],
            LitterGrams = (litter?.DryMass?.Si ?? 0.0) * 1000.0,
            DecayPerYear = leaves?.DecayAt24?.Value ?? LifePolicy.UsualDecay,
            LitterNitrogen = LifePolicy.Carbon / ratio,
            Eaters = [.. Eaters(n)],
            PlantGramsPerDay =
                n.Design.Design.Plants.Count == 0
                    ? 0.0
                    : area * LifePolicy.GrowthGrams * LifePolicy.PlantNitrogen,
        };
    }

    /// <summary>What the life of the floor rests on.</summary>
    /// <param name="n">The design.</param>
    /// <param name="crew">Its crew.</param>
    public static ImmutableArray<Figure> Inputs(LifeInputs n, ImmutableArray<SeededKind> crew)
    {
        var leaves = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter)?.Material as LitterEntry;
        IEnumerable<Figure?> all =
        [
            .. crew.SelectMany(c =>
                new[]
                {
                    n.Design.Count($"{c.Path}.count", $"number of {c.Entry.Name}", c.Count),
                    c.Entry.DevelopmentZero,
                    c.Entry.Survival,
                    c.Entry.FreshMass,
                }
            ),
            leaves?.DecayAt24,
            n.Box.OpenFloor,
            .. Amphibians(n).Select(a => a.Entry.Mass),
            .. FloorGround.Inputs(n),
        ];
        return [.. all.OfType<Figure>()];
    }

    private static IEnumerable<BoxAnimal> Amphibians(LifeInputs n) =>
        BoxAnimal.Of(n.Design).Where(a => a.Resident.Count > 0 && a.Class == AnimalClass.Amphibian);

    private static IEnumerable<CrewEater> Eaters(LifeInputs n) =>
        Amphibians(n)
            .Select(a =>
            {
                double grams = a.Entry.Mass?.Value ?? LifePolicy.UsualGrams;
                bool eats = a.Entry.Food?.Text.Contains("springtail", StringComparison.Ordinal) == true;
                double share = LifePolicy.CrewShareAtNothing - (LifePolicy.CrewSharePerGram * grams);
                return new CrewEater(
                    a.Resident.Count,
                    grams,
                    LifePolicy.Activity,
                    eats ? Math.Clamp(share, 0.0, LifePolicy.MostCrewShare) : 0.0
                );
            });
}
