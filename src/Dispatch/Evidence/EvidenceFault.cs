namespace Litterfall.Dispatch.Evidence;

/// <summary>Something about evidence that is not as it was written.</summary>
/// <param name="Where">Link or file: "link 2", "0002-photo.txt".</param>
/// <param name="Text">What differs, in one sentence.</param>
public sealed record EvidenceFault(string Where, string Text)
{
    /// <summary>Byte that differs, counted from 1; null where it cannot be told.</summary>
    public long? Byte { get; init; }

    /// <summary>"0002-photo.txt, byte 117: …".</summary>
    public override string ToString() =>
        Byte is { } at ? FormattableString.Invariant($"{Where}, byte {at}: {Text}") : $"{Where}: {Text}";
}
