using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// EES heat transfer library, view factor of parallel rectangles F3D_14, its example (read; after Howell's
/// catalog, C-13): squares of 0.1 m that face each other 0.05 m apart.
/// </summary>
public static class EesRectangles
{
    private const double Side = 0.1;
    private const double Apart = 0.05;

    /// <summary>The cases.</summary>
    /// <returns>One view factor.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        var source = new CaseSource(
            "Light",
            "EES heat transfer library, F3D_14",
            Evidence.PrintedText,
            Provenance.Read
        );
        yield return source.Case(
            $"view factor of facing squares, half their side apart",
            "1",
            (0.4153, 5e-5),
            "Half a digit.",
            () => RectanglePair.Facing(Side, Side, Apart)
        );
    }
}
