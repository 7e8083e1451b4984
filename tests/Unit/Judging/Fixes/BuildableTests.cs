using Litterfall.Domain.Checking;
using Litterfall.Domain.Findings;
using Litterfall.Judging;
using Litterfall.Judging.Fixes;
using Litterfall.UnitTests.Judging.Rules;
using Xunit;

namespace Litterfall.UnitTests.Judging.Fixes;

/// <summary>A design with several stops becomes one without a stop that a checked change solves.</summary>
public sealed class BuildableTests
{
    [Theory]
    [InlineData(FaultyBoxes.ThinAndCrowded)]
    [InlineData(FaultyBoxes.HighAndOpen)]
    [InlineData(FaultyBoxes.Pairs)]
    public void A_faulty_box_has_no_stop_left(string text)
    {
        var before = Posed.Text(text).Whole;
        Assert.Contains(before.Open, f => f.Severity == Severity.Stop);
        var after = Check(before);
        Assert.Empty(after.Open.Where(f => f.Severity == Severity.Stop).Select(f => f.Slug));
    }

    [Theory]
    [MemberData(nameof(EveryRuleTests.Samples), MemberType = typeof(EveryRuleTests))]
    public void A_sample_has_no_stop_left_that_a_fix_solves(string sample)
    {
        var before = Posed.Sample($"samples/{sample}").Whole;
        if (before.Stops)
        {
            Check(before);
        }
    }

    /// <summary>Looked at anew from the text alone, by a whole check.</summary>
    private static DesignResult Check(DesignResult before)
    {
        var cancel = TestContext.Current.CancellationToken;
        var plan = Buildable.Search(before, cancel: cancel);
        Assert.NotNull(plan);
        Assert.NotEmpty(plan.Changes);
        Assert.All(plan.Changes, words => Assert.Empty(House.FileSyntax.In(words)));
        var design = before.Numbers.Design;
        var after = DesignRun.Execute(
            DesignChecker.Check(plan.Document, design.Catalog, design.Files).Value!,
            cancel
        );
        Assert.True(Stops(after) <= Stops(before));
        Assert.True(plan.Solved > 0);
        var fixes = new CheckedFixes(after) { Cancel = cancel };
        Assert.All(after.Open.Where(f => f.Severity == Severity.Stop), stop =>
            Assert.Null(fixes.Quick(stop))
        );
        return after;
    }

    private static int Stops(DesignResult result) => result.Open.Count(f => f.Severity == Severity.Stop);
}
