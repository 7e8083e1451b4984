using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Plants;

/// <summary>Grown plants need more ground than there is, or stand in each other.</summary>
internal static class Crowded
{
    public static readonly Rule Rule = new(
        "plants-crowded",
        Protects.Build,
        "grown to size the plants of the ground cover more than all of the open floor (a caution from half "
            + "as much again), or two are placed closer than half of where their leaves meet",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Figure Most = Figure.Choice(
        "floor that grown plants may cover",
        100,
        Unit.Percent,
        "beyond it plants shade each other out, unless they are cut"
    );

    private const double Far = 1.5;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var plants = Plantings.Of(n).Where(p => !p.Entry.Mounted && Spreads(p)).ToArray();
        double covered = plants.Sum(p => p.Entry.Count * Math.PI / 4.0 * Width(p) * Width(p));
        double floor = WaterBasins.Ground(n.Design, n.Box).Si;
        if (floor > 0.0 && covered > floor)
        {
            yield return All(n, covered / floor);
        }

        for (int i = 0; i < plants.Length; i++)
        {
            for (int k = i + 1; k < plants.Length; k++)
            {
                if (Apart(plants[i], plants[k]) is { } pair)
                {
                    yield return Pair(plants[i], plants[k], pair);
                }
            }
        }
    }

    private static Finding All(DesignNumbers n, double share) =>
        Rule.Found(
            share > Far ? Severity.Caution : Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Grown to size the plants in the ground cover {100 * share:0} % of the open floor."
            ),
            (
                Figure
                    .Computed(
                        "sum of count × π/4 × grown width² ÷ open floor",
                        share,
                        Dimension.None,
                        WaterBasins.Ground(n.Design, n.Box)
                    )
                    .As("floor that grown plants cover", Unit.Percent),
                Most
            ),
            $"Plant fewer or smaller kinds, or cut back a third every {Practice.Trims}.",
            $"{Controls.At("plants", Controls.Largest(n.Design.Design.Plants, p => p.Count))}.count"
        );

    private static Finding Pair(PlacedPlant a, PlacedPlant b, (double Apart, double Meet) pair) =>
        Rule.Found(
            Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{a.Species.Name} and {b.Species.Name} stand {100 * pair.Apart:0.#} cm apart; grown, "
                    + $"their leaves meet at {100 * pair.Meet:0.#} cm."
            ),
            (
                Figure.Given(
                    "distance of the two",
                    pair.Apart,
                    Unit.Centimeter,
                    new Citation("design", $"{a.Path}.at and {b.Path}.at", Provenance.Entered)
                ),
                (b.Species.LargestGrown)
            ),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Move one by {50 * pair.Meet - 100 * pair.Apart:0.#} cm or more, or cut the larger one."
            ),
            $"{b.Path}.at.x"
        );

    /// <summary>
    /// Distance of two placed plants and where their leaves meet, m; null where far enough.
    /// </summary>
    private static (double Apart, double Meet)? Apart(PlacedPlant a, PlacedPlant b)
    {
        if (a.Entry.At is not { } one || b.Entry.At is not { } two)
        {
            return null;
        }

        double apart = Math.Sqrt(Math.Pow(one.X.Si - two.X.Si, 2.0) + Math.Pow(one.Y.Si - two.Y.Si, 2.0));
        double meet = 0.5 * (Width(a) + Width(b));
        return apart < 0.5 * meet - 1e-9 ? (apart, meet) : null;
    }

    /// <summary>Mats, climbers and trailers go where they are let.</summary>
    private static bool Spreads(PlacedPlant plant) =>
        plant.Species.Growth?.Text is null
        && plant.Species.RootPlace?.Text is not ("climber" or "hemiepiphyte")
        && !plant.Grows("mat")
        && !plant.Grows("moss");

    private static double Width(PlacedPlant plant) => plant.Species.LargestGrown?.Si ?? 0.0;
}
