using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// Hyland and Wexler 1983 as in the handbook of 2017 (recalled), programmed a second time from its
/// coefficients:
/// saturation pressure and humidity ratio of saturated ideal air at 101,325 Pa.
/// </summary>
public static class HylandWexlerTable
{
    private const double Digits = 1e-6;
    private static readonly CaseSource Equation = new(
        "Air",
        "Hyland and Wexler 1983",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // °C, Pa, kg/kg
    private static readonly (double Celsius, double Pascals, double Ratio)[] Rows =
    [
        (1.0, 657.072, 0.004059510),
        (5.0, 872.487, 0.005401943),
        (10.0, 1227.995, 0.007630054),
        (15.0, 1705.448, 0.010647455),
        (17.0, 1937.949, 0.012127310),
        (19.0, 2197.796, 0.013789438),
        (21.0, 2487.667, 0.015653924),
        (23.0, 2810.442, 0.017742964),
        (25.0, 3169.216, 0.020081123),
        (27.0, 3567.312, 0.022695624),
        (30.0, 4246.030, 0.027202568),
        (33.0, 5034.342, 0.032517006),
        (38.0, 6631.472, 0.043555365),
        (44.0, 9110.675, 0.061447487),
        (50.0, 12349.856, 0.086326711),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Pressures and ratios.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Reason = "Seven printed digits.";
        foreach (var (celsius, pascals, ratio) in Rows)
        {
            yield return Equation.Case(
                $"saturation pressure at {celsius} °C",
                "Pa",
                CaseSource.Within(Digits, pascals),
                Reason,
                () => SaturationTable.At(celsius).Pascals
            );
            yield return Equation.Case(
                $"saturated humidity ratio at {celsius} °C",
                "kg/kg",
                CaseSource.Within(Digits, ratio),
                Reason,
                () => MoistAir.HumidityRatio(celsius, 1.0, MoistAir.StandardPascals)
            );
        }
    }
}
