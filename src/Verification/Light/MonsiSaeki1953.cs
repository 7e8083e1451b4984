using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Leaves by Monsi and Saeki 1953 (recalled): 100 cd all round 0.40 m up, through 0.1 m of leaves of 10
/// m²/m³, G = 0.5 and
/// absorptance 0.8: E = I h ÷ d³ × exp(−G √α a s), s = 0.1 d ÷ h.
/// </summary>
public static class MonsiSaeki1953
{
    private static readonly CaseSource Source = new(
        "Light",
        "Monsi and Saeki 1953",
        Evidence.ClosedForm,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Illuminances.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (var (r, lux) in new[] { (0.0, 399.63), (0.3, 182.97) })
        {
            yield return Source.Case(
                $"under leaves, {r} m beside",
                "lx",
                CaseSource.Within(1e-3, lux),
                "Closed form; five digits.",
                () =>
                {
                    var leaves = new Canopy(
                        new Box3(new Point3(0.0, 0.0, 0.10), new Point3(4.0, 4.0, 0.20)),
                        10.0
                    );
                    return PanelScene.Level(
                        PanelScene.Space() with
                        {
                            Canopies = [leaves],
                        },
                        Luminaire.Point(new Point3(2.0, 2.0, 0.40), 400.0 * Math.PI),
                        2.0 + r,
                        2.0
                    );
                }
            );
        }
    }
}
