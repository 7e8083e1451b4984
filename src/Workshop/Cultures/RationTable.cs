using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Crew;

namespace Litterfall.Workshop.Cultures;

/// <summary>What the animals of a tank get.</summary>
/// <param name="Group">The animals.</param>
/// <param name="Name">Their name.</param>
/// <param name="Grams">Mass of one, g.</param>
/// <param name="FliesPerDay">Flies of all of them in the mean of a day; null where a mass is
/// missing.</param>
/// <param name="ChalkMilligrams">Calcium carbonate on the flies of a day, mg; null where
/// the library does not tell what the flies lack.</param>
/// <param name="CalciumEvery">Calcium with D3 at every so many feedings.</param>
/// <param name="VitaminDays">Days between vitamin A feedings.</param>
public sealed record Ration(
    FedGroup Group,
    string Name,
    double? Grams,
    double? FliesPerDay,
    double? ChalkMilligrams,
    int CalciumEvery,
    int VitaminDays
)
{
    /// <summary>True on days on which vitamin A is due; it is counted from the day they came.</summary>
    /// <param name="day">The day.</param>
    public bool HasVitamins(DateOnly day) =>
        Group.IsHere(day) && (day.DayNumber - Group.Since.DayNumber) % VitaminDays == 0;
}

/// <summary>Rations and powders of the animals in care.</summary>
public static class RationTable
{
    private const string Keepers = "keeper-practice";

    /// <summary>Calcium over phosphorus that is wanted.</summary>
    public static readonly Figure Ratio = Figure.Given(
        "calcium over phosphorus that is wanted",
        1.5,
        Unit.One,
        Citation.Recalled(Keepers, "calcium to phosphorus of 1.5 in the food of frogs")
    );

    private const double CalciumInChalk = 40.078 / 100.087;

    private static readonly ImmutableArray<FeedingPlan> Plans =
    [
        FeedingPlan.Create(FedClass.Adult, "adults", 1.5, 2, 14),
        FeedingPlan.Create(FedClass.Froglet, "froglets", 2, 1, 7),
        FeedingPlan.Create(FedClass.Breeding, "breeding females", 2.5, 1, 10),
    ];

    /// <summary>All, for the list of where numbers come from.</summary>
    public static ImmutableArray<Figure> All { get; } =
    [Ratio, .. Plans.SelectMany(p => new[] { p.Activity, p.CalciumEvery, p.Vitamins })];

    /// <summary>Food and powders of animals of an age, after the calendar of zoos and keepers.</summary>
    private sealed record FeedingPlan(FedClass Class, Figure Activity, Figure CalciumEvery, Figure Vitamins)
    {
        private static readonly Citation Calendar = Citation.Recalled(
            Keepers,
            "feeding and supplement calendar of zoos and keepers for small frogs"
        );

        public static FeedingPlan Create(
            FedClass of,
            string who,
            double activity,
            double calciumEvery,
            double vitaminDays
        ) =>
            new(
                of,
                Figure.Given(
                    $"energy spent over that at rest, {who}",
                    activity,
                    Unit.One,
                    Citation.Recalled(Keepers, "activity of small frogs over rest")
                ),
                Figure.Given($"feedings for one with calcium, {who}", calciumEvery, Unit.One, Calendar),
                Figure.Given(
                    $"time between vitamin A, {who}",
                    Unit.Day.ToSiValue(vitaminDays),
                    Unit.Day,
                    Calendar
                )
            );
    }

    /// <summary>
    /// Calcium carbonate that brings dry flies to the wanted ratio, mg: what is missing in calcium over the
    /// share of calcium in it, from atomic masses.
    /// </summary>
    /// <param name="dryMilligrams">Dry flies, mg.</param>
    /// <param name="calcium">Calcium of their dry matter.</param>
    /// <param name="phosphorus">Phosphorus of their dry matter.</param>
    public static double Chalk(double dryMilligrams, double calcium, double phosphorus) =>
        dryMilligrams * Math.Max(0, (Ratio.Si * phosphorus) - calcium) / CalciumInChalk;

    /// <summary>The ration of a group.</summary>
    /// <param name="group">The animals.</param>
    /// <param name="catalog">The library.</param>
    public static Ration For(FedGroup group, TradeCatalog catalog)
    {
        var animal = catalog.Find<AnimalEntry>(group.Animal);
        var grams = group.Grams ?? animal?.Mass?.Si * 1000;
        var plan = Plans.First(p => p.Class == group.Class);
        double? dry = grams is > 0 and { } mass
            ? group.Count
                * FrogNeeds.Usual.FlyDryMass(
                    FrogNeeds.Usual.FoodJoulesPerDay(mass, group.Celsius, plan.Activity.Si)
                )
            : null;
        var feeder = catalog.Find<FeederEntry>(group.Feeder);
        var fly = feeder?.DryMass is { Si: > 0 } one ? one.Si * 1e6 : FrogNeeds.Usual.FlyDryMilligrams;
        double? chalk = feeder is { Calcium: { } calcium, Phosphorus: { } phosphorus }
            ? Chalk(dry ?? 0, calcium.Si, phosphorus.Si)
            : null;
        return new(
            group,
            animal?.Name ?? group.Animal,
            grams,
            dry / fly,
            chalk,
            (int)plan.CalciumEvery.Si,
            CulturePractice.Days(plan.Vitamins)
        );
    }
}
