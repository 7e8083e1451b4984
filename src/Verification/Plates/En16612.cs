using Litterfall.Domain.Figures;
using Litterfall.Physics.Plates;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Plates;

/// <summary>
/// EN 16612:2019, Glass in building, coefficients of a square pane on four edges under a small even
/// load, ν = 0.23 (recalled): stress k1 A q/t², deflection k4 A² q/(t³ E).
/// </summary>
public static class En16612
{
    private static readonly CaseSource Source = new(
        "Plates",
        "EN 16612:2019, plates held at four edges",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Coefficients of stress and deflection.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        var pane = new PlatePane(1.0, 1.0, Thin, 1.0, Nu, PlateEdge.TopHeld);
        var result = LevyPlate.Solve(pane, PlateLoad.Uniform(1.0, 1.0));
        yield return Source.Case(
            $"k1, square",
            "1",
            (0.268, 4e-3),
            "A fit of large deflections, taken where they are small.",
            () => result.LargestStressPascals * Thin * Thin
        );
        yield return Source.Case($"k4, square", "1", (0.0461, 5e-4), "The same.", () =>
            result.LargestDeflectionMeters * Thin * Thin * Thin
        );
    }

    private const double Nu = 0.23;
    private const double Thin = 0.001;
}
