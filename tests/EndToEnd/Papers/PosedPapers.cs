using System.Collections.Concurrent;
using System.Xml.Linq;
using Litterfall.Documents.Papers;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>Papers of a design posed by a test, and what must hold whatever it says.</summary>
internal sealed class PosedPapers
{
    private static readonly ConcurrentDictionary<string, Lazy<PosedPapers>> Known = new(
        StringComparer.Ordinal
    );

    private PosedPapers(IReadOnlyList<PaperFile> files) => Files = files;

    public IReadOnlyList<PaperFile> Files { get; }

    /// <summary>The papers of a design, made once for all tests that pose the same.</summary>
    public static PosedPapers Of(Scratch scratch, string design) =>
        Known.GetOrAdd(design, text => new(() => Make(scratch, text))).Value;

    private static PosedPapers Make(Scratch scratch, string design)
    {
        var file = scratch.Write("posed.viv.yaml", design);
        return new PosedPapers(InProcess.Papers(file, InProcess.A4));
    }

    /// <summary>The text as YAML within double quotes.</summary>
    public static string Quoted(string text) =>
        $"\"{text.Replace("\\", "\\\\", Ordinal).Replace("\"", "\\\"", Ordinal)}\"";

    public IEnumerable<PaperFile> Ending(string end) => Files.Where(f => f.Name.EndsWith(end, Ordinal));

    /// <summary>Names stay below the folder, and each paper is one to three whole sides.</summary>
    public void AreWell()
    {
        Assert.All(Files, f => Assert.Matches("^((cut|drawings)/)?[a-z0-9.-]+$", f.Name));
        Assert.DoesNotContain(Files, f => f.Name.Contains("..", Ordinal));
        Assert.Equal(Files.Count, Files.DistinctBy(f => f.Name).Count());
        foreach (var file in Ending(".pdf"))
        {
            var paper = PdfPaper.Open(file.Bytes);
            // Cards are one a side; of a list of parts to cut none is left out; each box has its passport.
            string[] asLongAsItIs =
            [
                "02-step-cards.pdf",
                "03-cut-list.pdf",
                "04-glass-shop.pdf",
                "09-tank-passport.pdf",
                "09-labels.pdf",
            ];
            Assert.True(asLongAsItIs.Contains(file.Name) || paper.Sides.Count is >= 1 and <= 3, file.Name);
            foreach (var side in paper.Sides)
            {
                Sheet.IsWell(file.Name, side, Sheet.A4);
            }
        }

        foreach (var file in Ending(".svg"))
        {
            using var stream = new MemoryStream(file.Bytes);
            var root = XDocument.Load(stream).Root!;
            // Only what our writer draws; a name with markup would bring in more.
            Assert.All(root.DescendantsAndSelf(), e =>
                Assert.Contains(e.Name.LocalName, new[] { "svg", "title", "g", "path", "text" })
            );
            Assert.All(root.DescendantsAndSelf().Attributes(), a =>
                Assert.False(
                    a.Name.LocalName.StartsWith("on", Ordinal) || a.Name.LocalName == "href",
                    file.Name
                )
            );
        }
    }

    /// <summary>Writes the exchange files below a folder and gives their paths.</summary>
    public IEnumerable<string> Keep(string folder)
    {
        foreach (var file in Ending(".dxf"))
        {
            var path = Path.Combine(folder, file.Name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, file.Bytes);
            yield return path;
        }
    }

    private const StringComparison Ordinal = StringComparison.Ordinal;
}
