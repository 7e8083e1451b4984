using Litterfall.Physics.Plates;

namespace Litterfall.Verification.Plates;

/// <summary>Panes of the cases.</summary>
public static class TestPanes
{
    // EN 572-1 (recalled): E = 70 GPa. Published Poisson's ratios of soda-lime glass run from 0.20 to 0.23;
    // 0.22 is the middle one and moves the stress by less than 2 %.
    private const double YoungsModulusPascals = 70e9;
    private const double PoissonRatio = 0.22;

    /// <summary>A pane of soda-lime float glass.</summary>
    /// <param name="widthMeters">Width, m.</param>
    /// <param name="heightMeters">Height, m.</param>
    /// <param name="thicknessMeters">Thickness, m.</param>
    /// <param name="top">How the top edge is held.</param>
    public static PlatePane Glass(
        double widthMeters,
        double heightMeters,
        double thicknessMeters,
        PlateEdge top
    ) => new(widthMeters, heightMeters, thicknessMeters, YoungsModulusPascals, PoissonRatio, top);
}
