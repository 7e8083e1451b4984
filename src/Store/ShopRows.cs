namespace Litterfall.Store;

/// <summary>
/// A record of the workshop as it was at one time: a customer, an order, a supplier. Only ever added to.
/// </summary>
public sealed class RecordRow
{
    /// <summary>Runs up.</summary>
    public int Id { get; set; }

    /// <summary>What it is: "customer", "order".</summary>
    public required string Kind { get; set; }

    /// <summary>Its own key within the kind.</summary>
    public required string Key { get; set; }

    /// <summary>1, 2, 3 within its key; the last counts.</summary>
    public int Version { get; set; }

    /// <summary>What it says, as JSON; empty takes it back.</summary>
    public required string Json { get; set; }

    /// <summary>Who wrote it.</summary>
    public required string Who { get; set; }

    /// <summary>What was changed, in words.</summary>
    public required string Note { get; set; }

    /// <summary>When, UTC ticks.</summary>
    public long Ticks { get; set; }
}

/// <summary>A lot; written once.</summary>
public sealed class LotRow
{
    /// <summary>Number on its label.</summary>
    public required string Id { get; set; }

    /// <summary>Key of the good.</summary>
    public required string Good { get; set; }

    /// <summary>What is known of it, as JSON.</summary>
    public required string Json { get; set; }

    /// <summary>When it was written, UTC ticks.</summary>
    public long Ticks { get; set; }
}

/// <summary>A line of the book of stock; only ever added.</summary>
public sealed class MovementRow
{
    /// <summary>Runs up.</summary>
    public int Id { get; set; }

    /// <summary>The lot.</summary>
    public required string Lot { get; set; }

    /// <summary>What happened, by its word.</summary>
    public required string Kind { get; set; }

    /// <summary>Amount in the unit of the good.</summary>
    public double Amount { get; set; }

    /// <summary>Lot, tank or order it went into.</summary>
    public string? Into { get; set; }

    /// <summary>Place it went to.</summary>
    public string? Place { get; set; }

    /// <summary>Day, counted from 0001-01-01.</summary>
    public int Day { get; set; }

    /// <summary>Who wrote it.</summary>
    public required string Who { get; set; }

    /// <summary>In words.</summary>
    public required string Note { get; set; }

    /// <summary>Line it takes back.</summary>
    public int? Reverses { get; set; }

    /// <summary>When it was written, UTC ticks.</summary>
    public long Ticks { get; set; }
}

/// <summary>A quote, invoice or delivery note as it was issued; written once.</summary>
public sealed class IssuedRow
{
    /// <summary>What kind, by its word.</summary>
    public required string Kind { get; set; }

    /// <summary>Running number within the kind, without gaps.</summary>
    public int Number { get; set; }

    /// <summary>Order it is for.</summary>
    public int OrderNumber { get; set; }

    /// <summary>What it says, as JSON.</summary>
    public required string Json { get; set; }

    /// <summary>Fingerprint of what it says.</summary>
    public required string Hash { get; set; }

    /// <summary>When, UTC ticks.</summary>
    public long Ticks { get; set; }
}
