using Litterfall.Domain.Figures;
using Litterfall.Physics.Plates;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Plates;

/// <summary>
/// MacNeal, R. H. and Harder, R. L. 1985, Finite Elements in Analysis and Design 1:3, table of the
/// rectangular plate (recalled): simple supports, even load, ν = 0.3; 1000 w D/(q a⁴) at the middle,
/// a the short side.
/// </summary>
public static class MacNealHarder1985
{
    private static readonly CaseSource Source = new(
        "Plates",
        "MacNeal and Harder 1985, plates held at four edges",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Deflections.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Ratio, double Thousandths)[] rows = [(1.0, 4.062), (5.0, 12.97)];
        foreach (var (ratio, thousandths) in rows)
        {
            yield return Source.Case(
                $"1000 w D/(q a⁴), sides as {ratio} to 1",
                "1",
                (thousandths, 0.005),
                "Half a digit of the second.",
                () =>
                {
                    var pane = new PlatePane(ratio, 1.0, Thin, 1.0, Nu, PlateEdge.TopHeld);
                    var result = LevyPlate.Solve(pane, PlateLoad.Uniform(1.0, 1.0));
                    return 1000.0 * result.LargestDeflectionMeters * pane.StiffnessNewtonMeters;
                }
            );
        }
    }

    private const double Nu = 0.3;
    private const double Thin = 0.001;
}
