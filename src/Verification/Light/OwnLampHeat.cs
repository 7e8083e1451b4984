using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Heat of a lamp that stays inside: 20 W, 100 lm/W, light of 305.19 lm/W, 0.387 taken inside, 0.15 of the
/// rest.
/// </summary>
public static class OwnLampHeat
{
    private static readonly CaseSource Source = new(
        "Light",
        "Own worked example, heat of a lamp",
        Evidence.WorkedExample,
        Provenance.Recomputed
    );

    /// <summary>The cases.</summary>
    /// <returns>Flux left and exponents of beams.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"flux left after 21,900 h of 30,000 h to 70 %: 0.7 ^ 0.73",
            "1",
            (0.771, 5e-4),
            "Three digits.",
            () => DailyLight.FluxLeft(21_900.0, 30_000.0)
        );
        foreach (var (beam, exponent) in new[] { (120.0, 1.0), (90.0, 2.0), (60.0, 4.82), (30.0, 20.0) })
        {
            yield return Source.Case(
                $"exponent of a beam of {beam}°: ln 0.5 ÷ ln cos(β/2)",
                "1",
                (exponent, 6e-3 * exponent),
                "Three digits.",
                () => Luminaire.BeamExponent(beam)
            );
        }
    }
}
