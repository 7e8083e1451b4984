using Litterfall.Domain.Dispatch;
using Litterfall.Workshop.Pricing;
using static System.FormattableString;

namespace Litterfall.Dispatch.Losses;

/// <summary>How often a carrier comes a day late.</summary>
/// <param name="Late">Parcels that came late.</param>
/// <param name="Parcels">Parcels that arrived.</param>
/// <param name="Chance">Chance to compute with, 0 to 1.</param>
/// <param name="Why">Where it comes from, in one sentence.</param>
public sealed record LateChance(int Late, int Parcels, double Chance, string Why);

/// <summary>Delays counted from how parcels arrived; they feed the odds of the next journeys.</summary>
public static class DelayStatistics
{
    /// <summary>Weight of the carrier's own figure, in parcels; own choice.</summary>
    private const double PriorParcels = 30;

    /// <summary>
    /// The chance of a late day: the carrier's own figure as the prior of a Beta distribution, with what was
    /// seen added.
    /// </summary>
    /// <param name="terms">The carrier's terms.</param>
    /// <param name="counts">How parcels arrived.</param>
    public static LateChance LateChanceFor(CarrierTerms terms, IEnumerable<ArrivalCount> counts)
    {
        var parcels = counts.Where(c => c.Carrier == terms.Key).GroupBy(c => c.Parcel).ToList();
        var late = parcels.Count(p => p.Any(c => c.IsLate));
        if (parcels.Count == 0)
        {
            return new(
                0,
                0,
                terms.DayLateChance,
                Invariant(
                    $"As entered for the carrier: {terms.DayLateChance * 100:0.#} %; no parcel arrived yet."
                )
            );
        }

        var rate = new LossRate(
            late,
            parcels.Count,
            PriorParcels * terms.DayLateChance,
            PriorParcels * (1 - terms.DayLateChance)
        );
        return new(
            late,
            parcels.Count,
            rate.Mean,
            Invariant($"{late} of {parcels.Count} parcels came late; with the entered ")
                + Invariant(
                    $"{terms.DayLateChance * 100:0.#} % counted as {PriorParcels:0} parcels before them: "
                )
                + Invariant(
                    $"{rate.Mean * 100:0.#} % (between {rate.Low * 100:0.#} and {rate.High * 100:0.#} % "
                )
                + "with 95 % certainty from what was seen alone)."
        );
    }
}
