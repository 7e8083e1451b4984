using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>What a link of the evidence holds.</summary>
public enum EvidenceKind
{
    /// <summary>Verdict with forecast, rules and packing list, as the parcel was cleared.</summary>
    Cleared,

    /// <summary>A photo of the packing.</summary>
    Photo,

    /// <summary>Handed over to the carrier.</summary>
    HandedOver,

    /// <summary>Logger file from inside the parcel.</summary>
    Logger,

    /// <summary>How it arrived.</summary>
    Arrived,

    /// <summary>A claim, and what came of it.</summary>
    Claim,

    /// <summary>A remark.</summary>
    Note,

    /// <summary>It was called off after it had been cleared.</summary>
    Dropped,
}

/// <summary>A file that belongs to a link.</summary>
/// <param name="Name">Its name in the exported file.</param>
/// <param name="Sha256">Fingerprint of its bytes, 64 small hexadecimal digits.</param>
/// <param name="Bytes">How long it is.</param>
public sealed record EvidenceFile(string Name, string Sha256, long Bytes);

/// <summary>
/// A link of the evidence of a parcel; never changed. Each holds the fingerprint of the one before, so that
/// none can be changed, left out or put in unseen.
/// </summary>
public sealed record EvidenceEntry
{
    /// <summary>Number of the parcel.</summary>
    public required int Parcel { get; init; }

    /// <summary>1, 2, 3 within the parcel.</summary>
    public required int Number { get; init; }

    /// <summary>What it holds.</summary>
    public required EvidenceKind Kind { get; init; }

    /// <summary>When it was written, UTC.</summary>
    public required DateTime At { get; init; }

    /// <summary>Who wrote it.</summary>
    public required string Who { get; init; }

    /// <summary>In words.</summary>
    public required string Note { get; init; }

    /// <summary>What it holds, as the exact text that is fingerprinted; empty for none.</summary>
    public string Text { get; init; } = "";

    /// <summary>Files that belong to it.</summary>
    public Seq<EvidenceFile> Files { get; init; } = [];

    /// <summary>Fingerprint of the link before; empty for the first.</summary>
    public string Before { get; init; } = "";

    /// <summary>
    /// Fingerprint of the shop's last link before this parcel; only in the first link of a parcel, and empty
    /// in the shop's very first. It makes a cut-off tail of that other parcel show.
    /// </summary>
    public string ShopBefore { get; init; } = "";

    /// <summary>
    /// The text that is fingerprinted, whole, as it was when the link was written. Kept beside the members it
    /// was made from, so that a change of either is found at its place.
    /// </summary>
    public string Canonical { get; init; } = "";

    /// <summary>Fingerprint of this one, 64 small hexadecimal digits.</summary>
    public required string Sha256 { get; init; }
}

/// <summary>How a parcel arrived.</summary>
/// <param name="Parcel">Number of the parcel.</param>
/// <param name="Carrier">Key of the carrier's terms.</param>
/// <param name="Day">Day it left.</param>
/// <param name="Species">Key of what lived in it.</param>
/// <param name="Sent">Animals or pots sent.</param>
/// <param name="Dead">Dead on arrival or within the time of the claim.</param>
public sealed record ArrivalCount(
    int Parcel,
    string Carrier,
    DateOnly Day,
    string Species,
    int Sent,
    int Dead
)
{
    /// <summary>True where the parcel came later than planned.</summary>
    public bool IsLate { get; init; }
}
