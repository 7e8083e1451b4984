using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using Litterfall.Tests.EndToEnd.Papers;

[assembly: AssemblyFixture(typeof(PaperFolder))]

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// The papers of each sample, written once by the program as people run it and shared by all tests.
/// </summary>
public sealed class PaperFolder : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("litterfall-papers-").FullName;
    private readonly ConcurrentDictionary<string, Lazy<WrittenPapers>> written = new();
    private readonly ConcurrentDictionary<string, Lazy<JsonNode>> checks = new();
    private readonly Lazy<Dictionary<string, DxfFile>> audits;

    public PaperFolder() =>
        audits = new(() =>
            DxfFile.Read(Cli.Samples.SelectMany(s => Of(s).Files.Where(IsDxf).Select(f => Of(s).At(f))))
        );

    /// <summary>Papers of a sample on A4.</summary>
    internal WrittenPapers Of(string sample) =>
        written.GetOrAdd(sample, s => new(() => Write(s, Path.Combine(root, Name(s))))).Value;

    /// <summary>What the check says of a sample.</summary>
    internal JsonNode Check(string sample) =>
        checks.GetOrAdd(sample, s => new(() => Cli.Once("check", s, "--json").Json)).Value;

    /// <summary>An exchange file of a sample as ezdxf reads it.</summary>
    internal DxfFile Audit(string sample, string file) => audits.Value[Of(sample).At(file)];

    public void Dispose() => Directory.Delete(root, true);

    internal static WrittenPapers Write(string sample, string folder, params string[] more) =>
        Written(folder, Cli.Run(["papers", sample, "--out", folder, .. Day(sample, more), .. more]));

    /// <summary>The same by a process of its own.</summary>
    internal static WrittenPapers Start(string sample, string folder) =>
        Written(folder, Cli.Start(["papers", sample, "--out", folder, .. Day(sample, [])]));

    /// <summary>Papers of a tank in service count from today; the tests have one day for it.</summary>
    private static string[] Day(string sample, string[] more) =>
        sample.Contains("t-17", StringComparison.Ordinal) && !more.Contains("--from")
            ? ["--from", InProcess.Today.ToString("O", System.Globalization.CultureInfo.InvariantCulture)]
            : [];

    private static WrittenPapers Written(string folder, Ended ended)
    {
        Assert.True(ended.Code is 0 or 1, ended.ToString());
        return new WrittenPapers(folder, ended);
    }

    private static string Name(string sample) => Path.GetFileName(sample).Split('.')[0];

    private static bool IsDxf(string file) => file.EndsWith(".dxf", StringComparison.Ordinal);
}

/// <summary>A folder of papers and how the command ended that wrote it.</summary>
internal sealed class WrittenPapers
{
    private readonly ConcurrentDictionary<string, PdfPaper> read = new();

    public WrittenPapers(string folder, Ended ended)
    {
        (Folder, Ended) = (folder, ended);
        Files =
        [
            .. Directory
                .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/'))
                .Order(StringComparer.Ordinal),
        ];
    }

    public string Folder { get; }

    public Ended Ended { get; }

    /// <summary>Names below the folder, in order, with "/" between folders.</summary>
    public IReadOnlyList<string> Files { get; }

    public IEnumerable<string> Pdfs => Ending(".pdf");

    public IEnumerable<string> Ending(string end) =>
        Files.Where(f => f.EndsWith(end, StringComparison.Ordinal));

    public string At(string file) => Path.Combine(Folder, file);

    public string Text(string file) => File.ReadAllText(At(file));

    public PdfPaper Pdf(string file) => read.GetOrAdd(file, f => PdfPaper.Open(File.ReadAllBytes(At(f))));
}
