namespace Litterfall.Workshop.Buying;

/// <summary>Packs of one product that cover its need.</summary>
/// <param name="Cents">What they cost.</param>
/// <param name="Units">What they hold.</param>
/// <param name="Packs">How many there are.</param>
/// <param name="Taken">Offers and packs of each.</param>
internal sealed record Cover(long Cents, long Units, int Packs, (PackOffer Offer, int Packs)[] Taken);

/// <summary>
/// The cheapest packs of one product from some suppliers, then with the least left over, then the fewest.
/// Offers are taken up one after the other; of the amounts reached so far only those are kept that no other
/// beats, and those whose price and cheapest completion stay within the best known.
/// </summary>
internal sealed class ProductCover
{
    private readonly PackProduct product;
    private readonly PackOffer[] offers;
    private readonly List<State> arena = [];
    private readonly double[] weights;
    private readonly double[] cheapest;
    private double best = double.PositiveInfinity;

    private readonly record struct State(
        double Cost,
        long Units,
        int Packs,
        int Before,
        int Offer,
        int Taken
    );

    private ProductCover(PackProduct product, int suppliers, double[] weights)
    {
        this.product = product;
        this.weights = weights;
        offers = [.. product.Offers.Where(o => (suppliers >> o.Supplier & 1) == 1 || o.Least > 0)];
        cheapest = new double[offers.Length + 1];
        cheapest[^1] = double.PositiveInfinity;
        for (var i = offers.Length - 1; i >= 0; i--)
        {
            cheapest[i] = Math.Min(cheapest[i + 1], offers[i].CentsPerUnit * Weight(offers[i]));
        }
    }

    /// <summary>The best packs; null when the suppliers have none that do.</summary>
    /// <param name="product">The product.</param>
    /// <param name="suppliers">One bit for each supplier that may be used.</param>
    /// <param name="weights">What a cent at each supplier counts; empty for one each.</param>
    public static Cover? Find(PackProduct product, int suppliers, params double[] weights) =>
        new ProductCover(product, suppliers, weights).Find();

    private double Weight(PackOffer offer) => weights.Length == 0 ? 1.0 : weights[offer.Supplier];

    private Cover? Find()
    {
        arena.Add(new State(0, 0, 0, -1, -1, 0));
        var front = new List<int> { 0 };
        for (var i = 0; i < offers.Length; i++)
        {
            front = Kept(front.SelectMany(at => Steps(at, i)).ToList());
        }

        var done = front.Where(at => arena[at].Units >= product.Need).ToList();
        return done.Count == 0
            ? null
            : Told(done.MinBy(at => (arena[at].Cost, arena[at].Units, arena[at].Packs)));
    }

    private List<int> Steps(int at, int index)
    {
        var (offer, from) = (offers[index], arena[at]);
        var found = new List<int>();
        foreach (var packs in offer.Choices(Math.Max(0, product.Need - from.Units)))
        {
            var units = from.Units + (packs * offer.Size);
            if (offer.Offer.Cents(packs) is not { } price || units > product.Most)
            {
                continue;
            }

            var cost = from.Cost + (price * Weight(offer));
            var missing = product.Need - units;
            if (missing <= 0 && !HasBasketAfter(index))
            {
                best = Math.Min(best, cost);
            }

            // Half a cent of room for the rounding of the quotient.
            if (missing > 0 ? cost + (missing * cheapest[index + 1]) > best + 0.5 : cost > best)
            {
                continue;
            }

            arena.Add(new State(cost, units, from.Packs + packs, at, index, packs));
            found.Add(arena.Count - 1);
        }

        return found;
    }

    private bool HasBasketAfter(int index)
    {
        for (var i = index + 1; i < offers.Length; i++)
        {
            if (offers[i].Least > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// A state with more for less money makes another pointless; with a limit only the same amount compares,
    /// for more may be too much later.
    /// </summary>
    private List<int> Kept(List<int> states)
    {
        states.Sort((a, b) => Compare(arena[a], arena[b]));
        var kept = new List<int>(states.Count);
        var isLimited = product.Most != long.MaxValue;
        var (least, units) = (double.PositiveInfinity, -1L);
        foreach (var at in states)
        {
            var state = arena[at];
            if (state.Units != units && (isLimited || state.Cost <= least))
            {
                kept.Add(at);
                least = Math.Min(least, state.Cost);
                units = state.Units;
            }
        }

        return kept;
    }

    private static int Compare(State a, State b)
    {
        var order = b.Units.CompareTo(a.Units);
        order = order != 0 ? order : a.Cost.CompareTo(b.Cost);
        return order != 0 ? order : a.Packs.CompareTo(b.Packs);
    }

    private Cover Told(int at)
    {
        var end = arena[at];
        var taken = new List<(PackOffer, int)>();
        for (; at > 0; at = arena[at].Before)
        {
            if (arena[at].Taken > 0)
            {
                taken.Add((offers[arena[at].Offer], arena[at].Taken));
            }
        }

        return new Cover(
            taken.Sum(t => t.Item1.Offer.Cents(t.Item2)!.Value),
            end.Units,
            end.Packs,
            [.. taken]
        );
    }
}
