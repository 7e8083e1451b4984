using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Taupunkttabelle, the table of dew points that German trades use on site, after DIN 4108 (read in a
/// sheet for painting work; its rows are rounded, and a few of them are off by two tenths).
/// </summary>
public static class DewPointTable
{
    private static readonly CaseSource Source = new(
        "Air",
        "Taupunkttabelle, dew points of room air",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Dew points.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Percent, double DewPoint)[] rows =
        [
            (20.0, 30.0, 1.9),
            (20.0, 40.0, 6.0),
            (20.0, 50.0, 9.3),
            (20.0, 60.0, 12.0),
            (20.0, 70.0, 14.4),
            (20.0, 80.0, 16.5),
            (20.0, 90.0, 18.4),
            (25.0, 50.0, 13.8),
            (25.0, 60.0, 16.7),
            (25.0, 70.0, 19.1),
            (30.0, 50.0, 18.4),
            (30.0, 60.0, 21.4),
            (30.0, 70.0, 23.9),
            (30.0, 80.0, 26.1),
        ];
        foreach (var (celsius, percent, dewPoint) in rows)
        {
            yield return Source.Case(
                $"dew point of {celsius} °C, {percent} %",
                "°C",
                (dewPoint, 0.15),
                "A tenth, rounded in steps of the table, and a half of a digit.",
                () => MoistAir.DewPoint(percent / 100.0 * MoistAir.SaturationPressure(celsius))
            );
        }
    }
}
