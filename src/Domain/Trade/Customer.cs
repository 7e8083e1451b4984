using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Trade;

/// <summary>Who orders.</summary>
public sealed record Customer
{
    /// <summary>Short own key.</summary>
    public required string Key { get; init; }

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Address, one line each.</summary>
    public Seq<string> Address { get; init; } = [];

    /// <summary>Mail address; empty where none is known.</summary>
    public string Mail { get; init; } = "";

    /// <summary>Telephone; empty where none is known.</summary>
    public string Phone { get; init; } = "";

    /// <summary>True for shops that buy to sell.</summary>
    public bool IsWholesale { get; init; }

    /// <summary>What to remember.</summary>
    public string Notes { get; init; } = "";
}
