using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Humidity conversion formulas of a maker of humidity sensors (read): absolute humidity is 216.679 g
/// K/J times pressure over temperature, with the pressure in hectopascals.
/// </summary>
public static class SensorConstant
{
    private static readonly CaseSource Source = new(
        "Air",
        "Humidity conversion formulas of a maker of sensors",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>A constant.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"constant of absolute humidity",
            "g K/(J 100)",
            (216.679, 0.02),
            "The gas constant of 1986 against that of 2019, and the molar mass of water to five digits.",
            () => 1e5 / MoistAir.VaporGasConstant
        );
    }
}
