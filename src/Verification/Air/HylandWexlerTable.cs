using Litterfall.Physics.Air;

namespace Litterfall.Verification.Air;

/// <summary>
/// Hyland and Wexler 1983 as in the handbook of 2017 (recalled), programmed a second time from its coefficients:
/// saturation pressure, humidity ratio and vapor density of saturated ideal air at 101,325 Pa.
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

    // °C, Pa, kg/kg, g/m³
    private static readonly (double Celsius, double Pascals, double Ratio, double Grams)[] Rows =
    [
        (1.0, 657.072, 0.004059510, 5.193196),
        (5.0, 872.487, 0.005401943, 6.796841),
        (10.0, 1227.995, 0.007630054, 9.397821),
        (15.0, 1705.448, 0.010647455, 12.825783),
        (17.0, 1937.949, 0.012127310, 14.474041),
        (19.0, 2197.796, 0.013789438, 16.302610),
        (21.0, 2487.667, 0.015653924, 18.327532),
        (23.0, 2810.442, 0.017742964, 20.565910),
        (25.0, 3169.216, 0.020081123, 23.035949),
        (27.0, 3567.312, 0.022695624, 25.756996),
        (30.0, 4246.030, 0.027202568, 30.354439),
        (33.0, 5034.342, 0.032517006, 35.637583),
        (38.0, 6631.472, 0.043555365, 46.189437),
        (44.0, 9110.675, 0.061447487, 62.256952),
        (50.0, 12349.856, 0.086326711, 82.823899),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Pressures, ratios and densities.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Reason = "Seven printed digits.";
        foreach (var (celsius, pascals, ratio, grams) in Rows)
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
            yield return Equation.Case(
                $"saturated vapor density at {celsius} °C",
                "g/m³",
                CaseSource.Within(Digits, grams),
                Reason,
                () =>
                    1000.0
                    * HylandWexler1983.VaporDensity(
                        celsius + Physics.Constants.ZeroCelsiusKelvin,
                        1.0
                    )
            );
        }
    }
}
