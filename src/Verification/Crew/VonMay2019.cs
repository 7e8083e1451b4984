using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// von May, R. et al. 2019, PLoS ONE 14:e0219759 (data read): snout-vent length and mass of four poison
/// frogs; k = M/SVL³.
/// </summary>
public static class VonMay2019
{
    /// <summary>The cases.</summary>
    /// <returns>The comparisons with this source.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach ((string species, double length, double mass, double expected, double half) in Frogs)
        {
            yield return Case("k of " + species, "1e-5 g/mm³", expected, half, () =>
                1e5 * DendrobatidMass.Coefficient(mass, length)
            );
        }

        yield return Case("mean k of the four", "1e-5 g/mm³", 9.10, 0.005, () =>
            1e5 * Frogs.Average(frog => DendrobatidMass.Coefficient(frog.Mass, frog.Length))
        );
        yield return Case("mass of Ameerega hahneli at 19.54 mm", "g", 0.673, 0.168, () =>
            DendrobatidMass.Grams(19.54)
        ) with
        {
            Reason = "The rule is given for within 25 %.",
            Evidence = Evidence.PrintedTable,
            Provenance = Provenance.Read,
        };
        yield return Case("mass of Ameerega trivittata at 36.9 mm", "g", 4.2, 1.05, () =>
            DendrobatidMass.Grams(36.9)
        ) with
        {
            Reason = "The rule is given for within 25 %.",
            Evidence = Evidence.PrintedTable,
            Provenance = Provenance.Read,
        };
    }

    // species, snout-vent length mm, mass g, k by hand in 1e-5 g/mm³, half its last digit
    private static readonly (
        string Species,
        double Length,
        double Mass,
        double Expected,
        double Half
    )[] Frogs =
    [
        ("Allobates trilineatus", 14.58, 0.252, 8.13, 0.005),
        ("Ranitomeya sirensis", 16.2, 0.463, 10.90, 0.01),
        ("Ameerega hahneli", 19.54, 0.673, 9.02, 0.005),
        ("Ameerega trivittata", 36.9, 4.2, 8.36, 0.005),
    ];

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        double tolerance,
        Func<double> got
    ) =>
        new()
        {
            Source = "von May et al. 2019",
            Subject = "Crew",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last digit.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
        };
}
