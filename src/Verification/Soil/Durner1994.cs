using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Durner (1994), Water Resour. Res. 30:211, two pore systems, and Priesack and Durner (2006), Vadose Zone J.
/// 5:121, their closed form of K (both recalled). Expected K from Mualem's integral ∫ dSe/|h|, taken
/// numerically with 40 digits, so the closed form is checked and not repeated.
/// </summary>
public static class Durner1994
{
    private static readonly CaseSource Source = new(
        "Soil",
        "Durner 1994; Priesack and Durner 2006",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    private static readonly VanGenuchten Bark = new(
        new VanGenuchtenParameters
        {
            ThetaR = 0.080,
            ThetaS = 0.78,
            Modes = [new PoreMode(0.770, 126.0, 2.8), new PoreMode(0.230, 2.31, 1.2)],
            KsMetersPerSecond = 3600.0 * TestSoils.CentimetersPerHour,
        }
    );

    // h cm, θ, K cm/h
    private static readonly (double Head, double Theta, double K)[] Rows =
    [
        (-1.0, 0.511960301, 161.171801),
        (-3.0, 0.288401061, 0.595952464),
        (-10.0, 0.242422304, 0.00707539442),
        (-100.0, 0.209365974, 1.18588427e-4),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Water content and conductivity of bark of 6 to 12 mm.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string digits = "Last digit of the number written down.";
        foreach (var (head, theta, k) in Rows)
        {
            double meters = head * TestSoils.MetersPerCentimeter;
            yield return Source.Case(
                $"θ of bark at {head} cm",
                "1",
                CaseSource.Within(1e-8, theta),
                digits,
                () => Bark.WaterContent(meters)
            );
            yield return Source.Case(
                $"K of bark at {head} cm",
                "cm/h",
                CaseSource.Within(1e-8, k),
                digits,
                () => Bark.ConductivityMetersPerSecond(meters) / TestSoils.CentimetersPerHour
            );
        }
    }
}
