using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// A closed cube of 0.5 m with 1000 lm all round in its middle, every face of one reflectance: the mean
/// thrown back is
/// Φ/S × ρ/(1 − ρ) by the balance of flux; single places by another program, extrapolated.
/// </summary>
public static class ClosedCube
{
    private static readonly CaseSource Mean = new(
        "Light",
        "Own worked example, closed cube",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    private static readonly CaseSource Place = Mean with { Evidence = Evidence.OtherCode };

    private static readonly (
        double Reflectance,
        double Back,
        double Middle,
        double Side,
        double Corner
    )[] Rows =
    [
        (0.1, 74.0741, 1356.1, 683.4, 432.2),
        (0.3, 285.7143, 1587.1, 902.6, 617.4),
        (0.5, 666.6667, 1990.3, 1293.5, 966.5),
        (0.8, 2666.6667, 4031.8, 3315.3, 2904.3),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Illuminances.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (var (reflectance, back, middle, side, corner) in Rows)
        {
            var lit = new Lazy<(LightModel Model, LitLamp Lamp)>(() => Lit(reflectance));
            double At(double x, double y) =>
                lit.Value.Model.At(new Receiver(new Point3(x, y, 0.0), Point3.Up), lit.Value.Lamp);
            yield return Mean.Case(
                $"mean thrown back at reflectance {reflectance}",
                "lx",
                CaseSource.Within(5e-3, back),
                "Exact by the balance; patches of 2.5 cm, 20 × 20 places on one of six equal faces.",
                () =>
                {
                    double sum = 0.0;
                    for (int k = 0; k < 400; k++)
                    {
                        var at = new Receiver(
                            new Point3(((k % 20) + 0.5) * 0.025, ((k / 20) + 0.5) * 0.025, 0.0),
                            Point3.Up
                        );
                        sum +=
                            lit.Value.Model.At(at, lit.Value.Lamp)
                            - lit.Value.Model.Direct(at, lit.Value.Lamp.Lamp);
                    }

                    return sum / 400.0;
                }
            );
            foreach (
                var (x, y, lux) in new[] { (0.25, 0.25, middle), (0.05, 0.25, side), (0.05, 0.05, corner) }
            )
            {
                yield return Place.Case(
                    $"floor ({x}, {y}) at reflectance {reflectance}",
                    "lx",
                    CaseSource.Within(5e-3, lux),
                    "Extrapolated ± 0.05 %; patches of 2.5 cm.",
                    () => At(x, y)
                );
            }
        }
    }

    private static (LightModel, LitLamp) Lit(double reflectance)
    {
        var face = FaceFinish.Diffuse(reflectance);
        var scene = new LightScene
        {
            Length = 0.5,
            Depth = 0.5,
            Height = 0.5,
            Faces = [face, face, face, face, face],
            Ceiling = reflectance,
        };
        var model = new LightModel(scene, LightDetail.Fine);
        return (model, model.Light(Luminaire.Point(new Point3(0.25, 0.25, 0.25), 1000.0)));
    }
}
