namespace Litterfall.Domain.Stock;

/// <summary>What happened to a lot.</summary>
public enum MovementKind
{
    /// <summary>Came from a supplier.</summary>
    Received,

    /// <summary>Was made or bred here.</summary>
    Made,

    /// <summary>Went into another lot, a tank or a kit.</summary>
    Used,

    /// <summary>Went to another place.</summary>
    Moved,

    /// <summary>Went to a customer.</summary>
    Sold,

    /// <summary>Died.</summary>
    Died,

    /// <summary>Was thrown away.</summary>
    Scrapped,

    /// <summary>A count found more or less than the book said.</summary>
    Counted,

    /// <summary>May not be used.</summary>
    Held,

    /// <summary>May be used again.</summary>
    Released,
}

/// <summary>One line of the book of stock; only ever added, a mistake is reversed by another line.</summary>
public sealed record Movement
{
    /// <summary>Running number; 0 before it is kept.</summary>
    public int Id { get; init; }

    /// <summary>The lot.</summary>
    public required string Lot { get; init; }

    /// <summary>What happened.</summary>
    public required MovementKind Kind { get; init; }

    /// <summary>
    /// Amount in the unit of the good, 0 or more; for counts what was found less what the book said.
    /// </summary>
    public required double Amount { get; init; }

    /// <summary>Lot or tank it went into; for sales the order's number; null else.</summary>
    public string? Into { get; init; }

    /// <summary>Place it went to.</summary>
    public string? Place { get; init; }

    /// <summary>Day it happened.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Who wrote it.</summary>
    public required string Who { get; init; }

    /// <summary>In words.</summary>
    public string Note { get; init; } = "";

    /// <summary>Number of the line it takes back; null for none.</summary>
    public int? Reverses { get; init; }

    /// <summary>What it changes on hand, in the unit of the good.</summary>
    public double Effect =>
        (Reverses is null ? 1 : -1)
        * Kind switch
        {
            MovementKind.Received or MovementKind.Made or MovementKind.Counted => Amount,
            MovementKind.Used or MovementKind.Sold or MovementKind.Died or MovementKind.Scrapped => -Amount,
            _ => 0,
        };
}
