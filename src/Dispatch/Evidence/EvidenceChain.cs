using System.Text;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static System.FormattableString;

namespace Litterfall.Dispatch.Evidence;

/// <summary>
/// The links of a parcel's evidence. Each is fingerprinted as a text that names the fingerprint of the link
/// before, so that a change, a gap or a link put in between shows.
/// </summary>
public static class EvidenceChain
{
    /// <summary>Digits of a fingerprint.</summary>
    private const int Digits = 64;

    /// <summary>The next link of a parcel.</summary>
    /// <param name="draft">What it holds.</param>
    /// <param name="before">The parcel's last link; null for its first.</param>
    /// <param name="shopBefore">
    /// The shop's last link of any parcel; null for its very first. It counts in first links alone.
    /// </param>
    /// <exception cref="ArgumentException">The link before is of another parcel, or later.</exception>
    public static EvidenceEntry Next(EvidenceDraft draft, EvidenceEntry? before, EvidenceEntry? shopBefore)
    {
        if (before is not null && before.Parcel != draft.Parcel)
        {
            throw new ArgumentException("The link before is of another parcel.", nameof(before));
        }

        var entry = new EvidenceEntry
        {
            Parcel = draft.Parcel,
            Number = (before?.Number ?? 0) + 1,
            Kind = draft.Kind,
            At = Milliseconds(draft.At),
            Who = CanonicalText.CleanLine(draft.Who),
            Note = CanonicalText.Clean(draft.Note),
            Text = CanonicalText.Clean(draft.Text),
            Files = [.. draft.Files.Select(f => f with { Name = CanonicalText.CleanLine(f.Name) })],
            Before = before?.Sha256 ?? "",
            ShopBefore = before is null ? shopBefore?.Sha256 ?? "" : "",
            Sha256 = "",
        };
        var text = CanonicalText.Write(entry);
        return entry with { Canonical = text, Sha256 = Fingerprint.From(text) };
    }

    /// <summary>A file as a link names it.</summary>
    /// <param name="parcelLink">Number that the link will have.</param>
    /// <param name="name">Name as the customer or camera gave it.</param>
    /// <param name="bytes">The file.</param>
    public static EvidenceFile File(int parcelLink, string name, ReadOnlySpan<byte> bytes)
    {
        var plain = new StringBuilder();
        foreach (var letter in name)
        {
            plain.Append(char.IsAsciiLetterOrDigit(letter) || letter is '.' or '-' or '_' ? letter : '-');
        }

        // Short, and never only dots: it becomes a path on any machine.
        var kept = plain.ToString().TrimStart('.', '-');
        kept = kept.Length > 60 ? kept[^60..].TrimStart('.', '-') : kept;
        kept = kept.Length > 0 ? kept : "file";
        var sha256 = Fingerprint.From(bytes);
        // Part of the fingerprint keeps two photos of one name apart.
        return new(Invariant($"files/{parcelLink:0000}-{sha256[..8]}-{kept}"), sha256, bytes.Length);
    }

    /// <summary>Everything about a chain that is not as it was written; empty for a whole one.</summary>
    /// <param name="entries">Links of one parcel in their order.</param>
    public static Seq<EvidenceFault> Check(IReadOnlyList<EvidenceEntry> entries)
    {
        var faults = new List<EvidenceFault>();
        for (var i = 0; i < entries.Count; i++)
        {
            faults.AddRange(Own(entries[i]));
            faults.AddRange(Joint(entries[i], i == 0 ? null : entries[i - 1]));
        }

        return [.. faults];
    }

    /// <summary>
    /// Whether the first links of parcels name the shop's link before, in the order they were written: a
    /// chain that lost its tail, or a parcel that was left out, shows in the parcel after it.
    /// </summary>
    /// <param name="all">All links of the shop in the order they were written.</param>
    public static Seq<EvidenceFault> CheckShop(IReadOnlyList<EvidenceEntry> all)
    {
        var faults = new List<EvidenceFault>();
        for (var i = 0; i < all.Count; i++)
        {
            var named = all[i].ShopBefore;
            if (all[i].Number != 1 || named == (i == 0 ? "" : all[i - 1].Sha256))
            {
                continue;
            }

            var known = all.Take(i).FirstOrDefault(e => e.Sha256 == named);
            faults.Add(
                new(
                    Invariant($"parcel {all[i].Parcel}, link 1"),
                    known is null && named.Length > 0
                        ? $"It was written after a link {Fingerprint.Short(named)} that is gone."
                        : "Between it and the link that it names stand others: they were put in later."
                )
            );
        }

        return [.. faults];
    }

    /// <summary>Whether a file is the one that a link names.</summary>
    /// <param name="file">As the link names it.</param>
    /// <param name="bytes">Its bytes; null where it is gone.</param>
    /// <returns>The fault; null where it is whole.</returns>
    public static EvidenceFault? CheckFile(EvidenceFile file, byte[]? bytes) =>
        bytes is null ? new(file.Name, "The file is gone.")
        : bytes.Length != file.Bytes
            ? new(file.Name, Invariant($"It has {bytes.Length} bytes instead of {file.Bytes}."))
        : Fingerprint.From(bytes) != file.Sha256 ? new(file.Name, "Its bytes are not those that were frozen.")
        : null;

    /// <summary>First byte at which two texts differ, counted from 1; null where they are the same.</summary>
    internal static long? FirstDifference(ReadOnlySpan<byte> one, ReadOnlySpan<byte> other)
    {
        var same = one.CommonPrefixLength(other);
        return same == one.Length && same == other.Length ? null : same + 1;
    }

    /// <summary>What every store keeps of a time.</summary>
    private static DateTime Milliseconds(DateTime at) =>
        new(at.Ticks - (at.Ticks % TimeSpan.TicksPerMillisecond), DateTimeKind.Utc);

    private static IEnumerable<EvidenceFault> Own(EvidenceEntry entry)
    {
        var told = CanonicalText.Write(entry);
        var isKept = Fingerprint.From(entry.Canonical) == entry.Sha256;
        var isTold = Fingerprint.From(told) == entry.Sha256;
        if (isKept && isTold)
        {
            yield break;
        }

        var at = FirstDifference(Encoding.UTF8.GetBytes(told), Encoding.UTF8.GetBytes(entry.Canonical));
        yield return (isKept, isTold) switch
        {
            (true, false) => new(Where(entry), "What is shown differs from what was frozen.") { Byte = at },
            (false, true) => new(Where(entry), "The frozen text was changed.") { Byte = at },
            _ when at is null => new(Where(entry), "The fingerprint is not that of its text."),
            _ => new(Where(entry), "Neither the frozen text nor what is shown has its fingerprint.")
            {
                Byte = at,
            },
        };
    }

    private static IEnumerable<EvidenceFault> Joint(EvidenceEntry entry, EvidenceEntry? before)
    {
        var number = (before?.Number ?? 0) + 1;
        if (entry.Number != number)
        {
            yield return new(Where(entry), Invariant($"Link {number} is missing or moved."));
        }

        if (entry.Before != (before?.Sha256 ?? ""))
        {
            yield return new(Where(entry), "It does not name the fingerprint of the link before it.");
        }

        if (before is not null && entry.Parcel != before.Parcel)
        {
            yield return new(Where(entry), "It belongs to another parcel.");
        }

        if (entry.Sha256.Length != Digits)
        {
            yield return new(Where(entry), "Its fingerprint is not one.");
        }
    }

    private static string Where(EvidenceEntry entry) => Invariant($"link {entry.Number}");
}
