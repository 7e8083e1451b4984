using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Araujo, P. B. and Bond-Buckup, G. 2004, Rev. Bras. Zool. 21 (growth curves read): head width of
/// Atlantoscia floridana at 20 °C. Smallest ovigerous female 1.04 mm.
/// </summary>
public static class Araujo2004
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        // −ln(1 − 1.04/1.682)/0.00575 − 59.13 = 0.96315/0.00575 − 59.13
        yield return Case("age of a female of 1.04 mm head width", "d", 108.4, 0.05, () =>
            VonBertalanffy.AtlantosciaFloridanaFemale.AgeDays(1.04)
        );
        // 1.682 (1 − e^(−0.00575 · 59.13)) = 1.682 (1 − 0.71178)
        yield return Case("head width of a female at birth", "mm", 0.485, 0.0005, () =>
            VonBertalanffy.AtlantosciaFloridanaFemale.SizeMillimeters(0.0)
        );
        // 1.303 (1 − e^(−0.00941 · 50.37)) = 1.303 (1 − 0.62253)
        yield return Case("head width of a male at birth", "mm", 0.492, 0.0005, () =>
            VonBertalanffy.AtlantosciaFloridanaMale.SizeMillimeters(0.0)
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
            Source = "Araujo and Bond-Buckup 2004",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last digit of the hand calculation from the printed curves.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
        };
}
