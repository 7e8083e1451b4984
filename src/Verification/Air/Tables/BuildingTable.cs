using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Water that air can hold by temperature, knowledge base of a maker of building goods (read).
/// </summary>
public static class BuildingTable
{
    private static readonly CaseSource Source = new(
        "Air",
        "Water in air by temperature, knowledge base of a building maker",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Masses of vapor.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Grams)[] rows =
        [
            (0.0, 4.8),
            (5.0, 6.8),
            (10.0, 9.4),
            (15.0, 12.8),
            (20.0, 17.3),
            (25.0, 23.1),
            (30.0, 30.4),
        ];
        foreach (var (celsius, grams) in rows)
        {
            yield return Source.Case(
                $"vapor in saturated air at {celsius} °C",
                "g/m³",
                (grams, 0.07),
                "Half a digit, and the older equation.",
                () =>
                {
                    double w = MoistAir.HumidityRatio(celsius, 1.0, MoistAir.StandardPascals);
                    return 1000.0 * w / MoistAir.SpecificVolume(celsius, w, MoistAir.StandardPascals);
                }
            );
        }
    }
}
