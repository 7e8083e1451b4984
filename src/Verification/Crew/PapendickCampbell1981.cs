using Litterfall.Domain.Figures;
using Litterfall.Physics;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Papendick, R. I. and Campbell, G. S. 1981, in Water Potential Relations in Soil Microbiology, SSSA
/// Special Publication 9 (recalled): humidity of soil air at 20 °C by potential.
/// </summary>
public static class PapendickCampbell1981
{
    private static readonly CaseSource Source = new(
        "Crew",
        "Papendick and Campbell 1981, water potential and humidity",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Humidities.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Megapascals, double Percent)[] rows = [(-0.1, 99.93), (-1.5, 98.90), (-10.0, 92.88)];
        foreach (var (megapascals, percent) in rows)
        {
            yield return Source.Case(
                $"humidity at {megapascals} MPa",
                "%",
                (percent, 0.02),
                "Two digits of the last.",
                () => 100.0 * Kelvin.RelativeHumidity(1e6 * megapascals, Constants.ZeroCelsiusKelvin + 20.0)
            );
        }
    }
}
