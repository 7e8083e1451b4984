using System.Collections.Immutable;
using Litterfall.Domain.Nursery;
using Litterfall.Workshop.Pricing;

namespace Litterfall.Workshop.Nursery;

/// <summary>
/// Share of plants that are lost, learned: a Beta prior with what was seen added to it, and the interval
/// within which the share lies in 95 of 100 cases.
/// </summary>
/// <param name="Lost">Plants lost.</param>
/// <param name="Plants">Plants seen.</param>
/// <param name="PriorLost">Plants lost that the prior counts for.</param>
/// <param name="PriorPlants">Plants that the prior counts for.</param>
public sealed record PlantLoss(int Lost, int Plants, double PriorLost, double PriorPlants)
{
    private const double Tail = 0.025;

    private double A => PriorLost + Lost;

    private double B => PriorPlants - PriorLost + Plants - Lost;

    /// <summary>Mean: the share to plan with.</summary>
    public double Mean => A / (A + B);

    /// <summary>Lower end of the interval.</summary>
    public double Low => BetaFunctions.Quantile(Tail, A, B);

    /// <summary>Upper end of the interval.</summary>
    public double High => BetaFunctions.Quantile(1 - Tail, A, B);

    /// <summary>True where more are lost than is bearable, and it was seen, not only guessed.</summary>
    public bool IsTooMany => Plants > 0 && Mean > NurseryPractice.TooMany.Si;

    /// <summary>Loss of bought plants of a supplier.</summary>
    /// <param name="trays">All trays.</param>
    /// <param name="supplier">Key of the supplier.</param>
    /// <param name="today">Today.</param>
    public static PlantLoss OfSupplier(IEnumerable<PlantTray> trays, string supplier, DateOnly today) =>
        Learn(trays.Where(t => t.Supplier == supplier), NurseryPractice.BoughtLoss.Si, today);

    /// <summary>Loss of a kind of plant by how its trays came to be.</summary>
    /// <param name="trays">All trays.</param>
    /// <param name="plant">Key of the plant.</param>
    /// <param name="isBought">True for bought ones; false for cuttings and divisions.</param>
    /// <param name="today">Today.</param>
    public static PlantLoss OfPlant(
        IEnumerable<PlantTray> trays,
        string plant,
        bool isBought,
        DateOnly today
    ) =>
        Learn(
            trays.Where(t => t.Plant == plant && t.Origin == TrayOrigin.Bought == isBought),
            isBought ? NurseryPractice.BoughtLoss.Si : NurseryPractice.CuttingLoss.Si,
            today
        );

    /// <summary>Trays whose losses have shown count; young ones would look too good.</summary>
    private static PlantLoss Learn(IEnumerable<PlantTray> trays, double priorLost, DateOnly today)
    {
        var shown = NurseryPractice.Days(NurseryPractice.ShowsAfter);
        ImmutableArray<PlantTray> seen =
        [
            .. trays.Where(t => !t.IsStanding || t.Since.AddDays(shown) <= today),
        ];
        return new(
            seen.Sum(t => Math.Min(t.Died, t.Plants)),
            seen.Sum(t => t.Plants),
            priorLost,
            NurseryPractice.PriorWeight.Si
        );
    }
}
