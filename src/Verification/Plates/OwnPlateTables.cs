using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Plates;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Plates;

/// <summary>
/// Own worked example, thin-plate tables for ν = 0.22: computed beforehand by another program with series and
/// finite differences. Uniform load σ = 6β q S²/t², w = κ q S⁴/(E t³); water to the brim σ = B p b²/t²,
/// w = A p b⁴/(E t³), b the height.
/// </summary>
public static class OwnPlateTables
{
    private const double Nu = 0.22;
    private const double Thin = 0.01;

    // long/short side, 6β, κ
    private static readonly (double Ratio, double Stress, double Sag)[] Uniform =
    [
        (1.0, 0.270, 0.0464),
        (1.25, 0.381, 0.0688),
        (1.5, 0.474, 0.0882),
        (1.75, 0.5465, 0.1037),
        (2.0, 0.602, 0.1157),
        (2.5, 0.673, 0.1313),
        (3.0, 0.711, 0.1397),
        (5.0, 0.748, 0.1481),
    ];

    // width/height, B, A and the last printed unit of A
    private static readonly (double Ratio, double Stress, double Sag, double Unit)[] WaterTopFree =
    [
        (0.5, 0.084, 0.0040, 1e-4),
        (0.75, 0.138, 0.0147, 1e-4),
        (1.0, 0.197, 0.0399, 1e-4),
        (1.5, 0.351, 0.165, 1e-3),
        (2.0, 0.458, 0.389, 1e-3),
        (2.5, 0.554, 0.706, 1e-3),
        (3.0, 0.680, 1.11, 1e-2),
        (4.0, 0.930, 2.17, 1e-2),
    ];

    private static readonly (double Ratio, double Stress, double Sag, double Unit)[] WaterTopHeld =
    [
        (0.5, 0.082, 0.0039, 1e-4),
        (0.75, 0.121, 0.0123, 1e-4),
        (1.0, 0.154, 0.0235, 1e-4),
        (1.5, 0.251, 0.0443, 1e-4),
        (2.0, 0.313, 0.0580, 1e-4),
        (2.5, 0.348, 0.0658, 1e-4),
        (3.0, 0.366, 0.0700, 1e-4),
        (4.0, 0.380, 0.0733, 1e-4),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Stress and deflection coefficients of the three tables.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Uniform
            .SelectMany(row =>
                Pair("uniform, four edges, long/short", (row.Ratio, row.Stress, row.Sag, 1e-4), () =>
                    Solve(1.0, row.Ratio, PlateEdge.TopHeld, PlateLoad.Uniform(1.0, row.Ratio))
                )
            )
            .Concat(
                WaterTopFree.SelectMany(row =>
                    Pair("water, top free, width/height", row, () => Water(row.Ratio, PlateEdge.TopFree))
                )
            )
            .Concat(
                WaterTopHeld.SelectMany(row =>
                    Pair("water, top held, width/height", row, () => Water(row.Ratio, PlateEdge.TopHeld))
                )
            );

    private static PlateResult Water(double ratio, PlateEdge top) =>
        Solve(ratio, 1.0, top, [new(0.0, 1.0), new(1.0, 0.0)]);

    private static PlateResult Solve(double width, double height, PlateEdge top, PressureKnot[] load) =>
        LevyPlate.Solve(new PlatePane(width, height, Thin, 1.0, Nu, top), load);

    private static IEnumerable<VerificationCase> Pair(
        string name,
        (double Ratio, double Stress, double Sag, double Unit) row,
        Func<PlateResult> solve
    )
    {
        string label = string.Create(CultureInfo.InvariantCulture, $"{name} = {row.Ratio}");
        yield return Case(
            "stress, " + label,
            row.Stress,
            () => solve().LargestStressPascals * Thin * Thin,
            5e-4
        );
        yield return Case(
            "deflection, " + label,
            row.Sag,
            () => solve().LargestDeflectionMeters * Thin * Thin * Thin,
            0.5 * row.Unit
        );
    }

    private static VerificationCase Case(
        string quantity,
        double expected,
        Func<double> got,
        double tolerance
    ) =>
        new()
        {
            Source = "Own worked example, thin-plate tables",
            Subject = "Plates",
            Quantity = quantity,
            Unit = "1",
            Expected = expected,
            Got = got,
            Tolerance = tolerance + 1e-12,
            Reason = "Half a unit of the last digit of the table.",
            Evidence = Evidence.OtherCode,
            Provenance = Provenance.Recomputed,
        };
}
