using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Table of water in saturated air for breathing care, medicalalgorithms.com (read): milligrams in a
/// liter of air and pressure in millimeters of mercury.
/// </summary>
public static class BreathingAir
{
    private static readonly CaseSource Source = new(
        "Air",
        "Water in saturated air, table for breathing care",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Masses of water and pressures.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Milligrams, double Mercury)[] rows =
        [
            (20.0, 17.3, 17.5),
            (25.0, 23.0, 23.7),
            (30.0, 30.4, 31.7),
            (35.0, 39.6, 42.0),
            (37.0, 43.9, 46.9),
            (40.0, 51.1, 55.1),
        ];
        foreach (var (celsius, milligrams, mercury) in rows)
        {
            yield return Source.Case(
                $"water in a liter of saturated air at {celsius} °C",
                "mg",
                (milligrams, 0.15),
                "A digit and a half: the table is older than the equation.",
                () =>
                {
                    double w = MoistAir.HumidityRatio(celsius, 1.0, MoistAir.StandardPascals);
                    return 1000.0 * w / MoistAir.SpecificVolume(celsius, w, MoistAir.StandardPascals);
                }
            );
            yield return Source.Case(
                $"pressure of vapor at {celsius} °C, saturated",
                "mmHg",
                (mercury, 0.3),
                "Three digits: the rows from 34 °C on lie 0.2 to 0.3 low of newer tables.",
                () => MoistAir.SaturationPressure(celsius) / 133.322
            );
        }
    }
}
