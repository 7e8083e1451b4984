using Litterfall.Domain.Figures;
using Litterfall.Physics.Plates;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Plates;

/// <summary>EN 16612:2019, design bending strength of annealed glass; all figures recalled.</summary>
public static class En16612
{
    /// <summary>The cases.</summary>
    /// <returns>Duration factors and allowable stresses.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const double FiftyYearsHours = 50.0 * 365.25 * 24.0;
        yield return Case("k_mod, 50 years", "1", 0.29, 0.005, () =>
            AllowableStress.LoadDurationFactor(FiftyYearsHours)
        );
        yield return Case("k_mod, 1 minute", "1", 0.86, 0.005, () =>
            AllowableStress.LoadDurationFactor(1.0 / 60.0)
        );
        yield return Case("allowable stress, permanent, away from edges", "MPa", 7.25, 0.005, () =>
            AllowableStress.Pascals(AllowableStress.PermanentLoadFactor, 1.0) / 1e6
        );
        yield return Case("allowable stress, permanent, edge as cut", "MPa", 5.8, 0.005, () =>
            AllowableStress.Pascals(AllowableStress.PermanentLoadFactor, AllowableStress.CutEdgeFactor) / 1e6
        );
        yield return Case("allowable stress, 1 minute hand load", "MPa", 21.0, 0.5, () =>
            AllowableStress.Pascals(AllowableStress.LoadDurationFactor(1.0 / 60.0), 1.0) / 1e6
        );
    }

    private static VerificationCase Case(
        string quantity,
        string unit,
        double expected,
        double tolerance,
        Func<double> got
    ) =>
        new()
        {
            Source = "EN 16612:2019",
            Subject = "Plates",
            Quantity = quantity,
            Unit = unit,
            Expected = expected,
            Got = got,
            Tolerance = tolerance + 1e-12,
            Reason = "Half a unit of the last digit; the hand load is remembered as 'about 21'.",
            Evidence = Evidence.PrintedTable,
            Provenance = Provenance.Recalled,
        };
}
