using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Ippisch, Vogel and Bastian (2006), Adv. Water Resour. 29:1780 (recalled): an air entry of 1 cm in the mix.
/// θ and K computed with 40 digits from Mualem's integral cut at the saturation of the air entry.
/// </summary>
public static class Ippisch2006
{
    private static readonly CaseSource Source = new(
        "Soil",
        "Ippisch, Vogel and Bastian 2006",
        Evidence.ClosedForm,
        Provenance.Recomputed
    );

    private static readonly VanGenuchten Mix = new(
        TestSoils.Mix.Parameters with
        {
            AirEntryMeters = 1.0 * TestSoils.MetersPerCentimeter,
        }
    );

    // h cm, θ, K cm/h
    private static readonly (double Head, double Theta, double K)[] Rows =
    [
        (-1.0, 0.8, 30.0),
        (-1.5, 0.789592837, 22.7126327),
        (-2.0, 0.778030415, 17.6540869),
        (-5.0, 0.703698988, 5.16975621),
        (-10.0, 0.603864540, 1.20452871),
    ];

    /// <summary>The cases.</summary>
    /// <returns>Water content and conductivity of the mix with an air entry.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string digits = "Last digit of the number written down.";
        foreach (var (head, theta, k) in Rows)
        {
            double meters = head * TestSoils.MetersPerCentimeter;
            yield return Source.Case(
                $"θ at {head} cm, air entry 1 cm",
                "1",
                CaseSource.Within(1e-8, theta),
                digits,
                () => Mix.WaterContent(meters)
            );
            yield return Source.Case(
                $"K at {head} cm, air entry 1 cm",
                "cm/h",
                CaseSource.Within(1e-8, k),
                digits,
                () => Mix.ConductivityMetersPerSecond(meters) / TestSoils.CentimetersPerHour
            );
        }
    }
}
