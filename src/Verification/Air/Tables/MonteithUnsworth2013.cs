using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air.Tables;

/// <summary>
/// Monteith, J. L. and Unsworth, M. H. 2013, Principles of Environmental Physics, 4th ed., table A.4
/// (recalled): saturated air.
/// </summary>
public static class MonteithUnsworth2013
{
    private static readonly CaseSource Source = new(
        "Air",
        "Monteith and Unsworth 2013, table A.4",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Pressures and masses of vapor.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Celsius, double Kilopascals, double Grams)[] rows =
        [
            (20.0, 2.34, 17.30),
            (25.0, 3.17, 23.05),
            (30.0, 4.24, 30.38),
        ];
        foreach (var (celsius, kilopascals, grams) in rows)
        {
            yield return Source.Case(
                $"saturation pressure at {celsius} °C",
                "kPa",
                (kilopascals, 0.007),
                "Half a digit, and 0.05 % of an older equation.",
                () => MoistAir.SaturationPressure(celsius) / 1000.0
            );
            yield return Source.Case(
                $"vapor in saturated air at {celsius} °C",
                "g/m³",
                CaseSource.Within(2e-3, grams),
                "The older equation, and air as a real gas.",
                () =>
                {
                    double w = MoistAir.HumidityRatio(celsius, 1.0, MoistAir.StandardPascals);
                    return 1000.0 * w / MoistAir.SpecificVolume(celsius, w, MoistAir.StandardPascals);
                }
            );
        }
    }
}
