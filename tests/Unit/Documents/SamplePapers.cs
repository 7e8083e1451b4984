using System.Collections.Concurrent;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Judging.Levers;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Documents;

/// <summary>The papers of the samples as models of pages, computed once for all tests.</summary>
internal static class SamplePapers
{
    private static readonly ConcurrentDictionary<string, Lazy<WrittenPapers>> Known = new(
        StringComparer.Ordinal
    );

    /// <summary>Papers of a sample.</summary>
    public static WrittenPapers Of(string path) =>
        Known
            .GetOrAdd(path, p => new(() =>
                {
                    var result = Posed.Sample(p).Whole;
                    return new WrittenPapers(
                        new PaperJob(result, Wish(PaperSize.A4), SettingsCard.Of(result.Numbers))
                    );
                }))
            .Value;

    /// <summary>The words of a page without the check bar, which is a length of its own.</summary>
    public static string Bare(Drawing page) =>
        WrittenPapers
            .Text(page)
            .Replace("print at 100 %: this bar is 100 mm long", "", StringComparison.Ordinal);

    public static PaperWish Wish(PaperSize size) => new(size, null, "test", false);
}

/// <summary>The papers of one design.</summary>
internal sealed class WrittenPapers(PaperJob job)
{
    private readonly Lazy<IReadOnlyList<PaperFile>> files = new(() => PaperList.Write(job));

    public PaperJob Job => job;

    public IReadOnlyList<PaperFile> Files => files.Value;

    /// <summary>All words of a paper in the order they are set, wrapped lines joined.</summary>
    public IEnumerable<(string Name, string Text)> Texts =>
        Files.Where(f => f.Pages.Length > 0).Select(f => (f.Name, string.Join(" ", f.Pages.Select(Text))));

    public static string Text(Drawing page) =>
        string.Join(" ", page.Marks.OfType<TextMark>().Select(m => m.Text));
}
