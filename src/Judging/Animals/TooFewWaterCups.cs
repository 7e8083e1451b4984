using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Egg feeders carry each tadpole to its own water.</summary>
internal static class TooFewWaterCups
{
    public static readonly Rule Rule = new(
        "too-few-water-cups",
        Protects.Animal,
        "an egg feeder has fewer than three water cups or tank bromeliads for each pair",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            finding.Limit is { } cups
                ? DesignFix.From(
                    FormattableString.Invariant($"{cups.Si:0} water cups"),
                    DesignEdits.Set(design.Document, "waterCups", FormattableString.Invariant($"{cups.Si:0}"))
                )
                : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            if (species.Species.WaterCupsPerPair is not { } each)
            {
                continue;
            }

            var pairs = Figure
                .Computed(
                    $"{species.Asked.Name} ÷ 2, rounded up",
                    Math.Ceiling(species.Asked.Si / 2),
                    Dimension.None,
                    species.Asked
                )
                .As($"pairs of {species.Species.Name}", Unit.One);
            var needs = (pairs * each).As("water cups or bromeliads needed", Unit.One, each.Origin);
            var has = Has(n);
            if (has.Si >= needs.Si)
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{species.Species.Name} feed each tadpole in its own water and need {needs.Value:0} "
                        + $"water cups or tank bromeliads; the box has {has.Value:0}."
                ),
                (has, needs),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Hang {More(needs.Si - has.Si)}, or plant as many tank bromeliads."
                ),
                "waterCups"
            );
        }
    }

    private static string More(double cups) =>
        cups < 1.5 ? "one more water cup" : FormattableString.Invariant($"{cups:0} more water cups");

    private static Figure Has(DesignNumbers n)
    {
        var cups = n.Design.Count("waterCups", "water cups", n.Design.Design.WaterCups ?? 0);
        var plants = n.Design.Design.Plants;
        var tanks = Enumerable
            .Range(0, plants.Count)
            .Where(i => IsTank(n, i))
            .Select(i =>
                n.Design.Count($"plants[{i}].count", $"tank bromeliads, entry {i + 1}", plants[i].Count)
            );
        return Figure.Total([cups, .. tanks], Dimension.None).As("water cups and tank bromeliads", Unit.One);
    }

    private static bool IsTank(DesignNumbers n, int i) =>
        n
            .Design.Entry<PlantEntry>($"plants[{i.ToString(CultureInfo.InvariantCulture)}].plant")
            .Habit?.Text?.Contains("tank", StringComparison.OrdinalIgnoreCase)
            is true;
}
