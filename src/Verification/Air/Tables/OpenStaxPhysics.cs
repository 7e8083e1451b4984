using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// OpenStax, College Physics, table 13.5 (read in a public transcript of example 13.13): vapor in
/// saturated air, at 25 °C and at dew points of -10 and 10 °C.
/// </summary>
public static class OpenStaxPhysics
{
    private static readonly CaseSource Source = new(
        "Air",
        "OpenStax, College Physics, table 13.5",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Masses of vapor.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Grams, double Half)[] rows = [(25.0, 23.0, 0.1), (10.0, 9.40, 0.01)];
        foreach (var (celsius, grams, half) in rows)
        {
            yield return Source.Case(
                $"vapor in saturated air at {celsius} °C",
                "g/m³",
                (grams, half),
                "A digit.",
                () =>
                {
                    double w = MoistAir.HumidityRatio(celsius, 1.0, MoistAir.StandardPascals);
                    return 1000.0 * w / MoistAir.SpecificVolume(celsius, w, MoistAir.StandardPascals);
                }
            );
        }
    }
}
