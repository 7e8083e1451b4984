using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// A textbook of thermodynamics and heat power, problem 7.13 (read in a public transcript of its
/// solutions): air of 80 °F and 50 %, whose steam table gives 0.5073 psia, has a dew point of 60 °F.
/// </summary>
public static class HeatPowerText
{
    private static readonly CaseSource Source = new(
        "Air",
        "Textbook of thermodynamics and heat power, problem 7.13",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>A pressure and a dew point.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"saturation pressure at 80 °F",
            "psi",
            (0.5073, 5e-4),
            "0.1 % of an older steam table.",
            () => MoistAir.SaturationPressure(Celsius) / PascalsPerPsi
        );
        yield return Source.Case($"dew point of 80 °F, 50 %", "°F", (60.0, 0.5), "Half a digit.", () =>
            32.0 + (1.8 * MoistAir.DewPoint(0.5 * MoistAir.SaturationPressure(Celsius)))
        );
    }

    private const double Celsius = (80.0 - 32.0) / 1.8;
    private const double PascalsPerPsi = 6894.757;
}
