using System.Collections.Immutable;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>
/// Patterns and the bound that they prove: columns are made where a price says that they are wanted (Gilmore
/// and Gomory 1965), and at each step the prices give a bound (Farley 1990).
/// </summary>
internal sealed class PatternPool
{
    private const double MostWork = 4e9;
    private const int FewSheets = 8;
    private const int FewestFills = 12;

    /// <summary>Work of a search that no time ends; a fill takes its table's size times an edge.</summary>
    private const double UsualWork = 3e10;

    private readonly ImmutableArray<GridPart> parts;
    private readonly ImmutableArray<GridSheet> sheets;
    private readonly int[] demand;
    private readonly ValueTable? table;
    private readonly List<CutPattern> patterns = [];
    private readonly HashSet<string> known = [];
    private CoverProgram? program;
    private int rows;
    private int[] rowOfSheet = [];

    /// <summary>A pool for parts that are wanted so often.</summary>
    /// <param name="parts">Kinds of parts.</param>
    /// <param name="sheets">Kinds of sheets.</param>
    /// <param name="demand">How many of each part.</param>
    public PatternPool(ImmutableArray<GridPart> parts, ImmutableArray<GridSheet> sheets, int[] demand)
    {
        this.parts = parts;
        this.sheets = sheets;
        this.demand = demand;
        var (length, width) = (sheets.Max(s => s.Length), sheets.Max(s => s.Width));
        var limited = parts.Select((p, i) => p with { Count = demand[i] }).ToImmutableArray();
        var (alongX, alongY) = (
            CutPoints.Along(limited, length, true),
            CutPoints.Along(limited, width, false)
        );
        var work = (double)alongX.Count * alongY.Count * Math.Min(alongX.Count, alongY.Count);
        table = work > MostWork ? null : new(limited, alongX, alongY);
        UsualFills = (int)Math.Clamp(UsualWork / work, FewestFills, MostFills);
    }

    /// <summary>Most times that the table is filled where time ends the search.</summary>
    public const int MostFills = 5000;

    /// <summary>Most times that the table is filled where no time ends the search.</summary>
    public int UsualFills { get; }

    /// <summary>All patterns.</summary>
    public IReadOnlyList<CutPattern> Patterns => patterns;

    /// <summary>No plan costs less.</summary>
    public double Bound { get; private set; }

    /// <summary>Cost when parts of sheets could be cut; at least the bound.</summary>
    public double Cost => program?.Cost ?? double.MaxValue;

    /// <summary>Patterns of the best mixture, with how often each is used.</summary>
    public IEnumerable<(CutPattern Pattern, double Amount)> Used =>
        program?.Used.Where(u => u.Column.Pattern is not null).Select(u => (u.Column.Pattern!, u.Amount))
        ?? [];

    /// <summary>Adds a pattern that was found elsewhere.</summary>
    public void Add(CutPattern pattern)
    {
        if (known.Add($"{pattern.Sheet}:{string.Join(',', pattern.Counts)}"))
        {
            patterns.Add(pattern);
        }
    }

    /// <summary>Makes patterns until none is wanted, or the bound is as good as it gets.</summary>
    /// <param name="isCounted">True where the cost is a number of sheets: bounds are rounded up.</param>
    /// <param name="fills">Most times that the table is filled.</param>
    /// <param name="cancel">Ends it early with the bound so far.</param>
    public void Grow(bool isCounted, int fills, CancellationToken cancel)
    {
        if (table is null)
        {
            return;
        }

        program ??= Start();
        var values = new double[parts.Length];
        try
        {
            for (var fill = 0; fill < fills; fill++)
            {
                for (var own = 0; own < MostFills && EnterOwn(); own++)
                {
                    // What parts and sheets give beside patterns comes first: it needs no table.
                }

                program.Prices.AsSpan(0, parts.Length).CopyTo(values);
                table.Fill(values, cancel);
                Prove();
                var isClosed = isCounted
                    ? Math.Ceiling(Bound - 1e-6) >= Math.Ceiling(program.Cost - 1e-6)
                    : Bound >= program.Cost * (1 - 1e-7);
                if (isClosed || !EnterPriced(values))
                {
                    return;
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The bound and the patterns so far hold.
        }
    }

    /// <summary>More patterns, from prices that are somewhat off.</summary>
    /// <param name="turns">How often.</param>
    /// <param name="seed">Seed of the random numbers.</param>
    /// <param name="cancel">Ends it early.</param>
    public void Enrich(int turns, int seed, CancellationToken cancel)
    {
        if (table is null || program is null)
        {
            return;
        }

        var random = new Random(seed);
        var values = new double[parts.Length];
        try
        {
            for (var turn = 0; turn < turns; turn++)
            {
                for (var i = 0; i < values.Length; i++)
                {
                    values[i] = Math.Max(0, program.Prices[i]) * (0.85 + 0.3 * random.NextDouble());
                }

                table.Fill(values, cancel);
                for (var s = 0; s < sheets.Length; s++)
                {
                    Add(s, values);
                }
            }
        }
        catch (OperationCanceledException)
        {
            // Enough.
        }
    }

    private CutPattern? Add(int sheet, double[] values)
    {
        var (x, y) = (table!.AlongX.Below(sheets[sheet].Length), table.AlongY.Below(sheets[sheet].Width));
        if (table.Cuts(values, x, y) is not { } tree)
        {
            return null;
        }

        var pattern = CutPattern.From(parts, sheet, tree, sheets[sheet].Cost);
        Add(pattern);
        return pattern;
    }

    /// <summary>What rows give and take beside patterns: parts left over, sheets not used.</summary>
    private bool EnterOwn()
    {
        for (var i = 0; i < program!.Prices.Length; i++)
        {
            var column = Alone(i, i < parts.Length ? -1 : 1, 0);
            if (program.Reduced(column) < -1e-9 && program.Enter(column))
            {
                return true;
            }
        }

        return false;
    }

    private bool EnterPriced(double[] values)
    {
        var isEntered = false;
        foreach (var s in Promising())
        {
            if (Add(s, values) is { } pattern && Column(pattern) is var column)
            {
                isEntered |= program!.Reduced(column) < -1e-9 && program.Enter(column);
            }
        }

        return isEntered;
    }

    /// <summary>Sheets to look at: all of a few, the best of the many lengths of a roll.</summary>
    private IEnumerable<int> Promising() =>
        sheets.Length <= FewSheets
            ? Enumerable.Range(0, sheets.Length)
            : Enumerable
                .Range(0, sheets.Length)
                .OrderByDescending(s => Worth(s) / sheets[s].Cost)
                .Take(FewSheets);

    /// <summary>
    /// Bound of the prices: scaled down until no unlimited sheet would be used for less than nothing.
    /// </summary>
    private void Prove()
    {
        var prices = program!.Prices;
        var scale = 1.0;
        for (var s = 0; s < sheets.Length; s++)
        {
            if (sheets[s].Count == GridSheet.Unlimited && Worth(s) > sheets[s].Cost)
            {
                scale = Math.Min(scale, sheets[s].Cost / Worth(s));
            }
        }

        var bound = 0.0;
        for (var i = 0; i < parts.Length; i++)
        {
            bound += Math.Max(0, prices[i]) * scale * demand[i];
        }

        for (var s = 0; s < sheets.Length; s++)
        {
            if (sheets[s].Count != GridSheet.Unlimited)
            {
                bound += sheets[s].Count * Math.Min(0, sheets[s].Cost - scale * Worth(s));
            }
        }

        Bound = Math.Max(Bound, bound);
    }

    private double Worth(int sheet) => table!.Of(sheets[sheet].Length, sheets[sheet].Width);

    private CoverProgram Start()
    {
        var limited = Enumerable
            .Range(0, sheets.Length)
            .Where(s => sheets[s].Count != GridSheet.Unlimited)
            .ToArray();
        var needs = demand
            .Select(d => (double)d)
            .Concat(limited.Select(s => (double)sheets[s].Count))
            .ToArray();
        rowOfSheet = [.. sheets.Select((_, s) => Array.IndexOf(limited, s))];
        rows = needs.Length;
        var dear = 1000 * sheets.Max(s => s.Cost);
        var start = new CoverProgram.Column[rows];
        for (var i = 0; i < rows; i++)
        {
            start[i] = i < parts.Length ? Alone(i, 1, dear) : Alone(i, 1, 0);
        }

        return new(needs, start);
    }

    private CoverProgram.Column Alone(int row, double amount, double cost)
    {
        var column = new double[rows];
        column[row] = amount;
        return new(cost, column, null);
    }

    private CoverProgram.Column Column(CutPattern pattern)
    {
        var column = new double[rows];
        for (var i = 0; i < parts.Length; i++)
        {
            column[i] = pattern.Counts[i];
        }

        if (rowOfSheet[pattern.Sheet] is >= 0 and var row)
        {
            column[parts.Length + row] = 1;
        }

        return new(pattern.Cost, column, pattern);
    }
}
