using Litterfall.Physics.Light;

namespace Litterfall.Bench.Light;

/// <summary>
/// The plain way to a shadow: 144 points of a Fibonacci lattice on the lamp, each with a ray through the lid,
/// tried against
/// every block. Shares the pane and the slab test with the engine, nothing else.
/// </summary>
internal static class Lattice
{
    private const int Points = 144;
    private const int Step = 89;

    public static double[] Map(LightScene scene, Luminaire lamp, MapGrid grid)
    {
        var cells = new double[grid.CellsX * grid.CellsY];
        var pane = scene.Lid[0].Pane!;
        double luminance = lamp.Lumens / (Math.PI * lamp.Measure);
        for (int i = 0; i < cells.Length; i++)
        {
            var at = new Point3(
                ((i % grid.CellsX) + 0.5) * scene.Length / grid.CellsX,
                ((i / grid.CellsX) + 0.5) * scene.Depth / grid.CellsY,
                grid.Height
            );
            if (scene.Blocks.Any(b => b.Extent.Contains(at)))
            {
                continue;
            }

            double sum = 0.0;
            for (int k = 0; k < Points; k++)
            {
                double u = ((k + 0.5) / Points * 2.0) - 1.0;
                double v = (((Step * k % Points) + 0.5) / Points * 2.0) - 1.0;
                var way = lamp.Center + new Point3(u * lamp.Half.X, v * lamp.Half.Y, 0.0) - at;
                double square = way.Dot(way);
                double cosine = way.Z / Math.Sqrt(square);
                var hit = at + ((scene.Height - at.Z) / way.Z * way);
                if (
                    hit.X < 0.0
                    || hit.X > scene.Length
                    || hit.Y < 0.0
                    || hit.Y > scene.Depth
                    || IsHidden(scene, at, way)
                )
                {
                    continue;
                }

                sum += cosine * cosine / square * pane.Through(cosine);
            }

            cells[i] = sum * luminance * lamp.Measure / Points;
        }

        return cells;
    }

    private static bool IsHidden(LightScene scene, Point3 at, Point3 way)
    {
        foreach (var block in scene.Blocks)
        {
            var (enter, leave) = block.Extent.Along(at, way);
            if (leave > enter)
            {
                return true;
            }
        }

        return false;
    }
}
