using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Trade;

/// <summary>How far a purchase is.</summary>
public enum PurchaseState
{
    /// <summary>On the list.</summary>
    Planned,

    /// <summary>Sent to the supplier.</summary>
    Ordered,

    /// <summary>All of it came.</summary>
    Received,

    /// <summary>Called off.</summary>
    Dropped,
}

/// <summary>One line of a purchase.</summary>
/// <param name="Offer">Key of the offer.</param>
/// <param name="Packs">Number of packs.</param>
/// <param name="Price">Net price of one pack.</param>
/// <param name="Came">Packs that came so far.</param>
public sealed record PurchaseLine(string Offer, int Packs, decimal Price, int Came);

/// <summary>Goods bought from one supplier at one time.</summary>
public sealed record Purchase
{
    /// <summary>Running number.</summary>
    public required int Number { get; init; }

    /// <summary>Key of the supplier.</summary>
    public required string Supplier { get; init; }

    /// <summary>Lines.</summary>
    public required Seq<PurchaseLine> Lines { get; init; }

    /// <summary>How far it is.</summary>
    public PurchaseState State { get; init; }

    /// <summary>Day it was put on the list or sent.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Day it is expected; null where nobody knows.</summary>
    public DateOnly? Expected { get; init; }

    /// <summary>Delivery, net.</summary>
    public decimal Delivery { get; init; }

    /// <summary>Orders it was bought for.</summary>
    public Seq<int> Orders { get; init; } = [];

    /// <summary>What to remember.</summary>
    public string Notes { get; init; } = "";
}
