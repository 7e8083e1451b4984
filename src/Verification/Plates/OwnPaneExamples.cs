using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Physics;
using Litterfall.Physics.Plates;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Plates;

/// <summary>
/// Own worked example, lids and fronts: stress and deflection of panes of everyday size, computed beforehand
/// by another program with g = 9.81 m/s²; three last digits set right by finite differences. Glass 2500
/// kg/m³; lids carry their weight and 20 Pa; the wet soil weighs 1400 kg/m³ at K0 = 0.5.
/// </summary>
public static class OwnPaneExamples
{
    private const double GlassDensity = 2500.0;
    private const double Gravity = 9.81;
    private const double LidExtraPascals = 20.0;
    private const double SoilDensity = 1400.0;

    // width, height, thickness in mm; stress MPa, deflection mm
    private static readonly (double W, double H, double T, double Stress, double Sag)[] Lids =
    [
        (600, 450, 4, 0.62, 0.08),
        (900, 450, 4, 0.90, 0.13),
        (1200, 500, 4, 1.22, 0.21),
        (1200, 500, 6, 0.77, 0.09),
    ];

    // span, thickness in mm; stress MPa, deflection mm
    private static readonly (double Span, double T, double Stress, double Sag)[] Spans =
    [
        (600, 4, 1.99, 0.53),
        (900, 4, 4.48, 2.70),
        (900, 6, 2.82, 1.13),
        (1200, 6, 5.01, 3.58),
    ];

    private static readonly (double W, double H, double T, double Stress, double Sag)[] StripsFullOfWater =
    [
        (600, 120, 4, 1.25, 0.19),
        (900, 150, 5, 1.89, 0.44),
        (1200, 150, 6, 1.775, 0.47),
    ];

    // width, height in mm; thickness for 7.2 MPa, top free and held, mm, and half the last digit printed
    private static readonly (double W, double H, double Free, double Held, double Half)[] BrimFull =
    [
        (450, 450, 4.95, 4.37, 0.005),
        (600, 450, 6.1, 5.3, 0.05),
        (600, 600, 7.6, 6.7, 0.05),
        (900, 450, 7.5, 6.2, 0.05),
        (900, 600, 10.2, 8.6, 0.05),
        (1200, 600, 11.6, 9.6, 0.05),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Lids, spans, fronts, strips and brim-full thickness.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Lids.SelectMany(r => Pair($"lid {Size(r.W, r.H, r.T)}", r.Stress, r.Sag, () => Lid(r.W, r.H, r.T)))
            .Concat(Spans.SelectMany(r => SpanPair(r.Span, r.T, r.Stress, r.Sag)))
            .Concat(Fronts())
            .Concat(
                StripsFullOfWater.SelectMany(r =>
                    Pair($"strip full of water {Size(r.W, r.H, r.T)}", r.Stress, r.Sag, () =>
                        Front(r.W, r.H, r.T, PlateLoad.Water(r.H / 1e3))
                    )
                )
            )
            .Concat(BrimFull.SelectMany(Thickness));

    private static IEnumerable<VerificationCase> Fronts()
    {
        PressureKnot[] water = PlateLoad.Water(0.150);
        PressureKnot[] soil = PlateLoad.Of(new WetSoil(0.200, 0.060, SoilDensity));
        PressureKnot[] full = PlateLoad.Water(0.500);
        string small = Size(600, 500, 4);
        string wide = Size(900, 500, 5);
        return Pair($"front {small}, water 150 mm", 1.15, 0.135, () => Front(600, 500, 4, water))
            .Concat(Pair($"front {small}, wet soil 200/60 mm", 1.64, 0.23, () => Front(600, 500, 4, soil)))
            .Concat(Pair($"front {small}, brim-full", 20.0, 5.3, () => Front(600, 500, 4, full), 0.05))
            .Concat(Pair($"front {wide}, water 150 mm", 0.93, 0.26, () => Front(900, 500, 5, water)))
            .Concat(Pair($"front {wide}, wet soil 200/60 mm", 1.40, 0.44, () => Front(900, 500, 5, soil)))
            .Append(
                Case($"front {wide}, brim-full, stress", "MPa", 20.65, 0.05, () =>
                    Front(900, 500, 5, full).LargestStressPascals / 1e6
                )
            )
            .Append(
                Case($"front {wide}, brim-full, deflection", "mm", 10.0, 0.5, () =>
                    Front(900, 500, 5, full).LargestDeflectionMeters * 1e3
                )
            );
    }

    private static IEnumerable<VerificationCase> Thickness(
        (double W, double H, double Free, double Held, double Half) row
    )
    {
        double Needed(PlateEdge top) =>
            1e3
            * LevyPlate.ThicknessNeeded(0.006, Glass(row, top).LargestStressPascals, 7.2e6);
        string name = string.Create(
            CultureInfo.InvariantCulture,
            $"brim-full {row.W}×{row.H}, thickness for 7.2 MPa"
        );
        yield return Case(name + ", top free", "mm", row.Free, row.Half, () => Needed(PlateEdge.TopFree));
        yield return Case(name + ", top held", "mm", row.Held, row.Half, () => Needed(PlateEdge.TopHeld));
    }

    private static PlateResult Glass(
        (double W, double H, double Free, double Held, double Half) row,
        PlateEdge top
    ) =>
        LevyPlate.Solve(
            TestPanes.Glass(row.W / 1e3, row.H / 1e3, 0.006, top),
            Rounded(PlateLoad.Water(row.H / 1e3))
        );

    private static double LidPressure(double thickness) =>
        (GlassDensity * Gravity * thickness / 1e3) + LidExtraPascals;

    private static PlateResult Lid(double width, double height, double thickness) =>
        LevyPlate.Solve(
            TestPanes.Glass(width / 1e3, height / 1e3, thickness / 1e3, PlateEdge.TopHeld),
            PlateLoad.Uniform(LidPressure(thickness), height / 1e3)
        );

    private static PlateResult Front(double width, double height, double thickness, PressureKnot[] load) =>
        LevyPlate.Solve(
            TestPanes.Glass(width / 1e3, height / 1e3, thickness / 1e3, PlateEdge.TopFree),
            Rounded(load)
        );

    // The same load with g = 9.81.
    private static PressureKnot[] Rounded(PressureKnot[] load) =>
        [.. load.Select(k => k with { Pascals = k.Pascals * Gravity / Constants.StandardGravity })];

    private static IEnumerable<VerificationCase> SpanPair(
        double span,
        double thickness,
        double stress,
        double sag
    )
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"two edges, span {span} × {thickness}");
        double q = LidPressure(thickness);
        yield return Case(name + ", stress", "MPa", stress, 0.005, () =>
            TwoEdgeSpan.StressPascals(q, span / 1e3, thickness / 1e3) / 1e6
        );
        yield return Case(name + ", deflection", "mm", sag, 0.005, () =>
            TwoEdgeSpan.DeflectionMeters(q, span / 1e3, thickness / 1e3, 70e9) * 1e3
        );
    }

    private static IEnumerable<VerificationCase> Pair(
        string name,
        double stress,
        double sag,
        Func<PlateResult> solve,
        double tolerance = 0.005
    )
    {
        yield return Case(name + ", stress", "MPa", stress, tolerance, () =>
            solve().LargestStressPascals / 1e6
        );
        yield return Case(name + ", deflection", "mm", sag, tolerance, () =>
            solve().LargestDeflectionMeters * 1e3
        );
    }

    private static string Size(double width, double height, double thickness) =>
        string.Create(CultureInfo.InvariantCulture, $"{width}×{height}×{thickness}");

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        double tolerance,
        Func<double> got
    ) =>
        new()
        {
            Source = "Own worked example, lids and fronts",
            Subject = "Plates",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance + 1e-12,
            Reason = "Half a unit of the last digit written down.",
            Evidence = Evidence.OtherCode,
            Provenance = Provenance.Recomputed,
        };
}
