using Litterfall.Physics.Plates;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Plates;

/// <summary>
/// Finite differences on 32 and 64 cells carried to cells of no size, (4 f64 − f32)/3: the second solution
/// beside printed plate tables.
/// </summary>
internal sealed class GridPlate(PlatePane pane, bool water)
{
    private const string Name = "finite differences on 32 and 64 cells, extrapolated";
    private const double Share = 0.004;
    private readonly Lazy<(double Moment, double Deflection)> solved = new(() => Solve(pane, water));

    /// <summary>Largest bending stress times a factor.</summary>
    public SecondSolution Stress(double factor, double about) =>
        new(
            Name,
            () => factor * 6.0 * solved.Value.Moment / (pane.ThicknessMeters * pane.ThicknessMeters),
            Share * about
        );

    /// <summary>Largest deflection times a factor.</summary>
    public SecondSolution Deflection(double factor, double about) =>
        new(Name, () => factor * solved.Value.Deflection / pane.StiffnessNewtonMeters, Share * about);

    private static (double Moment, double Deflection) Solve(PlatePane pane, bool water)
    {
        var coarse = Grid(pane, water, 32);
        var fine = Grid(pane, water, 64);
        return (
            ((4.0 * fine.LargestMoment()) - coarse.LargestMoment()) / 3.0,
            ((4.0 * fine.LargestDeflection) - coarse.LargestDeflection) / 3.0
        );
    }

    private static FiniteDifferencePlate Grid(PlatePane pane, bool water, int cells) =>
        FiniteDifferencePlate.Solve(
            pane.WidthMeters,
            pane.HeightMeters,
            pane.PoissonRatio,
            pane.Top == PlateEdge.TopFree,
            y => water ? 1.0 - (y / pane.HeightMeters) : 1.0,
            cells
        );
}
