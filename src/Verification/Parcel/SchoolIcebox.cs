using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>
/// NCERT, Physics for class XI, exercise 11.19 with its printed answer (read): a cubic icebox of foam, side
/// 30 cm, 5 cm thick, 0.01 W/(m K), holds 4.0 kg of ice of 335 kJ/kg in air of 45 °C; after 6 h 3.687 kg are
/// left.
/// </summary>
public static class SchoolIcebox
{
    private const double Kilograms = 4.0;
    private static readonly CaseSource Source = new(
        "Parcel",
        "NCERT Physics XI, ice in a foam box",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Ice left.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        // The book takes the inside surface, six sides of 0.3 m, as the surface that conducts.
        var shell = new CartonShell(0.3, 0.3, 0.3, 0.05, 0.01, 0.0);
        var box = new PosedParcel
        {
            Conductance = shell.InsideArea * shell.Transmittance,
            Capacity = 1000.0,
            StartC = 0.0,
            Ambient = PosedParcel.Still(45.0),
            Packs = [new PhaseStore(Kilograms, 0.0, 335e3, 0.0)],
        };
        yield return Source.Case($"ice left after 6 h", "kg", (3.687, 6e-4), "Four digits.", () =>
            Kilograms * (1.0 - box.LiquidAt(6.0))
        );
    }
}
