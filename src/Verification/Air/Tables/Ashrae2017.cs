using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// ASHRAE 2017, Handbook - Fundamentals, chapter 1, table 2 (recalled): saturated moist air at
/// standard pressure.
/// </summary>
public static class Ashrae2017
{
    private static readonly CaseSource Source = new(
        "Air",
        "ASHRAE 2017, Fundamentals, chapter 1, table 2",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Humidity ratios and enthalpies.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Grams, double Kilojoules)[] rows =
        [
            (10.0, 7.661, 29.365),
            (20.0, 14.758, 57.555),
            (25.0, 20.170, 76.500),
            (30.0, 27.329, 100.006),
        ];
        foreach (var (celsius, grams, kilojoules) in rows)
        {
            yield return Source.Case(
                $"humidity ratio of saturated air at {celsius} °C",
                "g/kg",
                CaseSource.Within(6e-3, grams),
                "The table counts air as a real gas, which takes 0.4 to 0.5 % more vapor.",
                () => 1000.0 * MoistAir.HumidityRatio(celsius, 1.0, MoistAir.StandardPascals)
            );
            yield return Source.Case(
                $"enthalpy of saturated air at {celsius} °C",
                "kJ/kg",
                CaseSource.Within(6e-3, kilojoules),
                "The same, in the vapor's share of the heat.",
                () =>
                    MoistAir.Enthalpy(celsius, MoistAir.HumidityRatio(celsius, 1.0, MoistAir.StandardPascals))
                    / 1000.0
            );
        }
    }
}
