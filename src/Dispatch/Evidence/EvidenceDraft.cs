using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Dispatch.Evidence;

/// <summary>What is to be written into a new link.</summary>
public sealed record EvidenceDraft
{
    /// <summary>Number of the parcel.</summary>
    public required int Parcel { get; init; }

    /// <summary>What it holds.</summary>
    public required EvidenceKind Kind { get; init; }

    /// <summary>Now, UTC.</summary>
    public required DateTime At { get; init; }

    /// <summary>Who writes it.</summary>
    public required string Who { get; init; }

    /// <summary>In words.</summary>
    public required string Note { get; init; }

    /// <summary>What it holds, as text; empty for none.</summary>
    public string Text { get; init; } = "";

    /// <summary>Files that belong to it, with their fingerprints.</summary>
    public Seq<EvidenceFile> Files { get; init; } = [];
}
