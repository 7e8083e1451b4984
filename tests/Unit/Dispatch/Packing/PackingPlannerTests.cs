using Litterfall.Dispatch.Packing;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Trade;
using static Litterfall.UnitTests.Dispatch.Packing.PackingExamples;

namespace Litterfall.UnitTests.Dispatch.Packing;

/// <summary>
/// Cups after the principle of air transport and keeper practice (three times the length from snout to vent,
/// 240 to 475 mL for an adult frog, 6 to 10 pin holes); own worked examples beside each number.
/// </summary>
public sealed class PackingPlannerTests
{
    private static PackedCup Only(params LiveContent[] contents) =>
        Assert.Single(PackingPlanner.Plan(Case(Big, Parcel(contents))).Cups);

    [Theory]
    // 26 mm: 78 mm wide, and an adult needs 240 mL.
    [InlineData("epipedobates-anthonyi", null, "flat")]
    // 48 mm: 144 mm wide; the 475 mL cup has 117.
    [InlineData("dendrobates-tinctorius", null, "wide")]
    // A froglet of 15 mm: 45 mm wide.
    [InlineData("dendrobates-tinctorius", 0.015, "tiny")]
    // A froglet of 25 mm: 75 mm wide, beyond the 70 of the smallest.
    [InlineData("dendrobates-tinctorius", 0.025, "flat")]
    // 39 mm: 117 mm wide, exactly that of the cup.
    [InlineData("dendrobates-tinctorius", 0.039, "flat")]
    public void The_smallest_cup_that_fits_is_taken(string key, double? length, string cup)
    {
        var packed = Only(new LiveContent(key, 1) { LengthMeters = length });
        Assert.Equal(cup, packed.Cup);
        Assert.InRange(packed.Holes, 6, 10);
    }

    [Fact]
    public void A_cup_beyond_475_mL_is_taken_where_none_else_is_wide_enough_and_says_so()
    {
        var plan = PackingPlanner.Plan(Case(Big, Parcel(new LiveContent("dendrobates-tinctorius", 2))));
        Assert.Contains(plan.Cautions, c => c.Contains("larger than 475 mL", StringComparison.Ordinal));
    }

    [Fact]
    public void No_cup_wide_enough_is_a_refusal_with_the_width_that_is_needed()
    {
        // Crested gecko, 120 mm: 360 mm.
        var plan = PackingPlanner.Plan(Case(Big, Parcel(new LiveContent("correlophus-ciliatus", 1))));
        Assert.False(plan.Fits);
        Assert.Contains("at least 360 mm", plan.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_frog_without_a_length_gets_no_guessed_cup()
    {
        var frog = Catalog.Find<Litterfall.Domain.Catalog.Entries.AnimalEntry>("dendrobates-auratus")!;
        var bare = Catalog.With(
            frog with
            {
                Values = [.. frog.Values.Where(v => !v.Name.Contains("ength", StringComparison.Ordinal))],
            }
        );
        var asked = Case(Big, Parcel(new LiveContent("dendrobates-auratus", 1))) with { Catalog = bare };
        Assert.Contains("No length is known", PackingPlanner.Plan(asked).Refusal, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, 6)]
    [InlineData(8, 8)]
    [InlineData(30, 10)]
    public void Lids_get_six_to_ten_holes(int listed, int made)
    {
        var rules = Rules with { Cups = [.. Rules.Cups.Select(c => c with { Holes = listed })] };
        var asked = Case(Big, Parcel(new LiveContent("epipedobates-anthonyi", 1))) with { Rules = rules };
        Assert.Equal(made, Assert.Single(PackingPlanner.Plan(asked).Cups).Holes);
    }

    [Fact]
    public void Moss_fills_a_third_and_holds_what_a_squeeze_leaves()
    {
        // 240 mL / 3 = 80 mL of moss; 30 g/L dry = 2.4 g; 30 % of its room is water = 24 g. Eight holes of
        // 1 mm let out well under a gram in two days, so the squeeze decides.
        var cup = Only(new LiveContent("epipedobates-anthonyi", 1));
        Assert.Equal(2.4, cup.MossGrams, 6);
        Assert.Equal(24, cup.WaterGrams, 6);
    }

    [Fact]
    public void Mass_and_heat_are_those_of_the_parts()
    {
        // Two cups: frog 1.2 g, moss 2.4 g, water 24 g, plastic 0.24 L × 40 g/L = 9.6 g each. Room: 12 L less
        // two cylinders of 123 mm × 44 mm (0.5228 L each) leaves 10.95 L, stuffed with 11 L at 20 g/L.
        var plan = Plan(Middle, 2);
        Assert.Equal(11, plan.PaddingLiters, 6);
        Assert.Equal(0.4 + (2 * 0.0372) + 0.22, plan.Kilograms, 3);
        var one = (0.84 * 1.2) + (0.3 * 2.4) + 24 + (0.45 * 9.6);
        Assert.Equal((2 * one / 1000) + (0.22 * 0.32), plan.ContentsKilogramsOfWater, 3);
    }

    [Fact]
    public void The_list_takes_cups_packs_and_moss_from_stock_in_the_unit_of_each_good()
    {
        var asked = Case(
            Middle,
            Parcel(new LiveContent("epipedobates-anthonyi", 3) { From = "T-07" }),
            new PackUse("wax", 1, 1)
        );
        asked = asked with
        {
            Rules = Rules with { Packs = [Wax with { Good = "wax-pack" }] },
            Goods =
            [
                new Good
                {
                    Key = "long-fibre-sphagnum",
                    Name = "long-fiber moss",
                    Kind = GoodKind.Bulk,
                    Unit = StockUnit.Liters,
                },
            ],
        };
        var list = PackingPlanner.Plan(asked).List;
        Assert.Contains(list, l => l is { Good: "cup-flat", Units: 3 });
        Assert.Contains(list, l => l is { Good: "wax-pack", Units: 1 });
        // 3 × 2.4 g at 30 g/L.
        Assert.Equal(0.24, list.Single(l => l.Good == "long-fibre-sphagnum").Units, 6);
        Assert.Contains(list, l => l.What.EndsWith("from T-07", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("no-such-frog", 1, "not in the library")]
    [InlineData("dendrobates-auratus", 0, "nothing alive")]
    [InlineData("dendrobates-auratus", -3, "nothing alive")]
    public void What_nobody_knows_is_refused_in_one_sentence(string key, int count, string why)
    {
        var plan = PackingPlanner.Plan(Case(Big, Parcel(new LiveContent(key, count))));
        Assert.Contains(why, plan.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_parcel_is_refused() =>
        Assert.Contains(
            "nothing alive",
            PackingPlanner.Plan(Case(Big, Parcel())).Refusal,
            StringComparison.Ordinal
        );

    [Fact]
    public void Only_what_has_no_toxin_is_called_harmless()
    {
        var gecko = PackingPlanner.Plan(Case(Big, Parcel(new LiveContent("lepidodactylus-lugubris", 1))));
        Assert.True(gecko.Fits, gecko.Refusal);
        Assert.Equal("LIVE HARMLESS ANIMALS", gecko.CartonLabel[0]);
        var frog = Plan(Big, 1);
        Assert.Equal("LIVE ANIMALS", frog.CartonLabel[0]);
        Assert.Contains(frog.CartonLabel, l => l.Contains("toxin", StringComparison.Ordinal));
        Assert.Contains("Keep between 17 and 26 °C", frog.CartonLabel);
        Assert.Contains(frog.CartonLabel, l => l.Contains("+00 555 0101", StringComparison.Ordinal));
    }

    [Fact]
    public void A_label_of_a_cup_has_the_common_name_first_and_its_appendix()
    {
        var label = Only(new LiveContent("dendrobates-auratus", 1) { From = "T-03" }).Label;
        Assert.Equal("Green and black poison frog", label[0]);
        Assert.Equal("Dendrobates auratus", label[1]);
        Assert.Contains("From T-03", label);
        Assert.Contains(label, l => l.Contains("CITES Appendix II", StringComparison.Ordinal));
    }

    [Fact]
    public void Cautions_are_those_that_apply()
    {
        var plants = PackingPlanner.Plan(Case(Big, Parcel(new LiveContent("begonia-rex", 2))));
        Assert.Equal("LIVE PLANTS", plants.CartonLabel[0]);
        Assert.Equal(0, plants.FastHours);
        Assert.DoesNotContain(plants.Cautions, c => c.Contains("Salmonella", StringComparison.Ordinal));
        var warm = Plan(Big, 1, new PackUse("heat", 1, 0));
        Assert.Contains(warm.Cautions, c => c.Contains("oxygen", StringComparison.Ordinal));
        Assert.Contains(warm.Cautions, c => c.Contains("Salmonella", StringComparison.Ordinal));
        Assert.Contains(warm.Cautions, c => c.StartsWith("Never release", StringComparison.Ordinal));
        Assert.Equal(24, warm.FastHours);
    }
}
