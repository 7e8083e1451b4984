namespace Litterfall.Web.Shop.Stock;

/// <summary>What somebody wants to write into the book.</summary>
public enum StockWish
{
    /// <summary>Goods came, or were bred or made here.</summary>
    Receive,

    /// <summary>Goods go into a batch, a kit or a tank.</summary>
    Use,

    /// <summary>Goods go to a customer.</summary>
    Sell,

    /// <summary>Goods go to another place.</summary>
    Move,

    /// <summary>Part of a lot becomes a lot of its own: a split culture, animals out of a group.</summary>
    Split,

    /// <summary>Plants or animals died.</summary>
    Died,

    /// <summary>Goods are thrown away.</summary>
    ThrowAway,
}
