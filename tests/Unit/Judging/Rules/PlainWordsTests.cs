using Litterfall.Domain.Findings;
using Litterfall.Judging;
using Litterfall.UnitTests.Documents;
using Litterfall.UnitTests.House;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Findings, what to do about them, and papers speak plain words, never those of a file.</summary>
public sealed class PlainWordsTests
{
    [Theory]
    [InlineData("Tape it and write latched: true.", true)]
    [InlineData("Enter it as light.reading.", true)]
    [InlineData("Write shelf: { rated: ... kg }.", true)]
    [InlineData("Add the packs to prices.json.", true)]
    [InlineData("See water.gainMlPerDay.", true)]
    [InlineData("That brings crew-eaten-up.", true)]
    [InlineData("A layer of expanded-clay-8-16.", true)]
    [InlineData("It lies at plants[2].", true)]
    [InlineData("Mist 182 mL a day or less, or let more air through.", false)]
    [InlineData("The lid overlaps: 6 mm on each side, at pH 6 and 0.5 kPa.", false)]
    [InlineData("A low-set vent in front, and a ground-fault device.", false)]
    public void File_syntax_is_known(string text, bool isSyntax) =>
        Assert.Equal(isSyntax, FileSyntax.In(text).Any());

    [Theory]
    [MemberData(nameof(RuleCaseTests.Cases), MemberType = typeof(RuleCaseTests))]
    public void A_finding_of_a_rule_speaks_plain_words(RuleCase one) =>
        Check(Posed.Text(one.With(one.Trips)), one.Rule);

    [Theory]
    [MemberData(nameof(EveryRuleTests.Samples), MemberType = typeof(EveryRuleTests))]
    public void A_finding_of_a_sample_speaks_plain_words(string sample)
    {
        var posed = Posed.Sample($"samples/{sample}");
        Assert.All(RuleBook.All, rule => Check(posed, rule.Slug));
    }

    [Theory]
    [MemberData(nameof(EveryRuleTests.Samples), MemberType = typeof(EveryRuleTests))]
    public void A_paper_of_a_sample_speaks_plain_words(string sample)
    {
        var faults = SamplePapers
            .Of($"samples/{sample}")
            .Texts.SelectMany(paper => FileSyntax.In(paper.Text).Select(fault => $"{paper.Name}: {fault}"))
            .Distinct(StringComparer.Ordinal)
            .ToArray();
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    private static void Check(PosedDesign posed, string slug) => Assert.All(posed.FindingsOf(slug), finding =>
        {
            Assert.Empty(FileSyntax.In(Said(finding)));
            Assert.All(RuleBook.Fixes(finding, posed.Design), fix => Assert.Empty(FileSyntax.In(fix.Words)));
        });

    private static string Said(Finding finding) => $"{finding.Text} {finding.Fix}";
}
