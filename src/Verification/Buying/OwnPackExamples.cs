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
    /// <returns>Prices and left-over liters of six needs, the break trap, and one basket over two
    /// suppliers.</returns>
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
            yield return Case(
                $"price for {net} L",
                "cent",
                cents,
                () => PackChoice.Cheapest(net, Offers)!.Cents
            );
            yield return Case(
                $"left over of {net} L",
                "L",
                left,
                () => PackChoice.Cheapest(net, Offers)!.LeftLiters
            );
        }

        foreach (var (need, pieces) in new[] { (21, 21), (22, 25), (23, 25), (24, 25) })
        {
            yield return Case($"pieces bought for {need}, cheaper from 25", "1", pieces, () => Trap(need));
        }

        yield return Case("basket of two suppliers", "cent", 9400, () => Basket().TotalCents);
        yield return Case("bound of the basket", "cent", 9400, () => Basket().BoundCents);
    }

    /// <summary>1.00 below 25 pieces, 0.85 from 25: 25 cost 21.25, 22 cost 22.00.</summary>
    private static double Trap(double need) =>
        PackChoice.Cheapest(need, [new("piece", 1, [new(1, 100), new(25, 85)])])!.Packs;

    /// <summary>
    /// All from the first: bark 3 × 9.80 = 29.40, peat 2 × 8.40 = 16.80, charcoal 4 × 3.90 = 15.60, clay
    /// 7 × 4.60 = 32.20, together 94.00, which is over 75 and so delivered free.
    /// </summary>
    private static Basket Basket() =>
        SupplierChoice.Cheapest(
            new Dictionary<string, double>
            {
                ["bark"] = 60,
                ["peat"] = 41,
                ["charcoal"] = 6.5,
                ["clay"] = 65,
            },
            [new("first", 690, 7500, 2500), new("second", 1250, 12000, 4000)],
            [
                Offer("first", "bark", 20, (1, 980), (4, 890)),
                Offer("first", "peat", 25, (1, 840)),
                Offer("first", "clay", 10, (1, 520), (6, 460)),
                Offer("first", "charcoal", 2, (1, 390)),
                Offer("second", "bark", 60, (1, 2450)),
                Offer("second", "peat", 70, (1, 1990)),
                Offer("second", "charcoal", 5, (1, 790), (3, 690)),
                Offer("second", "clay", 50, (1, 1780)),
            ]
        )!;

    private static SupplierOffer Offer(
        string supplier,
        string material,
        double liters,
        params (int From, long Cents)[] tiers
    ) =>
        new(
            supplier,
            material,
            new PackOffer(
                $"{supplier} {material} {liters}",
                liters,
                [.. tiers.Select(t => new PackTier(t.From, t.Cents))]
            )
        );

    private static VerificationCase Case(string quantity, string unit, double expected, Func<double> got) =>
        new()
        {
            Source = "own worked example: packs, price breaks and deliveries",
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
