using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Felder, R. M. and Rousseau, R. W., Elementary Principles of Chemical Processes, problem 8.72
/// (solution read): air of 40 °C with a dew point of 20 °C, off the psychrometric chart.
/// </summary>
public static class Felder
{
    private static readonly CaseSource Source = new(
        "Air",
        "Felder and Rousseau, Elementary Principles of Chemical Processes, problem 8.72",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Humidity and enthalpies.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        double w = MoistAir.HumidityRatio(20.0, 1.0, MoistAir.StandardPascals);
        yield return Source.Case(
            $"relative humidity",
            "%",
            (33.0, 1.5),
            "Read off a chart between its lines of 30 and 40 %.",
            () => 100.0 * MoistAir.RelativeHumidity(40.0, w, MoistAir.StandardPascals)
        );
        yield return Source.Case($"humidity ratio", "kg/kg", (0.0148, 1.5e-4), "Read off a chart.", () => w);
        yield return Source.Case(
            $"enthalpy",
            "kJ/kg",
            (77.4, 1.2),
            "Read off a chart, with its correction.",
            () => MoistAir.Enthalpy(40.0, w) / 1000.0
        );
        yield return Source.Case(
            $"enthalpy of 20 °C, saturated",
            "kJ/kg",
            (57.5, 0.4),
            "Read off a chart.",
            () => MoistAir.Enthalpy(20.0, w) / 1000.0
        );
    }
}
