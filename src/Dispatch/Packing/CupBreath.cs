using Litterfall.Domain.Dispatch;
using Litterfall.Physics.Parcel;

namespace Litterfall.Dispatch.Packing;

/// <summary>Air and water of an animal's cup on its way, at the worst of a hot day.</summary>
internal static class CupBreath
{
    private const int FewestHoles = 6;
    private const int MostHoles = 10;

    /// <summary>Warm and dry around the cup: the most oxygen and water are used; own choice.</summary>
    private const double WarmCelsius = 30;

    private const double DryHumidity = 0.3;

    /// <summary>A carried animal is awake: times its resting rate; own choice.</summary>
    private const double Activity = 3;

    private const double SecondsPerHour = 3600;
    private const double GramsPerKilogram = 1000;
    private const double LitersPerCubicMeter = 1000;

    /// <summary>Room of the air beside moss and animal, share of the cup; own choice.</summary>
    private const double AirShare = 0.6;

    /// <summary>The fewest usual holes with which the air stays good; null where ten are too few.</summary>
    public static int? Holes(TransportCup cup, double kilograms)
    {
        for (var holes = Math.Clamp(cup.Holes, FewestHoles, MostHoles); holes <= MostHoles; holes++)
        {
            if (Air(cup, holes, kilograms).SteadyOxygen(WarmCelsius) >= ChamberAir.PoorOxygen)
            {
                return holes;
            }
        }

        return null;
    }

    /// <summary>Water that leaves the moss through the holes on the way, g.</summary>
    public static double WaterGrams(TransportCup cup, int holes, double hours) =>
        Air(cup, holes, 0).WaterPerSecond(WarmCelsius, DryHumidity)
        * hours
        * SecondsPerHour
        * GramsPerKilogram;

    private static CupAir Air(TransportCup cup, int holes, double kilograms) =>
        new(
            AirShare * cup.Liters / LitersPerCubicMeter,
            new(holes, cup.HoleMeters, cup.LidMeters),
            new(kilograms * GramsPerKilogram, 1, Activity)
        );
}
