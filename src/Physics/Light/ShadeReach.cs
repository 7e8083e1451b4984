namespace Litterfall.Physics.Light;

/// <summary>How far an animal on open ground is from shade.</summary>
public static class ShadeReach
{
    /// <summary>
    /// Longest way from an open cell to the nearest dark one, m, by steps to the eight cells around: up to
    /// 8 % longer than the straight line. The diagonal of the map where no cell is dark.
    /// </summary>
    /// <param name="isDark">Dark cells, row after row.</param>
    /// <param name="isOpen">Cells an animal can sit on.</param>
    /// <param name="cellsX">Cells of a row.</param>
    /// <param name="cell">Size of a cell, m.</param>
    public static double Meters(bool[] isDark, bool[] isOpen, int cellsX, (double X, double Y) cell)
    {
        int rows = isDark.Length / cellsX;
        double diagonal = Math.Sqrt((cell.X * cell.X) + (cell.Y * cell.Y));
        double most = Math.Sqrt(Math.Pow(cellsX * cell.X, 2) + Math.Pow(rows * cell.Y, 2));
        double[] ways = [.. isDark.Select(dark => dark ? 0.0 : most)];
        (int X, int Y, double Way)[] back =
        [
            (-1, 0, cell.X),
            (0, -1, cell.Y),
            (-1, -1, diagonal),
            (1, -1, diagonal),
        ];
        for (int i = 0; i < ways.Length; i++)
        {
            Shorten(i, 1);
        }

        for (int i = ways.Length - 1; i >= 0; i--)
        {
            Shorten(i, -1);
        }

        return ways.Where((_, i) => isOpen[i]).DefaultIfEmpty(0.0).Max();

        void Shorten(int i, int turn)
        {
            foreach (var (x, y, way) in back)
            {
                int column = (i % cellsX) + (turn * x);
                int row = (i / cellsX) + (turn * y);
                if (column >= 0 && column < cellsX && row >= 0 && row < rows)
                {
                    ways[i] = Math.Min(ways[i], ways[(row * cellsX) + column] + way);
                }
            }
        }
    }
}
