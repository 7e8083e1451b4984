using Litterfall.App.Files;
using Litterfall.App.Pages;
using Litterfall.Judging;
using Litterfall.Verification;
using Xunit;

namespace Litterfall.Tests.EndToEnd;

/// <summary>
/// Generated pages are as the code would write them; LITTERFALL_WRITE_DOCS=1 rewrites them.
/// </summary>
public sealed class GeneratedPagesTests
{
    private const StringComparison Ordinal = StringComparison.Ordinal;
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
    public void FindingsPageIsCurrentAndHasEveryRule()
    {
        var page = FindingsPage.Write();
        Check("docs/handbook/findings.md", page);
        Assert.True(RuleBook.All.Length >= 13, $"only {RuleBook.All.Length} rules are listed");
        Assert.All(
            RuleBook.All,
            rule => Assert.Single(page.Split('\n'), line => line.StartsWith($"| `{rule.Slug}` |", Ordinal))
        );
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
