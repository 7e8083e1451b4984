using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Incropera, F. P. and DeWitt, D. P., Fundamentals of Heat and Mass Transfer, table A.6 (recalled):
/// saturated water.
/// </summary>
public static class Incropera
{
    private static readonly CaseSource Source = new(
        "Air",
        "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, table A.6",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Saturation pressures.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Kelvin, double Bar)[] rows = [(290.0, 0.01917), (300.0, 0.03531), (310.0, 0.06221)];
        foreach (var (kelvin, bar) in rows)
        {
            yield return Source.Case(
                $"saturation pressure at {kelvin} K",
                "bar",
                CaseSource.Within(3e-3, bar),
                "The table counts 273 K as 0 °C in part: rows lie up to 0.3 % off.",
                () => MoistAir.SaturationPressure(kelvin - 273.15) / 1e5
            );
        }
    }
}
