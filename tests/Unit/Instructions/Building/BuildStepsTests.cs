using System.Text.RegularExpressions;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting;
using Litterfall.Instructions.Building;
using Litterfall.Instructions.Care;
using Litterfall.Instructions.Parts;
using Litterfall.Judging;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Measures;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Instructions.Building;

/// <summary>Step cards: the numbers on them, and that a card only says what its design needs.</summary>
public sealed partial class BuildStepsTests
{
    [Fact]
    public void The_reference_box_prints_the_liters_a_measuring_jug_shows()
    {
        // By hand: inside 44 × 44 cm = 19.36 dm². 5 cm: 9.68 L; 7 cm: 13.55 L; ÷ 0.85: 15.94 L; 3 cm: 5.81 L.
        var text = Text(Built.Box);
        Assert.Contains("Pour 9.7 L of expanded clay", text, StringComparison.Ordinal);
        Assert.Contains("level, 5 cm deep.", text, StringComparison.Ordinal);
        Assert.Contains("Take 15.9 L of", text, StringComparison.Ordinal);
        Assert.Contains(
            "8.2 cm deep, level as poured. It settles to 7 cm deep, level, 13.6 L.",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Scatter 5.8 L of oak leaves, 3 cm loose, over the whole floor.",
            text,
            StringComparison.Ordinal
        );
        // 440 + 2 × 15 = 470 mm. 2 nozzles × 90 mL/min × 1 min = 180 mL.
        Assert.Contains("470 × 470 mm. Turn 15 mm up", text, StringComparison.Ordinal);
        Assert.Contains("Together 180 mL a day.", text, StringComparison.Ordinal);
        // The level stays 1 cm below the barrier (common practice, no source): 5 − 1 = 4 cm.
        Assert.Contains("Mark it 4 cm over the base", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_dip_is_printed_in_liters_of_product_and_water()
    {
        // 10 L at 5 % by volume: 0.5 L of product and 9.5 L of water; 6 % × 5 % = 0.30 % (c1 v1 = c2 v2).
        var text = Text(Built.Foam);
        Assert.Contains(
            "500 mL of bleach (6 % on the label) into 9.5 L of water. That is 0.30 %",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("Dip the hardy plants 5 to 10 minutes: Neoregelia", text, StringComparison.Ordinal);
        Assert.Contains(
            "half the bleach (250 mL), or skip the dip: Fittonia",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Without_a_label_strength_no_bath_is_mixed()
    {
        var text = Text(Built.Kits);
        Assert.Contains("Read the strength on the bleach label", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Mix the dip", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kit_says_what_is_in_which_bag()
    {
        var groups = BuildSteps.Of(TankPlan.Of(Built.Kits));
        Assert.Equal(["clean", "pack", "stand"], groups.Take(3).Select(g => g.Key));
        var pack = string.Join('\n', groups[1].Steps.Select(s => s.Text));
        // Floor 292 × (292 − 15) mm = 8.088 dm² × 4 cm = 3.24 L.
        Assert.Contains("Bag A, for each of 8 kits: 3.2 L of expanded clay", pack, StringComparison.Ordinal);
        Assert.Contains("mixed and moist", pack, StringComparison.Ordinal);
        Assert.Contains("For 8 boxes: ", pack, StringComparison.Ordinal);
        var build = string.Join('\n', groups.Skip(2).SelectMany(g => g.Steps).Select(s => s.Text));
        Assert.Contains("Pour bag A, 3.2 L", build, StringComparison.Ordinal);
        Assert.Contains("Fill in bag B, ", build, StringComparison.Ordinal);
        Assert.DoesNotContain("Mix for one box", build, StringComparison.Ordinal);
    }

    [Fact]
    public void A_box_without_drainage_has_no_drainage_card_and_no_dip_tube()
    {
        var groups = BuildSteps.Of(TankPlan.Of(Built.Arid));
        Assert.DoesNotContain(groups, g =>
            g.Key == "drainage" && g.Steps.Any(s => s.Text.Contains("dip tube", StringComparison.Ordinal))
        );
        Assert.DoesNotContain("leak test", Text(Built.Arid), StringComparison.OrdinalIgnoreCase);
        // A slate of 6 kg stands on the base: it goes in before the soil is filled round it.
        var all = groups.SelectMany(g => g.Steps).Select(s => s.Text).ToList();
        var stone = all.FindIndex(t => t.StartsWith("Set slate", StringComparison.Ordinal));
        var fill = all.FindIndex(t => t.StartsWith("Fill in", StringComparison.Ordinal));
        Assert.InRange(stone, 0, fill - 1);
    }

    [Fact]
    public void A_box_typed_in_inches_prints_inches_beside_depths()
    {
        var text = Text(Built.Inches);
        // 5 cm = 1.9685 in, nearest sixteenth 1 15/16.
        Assert.Contains("5 cm (1 15/16 in) deep", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" in) deep", Text(Built.Foam), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_design_gets_short_whole_sentences_with_their_figures()
    {
        DesignNumbers[] designs = [Built.Box, Built.Foam, Built.Kits, Built.Inches, Built.Arid];
        foreach (var group in designs.SelectMany(d => BuildSteps.Of(TankPlan.Of(d))))
        {
            Assert.NotEmpty(group.Steps);
            foreach (var step in group.Steps)
            {
                Assert.True(char.IsUpper(step.Text[0]) || char.IsDigit(step.Text[0]), step.Text);
                Assert.EndsWith(".", step.Text, StringComparison.Ordinal);
                Assert.DoesNotContain("  ", step.Text, StringComparison.Ordinal);
                Assert.NotEqual("", step.Key);
                Assert.True(
                    step.Figures.Length > 0
                        || !Measured().IsMatch(step.Text)
                        || step.Sources.Length > 0
                        || Fixed().IsMatch(step.Text),
                    step.Text
                );
            }
        }
    }

    [Fact]
    public void Dusty_goods_carry_the_mask_and_sphagnum_the_gloves()
    {
        var steps = BuildSteps.Of(TankPlan.Of(Built.Foam)).SelectMany(g => g.Steps).ToArray();
        Assert.All(
            steps.Where(s =>
                s.Text.StartsWith("Pour ", StringComparison.Ordinal)
                && s.Text.Contains("clay", StringComparison.Ordinal)
            ),
            s => Assert.Contains(Goods.DustCaution, s.Cautions)
        );
        Assert.Contains(steps, s => s.Cautions.Contains(Goods.MossCaution));
    }

    [Fact]
    public void Foam_carries_the_warning_of_a_burst_tank()
    {
        var foam = BuildSteps
            .Of(TankPlan.Of(Built.Foam))
            .SelectMany(g => g.Steps)
            .Single(s => s.Text.StartsWith("Lay the box on its back", StringComparison.Ordinal));
        Assert.Contains(foam.Cautions, c => c.Contains("burst", StringComparison.Ordinal));
        // Foam 60 × 4 cm on a wall of 60 cm: 14.4 L.
        Assert.Contains("14.4 L when expanded", foam.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Electrical_parts_are_listed_with_their_watts_and_the_protection()
    {
        var list = ElectricalList.Of(Built.Inches);
        Assert.Equal(2, list.Items.Length);
        // 18 W of the lamp as typed, 24 W of a small mist pump as recalled in the library.
        Assert.Equal(18 + 24, list.TotalWatts!.Value, 1e-9);
        Assert.Empty(list.Missing);
        var step = BuildSteps
            .Of(TankPlan.Of(Built.Inches))
            .SelectMany(g => g.Steps)
            .Single(s => s.Key == "electrics");
        Assert.Contains(step.Cautions, c =>
            c.Contains("class A ground-fault device, which trips at 4 to 6 mA", StringComparison.Ordinal)
        );
        Assert.Contains(step.Cautions, c => c.Contains("licensed electrician", StringComparison.Ordinal));
        Assert.False(ElectricalList.Of(Built.Kits).Any);
    }

    // One person lifts 25 kg (common practice, no source): 25 kg one, 25.1 kg two, 51 kg three.
    [Theory]
    [InlineData(25, 1)]
    [InlineData(25.1, 2)]
    [InlineData(51, 3)]
    [InlineData(0.1, 1)]
    public void Persons_follow_from_the_mass(double kilograms, int persons) =>
        Assert.Equal(
            persons,
            Lifts.Persons(Figure.Choice("mass", kilograms, Litterfall.Domain.Units.Unit.Kilogram, "posed"))
        );

    [Fact]
    public void A_box_of_unknown_glass_takes_two() => Assert.Equal(2, Lifts.Persons(null));

    [Fact]
    public void A_lamp_over_midnight_burns_the_hours_between()
    {
        var numbers = Posed
            .Run(
                "{ inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }",
                "{ soil: { recipe: ready-rainforest, depth: 5 cm } }",
                """lamps: [ { lamp: led-bar-6500k, on: "18:00", off: "06:30" } ]"""
            )
            .Numbers;
        Assert.Equal(12.5, LampHours.Of(numbers.Design, 0)!.Value, 1e-9);
    }

    [Fact]
    public void A_steep_slope_asks_for_a_retainer_first()
    {
        // 15 cm over 25 cm of depth: arc tangent 0.6 = 31 degrees; above 25 it slides (common practice).
        var steps = BuildSteps
            .Of(
                TankPlan.Of(
                    Posed
                        .Run(
                            "{ inside: { length: 40 cm, depth: 25 cm, height: 50 cm } }",
                            "{ soil: { recipe: ready-rainforest, front: 3 cm, back: 18 cm } }"
                        )
                        .Numbers
                )
            )
            .Single(g => g.Key == "soil")
            .Steps;
        var retainer = steps.Single(s => s.Key == "floor.soil.retainer");
        Assert.Contains("31 degrees", retainer.Text, StringComparison.Ordinal);
        Assert.True(
            steps.IndexOf(retainer)
                < steps.ToList().FindIndex(s => s.Text.StartsWith("Fill", StringComparison.Ordinal))
        );
    }

    private static string Text(DesignNumbers numbers) =>
        string.Join('\n', BuildSteps.Of(TankPlan.Of(numbers)).SelectMany(g => g.Steps).Select(s => s.Text));

    /// <summary>A number with a unit.</summary>
    [GeneratedRegex(@"\d (L|mL|cm|mm|kg|W)\b", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Measured();

    /// <summary>Rules of the hand that hold for every build.</summary>
    [GeneratedRegex("5 cm apart|to 1 cm when", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Fixed();
}
