using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>
/// Prices on parts that the plan without numbers uses too often (state space relaxation with subgradients,
/// Christofides and Hadjiconstantinou 1995): for any prices of 0 or more, the most value of parts at value
/// less price, plus the prices of all parts that may be cut, is a bound.
/// </summary>
internal sealed class Multipliers
{
    private const int Patience = 12;

    private readonly ImmutableArray<GridPart> parts;
    private readonly GridSheet sheet;
    private readonly CutRules rules;
    private readonly int[] counts;
    private readonly ValueTable table;
    private readonly double[] best;

    /// <summary>No prices yet.</summary>
    public Multipliers(
        ImmutableArray<GridPart> parts,
        int[] counts,
        GridSheet sheet,
        CutRules rules,
        ValueTable table
    )
    {
        this.parts = parts;
        this.counts = counts;
        this.sheet = sheet;
        this.rules = rules;
        this.table = table;
        best = new double[parts.Length];
        Bound = double.MaxValue;
    }

    /// <summary>The smallest bound.</summary>
    public double Bound { get; private set; }

    /// <summary>The best plan that can be cut; null for none.</summary>
    public CutNode? Plan { get; private set; }

    /// <summary>Its value.</summary>
    public double Value { get; private set; }

    /// <summary>Prices of the smallest bound.</summary>
    public ReadOnlySpan<double> Prices => best;

    /// <summary>Looks for better prices.</summary>
    /// <param name="turns">Most turns.</param>
    /// <param name="isWhole">True where values are whole.</param>
    /// <param name="cancel">Ends it early.</param>
    public void Improve(int turns, bool isWhole, CancellationToken cancel)
    {
        var prices = new double[parts.Length];
        var values = new double[parts.Length];
        var used = new int[parts.Length];
        var step = 1.0;
        var since = 0;
        for (var turn = 0; turn < turns && !IsClosed(isWhole); turn++)
        {
            var (bound, length) = Look(prices, values, used, cancel);
            if (bound < Bound - 1e-9)
            {
                since = bound < Bound * (1 - 1e-6) ? 0 : since;
                Bound = bound;
                prices.CopyTo(best, 0);
            }

            if (++since > Patience)
            {
                (step, since) = (step / 2, 0);
                best.CopyTo(prices, 0);
                (bound, length) = Look(prices, values, used, cancel);
            }

            if (length == 0 || step < 1e-3 || cancel.IsCancellationRequested)
            {
                return;
            }

            var size = step * (bound - Value) / length;
            for (var i = 0; i < prices.Length; i++)
            {
                prices[i] = Math.Max(0, prices[i] + size * Surplus(i, used[i], prices[i]));
            }
        }
    }

    /// <summary>True where bound and plan are one.</summary>
    public bool IsClosed(bool isWhole) =>
        (isWhole ? Math.Floor(Bound + 1e-6) : Bound) <= Value * (1 + 1e-12) + 1e-9;

    private int Surplus(int part, int used, double price)
    {
        var surplus = counts[part] == GridSheet.Unlimited ? 0 : used - counts[part];
        return surplus < 0 && price <= 0 ? 0 : surplus;
    }

    private (double Bound, double Length) Look(
        double[] prices,
        double[] values,
        int[] used,
        CancellationToken cancel
    )
    {
        var constant = 0.0;
        for (var i = 0; i < prices.Length; i++)
        {
            values[i] = parts[i].Value - prices[i];
            constant += prices[i] > 0 ? prices[i] * counts[i] : 0;
        }

        table.Fill(values, cancel);
        var (x, y) = (table.AlongX.Below(sheet.Length), table.AlongY.Below(sheet.Width));
        var tree = table.Cuts(values, x, y);
        Array.Clear(used);
        tree?.CountInto(used);
        var length = 0.0;
        for (var i = 0; i < used.Length; i++)
        {
            length += Math.Pow(Surplus(i, used[i], prices[i]), 2);
        }

        Offer(Refill.Within(parts, counts, sheet, rules, tree));
        return (constant + table.At(x, y), length);
    }

    /// <summary>Takes a plan that can be cut where it is better.</summary>
    public void Offer(CutNode? plan)
    {
        if (plan is null)
        {
            return;
        }

        var number = new int[parts.Length];
        plan.CountInto(number);
        var value = 0.0;
        for (var i = 0; i < number.Length; i++)
        {
            value += number[i] * parts[i].Value;
        }

        if (value > Value)
        {
            (Value, Plan) = (value, plan);
        }
    }
}
