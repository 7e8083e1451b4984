using Litterfall.Domain.Figures;
using Litterfall.Quantities.Mixing;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Mixing;

/// <summary>
/// Own worked examples of soil batches. By hand, with V = need·(1 + loss)/(1 − s):
/// 148·1.03 = 152.44; 152.44/0.88 = 173.227; bark 4/10 of it = 69.291 L × 0.32 = 22.173 kg, 45 % of it water;
/// fiber 51.968 L × 0.18 = 9.354 kg, 40 %; charcoal 17.323 L × 0.28 = 4.850 kg, 5 %; leaf mold 34.645 L ×
/// 0.40
/// = 13.858 kg, 50 %. Water 9.978 + 3.742 + 0.243 + 6.929 = 20.891; dry 50.236 − 20.891 = 29.345;
/// target 29.345·0.55/0.45 = 35.866; to add 14.975. Loose 173.227/48 = 3.6, so 4 batches.
/// </summary>
public static class OwnMixExample
{
    /// <summary>The cases.</summary>
    /// <returns>Volumes, masses, water and batches of one mix, and the batch trap.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("mixed liters with loss", "L", 152.440, plan => plan.FinishedLiters, 5e-4);
        yield return Case("loose liters", "L", 173.227, plan => plan.LooseLiters, 5e-4);
        yield return Case("batches", "1", 4, plan => plan.Batches, 0);
        yield return Case("bark", "kg", 22.173, plan => plan.Doses[0].Kilograms, 5e-4);
        yield return Case("leaf mold", "kg", 13.858, plan => plan.Doses[3].Kilograms, 5e-4);
        yield return Case("dry mass", "kg", 29.345, plan => plan.DryKilograms, 1e-3);
        yield return Case("water present", "kg", 20.891, plan => plan.WaterPresentKilograms, 1e-3);
        yield return Case("water to add", "L", 14.975, plan => plan.WaterToAddLiters, 1e-3);
        yield return Case("wet mass", "kg", 65.210, plan => plan.WetKilograms, 1e-3);
        yield return Case("bark by 0.5 L jug", "L", 17.5, plan => plan.Doses[0].JugLiters, 1e-9);
        yield return Case("jug error of charcoal", "%", 3.9, plan => plan.Doses[2].JugErrorShare * 100, 0.05);
        yield return Case(
            "batches by loose volume at 136 L",
            "1",
            4,
            _ => MixBatch.Plan(Order(136)).Batches,
            0
        );
    }

    private static MixOrder Order(double needLiters) =>
        new()
        {
            Components =
            [
                new("fine bark", 4, 0.32, 0.45),
                new("fiber", 3, 0.18, 0.40),
                new("charcoal", 1, 0.28, 0.05),
                new("leaf mold", 2, 0.40, 0.50),
            ],
            NeedLiters = needLiters,
            LossShare = 0.03,
            ShrinkageShare = 0.12,
            TubLiters = 60,
            FillShare = 0.8,
            TargetMoistureShare = 0.55,
            JugLiters = 0.5,
        };

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        Func<MixPlan, double> got,
        double tolerance
    ) =>
        new()
        {
            Source = "own worked example: mix of 148 L in a 60 L tub",
            Subject = "Mixing",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = () => got(MixBatch.Plan(Order(148))),
            Tolerance = tolerance,
            Reason = tolerance == 0 ? "A count is exact." : "Half a digit of the number worked out by hand.",
            Evidence = Evidence.WorkedExample,
            Provenance = Provenance.Recomputed,
        };
}
