using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// Read: the pressure of the U.S. standard atmosphere by Carmichael's program, over geometric heights; the
/// density of air of 10 °C dew point at 760 mm of mercury; a room of 25 °C, 100 kPa and 75 % of a course.
/// </summary>
public static class AirTables
{
    private static readonly CaseSource Heights = new(
        "Air",
        "Carmichael, 1976 U.S. standard atmosphere",
        Evidence.PrintedTable,
        Provenance.Read
    );

    private static readonly CaseSource Densities = new(
        "Air",
        "Density of moist air, constructionwork.com",
        Evidence.PrintedTable,
        Provenance.Read
    );

    private static readonly CaseSource Course = new(
        "Air",
        "Penn State, heating and cooling course, example of a room",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Pressures and densities.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (var (meters, share) in new[] { (2000.0, 0.7846180505), (3000.0, 0.6920418744) })
        {
            yield return Heights.Case(
                $"pressure at {meters} m over that at the sea",
                "1",
                CaseSource.Within(3e-4, share),
                "Ours takes the height as geopotential: 0.05 % less at 3 km.",
                () => MoistAir.PressureAt(meters) / MoistAir.PressureAt(0.0)
            );
        }

        double humid = MoistAir.HumidityRatio(MoistAir.SaturationPressure(10.0));
        foreach (var (celsius, density) in new[] { (10.0, 1.241), (20.0, 1.199), (40.0, 1.122) })
        {
            yield return Densities.Case(
                $"density at {celsius} °C, dew point 10 °C",
                "kg/m³",
                (density, 1e-3),
                "A digit.",
                () => MoistAir.Density(celsius, humid)
            );
        }

        yield return Course.Case(
            $"vapor pressure at 25 °C, 75 %",
            "kPa",
            (2.38, 0.005),
            "Half a digit.",
            () => 0.75 * MoistAir.SaturationPressure(25.0) / 1000.0
        );
        yield return Course.Case(
            $"humidity ratio at 25 °C, 75 %, 100 kPa",
            "kg/kg",
            (0.0152, 1e-4),
            "From a pressure rounded to 2.38 kPa.",
            () => MoistAir.HumidityRatio(25.0, 0.75, 100_000.0)
        );
    }
}
