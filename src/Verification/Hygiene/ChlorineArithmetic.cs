using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Hygiene;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Hygiene;

/// <summary>
/// Available chlorine of bleach baths in closed form: Cl2 70.906, NaOCl 74.44 g/mol of the IUPAC table.
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
    /// <returns>Chlorine of baths.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        Baths
            .SelectMany(row =>
                new[]
                {
                    Bath(row.Product, 0.03, row.Three),
                    Bath(row.Product, 0.05, row.Five),
                    Bath(row.Product, 0.10, row.Ten),
                }
            );

    private static VerificationCase Bath(double product, double share, double expected) =>
        Case(
            string.Create(CultureInfo.InvariantCulture, $"{product} % product at {share * 100.0:0} % v/v"),
            "mg/L as Cl2",
            expected,
            0.5,
            () => Chlorine.ChlorineMilligramsPerLiter(product * share)
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
