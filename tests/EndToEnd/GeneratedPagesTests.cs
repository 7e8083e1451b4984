using Litterfall.App;
using Litterfall.App.Pages;
using Litterfall.Planning;
using Litterfall.Verification;
using Xunit;

namespace Litterfall.Tests.EndToEnd;

/// <summary>
/// Generated pages are as the code would write them; LITTERFALL_WRITE_DOCS=1 rewrites them.
/// </summary>
public sealed class GeneratedPagesTests
{
    private const string Sample = "samples/ld-202-waiting-room.viv.yaml";

    [Fact]
    public void VerificationPageIsCurrent() =>
        Check(
            "docs/verification.md",
            VerificationPage.Write(
                [.. VerificationList.All().Select(c => c.Run())],
                Shop.Catalog(null).Value!
            )
        );

    [Fact]
    public void MainPathPageIsCurrent()
    {
        var design = Shop.Design(Path.Combine(Cli.Root, Sample), null).Value!;
        Check("docs/main-path.md", MainPathPage.Write(Sample, design, DesignRun.Execute(design)));
    }

    [Fact]
    public void EveryFindingHasItsLineInTheHandbook()
    {
        var page = File.ReadAllText(Path.Combine(Cli.Root, "docs/handbook/findings.md"));
        var rules = Directory.EnumerateFiles(
            Path.Combine(Cli.Root, "src/Planning/Judging"),
            "*.cs",
            SearchOption.AllDirectories
        );
        var slugs = rules
            .SelectMany(file =>
                System.Text.RegularExpressions.Regex.Matches(
                    File.ReadAllText(file),
                    "new Finding\\(\\s*\"([a-z-]+)\"",
                    System.Text.RegularExpressions.RegexOptions.ExplicitCapture
                        | System.Text.RegularExpressions.RegexOptions.None,
                    TimeSpan.FromSeconds(5)
                )
            )
            .Select(m => m.Value.Split('"')[1])
            .ToArray();
        Assert.True(slugs.Length >= 13, $"only {slugs.Length} findings were found in the code");
        Assert.All(slugs, slug => Assert.Contains($"`{slug}`", page, StringComparison.Ordinal));
    }

    private static void Check(string page, string text)
    {
        var path = Path.Combine(Cli.Root, page);
        if (Environment.GetEnvironmentVariable("LITTERFALL_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, text);
        }

        Assert.Equal(text, File.ReadAllText(path));
    }
}
