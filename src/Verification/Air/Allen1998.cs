using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// Allen, Pereira, Raes and Smith 1998, FAO Irrigation and Drainage Paper 56, tables 2.1, 2.3 and 2.4 (read
/// as a public test of drought indices repeats them).
/// </summary>
public static class Allen1998
{
    private static readonly CaseSource Source = new(
        "Air",
        "Allen and others 1998, FAO paper 56",
        Evidence.PrintedTable,
        Provenance.Read
    );

    // m; kPa
    private static readonly (double Meters, double Kilopascals)[] Altitudes =
    [
        (0, 101.3),
        (100, 100.1),
        (200, 98.9),
        (300, 97.8),
        (400, 96.6),
        (500, 95.5),
        (600, 94.3),
        (800, 92.1),
        (1000, 89.9),
        (1200, 87.7),
        (1400, 85.6),
        (1600, 83.5),
        (1800, 81.5),
        (2000, 79.5),
        (2500, 74.7),
        (3000, 70.1),
        (4000, 61.6),
    ];

    // °C; kPa; kPa/K
    private static readonly (double Celsius, double Kilopascals, double Slope)[] Saturations =
    [
        (1, 0.657, 0.047),
        (2, 0.706, 0.050),
        (5, 0.872, 0.061),
        (10, 1.228, 0.082),
        (15, 1.705, 0.110),
        (20, 2.338, 0.145),
        (25, 3.168, 0.189),
        (30, 4.243, 0.243),
        (35, 5.624, 0.311),
        (40, 7.384, 0.393),
        (45, 9.585, 0.494),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Air pressure by altitude, saturation pressure and its slope.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (var (meters, kilopascals) in Altitudes)
        {
            yield return Source.Case(
                $"table 2.1, air pressure at {meters} m",
                "kPa",
                (kilopascals, 0.06),
                "Half a digit; the table starts from 101.3, ours from 101.325.",
                () => MoistAir.PressureAt(meters) / 1000.0
            );
        }

        foreach (var (celsius, kilopascals, slope) in Saturations)
        {
            yield return Source.Case(
                $"table 2.3, saturation pressure at {celsius} °C",
                "kPa",
                (kilopascals, 0.0005 + (1.3e-3 * kilopascals)),
                "Half a digit; Tetens' formula behind the table lies up to 0.13 % off.",
                () => SaturationTable.At(celsius).Pascals / 1000.0
            );
            yield return Source.Case(
                $"table 2.4, slope at {celsius} °C",
                "kPa/K",
                (slope, 0.0007 + (3e-3 * slope)),
                "Half a digit, and 0.3 % of Tetens' slope.",
                () => SaturationTable.At(celsius).Slope / 1000.0
            );
        }
    }
}
