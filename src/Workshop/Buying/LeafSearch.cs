namespace Litterfall.Workshop.Buying;

/// <summary>
/// The cheapest purchase in given states where sums must be reached. A price is set on each cent that is
/// missing and raised while that helps (Lagrangian relaxation; Fisher 1981, recalled): every price gives a
/// bound, and every answer to a price is a way to buy that may be mended into a purchase. What the bound
/// cannot rule out goes to the solver.
/// </summary>
internal sealed class LeafSearch
{
    private const int MostRounds = 16;
    private const int Steps = 18;
    private const int MostClimbs = 120;
    private const int Narrowings = 5;
    private const double MostPrice = 0.98;
    private const double Room = 0.01;
    private readonly (IReadOnlyList<PurchaseSupplier> Suppliers, PackProduct[] Products) asked;
    private readonly StateLeaf leaf;
    private readonly Incumbent incumbent;
    private readonly int[] bound;
    private readonly List<Column>[] pool;
    private double[] prices;
    private double[] best;
    private double value = double.NegativeInfinity;
    private double[] least = [];

    private LeafSearch(
        (IReadOnlyList<PurchaseSupplier> Suppliers, PackProduct[] Products) asked,
        StateLeaf leaf,
        Incumbent incumbent
    )
    {
        this.asked = asked;
        this.leaf = leaf;
        this.incumbent = incumbent;
        bound = [.. Enumerable.Range(0, leaf.Least.Length).Where(s => leaf.Least[s] > 0)];
        prices = new double[bound.Length];
        best = prices;
        pool = [.. asked.Products.Select((p, i) => Seeds(p, leaf.Covers[i]))];
    }

    /// <summary>Searches the states; purchases that are found go to the incumbent.</summary>
    /// <param name="asked">The suppliers and products.</param>
    /// <param name="leaf">The states.</param>
    /// <param name="incumbent">The purchase to beat.</param>
    /// <param name="cancel">Ends the search.</param>
    /// <returns>The bound of the states, and whether they were searched to the end.</returns>
    public static LeafResult Run(
        (IReadOnlyList<PurchaseSupplier> Suppliers, PackProduct[] Products) asked,
        StateLeaf leaf,
        Incumbent incumbent,
        CancellationToken cancel
    ) => new LeafSearch(asked, leaf, incumbent).Run(cancel);

    private LeafResult Run(CancellationToken cancel)
    {
        for (var round = 0; round < MostRounds; round++)
        {
            cancel.ThrowIfCancellationRequested();
            var hoped = round == 0 ? double.PositiveInfinity : Raise();
            var found = PriceOut();
            if (found > value)
            {
                (value, best) = (found, prices);
            }

            incumbent.Take(Mended());
            if (value > incumbent.Below - 1 + Room)
            {
                return new LeafResult(incumbent.Below, true);
            }

            if (hoped - value < 0.5)
            {
                break;
            }
        }

        return Finish(cancel);
    }

    /// <summary>
    /// Solves what is left. Where the ways to buy are too many, those nearest to the bound are tried first: a
    /// cheaper purchase among them leaves fewer.
    /// </summary>
    private LeafResult Finish(CancellationToken cancel)
    {
        prices = best;
        _ = PriceOut();
        for (var part = 1.0; ; part /= 4.0)
        {
            var below = incumbent.Below;
            var room = (below - 1 - value) * part + Room;
            var columns = Columns(room);
            if (columns.Any(c => c is { Count: 0 }))
            {
                return new LeafResult(incumbent.Below, true);
            }

            var isListed = columns.All(c => c is not null);
            if (isListed || part < Math.Pow(4.0, -Narrowings))
            {
                var result = Solve(isListed ? columns : Columns(below - 1 - value + Room), cancel);
                if (part == 1.0 || !isListed || !result.IsDone)
                {
                    return result with { IsDone = result.IsDone && (part == 1.0 || !isListed) };
                }

                if (incumbent.Below == below)
                {
                    return Solve(Columns(below - 1 - value + Room), cancel);
                }

                part = 4.0;
            }
        }
    }

    private List<Column>?[] Columns(double room)
    {
        var weights = Weights();
        return [.. asked.Products.Select((p, i) => LeafColumns.Find(p, leaf, weights, least[i] + room))];
    }

    private LeafResult Solve(List<Column>?[] columns, CancellationToken cancel)
    {
        if (Tree(columns, ColumnTree.FewNodes) is { } result)
        {
            return result;
        }

        try
        {
            return LeafModel.Solve(asked, leaf, columns, incumbent, cancel);
        }
        catch (Exception e) when (IsWithoutSolver(e))
        {
            // One file for practitioners has no room for the solver: more of the tree is tried instead.
            return Tree(columns, ColumnTree.ManyNodes) ?? new LeafResult(leaf.Bound, false);
        }
    }

    private LeafResult? Tree(List<Column>?[] columns, int mostNodes) =>
        columns.All(c => c is not null)
            ? ColumnTree.Search(columns!, Priced, (TreeGoal(), mostNodes), incumbent)
            : null;

    private static bool IsWithoutSolver(Exception fault) =>
        (fault as TypeInitializationException)?.InnerException is DllNotFoundException
        || fault is DllNotFoundException or System.IO.FileNotFoundException;

    private TreeGoal TreeGoal() => new([.. bound.Select(s => leaf.Least[s])], Fixed());

    private List<Column> Seeds(PackProduct product, Cover cheapest)
    {
        List<Column> seeds = [Told(cheapest)];
        foreach (var s in bound)
        {
            if (ProductCover.Find(product, 1 << s) is { } own)
            {
                seeds.Add(Told(own));
            }
        }

        return seeds;
    }

    private Column Told(Cover cover)
    {
        var spent = new long[bound.Length];
        foreach (var (offer, packs) in cover.Taken)
        {
            var place = Array.IndexOf(bound, offer.Supplier);
            if (place >= 0)
            {
                spent[place] += offer.Offer.Cents(packs)!.Value;
            }
        }

        return new Column(cover.Cents, spent, cover.Taken);
    }

    private double[] Weights()
    {
        var weights = new double[leaf.Least.Length];
        Array.Fill(weights, 1.0);
        for (var i = 0; i < bound.Length; i++)
        {
            weights[bound[i]] -= prices[i];
        }

        return weights;
    }

    /// <summary>The bound at the prices; the answers join the pool.</summary>
    private double PriceOut()
    {
        var weights = Weights();
        var sum = Fixed();
        least = new double[pool.Length];
        for (var p = 0; p < pool.Length; p++)
        {
            var column = Told(ProductCover.Find(asked.Products[p], leaf.Suppliers, weights)!);
            least[p] = Priced(column);
            sum += least[p];
            if (!pool[p].Exists(c => c.Cents == column.Cents && c.Spent.AsSpan().SequenceEqual(column.Spent)))
            {
                pool[p].Add(column);
            }
        }

        return sum;
    }

    private double Fixed()
    {
        var sum = (double)leaf.Fees;
        for (var i = 0; i < bound.Length; i++)
        {
            sum += prices[i] * leaf.Least[bound[i]];
        }

        return sum;
    }

    /// <summary>
    /// Moves the prices most of the way from the best so far to the best by the pool; the value by the pool
    /// is what may still be hoped for. First along the sums that are missing, by steps as long as the gap to
    /// the purchase in hand asks (Polyak 1969, recalled), then one price after the other: that alone would
    /// rest where only a rise of several together helps.
    /// </summary>
    private double Raise()
    {
        prices = [.. best];
        Climb();
        for (var round = 0; round < 2; round++)
        {
            for (var i = 0; i < prices.Length; i++)
            {
                RaiseOne(i);
            }
        }

        var hoped = ByPool();
        for (var i = 0; i < prices.Length; i++)
        {
            prices[i] = (0.3 * best[i]) + (0.7 * prices[i]);
        }

        return hoped;
    }

    private void Climb()
    {
        var (highest, top) = (double.NegativeInfinity, prices);
        var (stride, idle) = (1.0, 0);
        for (var step = 0; step < MostClimbs && stride > 1e-3; step++)
        {
            var here = ByPool();
            if (here > highest + 1e-6)
            {
                (highest, top, idle) = (here, prices, 0);
            }
            else if (++idle > 5)
            {
                (stride, idle, prices) = (stride / 2.0, 0, top);
            }

            var missing = Missing();
            var size = missing.Sum(m => m * m);
            if (size == 0.0)
            {
                break;
            }

            var length = stride * Math.Max(1.0, incumbent.Below - here) / size;
            prices = [.. prices.Select((p, i) => Math.Clamp(p + (length * missing[i]), 0.0, MostPrice))];
        }

        prices = [.. top];
    }

    /// <summary>By how much the cheapest of the pool at the prices miss each sum, cents.</summary>
    private double[] Missing()
    {
        var missing = bound.Select(s => (double)leaf.Least[s]).ToArray();
        foreach (var all in pool)
        {
            var cheapest = all.MinBy(Priced)!;
            for (var i = 0; i < missing.Length; i++)
            {
                missing[i] -= cheapest.Spent[i];
            }
        }

        return missing;
    }

    private void RaiseOne(int i)
    {
        var (low, high) = (0.0, MostPrice);
        for (var step = 0; step < Steps; step++)
        {
            var third = (high - low) / 3.0;
            if (At(i, low + third) < At(i, high - third))
            {
                low += third;
            }
            else
            {
                high -= third;
            }
        }

        prices[i] = 0.5 * (low + high);
    }

    private double At(int i, double price)
    {
        prices[i] = price;
        return ByPool();
    }

    private double ByPool()
    {
        var sum = Fixed();
        foreach (var all in pool)
        {
            var cheapest = double.PositiveInfinity;
            foreach (var column in all)
            {
                cheapest = Math.Min(cheapest, Priced(column));
            }

            sum += cheapest;
        }

        return sum;
    }

    private double Priced(Column column)
    {
        var cost = (double)column.Cents;
        for (var i = 0; i < prices.Length; i++)
        {
            cost -= prices[i] * column.Spent[i];
        }

        return cost;
    }

    /// <summary>
    /// The answers to the prices, then one product after the other bought otherwise where that brings the
    /// missing sums for the least, then packs on top.
    /// </summary>
    private (PackOffer, int)[] Mended()
    {
        var taken = pool.Select(all => all.MinBy(Priced)!).ToArray();
        var missing = bound.Select((s, i) => leaf.Least[s] - taken.Sum(c => c.Spent[i])).ToArray();
        while (missing.Any(m => m > 0))
        {
            var (product, column, rate) = (-1, taken[0], double.PositiveInfinity);
            for (var p = 0; p < pool.Length; p++)
            {
                foreach (var other in pool[p])
                {
                    var won = Won(missing, taken[p], other);
                    var dear = (other.Cents - taken[p].Cents + 0.01) / won;
                    if (won > 0 && dear < rate)
                    {
                        (product, column, rate) = (p, other, dear);
                    }
                }
            }

            if (product < 0)
            {
                break;
            }

            for (var i = 0; i < missing.Length; i++)
            {
                missing[i] += taken[product].Spent[i] - column.Spent[i];
            }

            taken[product] = column;
        }

        return TopUp.Fill(asked, leaf, [.. taken.SelectMany(c => c.Taken)]);
    }

    /// <summary>By how much a change lowers what is missing in all.</summary>
    private static double Won(long[] missing, Column from, Column to)
    {
        var won = 0L;
        for (var i = 0; i < missing.Length; i++)
        {
            var after = missing[i] + from.Spent[i] - to.Spent[i];
            won += Math.Max(0, missing[i]) - Math.Max(0, after);
        }

        return won;
    }
}
