namespace Litterfall.Workshop.Buying;

/// <summary>The cheapest purchase so far.</summary>
/// <param name="suppliers">All suppliers.</param>
/// <param name="ceiling">Cost that a purchase must stay below, cents.</param>
internal sealed class Incumbent(IReadOnlyList<PurchaseSupplier> suppliers, long ceiling)
{
    /// <summary>The purchase; null for none yet.</summary>
    public Basket? Best { get; private set; }

    /// <summary>Cost to beat.</summary>
    public long Below => Best?.Cents ?? ceiling;

    /// <summary>Takes a purchase when it is allowed and cheaper.</summary>
    /// <param name="taken">Offers and packs of each.</param>
    public void Take((PackOffer Offer, int Packs)[] taken)
    {
        if (Basket.Sum(suppliers, taken) is { } basket && basket.Cents < Below)
        {
            Best = basket;
        }
    }
}
