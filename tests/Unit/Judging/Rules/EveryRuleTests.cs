using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.UnitTests.House;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>What holds for every rule, whoever wrote it.</summary>
public sealed class EveryRuleTests
{
    private const StringComparison Ordinal = StringComparison.Ordinal;

    public static TheoryData<string> Samples => [.. SampleFiles()];

    [Fact]
    public void Slugs_are_unique_and_spelled_alike()
    {
        Assert.All(RuleBook.All, rule => Assert.Matches("^[a-z]+(-[a-z]+)*$", rule.Slug));
        Assert.Empty(
            RuleBook
                .All.GroupBy(rule => rule.Slug, StringComparer.Ordinal)
                .Where(group => group.Count() > 1)
                .Select(group => group.Key)
        );
    }

    [Fact]
    public void Every_rule_says_when_it_trips() => Assert.All(RuleBook.All, rule =>
        {
            Assert.True(rule.TripsWhen.Length > 10, rule.Slug);
            Assert.True(char.IsLower(rule.TripsWhen[0]), rule.Slug);
            Assert.DoesNotContain('|', rule.TripsWhen);
            Assert.False(rule.TripsWhen.EndsWith('.'), rule.Slug);
        });

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_finding_carries_the_slug_of_its_rule_and_what_that_protects(string sample)
    {
        var numbers = Posed.Sample($"samples/{sample}").Numbers;
        foreach (var rule in RuleBook.All)
        {
            Assert.All(rule.Judge(numbers), finding => IsOf(rule, finding));
        }
    }

    /// <summary>Nothings and zeros that the reader lets through.</summary>
    [Theory]
    [InlineData("{ soil: { recipe: ready-rainforest, depth: 0 cm } }", "")]
    [InlineData("{ litter: { material: oak-leaves, depth: 0 cm, cover: 0 % } }", "lid: { material: glass }")]
    [InlineData("{ drainage: { raised: 0 cm } }", "drain: { kind: standpipe, height: 0 cm }")]
    [InlineData(
        "{ drainage: { material: pumice, depth: 5 cm }, soil: { recipe: ready-rainforest, front: 0 "
            + "cm, back: 9 cm } }",
        "misting: { nozzles: 1, each: 0 mL/min }"
    )]
    [InlineData(
        "{ soil: { recipe: sand, depth: 5 cm } }",
        "heating: { watts: 0, cover: 0 % }\nvents: [ { area: 0 cm2 }, { length: 0 cm, width: 0 cm, "
            + "height: 0 cm } ]"
    )]
    [InlineData(
        "{ soil: { recipe: sand, depth: 5 cm } }",
        "animals: [ { animal: ranitomeya-imitator, count: 0 } ]\nhardscape: [ { material: slate, "
            + "volume: 0 L } ]\n"
            + "passages: [ { for: hose, hole: 0 mm, through: 0 mm } ]\nlamps: [ { lamp: led-bar-6500k } ]\n"
            + "hygiene: { bleach: 0.001 %, bath: 0 L }\nelectrics: { trip: 0 mA }"
    )]
    public void No_rule_breaks_on_little(string floor, string more)
    {
        foreach (
            var box in new[]
            {
                RuleCheck.Cube,
                RuleCheck
                    .Cube.Replace("length: 45 cm", "length: 10 cm", Ordinal)
                    .Replace("walls: 5 mm", "walls: 50 mm", Ordinal),
            }
        )
        {
            var numbers = Posed.Run(box, floor, more).Numbers;
            Assert.All(RuleBook.All, rule => Assert.All(rule.Judge(numbers), finding =>
                {
                    IsOf(rule, finding);
                    Assert.DoesNotContain("NaN", finding.Text + finding.Fix, Ordinal);
                    Assert.DoesNotContain("∞", finding.Text + finding.Fix, Ordinal);
                }));
        }
    }

    /// <summary>A rule that asked for more than the stage it declares would throw.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void A_rule_keeps_to_the_stage_it_declares(string sample)
    {
        var numbers = Posed.Sample($"samples/{sample}").Numbers;
        Assert.All(RuleBook.All, rule =>
            Assert.Equal(
                rule.Judge(numbers).Select(Said),
                rule.Judge(numbers.Within(rule.Needs)).Select(Said)
            )
        );
    }

    [Fact]
    public void Asking_beyond_a_stage_is_told() =>
        Assert.Throws<InvalidOperationException>(() =>
            Posed.Run(RuleCheck.Cube, RuleCheck.Floor).Numbers.Within(Stage.Shape).Weights
        );

    private static string Said(Finding f) =>
        FormattableString.Invariant(
            $"{f.Severity} {f.Where} {f.Text} {f.Fix} {f.Measured?.Si:R} {f.Limit?.Si:R}"
        );

    private static void IsOf(Litterfall.Judging.Rules.Rule rule, Finding finding)
    {
        Assert.Equal(rule.Slug, finding.Slug);
        Assert.Equal(rule.Protects, finding.Protects);
        Assert.True(finding.Text.Length > 20 && finding.Text[^1] == '.', finding.Text);
        Assert.True(finding.Fix.Length > 10 && finding.Fix[^1] == '.', finding.Fix);
        Assert.NotEmpty(finding.Where);
        // The report shows the limit in the unit of the measured value.
        Assert.True(
            finding.Measured is null
                || finding.Limit is null
                || finding.Measured.Dimension == finding.Limit.Dimension,
            rule.Slug
        );
    }

    private static IEnumerable<string> SampleFiles() =>
        Directory
            .EnumerateFiles(SourceTree.Path("samples"), "*.viv.yaml")
            .Select(file => Path.GetFileName(file))
            .Order(StringComparer.Ordinal);
}
