using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Seven boxes under the panel, worked out by quadrature with mirror images, by 24 million random paths a
/// point, and by an
/// open lighting program of another house; and where the light ends, by random paths.
/// </summary>
public static class OwnLightBoxes
{
    private static readonly CaseSource Source = new(
        "Light",
        "Own worked example, light boxes",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    private static readonly FaceFinish Half = FaceFinish.Diffuse(0.5);

    private static readonly (string Name, LightScene Scene, double Share, string Reason)[] Boxes =
    [
        ("R1, black walls", PanelScene.Box(PanelScene.Black), 1e-3, "Closed form."),
        (
            "R3, glass lid",
            PanelScene.Box(PanelScene.Black, PanelScene.Clear),
            5e-3,
            "Quadrature of another program."
        ),
        (
            "R4, glass walls",
            PanelScene.Box(PanelScene.Glass(FaceFinish.Black, FaceFinish.Black), PanelScene.Clear),
            5e-3,
            "Quadrature with mirror images."
        ),
        ("R5, background", Planted([]), 1e-2, "Random paths, one standard deviation 0.02 %."),
        (
            "R6, plate",
            Planted([
                new LightBlock(new Box3(new Point3(0.15, 0.15, 0.20), new Point3(0.30, 0.30, 0.22)), 0.20),
            ]),
            1e-2,
            "Random paths, one standard deviation 0.03 %."
        ),
        (
            "R7, pale box",
            PanelScene.Box([Half, Half, Half, Half, Half]),
            1e-2,
            "Random paths, one standard deviation 0.05 %."
        ),
    ];

    private static readonly (double X, double Y, double Z, double[] Lux)[] Rows =
    [
        (0.30, 0.225, 0.0, [2294.237, 2064.266, 2218.863, 2307.28, 1275.85, 3223.3]),
        (0.15, 0.225, 0.0, [2023.644, 1819.369, 2005.023, 2084.00, 547.19, 2952.5]),
        (0.05, 0.225, 0.0, [1632.408, 1465.077, 1739.898, 1806.77, 1190.03, 2537.6]),
        (0.30, 0.05, 0.0, [1846.714, 1659.688, 1964.580, 2015.46, 2009.22, 2756.4]),
        (0.05, 0.05, 0.0, [1348.604, 1208.037, 1599.396, 1643.71, 1638.15, 2174.6]),
        (0.30, 0.40, 0.0, [1846.714, 1659.688, 1764.755, 1890.09, 1882.20, 2756.1]),
        (0.55, 0.40, 0.0, [1348.604, 1208.037, 1421.005, 1508.19, 1508.63, 2172.7]),
        (0.30, 0.45, 0.25, [2278.886, 2010.420, 2058.978, 2105.00, 2112.67, 3301.4]),
        (0.05, 0.45, 0.25, [1299.568, 1125.817, 1234.71, 1271.92, 1270.00, 2360.6]),
    ];

    private static LightScene Planted(ImmutableArray<LightBlock> blocks) =>
        PanelScene.Box(
            PanelScene.Glass(FaceFinish.Diffuse(0.25), FaceFinish.Diffuse(0.10)),
            PanelScene.Clear
        ) with
        {
            Blocks = blocks,
        };

    /// <summary>The cases.</summary>
    /// <returns>Illuminances, shares of flux, statistics.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        [
            .. Places(LightDetail.Fine, "fine"),
            .. Places(LightDetail.Live, "live"),
            .. Budgets(),
            .. Statistics(),
            .. Penumbra(),
        ];

    private static IEnumerable<VerificationCase> Places(LightDetail detail, string word)
    {
        for (int k = 0; k < Boxes.Length; k++)
        {
            var (name, scene, share, reason) = Boxes[k];
            var lit = new Lazy<(LightModel Model, LitLamp Lamp)>(() =>
            {
                var model = new LightModel(scene, detail);
                return (model, model.Light(PanelScene.Panel));
            });
            foreach (var (x, y, z, lux) in Rows)
            {
                bool isWall = z > 0.0;
                double expected = lux[k];
                yield return Source.Case(
                    $"{name}, {word}, {(isWall ? "back wall" : "floor")} ({x}, {(isWall ? z : y)})",
                    "lx",
                    CaseSource.Within(share, expected),
                    reason,
                    () =>
                        lit.Value.Model.At(
                            new Receiver(
                                new Point3(x, y, z),
                                isWall ? new Point3(0.0, -1.0, 0.0) : Point3.Up
                            ),
                            lit.Value.Lamp
                        )
                );
            }
        }
    }

    private static IEnumerable<VerificationCase> Budgets()
    {
        (
            int Box,
            double Floor,
            double Back,
            double Sides,
            double Lid,
            double Missed,
            double Out,
            double Up
        )[] rows =
        [
            (0, 23.84, 20.73, 51.36, 0.0, 4.07, 0.0, 0.0),
            (1, 21.42, 17.21, 42.52, 2.15, 4.06, 0.0, 12.64),
            (2, 24.54, 18.08, 1.00, 2.14, 4.07, 37.54, 12.63),
            (3, 23.00, 14.05, 1.10, 2.18, 4.07, 41.33, 14.27),
            (4, 18.03, 14.04, 1.09, 2.20, 4.07, 41.06, 14.66),
        ];
        const string Reason = "Random paths, ± 0.03 each; ours ± 0.05.";
        foreach (var row in rows)
        {
            string name = Boxes[row.Box].Name;
            var ends = new Lazy<LightBudget>(() =>
                LightTracer.Of(Boxes[row.Box].Scene, PanelScene.Panel, 262_144)
            );
            (string What, double Share, Func<double> Got)[] parts =
            [
                ("floor", row.Floor, () => ends.Value.On(BoxFace.Floor)),
                ("back wall", row.Back, () => ends.Value.On(BoxFace.Back)),
                ("other walls", row.Sides, () =>
                    ends.Value.On(BoxFace.Left) + ends.Value.On(BoxFace.Right) + ends.Value.On(BoxFace.Front)
                ),
                ("lid", row.Lid, () => ends.Value.Lid),
                ("past the box", row.Missed, () => ends.Value.Missed),
                ("out through panes", row.Out, () => ends.Value.OutSides),
                ("back up", row.Up, () => ends.Value.BackUp),
            ];
            foreach (var (what, share, got) in parts)
            {
                yield return Source.Case($"{name}, share on {what}", "%", (share, 0.10), Reason, () =>
                    100.0 * got()
                );
            }
        }

        yield return Source.Case($"{Boxes[4].Name}, share on the plate", "%", (4.85, 0.10), Reason, () =>
            100.0 * LightTracer.Of(Boxes[4].Scene, PanelScene.Panel, 262_144).Blocks[0]
        );
    }

    private static double[] Map(LightScene scene, double height)
    {
        var model = new LightModel(scene, LightDetail.Live);
        return model.Map(new MapGrid(height, 60, 45), model.Light(PanelScene.Panel));
    }

    private static IEnumerable<VerificationCase> Statistics()
    {
        var low = new Lazy<MapStatistics>(() => MapStatistics.Of(Map(Boxes[0].Scene, 0.0)));
        var high = new Lazy<MapStatistics>(() => MapStatistics.Of(Map(Boxes[0].Scene, 0.20)));
        (string What, string Unit, double Value, Func<double> Got)[] rows =
        [
            ("mean", "lx", 1764.2124, () => low.Value.Mean),
            ("least", "lx", 1088.6728, () => low.Value.Least),
            ("most", "lx", 2293.9135, () => low.Value.Most),
            ("least over mean", "1", 0.61709, () => low.Value.Least / low.Value.Mean),
            ("least over most", "1", 0.47459, () => low.Value.Least / low.Value.Most),
            ("standard deviation over mean", "1", 0.16530, () => low.Value.Variation),
            ("percentile 10", "lx", 1375.663, () => low.Value.Tenth),
            ("percentile 50", "lx", 1759.416, () => low.Value.Half),
            ("percentile 90", "lx", 2173.495, () => low.Value.NineTenths),
            ("mean at 0.20 m", "lx", 3301.2591, () => high.Value.Mean),
            ("least at 0.20 m", "lx", 1281.6887, () => high.Value.Least),
            ("most at 0.20 m", "lx", 5475.7489, () => high.Value.Most),
        ];
        foreach (var (what, unit, value, got) in rows)
        {
            yield return Source.Case(
                $"R1, map of 60 × 45 cells, {what}",
                unit,
                CaseSource.Within(1e-3, value),
                "Closed form in each cell.",
                got
            );
        }

        yield return Source.Case(
            $"R1, mean of the map as photons at 14.409 µmol/s a kilolumen",
            "µmol/m²/s",
            CaseSource.Within(1e-3, 25.4205),
            "Closed form in each cell.",
            () => low.Value.Mean * 14.409e-3
        );
        foreach (var (ramp, sum) in new[] { (0.0, 1.09817), (3600.0, 1.00665) })
        {
            yield return Source.Case(
                $"R1, sum of 12 hours with ramps of {ramp / 3600.0} h",
                "mol/m²/d",
                CaseSource.Within(1e-3, sum),
                "Closed form in each cell.",
                () =>
                    DailyLight.Integral(
                        low.Value.Mean * 14.409e-3,
                        DailyLight.FullSeconds(DailyLight.OnSeconds(8.0 * 3600.0, 20.0 * 3600.0), ramp)
                    )
            );
        }
    }

    /// <summary>
    /// The map beside the same cells one by one, as finely as can be: worst cell under and beside the plate.
    /// </summary>
    private static IEnumerable<VerificationCase> Penumbra()
    {
        yield return Source.Case(
            $"R6, worst cell of the map against single fine points, share of the mean",
            "%",
            (0.0, 2.0),
            "Bound on edges of shadows for a map that follows the hand.",
            () =>
            {
                double[] map = Map(Boxes[4].Scene, 0.0);
                var fine = new LightModel(Boxes[4].Scene, LightDetail.Fine);
                var lit = fine.Light(PanelScene.Panel);
                double worst = 0.0;
                for (int cell = 0; cell < map.Length; cell += 7)
                {
                    var at = new Point3(((cell % 60) + 0.5) * 0.01, ((cell / 60) + 0.5) * 0.01, 0.0);
                    worst = Math.Max(worst, Math.Abs(map[cell] - fine.At(new Receiver(at, Point3.Up), lit)));
                }

                return 100.0 * worst / map.Average();
            }
        );
    }
}
