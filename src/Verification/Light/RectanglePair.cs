using Litterfall.Physics.Light;
using Litterfall.Physics.Numerics;

namespace Litterfall.Verification.Light;

/// <summary>
/// View factors between two rectangles: the factor at a point, summed over the first by Gauss.
/// </summary>
internal static class RectanglePair
{
    private static readonly GaussLegendre Rule = GaussLegendre.Of(32);

    /// <summary>Equal rectangles that face each other.</summary>
    /// <param name="length">One side.</param>
    /// <param name="width">The other.</param>
    /// <param name="apart">Their distance.</param>
    public static double Facing(double length, double width, double apart) =>
        Mean(
            (u, v) =>
                RectangleFactor.Parallel(
                    (-length * u, -width * v),
                    (length * (1.0 - u), width * (1.0 - v)),
                    apart
                )
        );

    /// <summary>Rectangles at right angles with an edge in common.</summary>
    /// <param name="edge">Their common edge.</param>
    /// <param name="reach">Reach of the first from the edge.</param>
    /// <param name="rise">Reach of the second.</param>
    public static double Joined(double edge, double reach, double rise) =>
        Upright((0.0, reach), (0.0, edge), (0.0, rise), (0.0, edge));

    /// <summary>Rectangles on two planes at right angles, anywhere.</summary>
    /// <param name="reach">From and to of the first, away from the line in which the planes meet.</param>
    /// <param name="along">From and to of the first along that line.</param>
    /// <param name="rise">From and to of the second, away from the line.</param>
    /// <param name="beside">From and to of the second along the line.</param>
    public static double Upright(
        (double From, double To) reach,
        (double From, double To) along,
        (double From, double To) rise,
        (double From, double To) beside
    ) =>
        Mean(
            (u, v) =>
            {
                // Points crowd near the line, where the factor is steep.
                double y = along.From + (v * (along.To - along.From));
                return 2.0
                    * u
                    * RectangleFactor.Perpendicular(
                        rise,
                        (beside.From - y, beside.To - y),
                        reach.From + (u * u * (reach.To - reach.From))
                    );
            }
        );

    private static double Mean(Func<double, double, double> at)
    {
        double sum = 0.0;
        for (int i = 0; i < Rule.Points.Length; i++)
        {
            for (int j = 0; j < Rule.Points.Length; j++)
            {
                sum += Rule.Weights[i] * Rule.Weights[j] * at(Rule.Points[i], Rule.Points[j]);
            }
        }

        return sum;
    }
}
