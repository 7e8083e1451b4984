using System.Text;
using Litterfall.Domain.Dispatch;
using static System.FormattableString;

namespace Litterfall.Dispatch.Evidence;

/// <summary>The page in an exported zip that tells a stranger how to check it.</summary>
internal static class ReadmeText
{
    /// <summary>Writes it.</summary>
    public static string Write(IReadOnlyList<EvidenceEntry> entries)
    {
        var text = new StringBuilder();
        text.Append(Invariant($"Evidence of parcel {entries[0].Parcel}\n\n"));
        text.Append(
            """
            Each numbered text file is one link: what was known or done at one moment, and when. It was
            written then and never changed. 0001 holds the forecast, the verdict with its reasons and the
            packing list as the parcel was cleared; open it with any text editor.

            1. Are all files as they were written?
               Unpack the zip, open a terminal in the folder and type
                 Linux, Windows with Linux tools:  sha256sum -c SHA256SUMS
                 macOS:                            shasum -a 256 -c SHA256SUMS
                 Windows (PowerShell), per file:   Get-FileHash 0001-cleared.txt
               Every line must say OK; in PowerShell the number must be that in SHA256SUMS.

            2. Is no link missing, changed or put in?
               sha256sum of a link gives the number that stands on the line "before:" of the next link.
               The first link says "before: none"; its line "shop-before:" names the last link of the
               parcel that was sent before.

            3. Was the whole chain written anew?
               Compare the first sixteen digits of the first link with the packing card that lay in the
               parcel and with the message the customer got. They were printed when the parcel was cleared.
               Was a link cut off or added at the end? The parcel that the shop sent next names the last
               link on its line "shop-before:"; ask the shop for it.

            Photos and logger files lie in the folder "files"; links name them with their fingerprints
            (SHA-256) and lengths in bytes. Times are UTC.

            Links

            """.ReplaceLineEndings("\n")
        );
        foreach (var entry in entries)
        {
            text.Append(
                Invariant(
                    $"  {EvidenceExport.LinkName(entry)}  {entry.At:yyyy-MM-dd HH:mm} UTC, {entry.Who}\n"
                )
            );
            text.Append(Invariant($"    {entry.Sha256}\n"));
        }

        return text.ToString();
    }
}
