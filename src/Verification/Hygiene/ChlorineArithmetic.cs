using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Hygiene;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Hygiene;

/// <summary>
/// Chlorine arithmetic in closed form: C1 V1 = C2 V2, molar masses of the IUPAC table and the reactions of
/// chlorine with thiosulfate. Cl2 70.906, NaOCl 74.44, Na2S2O3·5H2O 248.18 g/mol.
/// </summary>
public static class ChlorineArithmetic
{
    // product %, bath at 3, 5 and 10 % v/v: mg/L as Cl2 = % × 10,000 × 70.906/74.44, rounded
    private static readonly (double Product, double Three, double Five, double Ten)[] Baths =
    [
        (5.0, 1429, 2381, 4763),
        (5.25, 1500, 2500, 5001),
        (6.0, 1715, 2858, 5715),
        (8.25, 2358, 3929, 7858),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Baths, recipes, rinses and dechlorination.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Baths
            .SelectMany(row =>
                new[]
                {
                    Bath(row.Product, 0.03, row.Three),
                    Bath(row.Product, 0.05, row.Five),
                    Bath(row.Product, 0.10, row.Ten),
                }
            )
            .Concat(Recipes())
            .Concat(Doses())
            .Concat(Rinses());

    private static IEnumerable<VerificationCase> Recipes()
    {
        yield return Case("5.25 % product at 5 % v/v", "% NaOCl", 0.2625, 1e-12, () =>
            Chlorine.BathPercent(5.25, 0.05)
        );
        yield return Case("0.2625 % NaOCl", "mg/L NaOCl", 2625.0, 1e-9, () =>
            Chlorine.SodiumHypochloriteMilligramsPerLiter(0.2625)
        );
        yield return Case("10 L at 5 % v/v, bleach", "mL", 500.0, 1e-9, () =>
            Chlorine.Recipe(10.0, 0.05).ProductMilliliters
        );
        yield return Case("10 L at 5 % v/v, water", "mL", 9500.0, 1e-9, () =>
            Chlorine.Recipe(10.0, 0.05).WaterMilliliters
        );
        // 0.12/6 = 0.02 of 10 L
        yield return Case("10 L at 0.12 % from a 6 % product, bleach", "mL", 200.0, 1e-9, () =>
            Chlorine.Recipe(10.0, Chlorine.ProductVolumeShare(6.0, 0.12)).ProductMilliliters
        );
    }

    private static IEnumerable<VerificationCase> Doses()
    {
        // 0.25/0.12, 0.4125/0.12, 0.15/0.12
        yield return Case("5 % product at 5 % v/v over the chytrid dose at 30 s", "1", 2.083, 5e-4, () =>
            OverChytridDose(5.0)
        );
        yield return Case("8.25 % product at 5 % v/v over the chytrid dose at 30 s", "1", 3.4375, 1e-9, () =>
            OverChytridDose(8.25)
        );
        yield return Case("3 % product at 5 % v/v over the chytrid dose at 30 s", "1", 1.25, 1e-9, () =>
            OverChytridDose(3.0)
        );
    }

    private static IEnumerable<VerificationCase> Rinses()
    {
        // 2858 · 0.05³, ·0.05⁴, ·0.05⁵
        yield return Case("2858 mg/L after 3 rinses, 5 % carry-over", "mg/L", 0.357, 5e-4, () =>
            Chlorine.AfterRinsesMilligramsPerLiter(2858.0, 0.05, 3)
        );
        yield return Case("2858 mg/L after 4 rinses, 5 % carry-over", "mg/L", 0.0179, 5e-5, () =>
            Chlorine.AfterRinsesMilligramsPerLiter(2858.0, 0.05, 4)
        );
        yield return Case("2858 mg/L after 5 rinses, 5 % carry-over", "mg/L", 0.00089, 5e-6, () =>
            Chlorine.AfterRinsesMilligramsPerLiter(2858.0, 0.05, 5)
        );
        // 2 × 248.18/70.906 = 7.0002
        yield return Case("thiosulfate pentahydrate per mg Cl2", "mg", 7.00, 5e-3, () =>
            Chlorine.ThiosulfateMilligrams(1.0)
        );
        yield return Case("thiosulfate pentahydrate for 10 L at 2 mg/L", "mg", 140.0, 0.5, () =>
            Chlorine.ThiosulfateMilligrams(20.0)
        );
        // 14.007/70.906
        yield return Case("ammonia N freed per mg Cl2 bound in chloramine", "mg", 0.198, 5e-4, () =>
            Chlorine.AmmoniaFromChloramineMilligrams(1.0)
        );
    }

    private static double OverChytridDose(double productPercent) =>
        DisinfectionDose.Chytrid.RatioToLeastStrength(Chlorine.BathPercent(productPercent, 0.05), 30.0)
        ?? double.NaN;

    private static VerificationCase Bath(double product, double share, double expected) =>
        Case(
            string.Create(CultureInfo.InvariantCulture, $"{product} % product at {share * 100.0:0} % v/v"),
            "mg/L as Cl2",
            expected,
            0.5,
            () => Chlorine.ChlorineMilligramsPerLiter(Chlorine.BathPercent(product, share))
        );

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        double tolerance,
        Func<double> got
    ) =>
        new()
        {
            Source = "Chlorine arithmetic",
            Subject = "Hygiene",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last digit written down; exact products to rounding.",
            Evidence = Evidence.ClosedForm,
            Provenance = Provenance.Recomputed,
        };
}
