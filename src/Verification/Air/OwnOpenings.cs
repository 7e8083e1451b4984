using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// Air through openings, worked by a second program from the published forms (CIBSE AM10; Brown and Solvason
/// 1962; Epstein 1988; Brundrett 1993; Sampson 1891; all recalled): g 9.80665 m/s², 297.15 K, 1.19 kg/m³.
/// The two
/// streams behind a mesh solve K ρ v² + a v = Δρ g D, our own form, exact without mesh.
/// </summary>
public static class OwnOpenings
{
    private const double Kelvin = 297.15;
    private const double Density = 1.19;
    private const double CubicMetersPerHour = 3600.0;
    private const double Exact = 1e-4;
    private static readonly CaseSource Source = new(
        "Air",
        "Own worked example, air through openings",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // cm², cm², K, m³/h; C 0.6, 0.5 m apart
    private static readonly (double Low, double High, double Over, double Flow)[] Stacks =
    [
        (20, 20, 3, 0.96117),
        (45, 45, 3, 2.16264),
        (45, 45, 1, 1.24860),
        (90, 400, 3, 5.96768),
    ];

    // side m, Pa s/m, and m³/h at Δρ/ρ 0.003, 0.010, 0.020
    private static readonly (double Side, double Viscous, double[] Flows)[] Lids =
    [
        (0.15, 0, [0.296, 0.540, 0.764]),
        (0.15, 1, [0.155, 0.372, 0.585]),
        (0.15, 3, [0.067, 0.203, 0.365]),
        (0.15, 6, [0.035, 0.113, 0.217]),
        (0.30, 0, [1.674, 3.057, 4.323]),
        (0.30, 1, [1.042, 2.342, 3.577]),
        (0.30, 3, [0.514, 1.459, 2.508]),
        (0.30, 6, [0.276, 0.869, 1.624]),
        (0.45, 0, [4.613, 8.423, 11.91]),
        (0.45, 1, [3.119, 6.771, 10.20]),
        (0.45, 3, [1.665, 4.533, 7.586]),
        (0.45, 6, [0.919, 2.830, 5.176]),
    ];

    // aperture and wire mm; Pa s/m as holes, as wires
    private static readonly (double Aperture, double Wire, double Wires)[] Meshes =
    [
        (1.20, 0.28, 0.30),
        (1.00, 0.25, 0.37),
        (0.50, 0.20, 0.91),
        (0.25, 0.16, 2.5),
    ];

    // gap mm; m³/(s Pa) of 45 cm, 6 mm deep
    private static readonly (double Gap, double Conductance)[] Slits =
    [
        (0.5, 4.3e-5),
        (1.0, 3.4e-4),
        (2.0, 2.7e-3),
        (3.0, 9.2e-3),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Stacks, slots, level openings, meshes and slits.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Upright().Concat(Level()).Concat(Resistances()).Concat(SlotAndMesh());

    private static IEnumerable<VerificationCase> Upright()
    {
        foreach (var (low, high, over, flow) in Stacks)
        {
            yield return Flow(
                $"{low} and {high} cm² half a meter apart, {over} K",
                CaseSource.Within(Exact, flow),
                "Five digits.",
                [Sharp(low * 1e-4, 0.0, 0.0), Sharp(high * 1e-4, 0.5, 0.0)],
                over / Kelvin
            );
        }

        foreach (var (over, flow) in ((double, double)[])[(3.0, 0.28835), (1.0, 0.16648)])
        {
            yield return Flow(
                $"one slot 45 cm long, 2 cm high, {over} K",
                CaseSource.Within(Exact, flow),
                "Five digits.",
                [Sharp(0.45 * 0.02, 0.2, 0.02)],
                over / Kelvin
            );
        }
    }

    private static IEnumerable<VerificationCase> Level()
    {
        yield return Flow(
            $"level opening 45 × 15 cm, 1 % lighter",
            CaseSource.Within(Exact, 1.4890),
            "Five digits.",
            [new(0.45 * 0.15, 0.45, 0.225, true, 0.0, 0.6)],
            0.01
        );
        yield return Flow(
            $"level opening 45 × 45 cm, 1 % lighter",
            CaseSource.Within(Exact, 8.4228),
            "Five digits.",
            [new(0.45 * 0.45, 0.45, 0.45, true, 0.0, 0.6)],
            0.01
        );
        foreach (var (side, viscous, flows) in Lids)
        {
            for (int i = 0; i < flows.Length; i++)
            {
                double lighter = (0.003, 0.010, 0.020) switch
                {
                    var (least, _, _) when i == 0 => least,
                    var (_, middle, _) when i == 1 => middle,
                    var (_, _, most) => most,
                };
                yield return Flow(
                    $"mesh lid of {side} m, {viscous} Pa s/m, Δρ/ρ {lighter}",
                    (flows[i], Math.Max(0.0006, 5e-4 * flows[i])),
                    "Three decimals, or four digits.",
                    [new(side * side, 0.45, side, true, viscous, 0.6)],
                    lighter
                );
            }
        }
    }

    private static IEnumerable<VerificationCase> Resistances()
    {
        foreach (var (aperture, wire, wires) in Meshes)
        {
            yield return Source.Case(
                $"mesh {aperture} mm, wire {wire} mm, as wires",
                "Pa s/m",
                (wires, wires > 2.0 ? 0.06 : 0.006),
                "The printed digits.",
                () => AirOpening.WovenMesh(aperture / 1000.0, wire / 1000.0)
            );
        }

        foreach (var (gap, conductance) in Slits)
        {
            yield return Source.Case(
                $"slit 45 cm long, 6 mm deep, gap {gap} mm",
                "m³/(s Pa)",
                CaseSource.Within(0.013, conductance),
                "Two digits.",
                () =>
                {
                    var slit = AirOpening.Slit(0.45, gap / 1000.0, 0.006, 0.45, 0.0);
                    return slit.AreaSquareMeters / slit.Resistance;
                }
            );
        }
    }

    private static IEnumerable<VerificationCase> SlotAndMesh()
    {
        // K; m³/h with sharp edges, with 1.2 Pa s/m on both
        foreach (
            var (over, sharp, meshed) in ((double, double, double)[])
                [(1.0, 1.64, 0.196), (3.0, 2.85, 0.573), (5.0, 3.67, 0.931)]
        )
        {
            foreach (double viscous in (double[])[0.0, 1.2])
            {
                double flow = viscous > 0.0 ? meshed : sharp;
                yield return Flow(
                    $"slot 45 × 1 cm under a strip 45 × 5 cm, 0.45 m apart, {viscous} Pa s/m, {over} K",
                    CaseSource.Within(4e-3, flow),
                    "Three digits.",
                    [
                        Sharp(0.0045, 0.0, 0.0) with
                        {
                            Resistance = viscous,
                        },
                        Sharp(0.0225, 0.45, 0.0) with
                        {
                            Resistance = viscous,
                        },
                    ],
                    over / Kelvin
                );
            }
        }
    }

    private static AirOpening Sharp(double area, double height, double extent) =>
        new(area, height, extent, false, 0.0, 0.6);

    private static VerificationCase Flow(
        FormattableString quantity,
        (double Value, double Tolerance) expected,
        string reason,
        ImmutableArray<AirOpening> openings,
        double lighterShare
    ) =>
        Source.Case(quantity, "m³/h", expected, reason, () =>
            CubicMetersPerHour
            * new OpeningSet(openings).Buoyant(
                Density * (1.0 - (0.5 * lighterShare)),
                Density * (1.0 + (0.5 * lighterShare))
            )
        );
}
