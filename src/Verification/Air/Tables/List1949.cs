using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// List, R. J. 1949, Smithsonian Meteorological Tables, 6th ed., table 94 (recalled): saturation
/// pressure over water after Goff and Gratch.
/// </summary>
public static class List1949
{
    private static readonly CaseSource Source = new(
        "Air",
        "List 1949, Smithsonian Meteorological Tables, saturation over water",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Saturation pressures.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Millibar)[] rows =
        [
            (0.0, 6.1078),
            (10.0, 12.272),
            (15.0, 17.044),
            (20.0, 23.373),
            (25.0, 31.671),
            (30.0, 42.430),
            (35.0, 56.236),
            (40.0, 73.777),
        ];
        foreach (var (celsius, millibar) in rows)
        {
            yield return Source.Case(
                $"saturation pressure at {celsius} °C",
                "mb",
                CaseSource.Within(1e-3, millibar),
                "The scale of temperature of 1948 and the older equation: up to 0.08 %.",
                () => MoistAir.SaturationPressure(celsius) / 100.0
            );
        }
    }
}
