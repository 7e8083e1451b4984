using System.Text;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static System.FormattableString;

namespace Litterfall.Dispatch.Evidence;

/// <summary>
/// The evidence of a parcel as one zip that a stranger checks with the standard tool for fingerprints: each
/// link is a text file whose fingerprint the next one names, and SHA256SUMS lists all files.
/// </summary>
public static class EvidenceExport
{
    /// <summary>List of fingerprints, as the standard tool reads it.</summary>
    public const string Sums = "SHA256SUMS";

    /// <summary>How to check, in plain words.</summary>
    public const string Readme = "README.txt";

    /// <summary>Largest zip, bytes: its fields have 32 bits.</summary>
    public const long LargestBytes = int.MaxValue / 2;

    private static readonly UTF8Encoding Utf8 = new(false);

    /// <summary>Name of the zip.</summary>
    /// <param name="parcel">Number of the parcel.</param>
    public static string FileName(int parcel) => Invariant($"evidence-parcel-{parcel}.zip");

    /// <summary>Writes it; the same evidence gives the same bytes.</summary>
    /// <param name="entries">Links of one parcel in their order, at least one.</param>
    /// <param name="file">Bytes of a file by its fingerprint; null where the store lost it.</param>
    /// <exception cref="ArgumentException">There is no link, or the files are too large.</exception>
    public static byte[] Write(IReadOnlyList<EvidenceEntry> entries, Func<EvidenceFile, byte[]?> file)
    {
        if (entries.Count == 0)
        {
            throw new ArgumentException("The parcel has no evidence yet.", nameof(entries));
        }

        var files = entries.SelectMany(e => e.Files).DistinctBy(f => f.Name).ToList();
        if (files.Sum(f => f.Bytes) > LargestBytes)
        {
            throw new ArgumentException(
                "The photos and logger files are too large for one file.",
                nameof(file)
            );
        }

        var parts = entries.Select(e => new ZipPart(LinkName(e), Utf8.GetBytes(e.Canonical))).ToList();
        parts.AddRange(
            files
                .Select(f => (f.Name, Bytes: file(f)))
                .Where(f => f.Bytes is not null)
                .Select(f => new ZipPart(f.Name, f.Bytes!))
        );
        parts.Insert(0, new(Readme, Utf8.GetBytes(ReadmeText.Write(entries))));
        return StoredZip.Write([new(Sums, SumsOf(parts)), .. parts]);
    }

    /// <summary>Checks an exported zip by itself.</summary>
    /// <param name="zip">Its bytes.</param>
    public static EvidenceCheck Check(byte[] zip) => ExportCheck.Run(zip, null);

    /// <summary>Checks an exported zip against what the shop keeps: every changed byte is found.</summary>
    /// <param name="zip">Its bytes.</param>
    /// <param name="kept">Links of the same parcel as the shop keeps them.</param>
    public static EvidenceCheck Check(byte[] zip, IReadOnlyList<EvidenceEntry> kept) =>
        ExportCheck.Run(zip, kept);

    /// <summary>"0001-cleared.txt".</summary>
    internal static string LinkName(EvidenceEntry entry) =>
        Invariant($"{entry.Number:0000}-{CanonicalText.Kind(entry.Kind)}.txt");

    /// <summary>The list of fingerprints of files, by name.</summary>
    internal static byte[] SumsOf(IEnumerable<ZipPart> parts)
    {
        var text = new StringBuilder();
        foreach (var part in parts.Where(p => p.Name != Sums).OrderBy(p => p.Name, StringComparer.Ordinal))
        {
            text.Append(Fingerprint.From(part.Bytes)).Append("  ").Append(part.Name).Append('\n');
        }

        return Utf8.GetBytes(text.ToString());
    }
}

/// <summary>What a check of exported evidence found.</summary>
public sealed record EvidenceCheck
{
    /// <summary>What is not as it was written; empty for whole evidence.</summary>
    public Seq<EvidenceFault> Faults { get; init; } = [];

    /// <summary>Number of the parcel; null where it cannot be read.</summary>
    public int? Parcel { get; init; }

    /// <summary>Files in it.</summary>
    public int Files { get; init; }

    /// <summary>Names and fingerprints of its links, in their order.</summary>
    public Seq<(string Name, string Sha256)> Links { get; init; } = [];

    /// <summary>
    /// Short fingerprint of the link that cleared the parcel, to compare with packing card and message; empty
    /// for none.
    /// </summary>
    public string Cleared { get; init; } = "";

    /// <summary>True where all of it is as it was written.</summary>
    public bool IsWhole => Faults.Count == 0;

    /// <summary>What was found, in sentences.</summary>
    public Seq<string> Words =>
        IsWhole
            ?
            [
                Invariant($"Whole: {Count(Links.Count, "link")} of parcel {Parcel}, ")
                    + Invariant($"{Count(Files, "file")}, each with its fingerprint."),
                .. Cleared.Length > 0
                    ? new[]
                    {
                        $"Compare with packing card or message to the customer: {Cleared}. A chain that "
                            + "was written anew from its first link would be whole too, and differ there.",
                    }
                    : [],
            ]
            : ["Not as it was written.", .. Faults.Select(f => f.ToString())];

    private static string Count(int count, string what) =>
        count == 1 ? $"1 {what}" : Invariant($"{count} {what}s");
}
