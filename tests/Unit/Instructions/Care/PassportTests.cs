using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Instructions.Care;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;
using Litterfall.UnitTests.Instructions.Building;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Measures;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Instructions.Care;

/// <summary>The tank passport.</summary>
public sealed class PassportTests
{
    [Fact]
    public void It_carries_true_sizes_levels_and_settings()
    {
        var facts = Passport.Of(TankPlan.Of(Built.Box)).Facts.ToDictionary(f => f.Head, f => f.Text);
        // 45 × 45 × 60 cm outside, 5 mm glass and base: 440 × 440 × 595 mm inside.
        Assert.Equal("440.0 × 440.0 × 595.0 mm", facts["Inside"]);
        // 5 cm of drainage less 1 cm.
        Assert.Equal("40 mm over the base, 1 cm below the barrier", facts["Drain mark"]);
        Assert.Equal("07:00 for 20 s; 13:00 for 20 s; 19:00 for 20 s: 180 mL a day", facts["Misting"]);
        Assert.Contains("9.7 L", facts["Drainage"], StringComparison.Ordinal);
        Assert.Equal("none", facts["Drain"]);
    }

    [Fact]
    public void Its_next_dates_lie_after_planting()
    {
        var passport = Passport.Of(TankPlan.Of(Built.Foam));
        Assert.Equal(new DateOnly(2026, 8, 14), passport.Planting);
        Assert.Equal(6, passport.Next.Length);
        Assert.All(passport.Next, d => Assert.True(d.Day > passport.Planting));
    }

    [Fact]
    public void Eight_kits_carry_eight_numbers()
    {
        var numbers = Enumerable
            .Range(1, 8)
            .Select(box => Passport.Of(TankPlan.Of(Built.Kits), box).Tank)
            .ToArray();
        Assert.Equal(8, numbers.Distinct().Count());
        Assert.Equal(TankNumber.Of(Built.Kits), numbers[0]);
    }

    [Fact]
    public void A_number_stays_while_the_design_is_worked_on_and_an_issued_one_is_kept()
    {
        const string box =
            "{ outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm } }";
        const string soil = "{ soil: { recipe: ready-rainforest, depth: DEPTH cm } }";
        string Number(string depth, string more) =>
            TankNumber.Of(
                Posed.Run(box, soil.Replace("DEPTH", depth, StringComparison.Ordinal), more).Numbers
            );
        Assert.Equal(Number("7", ""), Number("6", "planted: 2026-08-14"));
        Assert.Equal("LF29LEFFJTL30", Number("7", "tank: LF29LEFFJTL30"));
    }
}
