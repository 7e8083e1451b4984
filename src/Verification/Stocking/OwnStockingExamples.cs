using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;
using Litterfall.Verification.Sizing;

namespace Litterfall.Verification.Stocking;

/// <summary>
/// Own worked example: animals allowed by each rule of the trade in boxes of known inside size. Small: 2 +
/// (A − 750) ÷ 200, larger: 2 + (A − 1200) ÷ 400, A ÷ 465, A in cm²; V ÷ 40 or V ÷ 20, from 60 L, V in L; 1 +
/// (G − 10) ÷ 5 or G ÷ 5, G in gal, each rounded down; 5 A ÷ 2500 and 5 A ÷ 4900, to the nearest.
/// </summary>
public static class OwnStockingExamples
{
    private const string Flat = "{ length: 590 mm, depth: 440 mm, height: 445 mm }";
    private const string Inch = "{ length: 597.6 mm, depth: 445.2 mm, height: 451.2 mm }";
    private const string Foyer = "{ length: 888 mm, depth: 588 mm, height: 594 mm }";
    private const string Kit = "{ length: 292 mm, depth: 292 mm, height: 446 mm }";
    private const string Square = "{ length: 440 mm, depth: 440 mm, height: 626 mm }";

    /// <summary>The cases.</summary>
    /// <returns>Allowed animals.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Case("2596 cm2, small: 2 + 1846 ÷ 200", 11, Flat, "small-frog", "german-area");
        yield return Case("2596 cm2: ÷ 465", 5, Flat, "small-frog", "us-area");
        yield return Case("2661 cm2, larger: 2 + 1461 ÷ 400", 5, Inch, "larger-frog", "german-area");
        yield return Case("2661 cm2: ÷ 465", 5, Inch, "larger-frog", "us-area");
        yield return Case("120.0 L: ÷ 40", 3, Inch, "larger-frog", "volume");
        yield return Case("5221 cm2, larger: 2 + 4021 ÷ 400", 12, Foyer, "larger-frog", "german-area");
        yield return Case("5221 cm2: ÷ 465", 11, Foyer, "larger-frog", "us-area");
        yield return Case("853 cm2, small: 2 + 103 ÷ 200", 2, Kit, "small-frog", "german-area");
        yield return Case("853 cm2, larger: below 1200", 0, Kit, "larger-frog", "german-area");
        yield return Case("38.0 L, small: below 60", 0, Kit, "small-frog", "volume");
        yield return Case("1936 cm2, small: 2 + 1186 ÷ 200", 7, Square, "small-frog", "german-area");
        yield return Case("1936 cm2, larger: 2 + 736 ÷ 400", 3, Square, "larger-frog", "german-area");
        yield return Case("1936 cm2: ÷ 465", 4, Square, "larger-frog", "us-area");
        yield return Case("32.0 gal: 1 + 22 ÷ 5", 5, Square, "larger-frog", "us-gallons");
        yield return Case("32.0 gal, small: ÷ 5", 6, Square, "small-frog", "us-gallons-small");
        yield return Case("121.2 L: ÷ 40", 3, Square, "larger-frog", "volume");
        yield return Case("121.2 L, small: ÷ 20", 6, Square, "small-frog", "volume");
        yield return Case("1936 cm2, medium: 5 × 0.774 = 3.9", 4, Square, "larger-frog", "dutch-guide");
        yield return Case("1936 cm2, ground: 5 × 0.395 = 2.0", 2, Square, "larger-frog", "italian-guide");
    }

    private static VerificationCase Case(
        string quantity,
        double expected,
        string inside,
        string animal,
        string rule
    ) =>
        new()
        {
            Source = "own worked example: stocking rules",
            Subject = "Stocking",
            Quantity = $"{rule}, {quantity}",
            Unit = "1",
            Expected = expected,
            Got = () =>
                PosedDesign.Number(
                    $$"""
                    litterfall: 1
                    name: stocking
                    box: { inside: {{inside}} }
                    floor: { drainage: { material: clay, depth: 5 cm } }
                    animals: [ { animal: {{animal}}, count: 1 } ]
                    """,
                    $"stocking[{rule}].allowed"
                ),
            Tolerance = 1e-9,
            Reason = "A whole number of animals.",
            Evidence = Evidence.WorkedExample,
            Provenance = Provenance.CommonPractice,
        };
}
