namespace Litterfall.Physics.Numerics;

/// <summary>Solution of small dense linear systems.</summary>
public static class DenseSolve
{
    /// <summary>
    /// Solves A·x = r in place by Gaussian elimination with partial pivoting (Golub and Van Loan,
    /// Matrix Computations, algorithm 3.4.1; recalled). For systems of a few unknowns.
    /// </summary>
    /// <param name="matrix">A, row after row, n × n values; destroyed.</param>
    /// <param name="right">r on entry, x on return; n values.</param>
    /// <returns>False when a pivot is zero or not finite, that is, the system has no single
    /// solution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sizes do not belong together.</exception>
    public static bool TrySolve(Span<double> matrix, Span<double> right)
    {
        int n = right.Length;
        if (matrix.Length != n * n)
        {
            throw new ArgumentOutOfRangeException(nameof(matrix), "Must hold n × n values.");
        }

        for (int column = 0; column < n; column++)
        {
            BringLargestUp(matrix, right, column);
            double pivot = matrix[(column * n) + column];
            if (pivot == 0.0 || !double.IsFinite(pivot))
            {
                return false;
            }

            Eliminate(matrix, right, column);
        }

        SubstituteBack(matrix, right);
        return true;
    }

    private static void BringLargestUp(Span<double> matrix, Span<double> right, int column)
    {
        int n = right.Length;
        int best = column;
        for (int row = column + 1; row < n; row++)
        {
            if (Math.Abs(matrix[(row * n) + column]) > Math.Abs(matrix[(best * n) + column]))
            {
                best = row;
            }
        }

        if (best == column)
        {
            return;
        }

        for (int k = column; k < n; k++)
        {
            (matrix[(column * n) + k], matrix[(best * n) + k]) = (
                matrix[(best * n) + k],
                matrix[(column * n) + k]
            );
        }

        (right[column], right[best]) = (right[best], right[column]);
    }

    private static void Eliminate(Span<double> matrix, Span<double> right, int column)
    {
        int n = right.Length;
        for (int row = column + 1; row < n; row++)
        {
            double factor = matrix[(row * n) + column] / matrix[(column * n) + column];
            for (int k = column + 1; k < n; k++)
            {
                matrix[(row * n) + k] -= factor * matrix[(column * n) + k];
            }

            right[row] -= factor * right[column];
        }
    }

    private static void SubstituteBack(ReadOnlySpan<double> matrix, Span<double> right)
    {
        int n = right.Length;
        for (int row = n - 1; row >= 0; row--)
        {
            double sum = right[row];
            for (int k = row + 1; k < n; k++)
            {
                sum -= matrix[(row * n) + k] * right[k];
            }

            right[row] = sum / matrix[(row * n) + row];
        }
    }
}
