using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Chapman, A. J. 1987, Fundamentals of Heat Transfer, p. 734 to 738: rectangles on planes at right
/// angles, set off along them (examples read in a library of heat transfer that computes his
/// formulas; the letters of its sizes are ours to place, as three of its numbers tell).
/// </summary>
public static class Chapman1987
{
    private static readonly CaseSource Source = new(
        "Light",
        "Chapman 1987, Fundamentals of Heat Transfer, perpendicular rectangles",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>View factors.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"0.5 m by 0.5 m, to 0.3 m begun 0.2 m over the line",
            "1",
            (0.07235, 2e-5),
            "Two of the last digit.",
            () => RectanglePair.Upright((0.0, 0.5), (0.0, 0.5), (0.2, 0.5), (0.0, 0.5))
        );
        yield return Source.Case(
            $"0.5 m begun 0.1 m from the line, to 0.3 m begun 0.2 m over it",
            "1",
            (0.07182, 2e-5),
            "Two of the last digit.",
            () => RectanglePair.Upright((0.1, 0.6), (0.0, 0.5), (0.2, 0.5), (0.0, 0.5))
        );
        yield return Source.Case(
            $"0.1 m by 0.2 m, to 0.5 m by 0.3 m beside it, one corner in common",
            "1",
            (0.0605, 5e-5),
            "Half a digit.",
            () => RectanglePair.Upright((0.0, 0.1), (0.0, 0.2), (0.0, 0.5), (0.2, 0.5))
        );
    }
}
