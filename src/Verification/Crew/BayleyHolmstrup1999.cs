using Litterfall.Domain.Figures;
using Litterfall.Physics;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Bayley, M. and Holmstrup, M. 1999, Science 285:1909 (abstract read): springtails stay active down to the
/// permanent wilting point of plants, 98.9 % relative humidity. The wilting point is −1.5 MPa by
/// convention.
/// </summary>
public static class BayleyHolmstrup1999
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("humidity at −1.5 MPa and 20 °C", "%", 98.9, 0.05, () =>
            100.0 * Kelvin.RelativeHumidity(-1.5e6, Constants.ZeroCelsiusKelvin + 20.0)
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
            Source = "Bayley and Holmstrup 1999",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason =
                "Half a unit of the last printed digit.",
            Evidence = Evidence.PrintedText,
            Provenance = Provenance.Read,
            KnownDisagreement = "An older view has springtails survive only hours below 90 % humidity.",
        };
}
