using Google.OrTools.Sat;

namespace Litterfall.Workshop.Buying;

/// <summary>How far a search came.</summary>
/// <param name="Bound">No purchase in these states costs less, cents.</param>
/// <param name="IsDone">True when the search went to its end.</param>
internal sealed record LeafResult(long Bound, bool IsDone);

/// <summary>
/// The cheapest purchase in given states of the suppliers, by a solver of whole numbers in cents: one worker
/// and a fixed seed, so that it finds the same each time. A product is a choice of one of its columns, or,
/// where these are too many, packs by offer and price break.
/// </summary>
internal sealed class LeafModel
{
    private const string Settings = "num_workers:1,random_seed:1,linearization_level:2";
    private readonly CpModel model = new();
    private readonly StateLeaf leaf;
    private readonly List<IntVar> variables = [];
    private readonly List<long> costs = [];
    private readonly List<(IntVar Variable, (PackOffer Offer, int Packs)[] Taken)> chosen = [];
    private readonly List<(IntVar Variable, PackOffer Offer)> counted = [];
    private readonly List<(IntVar Variable, long Cents)>[] spent;

    private LeafModel(StateLeaf leaf)
    {
        this.leaf = leaf;
        spent = [.. leaf.Least.Select(_ => new List<(IntVar, long)>())];
    }

    /// <summary>Looks for a purchase cheaper than one in hand.</summary>
    /// <param name="asked">The suppliers and products.</param>
    /// <param name="leaf">The states.</param>
    /// <param name="columns">Ways to buy each product; null where they are too many.</param>
    /// <param name="incumbent">The purchase to beat.</param>
    /// <param name="cancel">Ends the search; what was found by then counts.</param>
    public static LeafResult Solve(
        (IReadOnlyList<PurchaseSupplier> Suppliers, PackProduct[] Products) asked,
        StateLeaf leaf,
        List<Column>?[] columns,
        Incumbent incumbent,
        CancellationToken cancel
    )
    {
        var built = new LeafModel(leaf);
        for (var p = 0; p < columns.Length; p++)
        {
            if (columns[p] is { } own)
            {
                built.Choose(own);
            }
            else
            {
                built.Count(asked.Products[p], incumbent.Below);
            }
        }

        return built.Run(incumbent, cancel);
    }

    private void Choose(List<Column> columns)
    {
        var one = new List<BoolVar>();
        var bound = Enumerable.Range(0, leaf.Least.Length).Where(s => leaf.Least[s] > 0).ToArray();
        foreach (var column in columns)
        {
            var use = model.NewBoolVar("");
            one.Add(use);
            Add(use, column.Cents);
            chosen.Add((use, column.Taken));
            for (var i = 0; i < bound.Length; i++)
            {
                spent[bound[i]].Add((use, column.Spent[i]));
            }
        }

        model.AddExactlyOne(one);
    }

    private void Count(PackProduct product, long below)
    {
        var all = new List<(IntVar Variable, long Size)>();
        foreach (var offer in product.Offers.Where(o => (leaf.Suppliers >> o.Supplier & 1) == 1))
        {
            var tiers = Tiers(offer, product, below);
            all.AddRange(tiers.Select(t => (t, offer.Size)));
            if (offer.Least > 0)
            {
                model.Add(LinearExpr.Sum(tiers) >= offer.Least);
            }
        }

        var units = LinearExpr.WeightedSum(all.Select(a => a.Variable), all.Select(a => a.Size));
        model.Add(units >= product.Need);
        if (product.Most != long.MaxValue)
        {
            model.Add(units <= product.Most);
        }
    }

    /// <summary>Packs at each price; at most one price counts.</summary>
    private List<IntVar> Tiers(PackOffer offer, PackProduct product, long below)
    {
        var covers = (product.Need + offer.Size - 1) / offer.Size;
        var most = Math.Min(
            offer.Most,
            Math.Max(covers, offer.Offer.Breaks[^1].FromPacks)
                + (Math.Min(below, leaf.Least[offer.Supplier]) / Math.Max(1, offer.LowestCents))
                + 1
        );
        var tiers = new List<IntVar>();
        var reached = new List<BoolVar>();
        var breaks = offer.Offer.Breaks;
        for (var t = 0; t < breaks.Count && breaks[t].FromPacks <= most; t++)
        {
            var last = t + 1 < breaks.Count ? Math.Min(most, breaks[t + 1].FromPacks - 1) : most;
            var packs = model.NewIntVar(0, last, "");
            var isReached = model.NewBoolVar("");
            model.Add(packs >= breaks[t].FromPacks * isReached);
            model.Add(packs <= last * isReached);
            Add(packs, breaks[t].Cents);
            counted.Add((packs, offer));
            spent[offer.Supplier].Add((packs, breaks[t].Cents));
            tiers.Add(packs);
            reached.Add(isReached);
        }

        model.AddAtMostOne(reached);
        return tiers;
    }

    private void Add(IntVar variable, long cents)
    {
        variables.Add(variable);
        costs.Add(cents);
    }

    private LeafResult Run(Incumbent incumbent, CancellationToken cancel)
    {
        var below = incumbent.Below;
        for (var s = 0; s < spent.Length; s++)
        {
            if (leaf.Least[s] > 0)
            {
                var goods = LinearExpr.WeightedSum(
                    spent[s].Select(x => x.Variable),
                    spent[s].Select(x => x.Cents)
                );
                model.Add(goods >= leaf.Least[s]);
            }
        }

        var cost = LinearExpr.WeightedSum(variables, costs) + leaf.Fees;
        model.Add(cost <= below - 1);
        model.Minimize(cost);
        var solver = new CpSolver { StringParameters = Settings };
        using var registration = cancel.Register(solver.StopSearch);
        cancel.ThrowIfCancellationRequested();
        var status = solver.Solve(model);
        var isDone = status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible;
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
        {
            incumbent.Take(Taken(solver));
        }

        var bound =
            status == CpSolverStatus.Infeasible
                ? below
                : Math.Max(leaf.Bound, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6));
        return new LeafResult(bound, isDone);
    }

    private (PackOffer Offer, int Packs)[] Taken(CpSolver solver) =>
        [
            .. chosen.Where(c => solver.Value(c.Variable) == 1).SelectMany(c => c.Taken),
            .. counted.Select(c => (c.Offer, Packs: (int)solver.Value(c.Variable))).Where(c => c.Packs > 0),
        ];
}
