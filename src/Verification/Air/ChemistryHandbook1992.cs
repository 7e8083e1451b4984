using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// Handbook of Chemistry and Physics 1992-93, vapor pressure of water (read in a stored copy). It prints
/// 6.6398 kPa at 38 °C, which lies 0.15 % off the run of its own column; the equation of Wagner and Pruss
/// (IAPWS SR1-86, recalled) is the second solution.
/// </summary>
public static class ChemistryHandbook1992
{
    private const double CriticalKelvin = 647.096;
    private const double CriticalPascals = 22.064e6;
    private static readonly CaseSource Source = new(
        "Air",
        "Handbook of Chemistry and Physics 1992-93",
        Evidence.PrintedTable,
        Provenance.Read
    );

    private static readonly (double Power, double Factor)[] Terms =
    [
        (1.0, -7.85951783),
        (1.5, 1.84408259),
        (3.0, -11.7866497),
        (3.5, 22.6807411),
        (4.0, -15.9618719),
        (7.5, 1.80122502),
    ];

    private static readonly (double Celsius, double Kilopascals)[] Rows =
    [
        (0.0, 0.61129),
        (5.0, 0.8726),
        (10.0, 1.2281),
        (15.0, 1.7056),
        (18.0, 2.0644),
        (20.0, 2.3388),
        (22.0, 2.6447),
        (24.0, 2.985),
        (25.0, 3.169),
        (26.0, 3.3629),
        (28.0, 3.7818),
        (30.0, 4.2455),
        (35.0, 5.6267),
        (38.0, 6.6398),
        (40.0, 7.3814),
        (45.0, 9.5895),
        (50.0, 12.344),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Saturation pressures.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Rows.Select(row =>
            Source.Case(
                $"saturation pressure at {row.Celsius} °C",
                "kPa",
                CaseSource.Within(7e-4, row.Kilopascals),
                "The table itself lies up to 6e-4 below IAPWS.",
                () => MoistAir.SaturationPressure(row.Celsius) / 1000.0
            ) with
            {
                Second = new SecondSolution(
                    "Wagner and Pruss",
                    () => Saturation(row.Celsius) / 1000.0,
                    7e-4 * row.Kilopascals
                ),
            }
        );

    private static double Saturation(double celsius)
    {
        double kelvin = celsius + 273.15;
        double tau = 1.0 - (kelvin / CriticalKelvin);
        double sum = Terms.Sum(t => t.Factor * Math.Pow(tau, t.Power));
        return CriticalPascals * Math.Exp(CriticalKelvin / kelvin * sum);
    }
}
