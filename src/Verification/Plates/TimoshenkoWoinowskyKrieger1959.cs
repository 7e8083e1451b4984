using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Plates;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Plates;

/// <summary>
/// Timoshenko, S. and Woinowsky-Krieger, S. 1959, Theory of Plates and Shells, 2nd ed., table 8: simply
/// supported rectangular plate under uniform load, ν = 0.3.
/// </summary>
public static class TimoshenkoWoinowskyKrieger1959
{
    private const string Source = "Timoshenko and Woinowsky-Krieger 1959, table 8";

    // b/a, w D/(q a⁴), Mx/(q a²), My/(q a²) at the middle; a is the short side.
    private static readonly (double Ratio, double Deflection, double Mx, double My)[] Rows =
    [
        (1.0, 0.00406, 0.0479, 0.0479),
        (1.2, 0.00564, 0.0627, 0.0501),
        (1.5, 0.00772, 0.0812, 0.0498),
        (2.0, 0.01013, 0.1017, 0.0464),
        (3.0, 0.01223, 0.1189, 0.0406),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Deflection and moments at the middle for five aspect ratios.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        foreach ((double ratio, double deflection, double mx, double my) in Rows)
        {
            string at = string.Create(CultureInfo.InvariantCulture, $"at the middle, b/a = {ratio}");
            yield return Case("Mx/(q a²) " + at, mx, () => Middle(ratio).AcrossNewtons, 5e-5);
            yield return Case("My/(q a²) " + at, my, () => Middle(ratio).UpNewtons, 5e-5);
            yield return Case("w D/(q a⁴) " + at, deflection, () => Middle(ratio).DeflectionMeters, 5e-6) with
            {
                Second = new GridPlate(Pane(ratio), false).Deflection(1.0, deflection),
            };
        }
    }

    // a = 1 m, q = 1 Pa and D = 1 N·m, so that moments and deflection are the coefficients themselves.
    private static PlateMoments Middle(double ratio)
    {
        return LevyPlate.At(Pane(ratio), PlateLoad.Uniform(1.0, ratio), 0.5, 0.5 * ratio);
    }

    private static PlatePane Pane(double ratio)
    {
        const double Nu = 0.3;
        return new PlatePane(1.0, ratio, 0.01, 12.0 * (1.0 - (Nu * Nu)) * 1e6, Nu, PlateEdge.TopHeld);
    }

    /// <summary>The row of the square is read as a public set of benchmarks quotes it.</summary>
    private static Provenance Read(string quantity) =>
        quantity.EndsWith("= 1", StringComparison.Ordinal) ? Provenance.Read : Provenance.Recalled;

    private static VerificationCase Case(
        string quantity,
        double expected,
        Func<double> got,
        double tolerance
    ) =>
        new()
        {
            Source = Source,
            Subject = "Plates",
            Quantity = quantity,
            Unit = "1",
            Expected = expected,
            Got = got,
            Tolerance = tolerance,
            Reason = "Half a unit of the last printed digit.",
            Evidence = Evidence.PrintedTable,
            Provenance = Read(quantity),
        };
}
