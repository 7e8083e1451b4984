using Litterfall.Domain.Findings;
using Litterfall.Instructions.Care;
using Litterfall.Quantities.Stocking;
using Litterfall.UnitTests.Instructions.Building;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Measures;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Instructions.Care;

/// <summary>
/// Warnings appear where the danger is and nowhere else. Which danger a build has is judged by hand from the
/// design, beside each list.
/// </summary>
public sealed class CautionsTests
{
    [Fact]
    public void A_planted_box_with_frogs_and_foam_gets_all_but_electricity()
    {
        // Bleach and plants, clay and peat dust, glass, foam, frogs of CITES II, chopped sphagnum; no plug.
        string[] expected =
        [
            "bleach",
            "dust",
            "glass",
            "foam",
            "germs",
            "sphagnum",
            "toxins",
            "heat",
            "vet",
            "supplements",
            "residues",
            "papers",
            "escape",
            "release",
            "mold",
        ];
        Assert.Equal(expected.Order(), Keys(Cautions.Of(Built.Foam)).Order());
    }

    [Fact]
    public void An_arid_box_without_animals_or_plants_gets_few()
    {
        // Sand dust, glass, crew that can overheat or escape and may need a permit; nothing to feed or to
        // dip.
        string[] expected = ["dust", "glass", "heat", "escape", "papers", "release", "mold"];
        Assert.Equal(expected.Order(), Keys(Cautions.Of(Built.Arid)).Order());
    }

    [Fact]
    public void Plugs_bring_the_warning_of_electricity()
    {
        var caution = Cautions.Of(Built.Inches).Single(c => c.Key == "electricity");
        // A box in inches: the practice of the United States first, the European class beside it.
        Assert.Contains("class A ground-fault device", caution.Text, StringComparison.Ordinal);
        Assert.Contains("30 mA devices are the European", caution.Text, StringComparison.Ordinal);
        Assert.Contains("licensed electrician", caution.Text, StringComparison.Ordinal);
        Assert.Equal(Protects.Person, caution.Protects);
    }

    [Fact]
    public void People_come_first_and_every_warning_has_a_source()
    {
        var all = Cautions.Of(Built.Foam);
        Assert.Equal(all.OrderByDescending(c => c.Protects).Select(c => c.Key), Keys(all));
        Assert.All(all, c =>
        {
            Assert.NotEqual("", c.Source.Place);
            Assert.Contains(c.Source.Source, Built.Foam.Design.Catalog.Sources.Keys);
            Assert.EndsWith(".", c.Text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Glass_defers_to_a_glazier_and_papers_to_the_authority()
    {
        var all = Cautions.Of(Built.Foam).ToDictionary(c => c.Key);
        Assert.Contains("glazier", all["glass"].Text, StringComparison.Ordinal);
        Assert.Contains("engineer", all["glass"].Text, StringComparison.Ordinal);
        Assert.Contains("authority", all["papers"].Text, StringComparison.Ordinal);
        Assert.Contains("veterinarian", all["vet"].Text, StringComparison.Ordinal);
        Assert.Contains("ammonia", all["bleach"].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Cool_forest_frogs_are_warned_earlier_and_warm_ones_not_inside_their_band()
    {
        // 25 °C for animals of cool forests, 27 °C for others, never below the top of the day band (from
        // memory: keeper and zoo practice); Agalychnis callidryas is kept at 24 to 28 °C by day.
        Assert.Contains("At 25 °C act", Heat("oophaga-pumilio"), StringComparison.Ordinal);
        Assert.Contains("At 27 °C act", Heat("dendrobates-auratus"), StringComparison.Ordinal);
        Assert.Contains("At 28 °C act at once", Heat("agalychnis-callidryas"), StringComparison.Ordinal);
    }

    private static string Heat(string animal) =>
        Cautions
            .Of(
                Posed
                    .Run(
                        "{ inside: { length: 60 cm, depth: 45 cm, height: 45 cm } }",
                        "{ soil: { recipe: ready-rainforest, depth: 5 cm } }",
                        $"animals: [ {{ animal: {animal}, count: 2 }} ]"
                    )
                    .Numbers
            )
            .Single(c => c.Key == "heat")
            .Text;

    private static IEnumerable<string> Keys(IEnumerable<Caution> cautions) => cautions.Select(c => c.Key);
}
