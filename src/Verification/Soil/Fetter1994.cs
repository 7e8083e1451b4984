using Litterfall.Domain.Figures;
using Litterfall.Physics.Soil;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Soil;

/// <summary>
/// Fetter 1994, Applied Hydrogeology, 3rd edition, table 6.1: capillary rise by grain (read as Salim and
/// Hampton 2012 quote it, who call its rows of silt bogus; those of sand and gravel stand), and what they
/// measured themselves on uniform sand (abstract read).
/// </summary>
public static class Fetter1994
{
    private static readonly CaseSource Book = new(
        "Soil",
        "Fetter 1994, table 6.1",
        Evidence.PrintedTable,
        Provenance.Read
    );

    private static readonly CaseSource Columns = new(
        "Soil",
        "Salim and Hampton 2012, columns of sand",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Heights to which water climbs.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Millimeters, double Centimeters, double Half)[] rows =
        [
            (0.3, 25.0, 0.5),
            (0.5, 15.0, 0.5),
            (2.0, 4.0, 0.5),
            (5.0, 1.5, 0.05),
        ];
        foreach (var (millimeters, centimeters, half) in rows)
        {
            yield return Book.Case(
                $"rise between grains of {millimeters} mm",
                "cm",
                (centimeters, half),
                "Half a digit.",
                () => 100.0 * Reservoir.CapillaryRiseMeters(millimeters / 1000.0)
            );
        }

        yield return Columns.Case(
            $"damp sand of 0.5 mm over the water",
            "cm",
            (19.5, 11.6),
            "The rise lies between the sand that is full and the highest that is damp.",
            () => 100.0 * Reservoir.CapillaryRiseMeters(0.5e-3)
        ) with
        {
            Spread = "full of water to 7.9 cm, damp for 11.6 cm more",
        };
    }
}
