using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>
/// Puts all parts on given sheets by taking some away and putting them back elsewhere, again and again; worse
/// states are taken less and less often (ruin and recreate, Schrimpf et al. 2000, on trees of cuts).
/// Parts that stay over weigh more and more, so that they find their place.
/// </summary>
internal sealed class RebuildSearch
{
    private const double WarmShare = 0.25;
    private const double ColdShare = 0.002;

    private readonly ImmutableArray<GridPart> parts;
    private readonly Random random;
    private readonly SheetTrees trees;
    private readonly SheetTrees kept;
    private readonly SheetTrees bestTrees;
    private readonly double[] weights;
    private readonly List<int> leaves = [];
    private readonly List<int> group = [];
    private readonly List<int> over = [];
    private readonly List<int> keptOver = [];
    private readonly List<int> bestOver = [];
    private readonly List<int> refused = [];
    private readonly double meanArea;
    private double cost;

    /// <summary>A search over given sheets.</summary>
    /// <param name="parts">Kinds of parts.</param>
    /// <param name="wanted">Parts to place, by kind.</param>
    /// <param name="sheets">The sheets, one each.</param>
    /// <param name="rules">What cuts there may be.</param>
    /// <param name="seed">Seed of its random numbers.</param>
    public RebuildSearch(
        ImmutableArray<GridPart> parts,
        IReadOnlyList<int> wanted,
        GridSheet[] sheets,
        CutRules rules,
        int seed
    )
    {
        this.parts = parts;
        random = new(seed);
        trees = new(parts, sheets, wanted.Count, rules);
        kept = new(parts, sheets, wanted.Count, rules);
        bestTrees = new(parts, sheets, wanted.Count, rules);
        weights = [.. parts.Select(p => p.Value)];
        over.AddRange(wanted.OrderByDescending(p => parts[p].Area));
        meanArea = wanted.Count == 0 ? 1 : wanted.Average(p => parts[p].Value);
        PutBack(false);
        Keep();
        KeepBest();
    }

    /// <summary>Parts over in the best state, by kind.</summary>
    public IReadOnlyList<int> Over => bestOver;

    /// <summary>Value of the parts over in the best state.</summary>
    public double BestOver { get; private set; }

    /// <summary>Cuts of a sheet in the best state; null for an empty one.</summary>
    public CutNode? Tree(int sheet) => bestTrees.Tree(sheet);

    /// <summary>Works on.</summary>
    /// <param name="turns">How often something is taken away.</param>
    /// <param name="from">Share of the search that is over at the start.</param>
    /// <param name="to">And at the end.</param>
    /// <param name="cancel">Ends it early.</param>
    /// <returns>True where all parts have a place.</returns>
    public bool Run(int turns, double from, double to, CancellationToken cancel)
    {
        for (var turn = 0; turn < turns && bestOver.Count > 0; turn++)
        {
            if ((turn & 63) == 0 && cancel.IsCancellationRequested)
            {
                return false;
            }

            var share = from + (to - from) * turn / turns;
            var heat = meanArea * WarmShare * Math.Pow(ColdShare / WarmShare, share);
            TakeAway();
            PutBack(true);
            var now = Cost();
            if (now < cost || random.NextDouble() < Math.Exp((cost - now) / heat))
            {
                Keep();
                if (Plain() < BestOver)
                {
                    KeepBest();
                }
            }
            else
            {
                GoBack();
            }

            if ((turn & 15) == 0)
            {
                Weigh();
            }
        }

        return bestOver.Count == 0;
    }

    private double Cost()
    {
        var sum = 0.0;
        foreach (var part in over)
        {
            sum += weights[part];
        }

        return sum;
    }

    private double Plain() => over.Sum(p => parts[p].Value);

    private void Weigh()
    {
        foreach (var part in over)
        {
            weights[part] += parts[part].Value * 0.01;
        }

        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] += (parts[i].Value - weights[i]) * 0.002;
        }

        cost = Cost();
    }

    private void TakeAway()
    {
        trees.Leaves(leaves);
        if (leaves.Count == 0)
        {
            return;
        }

        var rounds = 1 + random.Next(3);
        for (var round = 0; round < rounds && leaves.Count > 0; round++)
        {
            group.Clear();
            var node = leaves[random.Next(leaves.Count)];
            var climbs = random.Next(4);
            while (climbs-- > 0 && trees.Parent(node) >= 0)
            {
                node = trees.Parent(node);
            }

            trees.LeavesUnder(node, group);
            var most = 3 + random.Next(10);
            while (group.Count > most)
            {
                group.RemoveAt(random.Next(group.Count));
            }

            foreach (var leaf in group)
            {
                over.Add(trees.PartAt(leaf));
                trees.Remove(leaf);
                leaves.Remove(leaf);
            }
        }
    }

    private void PutBack(bool isJittered)
    {
        if (isJittered)
        {
            Sort();
        }

        refused.Clear();
        foreach (var part in over)
        {
            trees.MeasureRoom();
            var spot = trees.Best(part, isJittered ? random : null);
            if (spot.Sheet < 0 || !trees.Put(part, spot))
            {
                refused.Add(part);
            }
        }

        over.Clear();
        over.AddRange(refused);
    }

    private void Sort()
    {
        var way = random.Next(6);
        for (var i = over.Count - 1; i > 0; i--)
        {
            var j = random.Next(i + 1);
            (over[i], over[j]) = (over[j], over[i]);
        }

        if (way == 0)
        {
            return;
        }

        over.Sort(
            (a, b) =>
                way switch
                {
                    1 => parts[b].Length.CompareTo(parts[a].Length),
                    2 => parts[b].Width.CompareTo(parts[a].Width),
                    3 => Math.Max(parts[b].Length, parts[b].Width)
                        .CompareTo(Math.Max(parts[a].Length, parts[a].Width)),
                    _ => parts[b].Area.CompareTo(parts[a].Area),
                }
        );
    }

    private void Keep()
    {
        kept.CopyFrom(trees);
        keptOver.Clear();
        keptOver.AddRange(over);
        cost = Cost();
    }

    private void GoBack()
    {
        trees.CopyFrom(kept);
        over.Clear();
        over.AddRange(keptOver);
    }

    private void KeepBest()
    {
        bestTrees.CopyFrom(trees);
        bestOver.Clear();
        bestOver.AddRange(over);
        BestOver = Plain();
    }
}
