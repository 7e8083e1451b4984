using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Plates;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Plates;

/// <summary>
/// Young, W. C. and Budynas, R. G. 2002, Roark's Formulas for Stress and Strain, 7th ed., table 11.4 (table
/// 26 of the 6th): rectangular plates, ν = 0.3, σ = β q b²/t², w = α q b⁴/(E t³). Cases 1a and 2a read in
/// stored copies; case 2d recalled. In case 2 b is the free edge, not the height.
/// </summary>
public static class YoungBudynas2002
{
    private const string Source = "Young and Budynas 2002 (Roark), table 11.4";
    private const double Nu = 0.3;
    private const double Thin = 0.01;

    // Case 1a: long/short side, β, α.
    private static readonly (double Ratio, double Beta, double Alpha)[] FourEdges =
    [
        (1.0, 0.2874, 0.0444),
        (1.2, 0.3762, 0.0616),
        (1.4, 0.4530, 0.0770),
        (1.6, 0.5172, 0.0906),
        (1.8, 0.5688, 0.1017),
        (2.0, 0.6102, 0.1110),
        (3.0, 0.7134, 0.1335),
        (4.0, 0.7410, 0.1400),
        (5.0, 0.7476, 0.1417),
    ];

    // Case 2a: height/free edge, β, α; uniform load.
    private static readonly (double Ratio, double Beta, double Alpha)[] ThreeEdges =
    [
        (0.5, 0.36, 0.080),
        (0.667, 0.45, 0.106),
        (1.0, 0.67, 0.140),
        (1.5, 0.77, 0.160),
        (2.0, 0.79, 0.165),
        (4.0, 0.80, 0.167),
    ];

    // Case 2d: height/free edge, β; load falling from q at the bottom to nothing at the free edge.
    private static readonly (double Ratio, double Beta)[] ThreeEdgesWater = [(0.5, 0.11), (2.0, 0.32)];

    /// <summary>The cases.</summary>
    /// <returns>Stress and deflection coefficients of cases 1a, 2a and 2d.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        FourEdges
            .SelectMany(row => Pair(row, "1a", PlateEdge.TopHeld, 3e-4, 1e-4))
            .Concat(ThreeEdges.SelectMany(row => Pair(row, "2a", PlateEdge.TopFree, 5e-3, 5e-4)))
            .Concat(
                ThreeEdgesWater.Select(row =>
                    Case(
                        Label("β case 2d", row.Ratio),
                        row.Beta,
                        () => Beta(Solve(row.Ratio, PlateEdge.TopFree, [new(0.0, 1.0), new(row.Ratio, 0.0)])),
                        5e-3
                    ) with
                    {
                        Provenance = Provenance.Recalled,
                        Second = new GridPlate(Pane(row.Ratio, PlateEdge.TopFree), true).Stress(
                            Thin * Thin,
                            row.Beta
                        ),
                    }
                )
            );

    private static IEnumerable<VerificationCase> Pair(
        (double Ratio, double Beta, double Alpha) row,
        string number,
        PlateEdge top,
        double betaTolerance,
        double alphaTolerance
    )
    {
        var grid = new GridPlate(Pane(row.Ratio, top), false);
        PlateResult Uniform() => Solve(row.Ratio, top, PlateLoad.Uniform(1.0, row.Ratio));
        yield return Case(
            Label("β case " + number, row.Ratio),
            row.Beta,
            () => Beta(Uniform()),
            betaTolerance
        ) with
        {
            Second = grid.Stress(Thin * Thin, row.Beta),
        };
        yield return Case(
            Label("α case " + number, row.Ratio),
            row.Alpha,
            () => Uniform().LargestDeflectionMeters * Thin * Thin * Thin,
            alphaTolerance
        ) with
        {
            Second = grid.Deflection(Thin * Thin * Thin, row.Alpha),
        };
    }

    private static double Beta(PlateResult result) => result.LargestStressPascals * Thin * Thin;

    // b = 1 m across, E = 1 Pa.
    private static PlateResult Solve(double ratio, PlateEdge top, PressureKnot[] load) =>
        LevyPlate.Solve(Pane(ratio, top), load);

    private static PlatePane Pane(double ratio, PlateEdge top) => new(1.0, ratio, Thin, 1.0, Nu, top);

    private static string Label(string name, double ratio) =>
        string.Create(CultureInfo.InvariantCulture, $"{name}, a/b = {ratio}");

    private static VerificationCase Case(
        string quantity,
        double expected,
        Func<double> got,
        double tolerance
    ) =>
        new()
        {
            Source = Source,
            Subject = "Plates",
            Quantity = quantity,
            Unit = "1",
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason =
                "Case 1a: the table is six times (β) and 10.92 times (α) coefficients of plate theory, "
                + "so six and ten times half their last digit. Case 2: half a unit of the last digit.",
            Evidence = Evidence.PrintedTable,
            Provenance = Provenance.Read,
        };
}
