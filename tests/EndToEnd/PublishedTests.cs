using System.Diagnostics;
using System.Net;

namespace Litterfall.Tests.EndToEnd;

/// <summary>
/// The program that <c>./publish linux-x64</c> made, where it is there: one file, copied to an empty folder,
/// started without an SDK in reach.
/// </summary>
public sealed class PublishedTests
{
    private const string Sample = "tall-raised-floor.viv.yaml";
    private static readonly string Made = Path.Combine(Cli.Root, "out", "linux-x64", "litterfall");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>A folder with the program and a sample in it, and nothing else.</summary>
    private static Scratch Alone()
    {
        Assert.SkipUnless(
            OperatingSystem.IsLinux() && File.Exists(Made),
            "the Linux program is not made: run ./publish linux-x64"
        );
        var scratch = new Scratch();
        File.Copy(Made, scratch.At("litterfall"));
        File.Copy(Path.Combine(Cli.Root, "samples", Sample), scratch.At("tank.viv.yaml"));
        return scratch;
    }

    private static ProcessStartInfo Bare(Scratch scratch, params string[] words)
    {
        var start = new ProcessStartInfo(scratch.At("litterfall"), words)
        {
            WorkingDirectory = scratch.Folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment.Clear();
        start.Environment["HOME"] = scratch.Folder;
        start.Environment["DOTNET_BUNDLE_EXTRACT_BASE_DIR"] = scratch.At("unpacked");
        return start;
    }

    [Fact]
    public async Task It_checks_a_file_of_the_folder_it_is_started_in()
    {
        using var scratch = Alone();
        using var process = Process.Start(Bare(scratch, "check", "tank.viv.yaml"))!;
        var said = await process.StandardOutput.ReadToEndAsync(Cancel);
        await process.WaitForExitAsync(Cancel);
        Assert.True(process.ExitCode is 0 or 1, said);
        Assert.Equal(Cli.Run("check", Path.Combine("samples", Sample)).Out, said);
    }

    public static TheoryData<string> Samples =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Cli.Root, "samples"), "*.viv.yaml")
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>Compiled ahead of time or as it runs, the program says the same of every sample.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public async Task It_says_what_the_built_program_says(string sample)
    {
        using var scratch = Alone();
        using var process = Process.Start(Bare(scratch, "check", sample))!;
        var said = await process.StandardOutput.ReadToEndAsync(Cancel);
        await process.WaitForExitAsync(Cancel);
        Assert.Equal(Cli.Run("check", sample).Out, said);
    }

    [Fact]
    public async Task It_draws_papers()
    {
        using var scratch = Alone();
        using var process = Process.Start(Bare(scratch, "papers", "tank.viv.yaml", "--out", "papers"))!;
        var said = await process.StandardOutput.ReadToEndAsync(Cancel);
        await process.WaitForExitAsync(Cancel);
        Assert.True(process.ExitCode is 0 or 1, said);
        var sheet = await File.ReadAllBytesAsync(
            scratch.At(Path.Combine("papers", "01-build-sheet.pdf")),
            Cancel
        );
        Assert.Equal("%PDF"u8.ToArray(), sheet[..4]);
    }

    [Fact]
    public async Task It_answers_a_page_with_its_style_script_and_font()
    {
        using var scratch = Alone();
        using var process = Process.Start(
            Bare(scratch, "bench", "--listen", "127.0.0.1:0", "--store", scratch.At("bench.db"))
        )!;
        try
        {
            var line = await process.StandardOutput.ReadLineAsync(Cancel) ?? "";
            var address = line.Split(' ').First(w => w.StartsWith("http", StringComparison.Ordinal));
            using var client = new HttpClient { BaseAddress = new Uri(address) };
            var page = await client.GetStringAsync(new Uri("/", UriKind.Relative), Cancel);
            Assert.Contains("_content/Litterfall.Web/bench.css", page, StringComparison.Ordinal);
            foreach (
                var (file, kind) in new[]
                {
                    ("/_content/Litterfall.Web/bench.css", "text/css"),
                    ("/_content/Litterfall.Web/bench.js", "text/javascript"),
                    ("/_content/Litterfall.Web/fonts/Inter-Regular.ttf", "application/x-font-ttf"),
                    ("/_framework/blazor.web.js", "text/javascript"),
                }
            )
            {
                using var answer = await client.GetAsync(new Uri(file, UriKind.Relative), Cancel);
                Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
                Assert.Equal(kind, answer.Content.Headers.ContentType?.MediaType);
                Assert.True((await answer.Content.ReadAsByteArrayAsync(Cancel)).Length > 1000, file);
            }
        }
        finally
        {
            process.Kill();
            await process.WaitForExitAsync(Cancel);
        }
    }

    [Fact]
    public void Every_program_is_within_its_size_and_its_checksum_is_written()
    {
        var sums = Path.Combine(Cli.Root, "out", "SHA256SUMS");
        Assert.SkipUnless(File.Exists(sums), "nothing is published: run ./publish");
        foreach (var line in File.ReadLines(sums))
        {
            var name = line.Split("  ", 2)[1];
            var file = Path.Combine(Cli.Root, "out", name);
            Assert.True(
                name.EndsWith(".tar", StringComparison.Ordinal) || new FileInfo(file).Length <= 90e6,
                name
            );
            using var stream = File.OpenRead(file);
            var sum = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(stream));
            Assert.Equal(line.Split(' ')[0], sum);
        }
    }
}
