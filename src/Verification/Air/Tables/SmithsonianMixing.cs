using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Saturation mixing ratio over water at 1000 mb, table 6.3 of a course in meteorology after the
/// Smithsonian Meteorological Tables (read as a student asks about it).
/// </summary>
public static class SmithsonianMixing
{
    private static readonly CaseSource Source = new(
        "Air",
        "Saturation mixing ratio at 1000 mb, table of a meteorology course",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Mixing ratios.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Grams)[] rows =
        [
            (0.0, 3.84),
            (5.0, 5.50),
            (10.0, 7.76),
            (15.0, 10.83),
            (20.0, 14.95),
            (25.0, 20.44),
            (30.0, 27.69),
            (35.0, 37.25),
        ];
        foreach (var (celsius, grams) in rows)
        {
            yield return Source.Case(
                $"mixing ratio of saturated air at {celsius} °C, 1000 mb",
                "g/kg",
                CaseSource.Within(6e-3, grams),
                "The table counts air as a real gas, which takes 0.4 to 0.5 % more vapor.",
                () => 1000.0 * MoistAir.HumidityRatio(celsius, 1.0, 100_000.0)
            );
        }
    }
}
