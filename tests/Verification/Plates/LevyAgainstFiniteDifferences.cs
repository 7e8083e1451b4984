using System.Globalization;
using Litterfall.Physics.Plates;
using Litterfall.Verification.Plates;
using Xunit;

namespace Litterfall.Tests.Verification.Plates;

/// <summary>Lévy's series against an energy finite-difference solution that shares nothing with it.</summary>
public sealed class LevyAgainstFiniteDifferences
{
    private const int Cells = 64;
    private const double Thin = 0.01;
    private const double Bound = 0.005;

    public static TheoryData<double, double, double, bool, bool> Panes() =>
        new()
        {
            // width, height, ν, top free, water (else uniform)
            { 1.0, 1.0, 0.22, true, true },
            { 1.5, 1.0, 0.22, true, true },
            { 2.0, 1.0, 0.22, true, true },
            { 2.5, 1.0, 0.22, true, true },
            { 0.5, 1.0, 0.22, true, true },
            { 2.0, 1.0, 0.22, false, true },
            // The rows of printed tables that disagree with the series.
            { 1.0, 1.2, 0.30, false, false },
            { 1.0, 1.4, 0.30, false, false },
            { 1.0, 1.6, 0.30, false, false },
            { 1.0, 2.0, 0.30, false, false },
            { 1.0, 1.75, 0.22, false, false },
            { 1.8, 1.0, 0.22, true, true },
            { 1.0, 0.5, 0.30, true, false },
            { 1.0, 1.5, 0.30, true, false },
            { 1.0, 0.667, 0.30, true, false },
            { 1.0, 4.0, 0.30, true, false },
            { 1.0, 0.5, 0.30, true, true },
            { 1.0, 2.0, 0.30, true, true },
        };

    // 0.5 %: second differences on 64 cells leave (π/64)²/6 = 0.04 % of the first wave, of the corner twist
    // more.
    [Theory]
    [MemberData(nameof(Panes))]
    public void Stress_and_deflection_agree(double width, double height, double nu, bool topFree, bool water)
    {
        var pane = new PlatePane(
            width,
            height,
            Thin,
            1.0,
            nu,
            topFree ? PlateEdge.TopFree : PlateEdge.TopHeld
        );
        double atTop = water ? 0.0 : 1.0;
        PlateResult levy = LevyPlate.Solve(pane, [new(0.0, 1.0), new(height, atTop)]);
        var grid = FiniteDifferencePlate.Solve(
            width,
            height,
            nu,
            topFree,
            y => 1.0 + ((atTop - 1.0) * y / height),
            Cells
        );
        double stress = 6.0 * grid.LargestMoment() / (Thin * Thin);
        double deflection = grid.LargestDeflection / pane.StiffnessNewtonMeters;
        TestContext.Current.TestOutputHelper?.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"stress {levy.LargestStressPascals / stress:F5}, deflection "
                    + $"{levy.LargestDeflectionMeters / deflection:F5} of the grid solution"
            )
        );
        Assert.Equal(1.0, levy.LargestStressPascals / stress, Bound);
        Assert.Equal(1.0, levy.LargestDeflectionMeters / deflection, Bound);
    }

    // Water 150 mm deep behind a 600 × 500 pane: 30 % of the height.
    [Fact]
    public void Water_below_the_top_agrees()
    {
        var pane = new PlatePane(1.2, 1.0, Thin, 1.0, 0.22, PlateEdge.TopFree);
        PlateResult levy = LevyPlate.Solve(pane, [new(0.0, 1.0), new(0.3, 0.0)]);
        var grid = FiniteDifferencePlate.Solve(
            1.2,
            1.0,
            0.22,
            topFree: true,
            y => Math.Max(0.0, 1.0 - (y / 0.3)),
            100
        );
        Assert.Equal(1.0, levy.LargestStressPascals * Thin * Thin / (6.0 * grid.LargestMoment()), Bound);
        Assert.Equal(
            1.0,
            levy.LargestDeflectionMeters * pane.StiffnessNewtonMeters / grid.LargestDeflection,
            Bound
        );
    }

    [Fact]
    public void A_load_with_a_jump_agrees()
    {
        var pane = new PlatePane(1.2, 1.0, Thin, 1.0, 0.22, PlateEdge.TopFree);
        PressureKnot[] load = [new(0.0, 2.0), new(0.25, 1.0), new(0.25, 0.5), new(0.625, 0.0)];
        PlateResult levy = LevyPlate.Solve(pane, load);
        // Half of both sides at the jump itself, where a grid line runs.
        static double Pressure(double y) =>
            y switch
            {
                < 0.25 - 1e-9 => 2.0 - (4.0 * y),
                < 0.25 + 1e-9 => 0.75,
                < 0.625 => 0.5 * (0.625 - y) / 0.375,
                _ => 0.0,
            };
        var grid = FiniteDifferencePlate.Solve(1.2, 1.0, 0.22, topFree: true, Pressure, Cells);
        Assert.Equal(1.0, levy.LargestStressPascals * Thin * Thin / (6.0 * grid.LargestMoment()), Bound);
        Assert.Equal(
            1.0,
            levy.LargestDeflectionMeters * pane.StiffnessNewtonMeters / grid.LargestDeflection,
            Bound
        );
    }
}
