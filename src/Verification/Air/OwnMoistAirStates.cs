using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// States of moist air at 101,325 Pa by a second program from the handbook's equations (recalled):
/// saturation by
/// Hyland and Wexler 1983, ideal gases, dew point and wet bulb by bisection.
/// </summary>
public static class OwnMoistAirStates
{
    private static readonly CaseSource Source = new(
        "Air",
        "Own worked example, states of moist air",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // °C, %; Pa, kg/kg, dew °C, J/kg, kg/m³, m³/kg
    private static readonly (double T, double Rh, double[] Values)[] Rows =
    [
        (18, 60, [1238.5750, 0.00769660, 10.128105, 37614.887, 1.206821, 0.835001]),
        (20, 50, [1169.4019, 0.00726174, 9.272392, 38551.741, 1.198898, 0.840156]),
        (21, 50, [1243.8336, 0.00772969, 10.191421, 40759.868, 1.194489, 0.843649]),
        (22, 80, [2115.8025, 0.01326402, 18.392370, 55848.079, 1.186551, 0.853958]),
        (24, 70, [2089.5889, 0.01309623, 18.193754, 57482.277, 1.178681, 0.859517]),
        (24, 90, [2686.6144, 0.01693992, 22.257709, 67266.938, 1.176035, 0.864719]),
        (25, 50, [1584.6082, 0.00988104, 13.863973, 50321.959, 1.176958, 0.858043]),
        (25, 80, [2535.3732, 0.01596182, 21.309397, 65812.748, 1.172758, 0.866301]),
        (26, 85, [2858.6625, 0.01805623, 23.281349, 72187.831, 1.167415, 0.872061]),
        (28, 60, [2269.3242, 0.01424850, 19.514065, 64545.561, 1.162239, 0.872668]),
        (28, 95, [3593.0966, 0.02286570, 27.122715, 86545.964, 1.156449, 0.884488]),
        (30, 50, [2123.0151, 0.01331020, 18.446640, 64211.529, 1.155207, 0.877168]),
        (30, 80, [3396.8242, 0.02157334, 26.168593, 85338.715, 1.149673, 0.888578]),
        (35, 40, [2251.1278, 0.01413165, 19.384649, 71473.237, 1.135915, 0.892788]),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Six figures of each state.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (var (t, percent, values) in Rows)
        {
            double pressure = percent / 100.0 * MoistAir.SaturationPressure(t);
            double w = MoistAir.HumidityRatio(pressure);
            yield return One(t, percent, "vapor pressure", "Pa", (values[0], 2e-4), () => pressure);
            yield return One(t, percent, "humidity ratio", "kg/kg", (values[1], 1e-8), () => w);
            yield return One(t, percent, "dew point", "°C", (values[2], 2e-6), () =>
                MoistAir.DewPoint(pressure)
            );
            yield return One(t, percent, "enthalpy", "J/kg", (values[3], 2e-3), () =>
                MoistAir.Enthalpy(t, w)
            );
            yield return One(t, percent, "density", "kg/m³", (values[4], 1e-6), () => MoistAir.Density(t, w));
            yield return One(t, percent, "volume", "m³/kg", (values[5], 1e-6), () =>
                MoistAir.SpecificVolume(t, w)
            );
        }
    }

    private static VerificationCase One(
        double celsius,
        double percent,
        string what,
        string unit,
        (double Value, double Tolerance) expected,
        Func<double> got
    ) => Source.Case($"{what} at {celsius} °C, {percent} %", unit, expected, "The printed digits.", got);
}
