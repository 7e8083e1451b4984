using Litterfall.Domain.Dispatch;
using static System.FormattableString;

namespace Litterfall.Dispatch.Evidence;

/// <summary>How the links of an exported chain hang together, and with the files that they name.</summary>
internal static class LinkJoints
{
    /// <summary>Everything that does not fit.</summary>
    public static IEnumerable<EvidenceFault> Check(List<LinkText> links, List<ZipPart> parts)
    {
        if (links.Count == 0)
        {
            yield return new("the file", "There is no link in it.");
        }

        for (var i = 0; i < links.Count; i++)
        {
            foreach (var text in Joint(links, i))
            {
                yield return new(links[i].Name, text);
            }

            foreach (var fault in links[i].Files.Select(f => Named(f, parts)).OfType<EvidenceFault>())
            {
                yield return fault;
            }
        }
    }

    private static IEnumerable<string> Joint(List<LinkText> links, int i)
    {
        var link = links[i];
        if (link.Form != CanonicalText.Form)
        {
            yield return "Its first line does not name a form that this version reads.";
        }

        if (link.Number != i + 1)
        {
            yield return Invariant($"Link {i + 1} should stand here.");
        }

        if (link.Parcel != links[0].Parcel)
        {
            yield return "It belongs to another parcel.";
        }

        if (link.Before != (i == 0 ? CanonicalText.None : links[i - 1].Sha256))
        {
            yield return i == 0
                ? "The first link names a link before it."
                : $"It does not name the fingerprint of {links[i - 1].Name}.";
        }
    }

    private static EvidenceFault? Named(string[] file, List<ZipPart> parts)
    {
        if (file.Length != 3)
        {
            return null;
        }

        var part = parts.Find(p => p.Name == file[2]);
        return part is null ? new(file[2], "A link names this file, and it is not there.")
            : Fingerprint.From(part.Bytes) != file[0]
                ? new(file[2], "It is not the file whose fingerprint the link names.")
            : null;
    }
}
