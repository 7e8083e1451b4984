using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Panes by Fresnel, Snell and Bouguer with all reflections within (Duffie and Beckman, chapter 5, recalled),
/// worked out a
/// second time by another program: shares by angle, and the panel through lids.
/// </summary>
public static class DuffieBeckmanPanes
{
    private const string Digits = "Four printed digits.";
    private static readonly CaseSource Source = new(
        "Light",
        "Duffie and Beckman, Solar Engineering of Thermal Processes",
        Evidence.OtherCode,
        Provenance.Recalled
    );

    private static readonly PaneOptics Clear6 = PaneOptics.Single(0.006, 1.52, 5.0);
    private static readonly PaneOptics LowIron6 = PaneOptics.Single(0.006, 1.52, 1.0);
    private static readonly PaneOptics Acrylic = PaneOptics.Single(0.004, 1.49, 1.0);
    private static readonly PaneOptics Polycarbonate = PaneOptics.Single(0.004, 1.585, 5.0);

    /// <summary>
    /// Degrees; clear 4 mm T, R, A; clear 6 mm T; low-iron 6 mm T; acrylic T; polycarbonate
    /// T.
    /// </summary>
    private static readonly double[][] Rows =
    [
        [0, 0.9001, 0.0801, 0.0198, 0.8911, 0.9128, 0.9217, 0.8846],
        [20, 0.8992, 0.0805, 0.0203, 0.8900, 0.9122, 0.9212, 0.8838],
        [30, 0.8967, 0.0824, 0.0209, 0.8872, 0.9101, 0.9192, 0.8813],
        [40, 0.8895, 0.0887, 0.0218, 0.8797, 0.9034, 0.9126, 0.8742],
        [50, 0.8705, 0.1066, 0.0229, 0.8604, 0.8849, 0.8942, 0.8556],
        [60, 0.8226, 0.1534, 0.0240, 0.8124, 0.8372, 0.8462, 0.8089],
        [65, 0.7766, 0.1989, 0.0245, 0.7666, 0.7909, 0.7996, 0.7640],
        [70, 0.7051, 0.2699, 0.0250, 0.6956, 0.7188, 0.7268, 0.6943],
        [75, 0.5968, 0.3779, 0.0253, 0.5881, 0.6093, 0.6162, 0.5883],
        [80, 0.4403, 0.5343, 0.0254, 0.4327, 0.4512, 0.4565, 0.4345],
        [85, 0.2323, 0.7428, 0.0249, 0.2261, 0.2415, 0.2448, 0.2295],
    ];

    /// <summary>The cases.</summary>
    /// <returns>Shares and illuminances.</returns>
    public static IEnumerable<VerificationCase> Cases() => [.. Angles(), .. Diffuse(), .. Lids()];

    private static IEnumerable<VerificationCase> Angles()
    {
        foreach (double[] row in Rows)
        {
            double cosine = Math.Cos(row[0] * Math.PI / 180.0);
            (string Name, double Share, Func<double> Got)[] shares =
            [
                ("clear 4 mm through", row[1], () => PanelScene.Clear.Exact(cosine).Transmitted),
                ("clear 4 mm back", row[2], () => PanelScene.Clear.Exact(cosine).Reflected),
                ("clear 4 mm taken", row[3], () => PanelScene.Clear.Exact(cosine).Absorbed),
                ("clear 6 mm through", row[4], () => Clear6.Exact(cosine).Transmitted),
                ("low-iron 6 mm through", row[5], () => LowIron6.Exact(cosine).Transmitted),
                ("acrylic 4 mm through", row[6], () => Acrylic.Exact(cosine).Transmitted),
                ("polycarbonate 4 mm through", row[7], () => Polycarbonate.Exact(cosine).Transmitted),
                ("clear 4 mm through, by the table the map reads", row[1], () =>
                    PanelScene.Clear.Through(cosine)
                ),
            ];
            foreach (var (name, share, got) in shares)
            {
                yield return Source.Case($"{name} at {row[0]}°", "1", (share, 6e-5), Digits, got);
            }
        }
    }

    private static IEnumerable<VerificationCase> Diffuse()
    {
        (string Name, PaneOptics Pane, double Through, double Back)[] rows =
        [
            ("clear 4 mm", PanelScene.Clear, 0.8269, 0.1506),
            ("clear 6 mm", Clear6, 0.8173, double.NaN),
            ("low-iron 6 mm", LowIron6, 0.8405, double.NaN),
        ];
        foreach (var (name, pane, through, back) in rows)
        {
            yield return Source.Case($"{name}, even light through", "1", (through, 6e-5), Digits, () =>
                pane.Diffuse.Transmitted
            );
            if (!double.IsNaN(back))
            {
                yield return Source.Case($"{name}, even light back", "1", (back, 6e-5), Digits, () =>
                    pane.Diffuse.Reflected
                );
            }
        }

        yield return Source.Case(
            $"one pane without loss, straight on",
            "1",
            (0.9183, 6e-5),
            "Closed form 2n ÷ (n² + 1), four digits.",
            () => PaneOptics.Single(0.004, 1.52, 0.0).Exact(1.0).Transmitted
        );
    }

    private static IEnumerable<VerificationCase> Lids()
    {
        (string Name, PaneOptics? Lid, double Middle, double Corner, double Edge)[] rows =
        [
            ("no lid", null, 2294.2370, 1348.6039, 1061.7124),
            ("clear 4 mm", PanelScene.Clear, 2064.2663, 1208.0366, 947.7501),
            ("clear 6 mm", Clear6, 2043.4358, 1195.2555, 937.5121),
            ("low-iron 6 mm", LowIron6, 2093.7887, 1226.1624, 962.2736),
        ];
        foreach (var (name, lid, middle, corner, edge) in rows)
        {
            foreach (
                var (x, y, lux) in new[] { (0.30, 0.225, middle), (0.05, 0.05, corner), (0.0, 0.0, edge) }
            )
            {
                yield return Source.Case(
                    $"panel through {name} at ({x}, {y})",
                    "lx",
                    CaseSource.Within(1e-3, lux),
                    "Quadrature of another program, all digits printed.",
                    () => PanelScene.Level(PanelScene.Box(PanelScene.Black, lid), PanelScene.Panel, x, y)
                );
            }
        }
    }
}
