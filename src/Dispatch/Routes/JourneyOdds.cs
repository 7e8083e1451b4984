using System.Collections.Immutable;
using Litterfall.Dispatch.Bands;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Physics.Parcel;

namespace Litterfall.Dispatch.Routes;

/// <summary>What came of many journeys, shares 0 to 1.</summary>
/// <param name="Out">Left the band that is to be kept.</param>
/// <param name="Cold">Left it on the cold side.</param>
/// <param name="Warm">Left it on the warm side.</param>
/// <param name="Hold">Passed the limits from which a forecast is held.</param>
/// <param name="Lethal">Passed what is borne on no account.</param>
/// <param name="MeanMissKelvin">How far the band was missed in the mean, K.</param>
public readonly record struct JourneyOdds(
    double Out,
    double Cold,
    double Warm,
    double Hold,
    double Lethal,
    double MeanMissKelvin
)
{
    private const double SecondsPerHour = 3600;
    private const double LowShare = 0.05;
    private const double LeastUnderway = 0.05;

    /// <summary>Sends a parcel on all journeys.</summary>
    /// <param name="parcel">The parcel.</param>
    /// <param name="journeys">The journeys.</param>
    /// <param name="limits">What is to be kept and borne.</param>
    public static JourneyOdds Count(
        PackedParcel parcel,
        ImmutableArray<Journey> journeys,
        TransportBand limits
    )
    {
        var (cold, warm, left, hold, lethal, miss) = (0, 0, 0, 0, 0, 0.0);
        foreach (var journey in journeys)
        {
            var outcome = parcel.Send(journey, default);
            var (low, high) = (outcome.ColdestCelsius, outcome.WarmestCelsius);
            var (isCold, isWarm) = (low < limits.KeepLow, high > limits.KeepHigh);
            cold += isCold ? 1 : 0;
            warm += isWarm ? 1 : 0;
            left += isCold || isWarm ? 1 : 0;
            hold += low < limits.HoldBelow || high > limits.HoldAbove ? 1 : 0;
            lethal += low < limits.BearsLow || high > limits.BearsHigh ? 1 : 0;
            miss += Math.Max(0, limits.KeepLow - low) + Math.Max(0, high - limits.KeepHigh);
        }

        double all = journeys.Length;
        return new(left / all, cold / all, warm / all, hold / all, lethal / all, miss / all);
    }

    /// <summary>The inside of a parcel hour by hour, until few journeys are still under way.</summary>
    /// <param name="parcel">The parcel.</param>
    /// <param name="journeys">The journeys.</param>
    /// <param name="limits">What is to be kept.</param>
    public static Seq<JourneyHour> Hourly(
        PackedParcel parcel,
        ImmutableArray<Journey> journeys,
        TransportBand limits
    )
    {
        var rows = journeys.Max(j => (int)(j.EndSeconds / SecondsPerHour)) + 1;
        var inside = new List<double>[rows];
        var air = new List<double>[rows];
        for (var h = 0; h < rows; h++)
        {
            (inside[h], air[h]) = (new(journeys.Length), new(journeys.Length));
        }

        var firstOut = new List<double>();
        var celsius = new double[rows + 2];
        var levels = new LevelExposure[2];
        foreach (var journey in journeys)
        {
            levels[0] = new(limits.KeepLow);
            levels[1] = new(limits.KeepHigh);
            parcel.Send(
                journey,
                new ParcelReport
                {
                    EverySeconds = SecondsPerHour,
                    Celsius = celsius,
                    Levels = levels,
                }
            );
            firstOut.Add(Math.Min(levels[0].FirstBelow, levels[1].FirstAbove) / SecondsPerHour);
            for (var h = 0; h * SecondsPerHour <= journey.EndSeconds; h++)
            {
                inside[h].Add(celsius[h]);
                air[h].Add(journey.At(SecondsPerHour * h));
            }
        }

        return
        [
            .. Enumerable
                .Range(0, rows)
                .TakeWhile(h => inside[h].Count >= LeastUnderway * journeys.Length)
                .Select(h => Row(h, inside[h], air[h], firstOut)),
        ];
    }

    private static JourneyHour Row(int hour, List<double> inside, List<double> air, List<double> firstOut)
    {
        inside.Sort();
        air.Sort();
        return new(
            hour,
            At(inside, LowShare),
            At(inside, 0.5),
            At(inside, 1 - LowShare),
            At(air, 0.5),
            firstOut.Count(f => f <= hour) / (double)firstOut.Count
        );
    }

    private static double At(List<double> sorted, double share)
    {
        var at = share * (sorted.Count - 1);
        var low = (int)at;
        var high = Math.Min(low + 1, sorted.Count - 1);
        return sorted[low] + ((at - low) * (sorted[high] - sorted[low]));
    }
}
