using System.Globalization;
using System.Text;
using Litterfall.Domain.Dispatch;
using static System.FormattableString;

namespace Litterfall.Dispatch.Evidence;

/// <summary>
/// Checks an exported zip byte by byte. A file that lost its fingerprint is searched for the one byte whose
/// change explains it: the checksum of the zip says where it may lie, the fingerprint proves it.
/// </summary>
internal static class ExportCheck
{
    /// <summary>Checks a zip, and compares it with kept links where they are given.</summary>
    public static EvidenceCheck Run(byte[] zip, IReadOnlyList<EvidenceEntry>? kept)
    {
        var parts = StoredZip.Read(zip);
        var listed = StoredZip.ReadList(zip);
        // A damaged head of a file is read past by the list at the end, and the other way round.
        if (!IsSummed(parts) && IsSummed(listed))
        {
            parts = listed;
        }

        if (parts.Count == 0)
        {
            return new() { Faults = [new("the file", "It is not evidence as Litterfall exports it.")] };
        }

        var faults = new List<EvidenceFault>(Files(parts));
        var links = parts.Where(p => LinkText.IsName(p.Name)).Select(LinkText.Read).ToList();
        faults.AddRange(LinkJoints.Check(links, parts));
        faults.AddRange(kept is null ? [] : Kept(links, kept));
        if (faults.Count == 0 && EvidenceChain.FirstDifference(zip, StoredZip.Write(parts)) is { } at)
        {
            faults.Add(
                new("the zip", "A byte between the files was changed; the files are whole.") { Byte = at }
            );
        }

        var cleared = links.Find(l => l.Kind == CanonicalText.Kind(EvidenceKind.Cleared));
        return new()
        {
            Faults = [.. faults],
            Parcel = links.FirstOrDefault()?.Parcel,
            Files = parts.Count,
            Links = [.. links.Select(l => (l.Name, l.Sha256))],
            Cleared = cleared is null ? "" : Fingerprint.Short(cleared.Sha256),
        };
    }

    private static bool IsSummed(List<ZipPart> parts) =>
        parts.Find(p => p.Name == EvidenceExport.Sums) is { } sums
        && sums.Bytes.AsSpan().SequenceEqual(EvidenceExport.SumsOf(parts));

    /// <summary>Each file against its line in the list, and the list against the files.</summary>
    private static IEnumerable<EvidenceFault> Files(List<ZipPart> parts)
    {
        if (parts.Find(p => p.Name == EvidenceExport.Sums) is not { } sums)
        {
            yield return new(EvidenceExport.Sums, "The list of fingerprints is missing.");
            yield break;
        }

        if (OneByte(sums, null) is { } inList)
        {
            yield return inList;
            yield break;
        }

        var named = Named(Encoding.UTF8.GetString(sums.Bytes));
        foreach (var part in parts.Where(p => p.Name != EvidenceExport.Sums))
        {
            if (!named.Remove(part.Name, out var sha256))
            {
                yield return new(part.Name, "It does not stand in the list of fingerprints.");
            }
            else if (Fingerprint.From(part.Bytes) != sha256)
            {
                yield return OneByte(part, sha256)
                    ?? new(
                        part.Name,
                        "Its bytes are not those of its fingerprint; more than one was changed, so the place "
                            + "shows only beside the shop's copy."
                    );
            }
        }

        foreach (var name in named.Keys)
        {
            yield return new(name, "The list of fingerprints names it, and it is not there.");
        }
    }

    /// <summary>The one byte whose change explains a checksum, proven by the fingerprint where it is known.
    /// </summary>
    private static EvidenceFault? OneByte(ZipPart part, string? sha256)
    {
        if (Crc32.From(part.Bytes) == part.Crc)
        {
            return null;
        }

        foreach (var (at, value) in Crc32.OneByteAway(part.Bytes, part.Crc))
        {
            var healed = (byte[])part.Bytes.Clone();
            healed[at] = value;
            if (sha256 is null || Fingerprint.From(healed) == sha256)
            {
                return new(
                    part.Name,
                    Invariant($"This byte was changed: it was {Sign(value)} and is {Sign(part.Bytes[at])}.")
                )
                {
                    Byte = at + 1,
                };
            }
        }

        return null;
    }

    private static string Sign(byte value) =>
        value is > 0x20 and < 0x7F ? $"“{(char)value}”" : Invariant($"0x{value:X2}");

    private static Dictionary<string, string> Named(string sums)
    {
        var named = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in sums.Split('\n').Where(l => l.Length > 66))
        {
            named[line[66..]] = line[..64];
        }

        return named;
    }

    /// <summary>Links against what the shop keeps.</summary>
    private static IEnumerable<EvidenceFault> Kept(List<LinkText> links, IReadOnlyList<EvidenceEntry> kept)
    {
        for (var i = 0; i < Math.Max(links.Count, kept.Count); i++)
        {
            if (i >= links.Count)
            {
                yield return new(
                    EvidenceExport.LinkName(kept[i]),
                    "The shop keeps this link; it is not here."
                );
            }
            else if (i >= kept.Count)
            {
                yield return new(links[i].Name, "The shop does not keep this link.");
            }
            else if (
                EvidenceChain.FirstDifference(links[i].Bytes, Encoding.UTF8.GetBytes(kept[i].Canonical)) is
                { } at
            )
            {
                yield return new(links[i].Name, "From this byte on it differs from what the shop keeps.")
                {
                    Byte = at,
                };
            }
        }
    }
}

/// <summary>A link as it stands in its file.</summary>
internal sealed record LinkText
{
    /// <summary>Name of its file.</summary>
    public required string Name { get; init; }

    /// <summary>Its bytes.</summary>
    public required byte[] Bytes { get; init; }

    /// <summary>Fingerprint of its bytes.</summary>
    public required string Sha256 { get; init; }

    /// <summary>First line.</summary>
    public string Form { get; init; } = "";

    /// <summary>Number of the parcel; null where it cannot be read.</summary>
    public int? Parcel { get; init; }

    /// <summary>Number of the link; null where it cannot be read.</summary>
    public int? Number { get; init; }

    /// <summary>What it holds.</summary>
    public string Kind { get; init; } = "";

    /// <summary>Fingerprint it names as the one before.</summary>
    public string Before { get; init; } = "";

    /// <summary>Files that it names: fingerprint, length and name.</summary>
    public IReadOnlyList<string[]> Files { get; init; } = [];

    /// <summary>True for the name of a link's file.</summary>
    public static bool IsName(string name) =>
        name.Length > 5
        && name[..4].All(char.IsAsciiDigit)
        && name[4] == '-'
        && name.EndsWith(".txt", StringComparison.Ordinal);

    /// <summary>Reads the members of a link; what cannot be read is left empty.</summary>
    public static LinkText Read(ZipPart part)
    {
        var lines = Encoding.UTF8.GetString(part.Bytes).Split('\n');
        var members = lines
            .Skip(1)
            .TakeWhile(l => l is not ("note:" or "text:"))
            .Select(l => l.Split(": ", 2))
            .Where(m => m.Length == 2)
            .ToList();
        return new()
        {
            Name = part.Name,
            Bytes = part.Bytes,
            Sha256 = Fingerprint.From(part.Bytes),
            Form = lines[0],
            Parcel = Whole("parcel"),
            Number = Whole("link"),
            Kind = Member("kind"),
            Before = Member("before"),
            Files = [.. members.Where(m => m[0] == "file").Select(m => m[1].Split(' ', 3))],
        };

        string Member(string name) => members.Find(m => m[0] == name)?[1] ?? "";

        int? Whole(string name) =>
            int.TryParse(Member(name), NumberStyles.None, CultureInfo.InvariantCulture, out var whole)
                ? whole
                : null;
    }
}
