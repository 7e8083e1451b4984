using CsCheck;
using Litterfall.Workshop.Mixing;

namespace Litterfall.UnitTests.Workshop.Mixing;

/// <summary>Soil batches against worked examples.</summary>
public sealed class MixPlanTests
{
    /// <summary>
    /// Own worked example: bark, fiber, charcoal and leaf mold 4:3:1:2, 148 L with 3 % loss.
    /// </summary>
    private static readonly MixCase Rainforest = new()
    {
        Recipe =
        [
            new("fine bark", 4, 0.32, 45, []),
            new("fern fiber", 3, 0.18, 40, []),
            new("charcoal", 1, 0.28, 5, []),
            new("leaf mold", 2, 0.40, 50, []),
        ],
        NeedLiters = 148,
        LossPercent = 3,
        Shrink = LearnedShare.Given(0.12),
        TubLiters = 60,
        FillPercent = 80,
        Target = WetTarget.ByMass,
        WetPercent = 55,
    };

    [Fact]
    public void Volumes_masses_and_water()
    {
        var plan = Plan(Rainforest);
        Assert.Equal(152.440, plan.MixedLiters, 3);
        Assert.Equal(173.227, plan.LooseLiters, 3);
        Assert.Equal([69.291, 51.968, 17.323, 34.645], plan.Shares.Select(s => Math.Round(s.Liters, 3)));
        Assert.Equal([22.173, 9.354, 4.850, 13.858], plan.Shares.Select(s => Math.Round(s.Kg!.Value, 3)));
        Assert.Equal(29.345, plan.Water.DryKg!.Value, 3);
        Assert.Equal(20.891, plan.Water.PresentKg!.Value, 3);
        Assert.Equal(35.866, plan.Water.WantedKg!.Value, 3);
        Assert.Equal(14.975, plan.Water.AddLiters!.Value, 3);
        Assert.Equal(65.210, plan.Water.FinishedKg!.Value, 3);
    }

    [Fact]
    public void Four_equal_batches()
    {
        var batch = Assert.Single(Plan(Rainforest).Batches);
        Assert.Equal(4, batch.Count);
        Assert.Equal(43.307, batch.LooseLiters, 3);
        Assert.Equal(38.110, batch.MixedLiters, 3);
        Assert.Equal(3.744, batch.WaterLiters!.Value, 3);
    }

    [Fact]
    public void A_jug_of_half_a_liter()
    {
        var shares = Plan(Rainforest with { JugLiters = 0.5 }).Batches[0].Shares;
        Assert.Equal([17.5, 13.0, 4.5, 8.5], shares.Select(s => s.JugLiters));
        Assert.Equal([1.0, 0.1, 3.9, -1.9], shares.Select(s => Math.Round(s.ErrorPercent, 1)));
        var refusal = MixPlan.From(Rainforest with { JugLiters = 1 }).Refusal!;
        Assert.Equal("jugLiters", refusal.Key);
        Assert.Contains("charcoal", refusal.Message, StringComparison.Ordinal);
    }

    /// <summary>
    /// 136 L are 159.18 L loose: four tubs, not the three that the mixed liters would fill.
    /// </summary>
    [Fact]
    public void The_loose_volume_fills_the_tub()
    {
        var asked = Rainforest with { NeedLiters = 136 };
        Assert.Equal(4, Plan(asked).BatchCount);
        var refusal = MixPlan.From(asked with { Batches = 3 }).Refusal!;
        Assert.Contains("53.1 L loose", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("48.0 L", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("at least 4", refusal.Expected, StringComparison.Ordinal);
    }

    /// <summary>65.21 kg in lifts of 15 kg are five batches.</summary>
    [Fact]
    public void A_lift_limits_the_batch()
    {
        Assert.Equal(5, Plan(Rainforest with { LiftKg = 15 }).BatchCount);
        var refusal = MixPlan.From(Rainforest with { LiftKg = 15, Batches = 4 }).Refusal!;
        Assert.Contains("16.3 kg", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Full_batches_and_a_rest()
    {
        var batches = Plan(Rainforest with { Split = BatchSplit.FullAndRest }).Batches;
        Assert.Equal([(3, 48.0), (1, 29.227)], batches.Select(b => (b.Count, Math.Round(b.LooseLiters, 3))));
    }

    [Fact]
    public void A_mix_that_is_too_wet_says_so()
    {
        var refusal = MixPlan.From(Rainforest with { WetPercent = 40 }).Refusal!;
        Assert.Contains("too wet by", refusal.Message, StringComparison.Ordinal);
    }

    /// <summary>Own worked example: 60 L of 2:2:1:1:1 at a yield of 0.88 and 0.36 water by volume.</summary>
    [Fact]
    public void Water_by_volume()
    {
        var plan = Plan(
            Rainforest with
            {
                Recipe =
                [
                    new("a", 2, null, 0, []),
                    new("b", 2, null, 0, []),
                    new("c", 1, null, 0, []),
                    new("d", 1, null, 0, []),
                    new("e", 1, null, 0, []),
                ],
                NeedLiters = 60,
                LossPercent = 0,
                TubLiters = 90,
                Target = WetTarget.ByVolume,
                WetPercent = 36,
            }
        );
        Assert.Equal(68.2, plan.LooseLiters, 1);
        Assert.Equal([19.5, 19.5, 9.7, 9.7, 9.7], plan.Shares.Select(s => Math.Round(s.Liters, 1)));
        Assert.Equal(21.6, plan.Water.WantedKg!.Value, 9);
        Assert.Null(plan.Water.AddLiters);
    }

    /// <summary>Two batches of 0.20 beside a prior of 0.12 that counts for two: 0.16.</summary>
    [Fact]
    public void The_yield_is_learned_from_batches()
    {
        var none = LearnedShare.Shrink([]);
        Assert.Equal(0.12, none.Mean);
        var two = LearnedShare.Shrink([(50, 40), (50, 40)]);
        Assert.Equal(0.16, two.Mean, 9);
        Assert.True(two.High - two.Low < none.High - none.Low);
        var many = LearnedShare.Shrink([.. Enumerable.Repeat((50.0, 40.0), 1000)]);
        Assert.Equal(0.20, many.Mean, 3);
        var wetter = Plan(Rainforest with { WetMiss = LearnedShare.WetMiss([(55, 59), (55, 59)]) });
        Assert.True(wetter.Water.AddLiters < Plan(Rainforest).Water.AddLiters);
    }

    [Fact]
    public void Batches_add_up_and_fit_the_tub() =>
        Gen.Select(Gen.Double[1, 900], Gen.Double[10, 120], Gen.Double[5, 40], Gen.Bool)
            .Sample(
                (need, tub, lift, isFull) =>
                {
                    var asked = Rainforest with
                    {
                        NeedLiters = need,
                        TubLiters = tub,
                        LiftKg = lift,
                        Split = isFull ? BatchSplit.FullAndRest : BatchSplit.Equal,
                    };
                    var plan = Plan(asked);
                    return Math.Abs(plan.Batches.Sum(b => b.Count * b.LooseLiters) - plan.LooseLiters)
                            < 1e-9 * need
                        && Math.Abs(plan.Batches.Sum(b => b.Count * b.MixedLiters) - plan.MixedLiters)
                            < 1e-9 * need
                        && plan.Shares.Sum(s => s.Liters) - plan.LooseLiters < 1e-9 * need
                        && plan.Batches.All(b =>
                            b.LooseLiters <= asked.LimitLiters + 1e-6 && b.Kg <= lift + 1e-6
                        );
                }
            );

    private static MixPlan Plan(MixCase asked)
    {
        var (plan, refusal) = MixPlan.From(asked);
        Assert.True(plan is not null, refusal?.Message);
        return plan;
    }
}
