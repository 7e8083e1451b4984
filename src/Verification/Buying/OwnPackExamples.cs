using Litterfall.Domain.Figures;
using Litterfall.Quantities.Packs;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Buying;

/// <summary>
/// Own worked examples of pack choice: 5 L at 4.20 (10 or more 3.78), 20 L at 13.50 (5 or more 12.60), 50 L
/// at
/// 29.00. By enumeration: 12 L net is 3 × 5 L (12.60, against 13.50 for one of 20 L); 82 L net is 50 + 20 +
/// 3 × 5 L (29.00 + 13.50 + 12.60 = 55.10, against 58.00 for two of 50 L).
/// </summary>
public static class OwnPackExamples
{
    private static readonly PackOffer[] Offers =
    [
        new("5 L", 5, [new(1, 420), new(10, 378)]),
        new("20 L", 20, [new(1, 1350), new(5, 1260)]),
        PackOffer.Flat("50 L", 50, 2900),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Prices and left-over liters of six needs, and the break trap.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach (
            var (net, cents, left) in new (double, double, double)[]
            {
                (5, 420, 0),
                (12, 1260, 3),
                (41, 2900, 9),
                (47, 2900, 3),
                (82, 5510, 3),
                (97, 5800, 3),
            }
        )
        {
            yield return Case($"price for {net} L", "cent", cents, () =>
                PackChoice.Cheapest(net, Offers)!.Cents
            );
            yield return Case($"left over of {net} L", "L", left, () =>
                PackChoice.Cheapest(net, Offers)!.LeftLiters
            );
        }

        foreach (var (need, pieces) in new[] { (21, 21), (22, 25), (23, 25), (24, 25) })
        {
            yield return Case($"pieces bought for {need}, cheaper from 25", "1", pieces, () => Trap(need));
        }
    }

    /// <summary>1.00 below 25 pieces, 0.85 from 25: 25 cost 21.25, 22 cost 22.00.</summary>
    private static double Trap(double need) =>
        PackChoice.Cheapest(need, [new("piece", 1, [new(1, 100), new(25, 85)])])!.Packs;

    private static VerificationCase Case(string quantity, string unit, double expected, Func<double> got) =>
        new()
        {
            Source = "own worked example: packs and price breaks",
            Subject = "Buying",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = 1e-9,
            Reason = "Whole cents and pieces are exact.",
            Evidence = Evidence.WorkedExample,
            Provenance = Provenance.Recomputed,
        };
}
