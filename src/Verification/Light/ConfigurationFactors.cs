using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Physics.Numerics;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Closed forms of the catalog of configuration factors (Siegel and Howell, recalled): a rectangle to a
/// parallel and to a
/// perpendicular plane, a disc to a parallel plane; and the flux of a panel in the ceiling of a black box on
/// its faces.
/// </summary>
public static class ConfigurationFactors
{
    private const string Reason = "Closed form; digits printed.";
    private static readonly CaseSource Source = new(
        "Light",
        "Siegel and Howell, Thermal Radiation Heat Transfer",
        Evidence.ClosedForm,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Illuminances and fluxes.</returns>
    public static IEnumerable<VerificationCase> Cases() => [.. Floor(), .. Wall(), .. Disc(), .. Balance()];

    private static IEnumerable<VerificationCase> Floor()
    {
        (double X, double Y, double Z, double Lux)[] rows =
        [
            (0.30, 0.225, 0.0, 2294.2370),
            (0.15, 0.225, 0.0, 2023.6444),
            (0.05, 0.225, 0.0, 1632.4079),
            (0.30, 0.05, 0.0, 1846.7140),
            (0.05, 0.05, 0.0, 1348.6039),
            (0.0, 0.0, 0.0, 1061.7124),
            (0.30, 0.225, 0.20, 5477.0283),
            (0.15, 0.225, 0.20, 4396.3845),
            (0.05, 0.05, 0.20, 1907.2450),
        ];
        foreach (var (x, y, z, lux) in rows)
        {
            yield return Source.Case(
                $"panel to the level ({x}, {y}, {z})",
                "lx",
                CaseSource.Within(1e-3, lux),
                Reason,
                () => PanelScene.Level(PanelScene.Box(PanelScene.None), PanelScene.Panel, x, y, z)
            );
        }
    }

    private static IEnumerable<VerificationCase> Wall()
    {
        (double X, double Z, double Lux)[] rows =
        [
            (0.30, 0.40, 2910.1362),
            (0.30, 0.25, 2278.8860),
            (0.30, 0.10, 1137.6382),
            (0.05, 0.25, 1299.5683),
        ];
        foreach (var (x, z, lux) in rows)
        {
            yield return Source.Case(
                $"panel to the back wall ({x}, z {z})",
                "lx",
                CaseSource.Within(1e-3, lux),
                Reason,
                () =>
                    PanelScene.At(
                        PanelScene.Box(PanelScene.None),
                        PanelScene.Panel,
                        new Receiver(new Point3(x, 0.45, z), new Point3(0.0, -1.0, 0.0))
                    )
            );
        }
    }

    private static IEnumerable<VerificationCase> Disc()
    {
        (double R, double Lux)[] rows =
        [
            (0.0, 1167.3957),
            (0.1, 1039.1865),
            (0.2, 758.3959),
            (0.3, 489.4283),
        ];
        foreach (var (r, lux) in rows)
        {
            yield return Source.Case(
                $"disc of 6 cm radius, 600 lm, 0.40 m up, {r} m beside",
                "lx",
                CaseSource.Within(1e-3, lux),
                Reason,
                () => PanelScene.Under(Luminaire.Disc(new Point3(2.0, 2.0, 0.40), 0.06, 600.0), r)
            );
        }
    }

    /// <summary>
    /// The panel in the ceiling of a black box of 0.60 × 0.45 × 0.50 m: all of its 2000 lm arrive.
    /// </summary>
    private static IEnumerable<VerificationCase> Balance()
    {
        (BoxFace Face, double Lumens)[] rows =
        [
            (BoxFace.Floor, 476.304),
            (BoxFace.Back, 435.817),
            (BoxFace.Front, 435.817),
            (BoxFace.Left, 326.030),
            (BoxFace.Right, 326.030),
        ];
        foreach (var (face, lumens) in rows)
        {
            yield return Source.Case(
                $"flux of a ceiling panel on {face}",
                "lm",
                CaseSource.Within(1e-3, lumens),
                "Closed form; 24 × 24 places of Gauss and Legendre on the face.",
                () => Flux(face)
            );
        }
    }

    private static double Flux(BoxFace face)
    {
        var scene = PanelScene.Box(PanelScene.Black) with { Height = 0.5 };
        scene = scene with { Lid = [scene.WholeLid(LidKind.Open)] };
        var lamp = PanelScene.Panel with { Center = new Point3(0.30, 0.225, 0.5 + 1e-9) };
        var (corner, u, v, normal) = face switch
        {
            BoxFace.Floor => (new Point3(0, 0, 0), new Point3(0.6, 0, 0), new Point3(0, 0.45, 0), Point3.Up),
            BoxFace.Back => (new(0, 0.45, 0), new(0.6, 0, 0), new(0, 0, 0.5), new Point3(0, -1, 0)),
            BoxFace.Front => (new(0, 0, 0), new(0.6, 0, 0), new(0, 0, 0.5), new Point3(0, 1, 0)),
            BoxFace.Left => (new(0, 0, 0), new(0, 0.45, 0), new(0, 0, 0.5), new Point3(1, 0, 0)),
            _ => (new(0.6, 0, 0), new(0, 0.45, 0), new(0, 0, 0.5), new Point3(-1, 0, 0)),
        };
        var model = new LightModel(scene, LightDetail.Live);
        var rule = GaussLegendre.Of(24);
        double sum = 0.0;
        for (int i = 0; i < 24; i++)
        {
            for (int j = 0; j < 24; j++)
            {
                var at = corner + (rule.Points[i] * u) + (rule.Points[j] * v);
                sum += rule.Weights[i] * rule.Weights[j] * model.Direct(new Receiver(at, normal), lamp);
            }
        }

        return sum * u.Length * v.Length;
    }
}
