using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Hamilton, D. C. and Morgan, W. R. 1952, Radiant-interchange configuration factors, NACA TN 2836
/// (recalled): squares that face each other as far apart as they are long, and squares with a common
/// edge.
/// </summary>
public static class HamiltonMorgan1952
{
    private static readonly CaseSource Source = new(
        "Light",
        "Hamilton and Morgan 1952, NACA TN 2836",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>View factors.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case($"facing squares, a side apart", "1", (0.1998, 5e-5), "Half a digit.", () =>
            RectanglePair.Facing(1.0, 1.0, 1.0)
        );
        yield return Source.Case(
            $"squares with a common edge",
            "1",
            (0.2, 6e-5),
            "Half a digit, and the corners of our sum.",
            () => RectanglePair.Joined(1.0, 1.0, 1.0)
        );
    }
}
