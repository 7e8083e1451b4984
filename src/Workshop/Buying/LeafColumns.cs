namespace Litterfall.Workshop.Buying;

/// <summary>One way to buy a product.</summary>
/// <param name="Cents">What it costs.</param>
/// <param name="Spent">What of it is spent at each supplier whose goods must reach a sum.</param>
/// <param name="Taken">Offers and packs of each.</param>
internal sealed record Column(long Cents, long[] Spent, (PackOffer Offer, int Packs)[] Taken);

/// <summary>
/// All ways to buy one product whose priced cost stays within a limit, those left out that another beats: not
/// dearer, and no less spent where sums must be reached.
/// </summary>
internal sealed class LeafColumns
{
    private const int MostStates = 1500;
    private readonly PackProduct product;
    private readonly PackOffer[] offers;
    private readonly int[] bound;
    private readonly double limit;
    private readonly double[] weights;
    private readonly double[] cheapest;
    private bool isTooMany;

    private sealed record Part(
        double Cost,
        long Cents,
        long Units,
        long[] Spent,
        Part? Before,
        PackOffer? Offer,
        int Packs
    );

    private LeafColumns(PackProduct product, StateLeaf leaf, double[] weights, double limit)
    {
        this.product = product;
        this.weights = weights;
        this.limit = limit;
        offers = [.. product.Offers.Where(o => (leaf.Suppliers >> o.Supplier & 1) == 1)];
        bound = [.. Enumerable.Range(0, leaf.Least.Length).Where(s => leaf.Least[s] > 0)];
        cheapest = new double[offers.Length + 1];
        cheapest[^1] = double.PositiveInfinity;
        for (var i = offers.Length - 1; i >= 0; i--)
        {
            cheapest[i] = Math.Min(cheapest[i + 1], offers[i].CentsPerUnit * weights[offers[i].Supplier]);
        }
    }

    /// <summary>The ways; null when there are too many to list.</summary>
    /// <param name="product">The product.</param>
    /// <param name="leaf">The suppliers that may be used and the sums to be reached.</param>
    /// <param name="weights">What a cent at each supplier counts, above 0.</param>
    /// <param name="limit">Most that this product may cost, so counted.</param>
    public static List<Column>? Find(PackProduct product, StateLeaf leaf, double[] weights, double limit) =>
        new LeafColumns(product, leaf, weights, limit).Find();

    private List<Column>? Find()
    {
        List<Part> parts = [new Part(0.0, 0, 0, new long[bound.Length], null, null, 0)];
        for (var i = 0; i < offers.Length; i++)
        {
            var next = new List<Part>();
            foreach (var part in parts)
            {
                next.AddRange(Steps(part, i));
                if (next.Count > 4 * MostStates)
                {
                    return null;
                }
            }

            parts = Kept(next);
            if (isTooMany || parts.Count > MostStates)
            {
                return null;
            }
        }

        return [.. parts.Where(p => p.Units >= product.Need).Select(Told)];
    }

    private IEnumerable<Part> Steps(Part from, int index)
    {
        var offer = offers[index];
        var place = Array.IndexOf(bound, offer.Supplier);
        // Where a sum must be reached, more than is needed may pay.
        var choices =
            place < 0
                ? offer.Choices(Math.Max(0, product.Need - from.Units))
                : Enumerable.Range(
                    offer.Least,
                    Math.Max(0, Math.Min(offer.Most, Dearest(offer, from)) - offer.Least + 1)
                );
        foreach (var packs in choices)
        {
            var units = from.Units + (packs * offer.Size);
            if (offer.Offer.Cents(packs) is not { } price || units > product.Most)
            {
                continue;
            }

            var cost = from.Cost + (price * weights[offer.Supplier]);
            var missing = Math.Max(0, product.Need - units);
            if (cost + (missing > 0 ? missing * cheapest[index + 1] : 0.0) > limit + 0.01)
            {
                continue;
            }

            var spent = from.Spent;
            if (place >= 0 && price > 0)
            {
                spent = [.. spent];
                spent[place] += price;
            }

            yield return new Part(cost, from.Cents + price, units, spent, from, offer, packs);
        }
    }

    private int Dearest(PackOffer offer, Part from)
    {
        var packs = (limit + 0.01 - from.Cost) / (Math.Max(1, offer.LowestCents) * weights[offer.Supplier]);
        isTooMany |= packs > MostStates && offer.Most > MostStates;
        return (int)Math.Clamp(packs, 0.0, MostStates);
    }

    /// <summary>
    /// Of those with the same amount and the same sums only the cheapest; then those that none beats.
    /// </summary>
    private List<Part> Kept(List<Part> parts)
    {
        var isLimited = product.Most != long.MaxValue;
        var ordered = parts
            .OrderBy(p => p.Cents)
            .ThenByDescending(p => Capped(p.Units))
            .ThenByDescending(p => p.Spent.Sum())
            .ToList();
        var kept = new List<Part>();
        foreach (var part in ordered)
        {
            if (!kept.Exists(k => Beats(k, part, isLimited)))
            {
                kept.Add(part);
                if (kept.Count > MostStates)
                {
                    break;
                }
            }
        }

        return kept;
    }

    private long Capped(long units) => Math.Min(units, product.Need);

    private bool Beats(Part one, Part other, bool isLimited)
    {
        if (isLimited ? one.Units != other.Units : Capped(one.Units) < Capped(other.Units))
        {
            return false;
        }

        for (var i = 0; i < bound.Length; i++)
        {
            if (one.Spent[i] < other.Spent[i])
            {
                return false;
            }
        }

        return true;
    }

    private static Column Told(Part part)
    {
        var taken = new List<(PackOffer, int)>();
        for (var at = part; at.Offer is not null; at = at.Before!)
        {
            if (at.Packs > 0)
            {
                taken.Add((at.Offer, at.Packs));
            }
        }

        return new Column(part.Cents, part.Spent, [.. taken]);
    }
}
