namespace Litterfall.Verification.Plates;

/// <summary>
/// A second, unrelated solution of the pane: the bending energy
/// D/2 ∫ [(w_xx + w_yy)² − 2(1 − ν)(w_xx w_yy − w_xy²)] − p w, written with second differences at the nodes
/// and mixed differences at the cell centers, is made least by a banded Cholesky factorization. At simply
/// supported edges w and the curvatures vanish; at the free edge My = 0 puts w_yy = −ν w_xx into the energy,
/// and the Kirchhoff shear vanishes by itself as the natural condition. E t³ is folded into D = 1.
/// </summary>
public sealed class FiniteDifferencePlate
{
    private readonly int nx;
    private readonly int ny;
    private readonly double dx;
    private readonly double dy;
    private readonly double nu;
    private readonly bool topFree;
    private readonly int band;
    private readonly double[,] matrix;
    private readonly double[] w;

    private FiniteDifferencePlate(double width, double height, double nu, bool topFree, int cells)
    {
        nx = cells;
        ny = cells;
        dx = width / cells;
        dy = height / cells;
        this.nu = nu;
        this.topFree = topFree;
        int unknowns = (nx - 1) * (topFree ? ny : ny - 1);
        band = (2 * (nx - 1)) + 2;
        matrix = new double[unknowns, band + 1];
        w = new double[unknowns];
    }

    /// <summary>Largest deflection times D.</summary>
    public double LargestDeflection => w.Max(Math.Abs);

    public static FiniteDifferencePlate Solve(
        double width,
        double height,
        double nu,
        bool topFree,
        Func<double, double> load,
        int cells
    )
    {
        var plate = new FiniteDifferencePlate(width, height, nu, topFree, cells);
        plate.Assemble(load);
        plate.Factor();
        plate.Substitute();
        return plate;
    }

    /// <summary>Largest principal moment over the inner nodes, the free edge and the lower corners.</summary>
    public double LargestMoment()
    {
        double largest = Math.Abs(CornerTwist());
        for (int j = 1; j <= (topFree ? ny : ny - 1); j++)
        {
            for (int i = 1; i < nx; i++)
            {
                largest = Math.Max(largest, Principal(i, j));
            }
        }

        return largest;
    }

    private double Principal(int i, int j)
    {
        double wxx = (At(i - 1, j) - (2.0 * At(i, j)) + At(i + 1, j)) / (dx * dx);
        double twist;
        double wyy;
        if (j == ny)
        {
            wyy = -nu * wxx;
            double near = 0.5 * (Twist(i - 1, ny - 1) + Twist(i, ny - 1));
            double far = 0.5 * (Twist(i - 1, ny - 2) + Twist(i, ny - 2));
            twist = (1.5 * near) - (0.5 * far);
        }
        else
        {
            wyy = (At(i, j - 1) - (2.0 * At(i, j)) + At(i, j + 1)) / (dy * dy);
            twist = 0.25 * (Twist(i - 1, j - 1) + Twist(i, j - 1) + Twist(i - 1, j) + Twist(i, j));
        }

        double mx = wxx + (nu * wyy);
        double my = wyy + (nu * wxx);
        double mxy = (1.0 - nu) * twist;
        double half = 0.5 * (mx - my);
        return Math.Abs(0.5 * (mx + my)) + Math.Sqrt((half * half) + (mxy * mxy));
    }

    // Twist at x = y = 0, linear along the diagonal from the two nearest cell centers.
    private double CornerTwist() => (1.0 - nu) * ((1.5 * Twist(0, 0)) - (0.5 * Twist(1, 1)));

    private double Twist(int i, int j) =>
        (At(i, j) - At(i + 1, j) - At(i, j + 1) + At(i + 1, j + 1)) / (dx * dy);

    private double At(int i, int j)
    {
        int k = Index(i, j);
        return k < 0 ? 0.0 : w[k];
    }

    private int Index(int i, int j) =>
        i <= 0 || i >= nx || j <= 0 || (j >= ny && !topFree) ? -1 : ((j - 1) * (nx - 1)) + i - 1;

    private void Assemble(Func<double, double> load)
    {
        double area = dx * dy;
        for (int i = 1; i < nx; i++)
        {
            for (int j = 1; j < ny; j++)
            {
                (int, double)[] wxx = SecondX(i, j);
                (int, double)[] wyy = SecondY(i, j);
                AddSquare([.. wxx, .. wyy], area);
                AddProduct(wxx, wyy, -2.0 * (1.0 - nu) * area);
                w[Index(i, j)] += load(j * dy) * area;
            }

            if (topFree)
            {
                AddSquare(SecondX(i, ny), 0.5 * area * (1.0 - (nu * nu)));
                w[Index(i, ny)] += 0.5 * area * load(ny * dy);
            }
        }

        for (int i = 0; i < nx; i++)
        {
            for (int j = 0; j < ny; j++)
            {
                double s = 1.0 / area;
                AddSquare(
                    [
                        (Index(i, j), s),
                        (Index(i + 1, j), -s),
                        (Index(i, j + 1), -s),
                        (Index(i + 1, j + 1), s),
                    ],
                    2.0 * (1.0 - nu) * area
                );
            }
        }
    }

    private (int Index, double Weight)[] SecondX(int i, int j)
    {
        double s = 1.0 / (dx * dx);
        return [(Index(i - 1, j), s), (Index(i, j), -2.0 * s), (Index(i + 1, j), s)];
    }

    private (int Index, double Weight)[] SecondY(int i, int j)
    {
        double s = 1.0 / (dy * dy);
        return [(Index(i, j - 1), s), (Index(i, j), -2.0 * s), (Index(i, j + 1), s)];
    }

    private void AddSquare((int Index, double Weight)[] row, double factor)
    {
        foreach ((int p, double a) in row)
        {
            foreach ((int q, double b) in row)
            {
                Add(p, q, factor * a * b);
            }
        }
    }

    // factor · (row · other), made symmetric.
    private void AddProduct(
        (int Index, double Weight)[] row,
        (int Index, double Weight)[] other,
        double factor
    )
    {
        foreach ((int p, double a) in row)
        {
            foreach ((int q, double b) in other)
            {
                Add(p, q, 0.5 * factor * a * b);
                Add(q, p, 0.5 * factor * a * b);
            }
        }
    }

    private void Add(int p, int q, double value)
    {
        if (p >= 0 && q >= 0 && q <= p)
        {
            matrix[p, p - q] += value;
        }
    }

    // Cholesky L Lᵀ of a banded matrix stored by rows: matrix[p, p − q] for q ≤ p.
    private void Factor()
    {
        for (int p = 0; p < w.Length; p++)
        {
            for (int q = Math.Max(0, p - band); q <= p; q++)
            {
                double sum = matrix[p, p - q];
                for (int k = Math.Max(0, p - band); k < q; k++)
                {
                    sum -= matrix[p, p - k] * matrix[q, q - k];
                }

                matrix[p, p - q] = q == p ? Math.Sqrt(sum) : sum / matrix[q, 0];
            }
        }
    }

    private void Substitute()
    {
        for (int p = 0; p < w.Length; p++)
        {
            for (int k = Math.Max(0, p - band); k < p; k++)
            {
                w[p] -= matrix[p, p - k] * w[k];
            }

            w[p] /= matrix[p, 0];
        }

        for (int p = w.Length - 1; p >= 0; p--)
        {
            w[p] /= matrix[p, 0];
            for (int k = Math.Max(0, p - band); k < p; k++)
            {
                w[k] -= matrix[p, p - k] * w[p];
            }
        }
    }
}
