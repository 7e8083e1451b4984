using Litterfall.App.Pages;
using Litterfall.Judging;
using Litterfall.Tests.EndToEnd.Papers;
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
    public void MainPathPageIsCurrent()
    {
        var result = InProcess.Sample(Sample);
        Check("docs/main-path.md", MainPathPage.Write(Sample, result.Numbers.Design, result));
    }

    [Fact]
    public void FindingsPageIsCurrentAndHasEveryRule()
    {
        var page = FindingsPage.Write();
        Check("docs/handbook/findings.md", page);
        Assert.True(RuleBook.All.Length >= 13, $"only {RuleBook.All.Length} rules are listed");
        Assert.All(RuleBook.All, rule =>
            Assert.Single(page.Split('\n'), line => line.StartsWith($"| `{rule.Slug}` |", Ordinal))
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
