using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Lohman, S. W. 1972, Ground-water hydraulics, USGS Professional Paper 708, table 1, after Atterberg
/// (recalled): capillary rise in samples of about 41 % porosity after 72 days, by class of grain.
/// </summary>
public static class Lohman1972
{
    private static readonly CaseSource Source = new(
        "Soil",
        "Lohman 1972, Ground-water hydraulics, capillary rise",
        Evidence.PrintedTable,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Heights to which water climbs.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (string Name, double From, double To, double Centimeters)[] rows =
        [
            ("fine gravel", 2.0, 5.0, 2.5),
            ("very coarse sand", 1.0, 2.0, 6.5),
            ("coarse sand", 0.5, 1.0, 13.5),
            ("medium sand", 0.2, 0.5, 24.6),
        ];
        foreach (var (name, from, to, centimeters) in rows)
        {
            double middle = Math.Sqrt(from * to);
            double high = Math.Max(to / middle, middle / from) - 1.0;
            yield return Source.Case(
                $"rise in {name}, {from} to {to} mm",
                "cm",
                (centimeters, high * centimeters),
                "The rise goes with one over the grain, and the class is that wide.",
                () => 100.0 * Reservoir.CapillaryRiseMeters(middle / 1000.0)
            ) with
            {
                Spread = $"grains of {from} to {to} mm in one class",
            };
        }
    }
}
