using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Rajput, R. K., Engineering Thermodynamics, example 10.10: values its solution takes from the steam
/// tables (read in a public transcript of the example).
/// </summary>
public static class RajputThermodynamics
{
    private static readonly CaseSource Source = new(
        "Air",
        "Rajput, Engineering Thermodynamics, example 10.10",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Pressures and enthalpies.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Bar, double Half)[] pressures = [(18.0, 0.0206, 5e-5), (28.0, 0.03782, 1e-5)];
        foreach (var (celsius, bar, half) in pressures)
        {
            yield return Source.Case(
                $"saturation pressure at {celsius} °C",
                "bar",
                (bar, half),
                "Half a digit of the first, a digit of the second.",
                () => MoistAir.SaturationPressure(celsius) / 1e5
            );
        }

        (double Celsius, double Kilojoules)[] heats = [(18.0, 2534.4), (28.0, 2552.6)];
        foreach (var (celsius, kilojoules) in heats)
        {
            yield return Source.Case(
                $"enthalpy of saturated vapor at {celsius} °C",
                "kJ/kg",
                (kilojoules, 1.0),
                "Our straight line leaves out 0.4 kJ/kg of the steam tables.",
                () => MoistAir.VaporEnthalpy(celsius) / 1000.0
            );
        }
    }
}
