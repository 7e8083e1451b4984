using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// Published test values of PsychroLib, an open library of psychrometric functions (MIT license; file
/// tests/test_psychrolib_si.py, read), with the library's own tolerances. Its tables hold an enhancement
/// factor
/// that ideal air does not, which is why the saturated rows are wide.
/// </summary>
public static class PsychrometricLibrary
{
    private const double Low = 95_461.0;
    private static readonly CaseSource Library = new(
        "Air",
        "PsychroLib, published test values",
        Evidence.PrintedTable,
        Provenance.Read
    );

    // °C; Pa; kg/kg; J/kg; tolerance of w
    private static readonly (
        double Celsius,
        double Pascals,
        double Ratio,
        double Enthalpy,
        double Wide
    )[] Saturated =
    [
        (5.0, 872.6, 0.005425, 18_639.0, 5e-3),
        (25.0, 3169.7, 0.020173, 76_504.0, 5e-3),
        (50.0, 12_351.3, 0.086863, 275_353.0, 1e-2),
    ];

    private static readonly (double Meters, double Pascals)[] Atmosphere =
    [
        (-500.0, 107_478.0),
        (0.0, 101_325.0),
        (500.0, 95_461.0),
        (1000.0, 89_875.0),
        (4000.0, 61_640.0),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Every published value that one of our functions answers.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Pressures().Concat(States()).Concat(Example());

    private static IEnumerable<VerificationCase> Pressures()
    {
        const string Reason = "The library's own tolerance.";
        foreach (var (celsius, pascals, ratio, enthalpy, wide) in Saturated)
        {
            yield return One($"saturation pressure at {celsius} °C", "Pa", (pascals, 3e-4), () =>
                MoistAir.SaturationPressure(celsius)
            );
            yield return One($"saturated humidity ratio at {celsius} °C", "kg/kg", (ratio, wide), () =>
                Saturation(celsius)
            );
            yield return One($"saturated enthalpy at {celsius} °C", "J/kg", (enthalpy, 1e-2), () =>
                MoistAir.Enthalpy(celsius, Saturation(celsius))
            );
        }

        foreach (var (meters, pascals) in Atmosphere)
        {
            yield return Library.Case($"pressure at {meters} m", "Pa", (pascals, 1.0), Reason, () =>
                MoistAir.PressureAt(meters)
            );
        }

        foreach (double celsius in (double[])[-15.0, 5.0, 50.0])
        {
            yield return Library.Case(
                $"dew point of air saturated at {celsius} °C",
                "°C",
                (celsius, 1e-3),
                Reason,
                () => MoistAir.DewPoint(MoistAir.SaturationPressure(celsius))
            );
        }
    }

    private static IEnumerable<VerificationCase> States()
    {
        yield return One(
            $"humidity ratio of 3169.7 Pa in {Low} Pa",
            "kg/kg",
            (0.0213603998047487, 1e-6),
            () => MoistAir.HumidityRatio(3169.7, Low)
        );
        yield return One($"dry air at 25 °C, enthalpy", "J/kg", (25_148.0, 3e-4), () =>
            MoistAir.Enthalpy(25.0, 0.0)
        );
        yield return One($"dry air at 25 °C, volume", "m³/kg", (0.8443, 1e-3), () =>
            MoistAir.SpecificVolume(25.0, 0.0)
        );
        yield return One($"enthalpy at 30 °C, w 0.02", "J/kg", (81_316.0, 3e-4), () =>
            MoistAir.Enthalpy(30.0, 0.02)
        );
        yield return One($"volume at 30 °C, w 0.02, {Low} Pa", "m³/kg", (0.940855374352943, 3e-4), () =>
            MoistAir.SpecificVolume(30.0, 0.02, Low)
        );
        yield return One($"density at 30 °C, w 0.02, {Low} Pa", "kg/m³", (1.08411986348219, 3e-4), () =>
            MoistAir.Density(30.0, 0.02, Low)
        );
        yield return One($"dew point at 25 °C, 80 %", "°C", (21.3094, 1e-3), () =>
            MoistAir.DewPoint(0.8 * MoistAir.SaturationPressure(25.0))
        );
    }

    /// <summary>The handbook's example that the library repeats: 40 °C, wet bulb 20 °C, 14 %.</summary>
    private static IEnumerable<VerificationCase> Example()
    {
        const string Reason = "As printed; read off a chart in the handbook.";
        static double Ratio() => MoistAir.HumidityRatio(0.14 * MoistAir.SaturationPressure(40.0));
        yield return Library.Case($"40 °C, 14 %: w", "kg/kg", (0.0065, 1e-4), Reason, Ratio);
        yield return Library.Case($"40 °C, 14 %: dew point", "°C", (7.0, 0.5), Reason, () =>
            MoistAir.DewPoint(MoistAir.VaporPressure(Ratio()))
        );
        yield return Library.Case($"40 °C, 14 %: enthalpy", "J/kg", (56_700.0, 100.0), Reason, () =>
            MoistAir.Enthalpy(40.0, Ratio())
        );
        yield return Library.Case($"40 °C, 14 %: volume", "m³/kg", (0.896, 0.00896), Reason, () =>
            MoistAir.SpecificVolume(40.0, Ratio())
        );
    }

    private static double Saturation(double celsius) =>
        MoistAir.HumidityRatio(celsius, 1.0, MoistAir.StandardPascals);

    private static VerificationCase One(
        FormattableString quantity,
        string unit,
        (double Value, double Share) expected,
        Func<double> got
    ) =>
        Library.Case(
            quantity,
            unit,
            CaseSource.Within(expected.Share, expected.Value),
            "The library's own tolerance.",
            got
        );
}
