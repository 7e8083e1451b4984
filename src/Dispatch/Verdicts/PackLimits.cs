using System.Globalization;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>
/// What is never done with packs, whatever the odds say (dealers' and keepers' practice, from memory; the
/// oxygen of heat packs is computed).
/// </summary>
public static class PackLimits
{
    /// <summary>Heat packs of a parcel: two peak together and take its air.</summary>
    public const int MostHeatPacks = 1;

    /// <summary>Forecast from which on a heat pack has no place, °C: the guide needs none.</summary>
    public const double MildFrom = Bands.AmphibianGuide.HeatPackBelow;

    /// <summary>
    /// Share of journeys without a pack that may pass the limits from which a forecast is held. Guide and
    /// classes count the forecast as it is printed, and leave some kelvin to the absolute limits for its
    /// error: one journey in ten is that error, more is a forecast too near the limit. Own choice.
    /// </summary>
    public const double PlainHoldShare = 0.10;

    /// <summary>
    /// Share of the allowed risk that may pass the absolute limits: one journey of 500 with 2 %. Own choice.
    /// </summary>
    public const double LethalRisk = 0.1;

    private static readonly double[] SmallestForHeat = [0.30, 0.23, 0.15];

    /// <summary>Why a heat pack may not go into a carton; empty where it may.</summary>
    /// <param name="carton">The carton.</param>
    /// <param name="pack">The heat pack.</param>
    /// <param name="lowestCelsius">Coldest forecast of the route, °C.</param>
    /// <param name="routeHours">Hours of the longest usual journey.</param>
    public static string HeatRefusal(
        Carton carton,
        TransportPack pack,
        double lowestCelsius,
        double routeHours
    )
    {
        if (lowestCelsius >= MildFrom)
        {
            return $"A heat pack has no place on a mild day: nowhere is it below {Celsius(MildFrom)}.";
        }

        if (!IsLargeEnough(carton))
        {
            return string.Create(
                CultureInfo.InvariantCulture,
                $"A heat pack never goes into a carton under {100 * SmallestForHeat[0]:0} × "
                    + $"{100 * SmallestForHeat[1]:0} × {100 * SmallestForHeat[2]:0} cm: the {carton.Name} "
                    + $"is too small."
            );
        }

        return pack.Hours < routeHours
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"The {pack.Name} warms for {pack.Hours:0} hours; the route can take {routeHours:0}."
            )
            : "";
    }

    private static bool IsLargeEnough(Carton carton)
    {
        double[] sides = [carton.LengthMeters, carton.WidthMeters, carton.HeightMeters];
        Array.Sort(sides);
        Array.Reverse(sides);
        return sides.Zip(SmallestForHeat).All(p => p.First >= p.Second);
    }

    private static string Celsius(double celsius) => VerdictWords.Celsius(celsius);
}
