using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Tracing;

/// <summary>So much of one lot went into another.</summary>
/// <param name="From">The lot used.</param>
/// <param name="To">The lot, kit or shipment it went into.</param>
/// <param name="Amount">How much, in the unit of the lot used; null where it is not counted.</param>
public sealed record LotUse(string From, string To, double? Amount);

/// <summary>What came of one lot, in its own unit; null where an amount is not known.</summary>
/// <param name="In">Put in.</param>
/// <param name="Made">Measured when it was made.</param>
/// <param name="Used">Taken out of it.</param>
/// <param name="Left">Made less used.</param>
/// <param name="ShrinkPercent">What making it lost, percent of what was put in; negative for a gain.</param>
public sealed record LotBalance(double? In, double? Made, double? Used, double? Left, double? ShrinkPercent);

/// <summary>
/// Which lot went into which, as a graph without cycles. Every question takes time in proportion to the
/// movements.
/// </summary>
public sealed class LotGraph
{
    private readonly Dictionary<string, int> numbers;
    private readonly string[] names;
    private readonly IReadOnlyList<LotUse> uses;
    private readonly int[] from;
    private readonly int[] to;
    private readonly int[][] next;
    private readonly int[][] before;

    private LotGraph(IReadOnlyList<LotUse> uses)
    {
        this.uses = uses;
        names =
        [
            .. uses.SelectMany(u => new[] { u.From, u.To })
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
        numbers = new(names.Length, StringComparer.Ordinal);
        for (var i = 0; i < names.Length; i++)
        {
            numbers.Add(names[i], i);
        }

        from = [.. uses.Select(u => numbers[u.From])];
        to = [.. uses.Select(u => numbers[u.To])];
        next = Grouped(from);
        before = Grouped(to);
        Cycle = FindCycle();
    }

    /// <summary>All lots, in ordinal order.</summary>
    public IReadOnlyList<string> Lots => names;

    /// <summary>
    /// Lots that went into each other in a ring, the first named again at the end; else empty.
    /// </summary>
    public Seq<string> Cycle { get; }

    /// <summary>The graph of some movements; look at <see cref="Cycle"/> before asking it.</summary>
    /// <param name="uses">The movements; several of one pair of lots add up.</param>
    public static LotGraph From(IReadOnlyList<LotUse> uses) => new(uses);

    /// <summary>True when a lot is in some movement.</summary>
    /// <param name="lot">Its number.</param>
    public bool Holds(string lot) => numbers.ContainsKey(lot);

    /// <summary>All that a lot went into, directly or further on, in ordinal order; not itself.</summary>
    /// <param name="lot">A lot of the graph.</param>
    public Seq<string> Forward(string lot) => Closure(lot, next, to);

    /// <summary>All that went into a lot, directly or further back, in ordinal order; not itself.</summary>
    /// <param name="lot">A lot of the graph.</param>
    public Seq<string> Backward(string lot) => Closure(lot, before, from);

    /// <summary>What went into a lot and out of it.</summary>
    /// <param name="lot">A lot of the graph.</param>
    /// <param name="made">What was measured when it was made; null for not measured.</param>
    public LotBalance Balance(string lot, double? made)
    {
        var number = numbers[lot];
        var put = Sum(before[number]);
        var used = Sum(next[number]);
        return new LotBalance(put, made, used, made - used, put > 0.0 ? 100.0 * (put - made) / put : null);
    }

    private double? Sum(int[] movements)
    {
        var sum = 0.0;
        foreach (var i in movements)
        {
            if (uses[i].Amount is not { } amount)
            {
                return null;
            }

            sum += amount;
        }

        return sum;
    }

    private Seq<string> Closure(string lot, int[][] movements, int[] ends)
    {
        var seen = new bool[names.Length];
        var open = new Stack<int>();
        open.Push(numbers[lot]);
        while (open.TryPop(out var at))
        {
            foreach (var i in movements[at])
            {
                var other = ends[i];
                if (!seen[other])
                {
                    seen[other] = true;
                    open.Push(other);
                }
            }
        }

        return [.. names.Where((_, i) => seen[i])];
    }

    private int[][] Grouped(int[] keys)
    {
        var groups = new List<int>?[names.Length];
        for (var i = 0; i < keys.Length; i++)
        {
            (groups[keys[i]] ??= []).Add(i);
        }

        return [.. groups.Select(g => g?.ToArray() ?? [])];
    }

    /// <summary>
    /// Takes lots away that nothing left goes into, until none is left or a ring is; then walks back along
    /// it.
    /// </summary>
    private Seq<string> FindCycle()
    {
        var open = before.Select(b => b.Length).ToArray();
        var free = new Stack<int>(Enumerable.Range(0, names.Length).Where(i => open[i] == 0));
        var left = names.Length;
        while (free.TryPop(out var at))
        {
            left--;
            foreach (var i in next[at])
            {
                if (--open[to[i]] == 0)
                {
                    free.Push(to[i]);
                }
            }
        }

        return left == 0 ? [] : Ring(Array.FindIndex(open, o => o > 0), open);
    }

    /// <summary>
    /// Every lot that is left has one before it that is left, so going back must close a ring.
    /// </summary>
    private Seq<string> Ring(int start, int[] open)
    {
        var order = new List<int>();
        var place = new Dictionary<int, int>();
        var at = start;
        while (place.TryAdd(at, order.Count))
        {
            order.Add(at);
            at = before[at].Select(i => from[i]).First(lot => open[lot] > 0);
        }

        var ring = order[place[at]..];
        ring.Add(at);
        ring.Reverse();
        return [.. ring.Select(i => names[i])];
    }
}
