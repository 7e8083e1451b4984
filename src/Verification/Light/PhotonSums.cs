using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Conversion of instantaneous to daily photons, a table of a maker of light sensors (read). Its 5.67
/// for 100 µmol over 16 hours is a slip: another issue of the table prints 5.76.
/// </summary>
public static class PhotonSums
{
    private static readonly CaseSource Source = new(
        "Light",
        "Daily sums of photons, table of a maker of light sensors",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Sums of a day.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Micromoles, double Hours, double Moles)[] rows =
        [
            (100.0, 24.0, 8.64),
            (300.0, 24.0, 25.92),
            (200.0, 16.0, 11.52),
            (300.0, 16.0, 17.28),
            (100.0, 12.0, 4.32),
            (300.0, 12.0, 12.96),
        ];
        foreach (var (micromoles, hours, moles) in rows)
        {
            yield return Source.Case(
                $"{micromoles} µmol/(m² s) for {hours} h",
                "mol/m²",
                (moles, 0.005),
                "Half a digit.",
                () => DailyLight.Integral(micromoles, DailyLight.OnSeconds(0.0, 3600.0 * hours % 86_400.0))
            );
        }
    }
}
