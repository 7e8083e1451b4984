using Litterfall.Documents.Text;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Judging;
using Litterfall.UnitTests.Documents;
using Litterfall.UnitTests.Judging.Rules;
using Xunit;

namespace Litterfall.UnitTests.Judging;

/// <summary>A finding is accepted with a reason, is told apart, and never where life is at stake.</summary>
public sealed class AcceptanceTests
{
    private const string Thin = "{ soil: { recipe: ready-rainforest, depth: 2 cm } }";
    private static readonly DateOnly Day = new(2026, 8, 14);

    /// <summary>Signs that mean something in a design file.</summary>
    [Theory]
    [InlineData("The roots are pruned.")]
    [InlineData("customer: \"as is\", { really } # yes")]
    [InlineData("two\nlines\tof it")]
    [InlineData("- none")]
    public void An_accepted_finding_is_told_apart_with_its_reason(string reason)
    {
        var before = RuleCheck.Pose("", Thin);
        var finding = before.Findings.First(f => f.Slug == "soil-too-thin");
        Assert.True(Acceptances.MayAccept(finding));
        var edit = Acceptances.Accept(before.Design.Document, finding, reason, Day, "R. Keeper");
        Assert.True(edit.IsGood, string.Join("; ", edit.Faults));
        var after = Posed.Text(edit.Value!.Text);

        var accepted = Assert.Single(after.Findings, f => f.Slug == "soil-too-thin");
        Assert.False(accepted.IsOpen);
        var said = string.Join(' ', reason.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal((said, Day, "R. Keeper"), Said(accepted));
        Assert.Equal(before.Findings.Length, after.Findings.Length);
        Assert.Equal(before.Whole.Open.Count() - 1, after.Whole.Open.Count());
        Assert.Contains("Accepted: The soil is 2 cm deep", CheckText.Write(after.Whole), Ordinal);
        Assert.Equal(edit.Value.Design, DesignReader.Read("again", edit.Value.Text).Value!.Design);
    }

    /// <summary>A box of 40 kg on a shelf that bears 20: it may fall on somebody.</summary>
    [Fact]
    public void A_stop_that_protects_life_cannot_be_accepted()
    {
        var one = RuleCase.All.Single(c => c.Rule == "overheats");
        var hot = Posed.Text(one.With(one.Trips));
        var stop = hot.Findings.First(f => f.Slug == "overheats");
        Assert.False(Acceptances.MayAccept(stop));
        Assert.False(Acceptances.Accept(hot.Design.Document, stop, "we like it hot", Day).IsGood);

        var forced = DesignEdits.Add(
            hot.Design.Document,
            "accepted",
            "{ finding: overheats, reason: we like it hot, on: 2026-08-14 }"
        );
        var after = Posed.Text(forced.Value!.Text);
        Assert.All(after.Findings.Where(f => f.Slug == "overheats"), f => Assert.True(f.IsOpen));
        Assert.True(after.Stops);
        Assert.Contains(after.Findings, f =>
            f.Slug == "acceptance-refused" && f.Text.Contains("an animal", Ordinal)
        );
    }

    /// <summary>Of two plants too near their box's edges, one is meant by its place in the list.</summary>
    [Fact]
    public void An_acceptance_holds_for_its_part_alone_and_follows_it()
    {
        const string ferns =
            "plants: [ { plant: pilea-glauca, count: 1 }, { plant: asplenium-nidus, at: { x: 20 cm, y: 20 "
            + "cm } }, "
            + "{ plant: asplenium-nidus, at: { x: 30 cm, y: 30 cm } } ]";
        var posed = RuleCheck.Pose(ferns.Replace("pilea-glauca", "fittonia-albivenis", Ordinal));
        var second = posed.Findings.First(f => f is { Slug: "plant-outgrows-box", About: "plants[2].plant" });
        var edit = Acceptances.Accept(posed.Design.Document, second, "replaced each spring", Day);
        var after = Posed.Text(edit.Value!.Text);
        Assert.Equal(["plants[2].plant"], Accepted(after));

        var without = DesignEdits.Remove(edit.Value, "plants[0]");
        Assert.Equal(["plants[1].plant"], Accepted(Posed.Text(without.Value!.Text)));
        var gone = DesignEdits.Remove(edit.Value, "plants[2]");
        Assert.Empty(gone.Value!.Design.Accepted);
    }

    [Fact]
    public void The_papers_print_what_is_accepted_and_why()
    {
        var posed = Posed.Sample("samples/ld-202-waiting-room.viv.yaml");
        var heavy = posed.Findings.First(f => f.Slug == "plant-in-wrong-place");
        var edit = Acceptances.Accept(posed.Design.Document, heavy, "it sits on cork already", Day);
        var files = posed.Design.Files;
        var result = DesignRun.Execute(
            Litterfall.Domain.Checking.DesignChecker.Check(edit.Value!, posed.Design.Catalog, files).Value!,
            TestContext.Current.CancellationToken
        );
        var papers = new WrittenPapers(
            new Litterfall.Documents.Papers.PaperJob(
                result,
                SamplePapers.Wish(Litterfall.Documents.Layout.PaperSize.A4),
                null
            )
        );
        foreach (var sheet in new[] { "01-build-sheet.pdf", "08-cautions.pdf" })
        {
            var text = papers.Texts.Single(p => p.Name == sheet).Text;
            Assert.Contains("it sits on cork already", text, Ordinal);
        }
    }

    private const StringComparison Ordinal = StringComparison.Ordinal;

    private static (string, DateOnly, string?) Said(Finding finding) =>
        (finding.Accepted!.Reason, finding.Accepted.On, finding.Accepted.By);

    private static string[] Accepted(PosedDesign posed) =>
        [.. posed.Findings.Where(f => !f.IsOpen).Select(f => f.About)];
}
