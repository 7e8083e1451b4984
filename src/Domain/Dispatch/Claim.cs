namespace Litterfall.Domain.Dispatch;

/// <summary>What came of a claim.</summary>
public enum ClaimOutcome
{
    /// <summary>Nobody decided yet.</summary>
    Open,

    /// <summary>Replaced.</summary>
    Replaced,

    /// <summary>Paid back.</summary>
    PaidBack,

    /// <summary>Refused, with the reason.</summary>
    Refused,
}

/// <summary>A customer says that something arrived dead or hurt.</summary>
public sealed record Claim
{
    /// <summary>Number of the parcel.</summary>
    public required int Parcel { get; init; }

    /// <summary>When the carrier brought it, UTC; null where nobody knows.</summary>
    public DateTime? DeliveredAt { get; init; }

    /// <summary>When the message came, UTC.</summary>
    public required DateTime SaidAt { get; init; }

    /// <summary>When the photo came, UTC; null for none.</summary>
    public DateTime? PhotoAt { get; init; }

    /// <summary>True where the first delivery attempt was met; null while nobody asked.</summary>
    public bool? WasMet { get; init; }

    /// <summary>Key of what died.</summary>
    public string Species { get; init; } = "";

    /// <summary>How many.</summary>
    public int Dead { get; init; }

    /// <summary>What the customer wrote.</summary>
    public string Words { get; init; } = "";

    /// <summary>What came of it.</summary>
    public ClaimOutcome Outcome { get; init; }

    /// <summary>Why.</summary>
    public string Why { get; init; } = "";
}
