using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.IO.Compression;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Pdf;

namespace Litterfall.Web.Library;

/// <summary>All documents of a design for one size of paper, and what was made of them.</summary>
/// <param name="Files">The documents in order.</param>
/// <param name="Mark">Changes with the documents; pictures carry it in their address.</param>
/// <param name="Boxes">How many boxes.</param>
/// <param name="Batch">Figures of one box and of all; empty for a single box.</param>
public sealed record PaperSet(
    IReadOnlyList<PaperFile> Files,
    string Mark,
    int Boxes,
    ImmutableArray<BatchRow> Batch
)
{
    /// <summary>Widths of pictures, pixels: in the list, enlarged, and enlarged on a fine screen.</summary>
    public static readonly ImmutableArray<int> Widths = [560, 1240, 1754];

    private readonly ConcurrentDictionary<(string Name, int Page, int Width), Lazy<byte[]>> pictures = new();
    private readonly Lazy<byte[]> all = new(() => Zipped(Files));
    private readonly Lazy<byte[]> print = new(() =>
        PdfWriter.Write(
            "Build documents",
            DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date),
            Files.SelectMany(f => f.Pages)
        )
    );

    /// <summary>Everything in one zip.</summary>
    public byte[] Zip => all.Value;

    /// <summary>All sheets in one PDF.</summary>
    public byte[] Print => print.Value;

    /// <summary>A document by its name; null where there is none.</summary>
    /// <param name="name">Name below the folder.</param>
    public PaperFile? Find(string name) => Files.FirstOrDefault(f => f.Name == name);

    /// <summary>A page as a picture; null where there is no such page or width.</summary>
    /// <param name="name">The document.</param>
    /// <param name="page">1 for its first page.</param>
    /// <param name="width">One of the widths.</param>
    public byte[]? Picture(string name, int page, int width) =>
        Find(name) is { } file && page >= 1 && page <= file.Pages.Length && Widths.Contains(width)
            ? pictures
                .GetOrAdd((name, page, width), _ => new(() => PageImage.Write(file.Pages[page - 1], width)))
                .Value
            : null;

    private static byte[] Zipped(IReadOnlyList<PaperFile> files)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var file in files)
            {
                using var entry = zip.CreateEntry(file.Name, CompressionLevel.Fastest).Open();
                entry.Write(file.Bytes);
            }
        }

        return bytes.ToArray();
    }
}
