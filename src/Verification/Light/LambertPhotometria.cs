using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Inverse square and cosine (Lambert 1760): point sources at h = 0.40 m, E = I h ÷ (h² + r²)^1.5 for 100 cd
/// all round and
/// E = (Φ/π) h² ÷ (h² + r²)² for 800 lm by Lambert's law; a half-plane that hides part of a panel; a receiver
/// whose horizon
/// cuts the panel.
/// </summary>
public static class LambertPhotometria
{
    private const string Reason = "Closed form; digits printed.";
    private static readonly CaseSource Source = new(
        "Light",
        "Lambert 1760, Photometria",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    private static readonly double[] Distances = [0.0, 0.1, 0.2, 0.3];

    /// <summary>The cases.</summary>
    /// <returns>Illuminances.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        double[] round = [625.0, 570.6721, 447.2136, 320.0];
        double[] cosine = [1591.5494, 1409.8154, 1018.5916, 651.8986];
        for (int i = 0; i < Distances.Length; i++)
        {
            double r = Distances[i];
            yield return Source.Case(
                $"100 cd all round, 0.40 m up, {r} m beside",
                "lx",
                CaseSource.Within(1e-3, round[i]),
                Reason,
                () => PanelScene.Under(Luminaire.Point(new Point3(2.0, 2.0, 0.40), 400.0 * Math.PI), r)
            );
            yield return Source.Case(
                $"800 lm by the cosine, 0.40 m up, {r} m beside",
                "lx",
                CaseSource.Within(1e-3, cosine[i]),
                "Closed form of a point; a disc of 1 mm stands for it.",
                () => PanelScene.Under(Luminaire.Disc(new Point3(2.0, 2.0, 0.40), 0.001, 800.0), r)
            );
        }

        foreach (var shade in HalfPlane())
        {
            yield return shade;
        }

        yield return Source.Case(
            $"leaf at 0.05 m tilted 30° under the panel",
            "lx",
            CaseSource.Within(1e-3, 2421.5124),
            Reason,
            () => Tilted(new Point3(0.30, 0.10, 0.05), new Point3(0.0, 0.5, Math.Sqrt(0.75)))
        );
        yield return Source.Case(
            $"receiver tilted 70°, its horizon cuts the panel",
            "lx",
            CaseSource.Within(1e-3, 85.6109),
            "Closed form over the part above the horizon.",
            () =>
                Tilted(
                    new Point3(0.55, 0.225, 0.20),
                    new Point3(Math.Sin(70.0 * Math.PI / 180.0), 0.0, Math.Cos(70.0 * Math.PI / 180.0))
                )
        );
    }

    private static double Tilted(Point3 at, Point3 normal) =>
        PanelScene.At(PanelScene.Box(PanelScene.None), PanelScene.Panel, new Receiver(at, normal));

    /// <summary>Everything left of x = 0.30 at z = 0.25 is opaque.</summary>
    private static IEnumerable<VerificationCase> HalfPlane()
    {
        (double X, double Lux)[] rows =
        [
            (0.10, 0.0),
            (0.20, 405.6861),
            (0.25, 749.8535),
            (0.30, 1147.1185),
            (0.35, 1512.2965),
            (0.40, 1763.3043),
            (0.50, 1839.5062),
        ];
        foreach (var (x, lux) in rows)
        {
            yield return Source.Case(
                $"half of the panel hidden by a half-plane, x = {x} m",
                "lx",
                (lux, Math.Max(1e-3 * lux, 0.05)),
                Reason,
                () =>
                {
                    var scene = PanelScene.Box(PanelScene.None);
                    var plate = new LightBlock(
                        new Box3(new Point3(-2.0, -2.0, 0.25 - 1e-7), new Point3(0.30, 2.0, 0.25)),
                        0.0
                    );
                    return PanelScene.Level(scene with { Blocks = [plate] }, PanelScene.Panel, x, 0.225);
                }
            );
        }
    }
}
