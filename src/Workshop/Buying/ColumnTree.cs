namespace Litterfall.Workshop.Buying;

/// <summary>What a choice of columns must reach.</summary>
/// <param name="Least">Sums to be reached, cents.</param>
/// <param name="Fixed">
/// Deliveries and the priced sums: what is added to the priced columns for a bound.
/// </param>
internal sealed record TreeGoal(long[] Least, double Fixed);

/// <summary>
/// One column for each product, tried in the order of their priced costs: a branch ends where its bound
/// reaches the purchase in hand. Few columns need no solver.
/// </summary>
internal sealed class ColumnTree
{
    /// <summary>Branches before a solver is quicker.</summary>
    public const int FewNodes = 50_000;

    /// <summary>Branches where there is no solver: some seconds.</summary>
    public const int ManyNodes = 20_000_000;

    private const double Room = 0.01;
    private readonly (Column Column, double Priced)[][] columns;
    private readonly double[] rest;
    private readonly TreeGoal goal;
    private readonly Incumbent incumbent;
    private readonly Column[] chosen;
    private readonly long[] spent;
    private readonly int mostNodes;
    private int nodes;

    private ColumnTree(
        IReadOnlyList<List<Column>> all,
        Func<Column, double> priced,
        (TreeGoal Goal, int MostNodes) within,
        Incumbent incumbent
    )
    {
        (goal, mostNodes) = within;
        this.incumbent = incumbent;
        columns = [.. all.Select(own => own.Select(c => (c, priced(c))).OrderBy(c => c.Item2).ToArray())];
        chosen = new Column[columns.Length];
        spent = new long[goal.Least.Length];
        rest = new double[columns.Length + 1];
        for (var p = columns.Length - 1; p >= 0; p--)
        {
            rest[p] = rest[p + 1] + columns[p][0].Priced;
        }
    }

    /// <summary>Searches all choices; null when there are too many.</summary>
    /// <param name="columns">Ways to buy each product, at least one each.</param>
    /// <param name="priced">Priced cost of a column.</param>
    /// <param name="within">What must be reached, and within how many branches.</param>
    /// <param name="incumbent">Takes purchases that are found.</param>
    public static LeafResult? Search(
        IReadOnlyList<List<Column>> columns,
        Func<Column, double> priced,
        (TreeGoal Goal, int MostNodes) within,
        Incumbent incumbent
    )
    {
        var tree = new ColumnTree(columns, priced, within, incumbent);
        return tree.Branch(0, within.Goal.Fixed) ? new LeafResult(incumbent.Below, true) : null;
    }

    private bool Branch(int product, double priced)
    {
        if (product == columns.Length)
        {
            if (Enumerable.Range(0, spent.Length).All(i => spent[i] >= goal.Least[i]))
            {
                incumbent.Take([.. chosen.SelectMany(c => c.Taken)]);
            }

            return true;
        }

        foreach (var (column, cost) in columns[product])
        {
            if (priced + cost + rest[product + 1] > incumbent.Below - 1 + Room)
            {
                break;
            }

            if (++nodes > mostNodes)
            {
                return false;
            }

            chosen[product] = column;
            Add(column, 1);
            var isWhole = Branch(product + 1, priced + cost);
            Add(column, -1);
            if (!isWhole)
            {
                return false;
            }
        }

        return true;
    }

    private void Add(Column column, int sign)
    {
        for (var i = 0; i < spent.Length; i++)
        {
            spent[i] += sign * column.Spent[i];
        }
    }
}
