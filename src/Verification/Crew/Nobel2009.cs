using Litterfall.Domain.Figures;
using Litterfall.Physics;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Nobel, P. S. 2009, Physicochemical and Environmental Plant Physiology, chapter 2 (recalled): water
/// potential of air in balance with water at 20 °C, RT/V = 135.0 MPa.
/// </summary>
public static class Nobel2009
{
    private static readonly CaseSource Source = new(
        "Crew",
        "Nobel 2009, water potential of damp air",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Humidities.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Percent, double Megapascals)[] rows =
        [
            (99.0, -1.36),
            (98.0, -2.73),
            (95.0, -6.92),
            (90.0, -14.2),
            (50.0, -93.6),
        ];
        foreach (var (percent, megapascals) in rows)
        {
            yield return Source.Case(
                $"humidity over water of {megapascals} MPa at 20 °C",
                "%",
                (percent, 0.05),
                "Half a digit of the potential.",
                () => 100.0 * Kelvin.RelativeHumidity(1e6 * megapascals, Constants.ZeroCelsiusKelvin + 20.0)
            );
        }
    }
}
