using System.Collections.Immutable;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>A depth whose values are printed.</summary>
/// <param name="DepthCm">Depth, cm.</param>
/// <param name="Node">Node it stands on.</param>
/// <param name="Element">Element whose material holds the water, or −1 for the mean of both sides.</param>
public readonly record struct ShownPoint(double DepthCm, int Node, int Element)
{
    private const int MostValues = 200_000;

    // Depths are sums of thicknesses; a billionth of a cm is round-off of those sums.
    private const int DepthDigits = 9;
    private const double RoundOffMeters = 1e-9;

    // The jump of the water content between two soils stands between depths this far from their boundary.
    private const double JumpCm = 1e-6;

    /// <summary>
    /// All nodes, because callers join them by straight lines; only edges and middles of the cells where
    /// that would be too much to print. A boundary between two soils is shown from both sides, too, so that
    /// straight lines do not smear the jump of the water content.
    /// </summary>
    /// <param name="columns">The column.</param>
    /// <param name="layers">Layers as asked.</param>
    /// <param name="reports">Number of reports.</param>
    public static ImmutableArray<ShownPoint> Of(
        SoilColumns columns,
        ImmutableArray<LabLayer> layers,
        int reports
    )
    {
        bool all = (long)columns.Nodes * reports <= MostValues;
        var points = ImmutableArray.CreateBuilder<ShownPoint>();
        foreach (int node in all ? Enumerable.Range(0, columns.Nodes) : Halves(columns, layers))
        {
            double depth = Math.Round(LabUnits.Cm(columns.DepthMeters[node]), DepthDigits);
            bool isJump =
                node > 0
                && node < columns.Nodes - 1
                && columns.ElementTable[node - 1] != columns.ElementTable[node];
            if (isJump)
            {
                points.Add(new ShownPoint(Math.Round(depth - JumpCm, DepthDigits), node, node - 1));
            }

            points.Add(new ShownPoint(depth, node, -1));
            if (isJump)
            {
                points.Add(new ShownPoint(Math.Round(depth + JumpCm, DepthDigits), node, node));
            }
        }

        return points.ToImmutable();
    }

    /// <summary>Water content, m³/m³.</summary>
    public double WaterContent(SoilColumns columns, ColumnState state) =>
        Element < 0
            ? columns.WaterContent(state, Node, 0)
            : columns.Tables[columns.ElementTable[Element]].WaterContent(state.HeadMeters[Node]);

    /// <summary>Nodes on edges and middles of the cells.</summary>
    private static IEnumerable<int> Halves(SoilColumns columns, ImmutableArray<LabLayer> layers)
    {
        double top = 0.0;
        int node = 0;
        foreach (var layer in layers)
        {
            for (int half = 0; half < 2 * layer.Cells; half++)
            {
                double want = top + (0.5 * half * layer.ThicknessMeters / layer.Cells);
                while (columns.DepthMeters[node] < want - RoundOffMeters)
                {
                    node++;
                }

                if (columns.DepthMeters[node] <= want + RoundOffMeters)
                {
                    yield return node;
                }
            }

            top += layer.ThicknessMeters;
        }

        yield return columns.Nodes - 1;
    }
}
