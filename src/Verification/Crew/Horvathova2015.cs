using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Horváthová, T. et al. 2015, ZooKeys 515 (abstract read): Porcellio scaber develops almost three times
/// more slowly at 15 than at 22 °C. With 2.9, (22 − T0)/(15 − T0) = 2.9 gives T0 = (2.9·15 − 22)/1.9 = 11.3
/// °C.
/// </summary>
public static class Horvathova2015
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("lower threshold from rate ratio 2.9", "°C", 11.3, 0.05, () =>
            DegreeDays.LowerThresholdCelsius(15.0, 22.0, 2.9)
        );
    }

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        double tolerance,
        Func<double> got
    ) =>
        new()
        {
            Source = "Horváthová et al. 2015",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last digit; the ratio itself is printed only as almost three.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
            KnownDisagreement =
                "McQueen and Carnio 1974 find no growth of Porcellio spinicornis below 10 " + "°C.",
        };
}
