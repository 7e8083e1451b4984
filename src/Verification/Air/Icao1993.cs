using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// ICAO 1993, Manual of the ICAO Standard Atmosphere, Doc 7488 (recalled): pressure at geopotential
/// heights.
/// </summary>
public static class Icao1993
{
    private static readonly CaseSource Source = new(
        "Air",
        "ICAO Doc 7488, standard atmosphere",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Pressures.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Meters, double Hectopascals)[] rows =
        [
            (500.0, 954.61),
            (1000.0, 898.75),
            (1500.0, 845.56),
            (2000.0, 794.95),
            (3000.0, 701.09),
        ];
        foreach (var (meters, hectopascals) in rows)
        {
            yield return Source.Case(
                $"pressure at {meters} m",
                "hPa",
                (hectopascals, 0.05),
                "The formula rounds the exponent to 5.2559: 0.005 %.",
                () => MoistAir.PressureAt(meters) / 100.0
            );
        }
    }
}
