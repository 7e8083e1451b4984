using Litterfall.Dispatch.Packing;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static Litterfall.UnitTests.Dispatch.Packing.PackingExamples;

namespace Litterfall.UnitTests.Dispatch.Packing;

/// <summary>Which papers are needed and which are asked for (common practice, no source).</summary>
public sealed class AnimalPapersTests
{
    private static Seq<AnimalPaper> List(string key, string region = "near", string home = "home") =>
        AnimalPapers.List(
            Parcel(new LiveContent(key, 1)) with
            {
                Region = region,
            },
            Catalog,
            Rules with
            {
                HomeRegion = home,
            },
            Tuesday
        );

    private static bool Needs(Seq<AnimalPaper> papers, string key) =>
        papers.Any(p => p.IsNeeded && p.Key.StartsWith(key, StringComparison.Ordinal));

    private static bool Asks(Seq<AnimalPaper> papers, string key) =>
        papers.Any(p => !p.IsNeeded && p.Key.StartsWith(key, StringComparison.Ordinal));

    [Fact]
    public void Appendix_two_needs_proof_of_breeding_and_a_permit_where_it_crosses_a_border()
    {
        var near = List("dendrobates-auratus");
        Assert.True(Needs(near, "origin/") && Needs(near, "captive-bred/"));
        Assert.False(Needs(near, "cites-permit/") || Asks(near, "cites-permit/"));
        Assert.True(Needs(List("dendrobates-auratus", "abroad"), "cites-permit/"));
        Assert.True(Asks(List("dendrobates-auratus", "anywhere"), "cites-permit/"));
    }

    [Fact]
    public void Appendix_one_needs_a_certificate_too()
    {
        Assert.True(Needs(List("lygodactylus-williamsi"), "certificate/"));
        Assert.False(Needs(List("dendrobates-auratus"), "certificate/"));
    }

    [Fact]
    public void An_animal_of_no_appendix_still_needs_its_origin()
    {
        var papers = List("ranoidea-caerulea");
        Assert.True(Needs(papers, "origin/"));
        Assert.DoesNotContain(papers, p => p.Text.Contains("CITES", StringComparison.Ordinal));
    }

    [Fact]
    public void Plants_need_a_passport_in_states_that_have_it_and_elsewhere_somebody_asks()
    {
        Assert.True(Needs(List("begonia-rex"), "plant-passport/"));
        Assert.True(Asks(List("begonia-rex", "anywhere", "anywhere"), "plant-passport/"));
        Assert.True(Asks(List("begonia-rex", "abroad"), "phytosanitary/"));
        Assert.True(Needs(List("ludisia-discolor"), "propagated/"));
    }

    [Fact]
    public void Invertebrates_are_asked_for()
    {
        Assert.True(Asks(List("porcellio-scaber"), "movement/"));
        Assert.True(Asks(List("drosophila-hydei"), "movement/"));
    }

    [Theory]
    [InlineData("2026-10-01", true, true)]
    [InlineData("2026-05-01", true, false)]
    [InlineData("2026-12-01", true, false)]
    [InlineData("2026-10-01", false, false)]
    public void The_carriers_consent_grows_old(string read, bool takes, bool isThere)
    {
        // 180 days before 24 November 2026 is 28 May.
        var rules = Rules with
        {
            Carriers =
            [
                Carrier with
                {
                    TakesAnimals = takes,
                    RulesReadOn = DateOnly.Parse(read, System.Globalization.CultureInfo.InvariantCulture),
                },
            ],
        };
        var papers = AnimalPapers.List(
            Parcel(new LiveContent("dendrobates-auratus", 1)),
            Catalog,
            rules,
            Tuesday
        );
        Assert.Equal(isThere, papers.Single(p => p.Key == "carrier-consent").IsThere);
    }

    [Fact]
    public void What_was_looked_at_is_no_longer_missing()
    {
        var parcel = Parcel(new LiveContent("dendrobates-auratus", 1));
        var all = AnimalPapers.List(parcel, Catalog, Rules, Tuesday);
        Assert.Equal(2, AnimalPapers.Missing(all).Count);
        parcel = parcel with { Papers = [.. all.Select(p => p.Key)] };
        Assert.Empty(AnimalPapers.Missing(AnimalPapers.List(parcel, Catalog, Rules, Tuesday)));
    }
}
