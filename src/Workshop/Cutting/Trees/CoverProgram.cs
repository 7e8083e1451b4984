namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>
/// A linear program that grows by columns: least cost of patterns so that every row has at least, or at most,
/// what it asks. The revised simplex method with the inverse of the basis kept and made anew now and then
/// (Dantzig and Orchard-Hays 1954).
/// </summary>
internal sealed class CoverProgram
{
    private const double Tiny = 1e-9;
    private const int Renewal = 60;

    private readonly int rows;
    private readonly double[] needs;
    private readonly double[][] inverse;
    private readonly double[] amounts;
    private readonly Column[] basis;
    private int pivots;

    /// <summary>A program whose start is one column for each row.</summary>
    /// <param name="needs">What each row asks.</param>
    /// <param name="start">Columns, each in its own row alone.</param>
    public CoverProgram(double[] needs, Column[] start)
    {
        rows = needs.Length;
        this.needs = needs;
        basis = start;
        amounts = new double[rows];
        inverse = new double[rows][];
        for (var i = 0; i < rows; i++)
        {
            inverse[i] = new double[rows];
        }

        Renew();
        Price();
    }

    /// <summary>A column.</summary>
    /// <param name="Cost">Cost of one.</param>
    /// <param name="Rows">What one gives to each row.</param>
    /// <param name="Pattern">The pattern; null for what is given or left over.</param>
    public sealed record Column(double Cost, double[] Rows, CutPattern? Pattern);

    /// <summary>Price of each row.</summary>
    public double[] Prices { get; private set; } = [];

    /// <summary>Least cost so far.</summary>
    public double Cost
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < rows; i++)
            {
                sum += basis[i].Cost * amounts[i];
            }

            return sum;
        }
    }

    /// <summary>Columns that are used and how much of each.</summary>
    public IEnumerable<(Column Column, double Amount)> Used =>
        basis.Select((column, i) => (column, amounts[i])).Where(u => u.Item2 > Tiny);

    /// <summary>Cost of a column less what its rows are worth.</summary>
    public double Reduced(Column column)
    {
        var sum = column.Cost;
        for (var i = 0; i < rows; i++)
        {
            sum -= Prices[i] * column.Rows[i];
        }

        return sum;
    }

    /// <summary>Takes a column in; false where it changes nothing.</summary>
    public bool Enter(Column column)
    {
        var direction = new double[rows];
        for (var i = 0; i < rows; i++)
        {
            direction[i] = Times(inverse[i], column.Rows);
        }

        var leaving = -1;
        var ratio = double.MaxValue;
        for (var i = 0; i < rows; i++)
        {
            if (direction[i] <= 1e-7)
            {
                continue;
            }

            var own = Math.Max(0, amounts[i]) / direction[i];
            if (
                own < ratio - Tiny
                || (own < ratio + Tiny && leaving >= 0 && direction[i] > direction[leaving])
            )
            {
                (leaving, ratio) = (i, own);
            }
        }

        if (leaving < 0)
        {
            return false;
        }

        Pivot(column, direction, leaving);
        Price();
        return true;
    }

    private void Pivot(Column column, double[] direction, int leaving)
    {
        basis[leaving] = column;
        if (++pivots % Renewal == 0 && Renew())
        {
            return;
        }

        var row = inverse[leaving];
        var scale = 1 / direction[leaving];
        for (var j = 0; j < rows; j++)
        {
            row[j] *= scale;
        }

        amounts[leaving] *= scale;
        for (var i = 0; i < rows; i++)
        {
            if (i == leaving || direction[i] == 0)
            {
                continue;
            }

            var factor = direction[i];
            var other = inverse[i];
            for (var j = 0; j < rows; j++)
            {
                other[j] -= factor * row[j];
            }

            amounts[i] -= factor * amounts[leaving];
        }
    }

    /// <summary>
    /// Makes the inverse anew from the basis; false where it cannot be told from a singular one.
    /// </summary>
    private bool Renew()
    {
        var left = new double[rows][];
        var right = new double[rows][];
        for (var i = 0; i < rows; i++)
        {
            left[i] = [.. basis.Select(c => c.Rows[i])];
            right[i] = new double[rows];
            right[i][i] = 1;
        }

        for (var k = 0; k < rows; k++)
        {
            var best = k;
            for (var i = k + 1; i < rows; i++)
            {
                best = Math.Abs(left[i][k]) > Math.Abs(left[best][k]) ? i : best;
            }

            if (Math.Abs(left[best][k]) < 1e-11)
            {
                return false;
            }

            (left[k], left[best]) = (left[best], left[k]);
            (right[k], right[best]) = (right[best], right[k]);
            Eliminate(left, right, k);
        }

        for (var i = 0; i < rows; i++)
        {
            inverse[i] = right[i];
            amounts[i] = Times(right[i], needs);
        }

        return true;
    }

    private void Eliminate(double[][] left, double[][] right, int k)
    {
        var scale = 1 / left[k][k];
        for (var j = 0; j < rows; j++)
        {
            left[k][j] *= scale;
            right[k][j] *= scale;
        }

        for (var i = 0; i < rows; i++)
        {
            var factor = left[i][k];
            if (i == k || factor == 0)
            {
                continue;
            }

            for (var j = 0; j < rows; j++)
            {
                left[i][j] -= factor * left[k][j];
                right[i][j] -= factor * right[k][j];
            }
        }
    }

    private void Price()
    {
        var prices = new double[rows];
        for (var i = 0; i < rows; i++)
        {
            var cost = basis[i].Cost;
            if (cost == 0)
            {
                continue;
            }

            for (var j = 0; j < rows; j++)
            {
                prices[j] += cost * inverse[i][j];
            }
        }

        Prices = prices;
    }

    private static double Times(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
