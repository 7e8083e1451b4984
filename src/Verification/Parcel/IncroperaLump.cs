using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>
/// Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, example 5.1 (read in a companion of worked
/// solutions): a thermocouple junction of 0.706 mm, time constant 1 s, from 25 °C in gas of 200 °C reaches
/// 199 °C after 5.16 s (the companion, with 2.30 for ln 10; 5.2 s in the book as recalled).
/// </summary>
/// <remarks>h = 400 W/(m² K), ρ = 8500 kg/m³, c = 400 J/(kg K).</remarks>
public static class IncroperaLump
{
    private static readonly CaseSource Source = new(
        "Parcel",
        "Incropera and DeWitt, lump in a gas stream",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Seconds.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const double Diameter = 7.06e-4;
        double area = Math.PI * Diameter * Diameter;
        var junction = new PosedParcel
        {
            Conductance = 400.0 * area,
            Capacity = 8500.0 * 400.0 * area * Diameter / 6.0,
            StartC = 25.0,
            Ambient = PosedParcel.Still(200.0),
        };
        yield return Source.Case(
            $"time to 199 °C",
            "s",
            (5.16, 0.016),
            "Printed with 2.30 for ln 10 (0.1 %) and a junction of three digits.",
            () => junction.Level(199.0, 1.0).FirstAbove
        );
        yield return Source.Case(
            $"time constant: 63.2 % of the step",
            "s",
            (1.0, 0.002),
            "Three digits of the junction.",
            () => junction.Level(25.0 + (175.0 * (1.0 - Math.Exp(-1.0))), 1.0).FirstAbove
        );
    }
}
