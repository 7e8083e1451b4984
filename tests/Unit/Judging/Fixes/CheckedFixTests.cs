using Litterfall.Domain.Checking;
using Litterfall.Domain.Findings;
using Litterfall.Judging;
using Litterfall.Judging.Fixes;
using Litterfall.UnitTests.Judging.Rules;
using Xunit;

namespace Litterfall.UnitTests.Judging.Fixes;

/// <summary>
/// What is offered solves its finding and brings nothing worse, looked at anew by a whole check from the text
/// alone.
/// </summary>
public sealed class CheckedFixTests
{
    /// <summary>Samples whose checks take longest, looked at in long runs only.</summary>
    private static readonly string[] Slow = ["ld-203-museum-foyer.viv.yaml", "tall-raised-floor.viv.yaml"];

    public static TheoryData<string> Samples =>
        [.. EveryRuleTests.Samples.Select(s => s.Data).Where(s => LongRun.IsAsked || !Slow.Contains(s))];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Each_fix_offered_for_a_sample_solves_its_finding(string sample) =>
        Check(Posed.Sample($"samples/{sample}").Whole);

    [Theory]
    [InlineData(FaultyBoxes.ThinAndCrowded)]
    [InlineData(FaultyBoxes.HighAndOpen)]
    [InlineData(FaultyBoxes.Pairs)]
    public void Each_fix_offered_for_a_faulty_box_solves_its_finding(string text) =>
        Assert.NotEmpty(Check(Posed.Text(text).Whole));

    /// <summary>
    /// A species kept as a pair: of two males and three females one of each stays, so that the stop is gone.
    /// </summary>
    [Fact]
    public void Fewer_animals_are_a_pair_where_sexes_are_entered()
    {
        var result = Posed.Text(FaultyBoxes.Pairs).Whole;
        var stop = result.Findings.First(f => f.Slug == "group-rule-broken");
        Assert.Equal(Severity.Stop, stop.Severity);
        var fix = new CheckedFixes(result).Quick(stop);
        Assert.NotNull(fix);
        var animals = fix.Document.Design.Animals[0];
        Assert.Equal((2, 1, 1), (animals.Count, animals.Males, animals.Females));
        Assert.Equal("2 animals: 1 male and 1 female", fix.Words);
    }

    [Fact]
    public void A_search_ends_when_it_is_canceled()
    {
        var result = Posed.Text(FaultyBoxes.HighAndOpen).Whole;
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();
        Assert.Throws<OperationCanceledException>(() => Buildable.Search(result, cancel: cancel.Token));
    }

    private static List<CheckedFix> Check(DesignResult result)
    {
        var fixes = new CheckedFixes(result) { Cancel = TestContext.Current.CancellationToken };
        List<CheckedFix> offered = [.. fixes.All()];
        Assert.All(offered, fix => Solves(result, fix));
        return offered;
    }

    private static void Solves(DesignResult before, CheckedFix fix)
    {
        var design = before.Numbers.Design;
        var after = DesignRun.Execute(DesignChecker.Check(fix.Document, design.Catalog, design.Files).Value!);
        var name = $"{fix.Finding.Slug} at {fix.Finding.Where}: {fix.Words}";
        Assert.True(Count(after, fix.Finding.Slug) < Count(before, fix.Finding.Slug), name);
        foreach (var least in new[] { Severity.Stop, Severity.Caution })
        {
            if (least == Severity.Stop || fix.Finding.Severity < Severity.Stop)
            {
                Assert.All(after.Open.Where(f => f.Severity >= least).GroupBy(f => f.Slug), now =>
                    Assert.True(now.Count() <= Weighty(before, now.Key, least), $"{name} brings {now.Key}")
                );
            }
        }
    }

    private static int Count(DesignResult result, string slug) => result.Open.Count(f => f.Slug == slug);

    private static int Weighty(DesignResult result, string slug, Severity least) =>
        result.Open.Count(f => f.Slug == slug && f.Severity >= least);
}
