using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>A frog of 4.5 g in a cup of half a liter at 24 °C, sealed and with pin holes, by hand.</summary>
/// <remarks>
/// At rest 0.10 · 4.5^0.84 · 2.2^(−0.1) = 0.3269 mL/h of oxygen, · 20.1 J/mL = 6.571 J/h = 1.825 mW. Sealed:
/// 500 mL · (20.95 − 19) % = 9.75 mL last 9.75/0.3269 = 29.8 h. Eight holes of 1 mm in a lid of 0.5 mm: area
/// 0.7854 mm², length 0.5 + 0.7854 = 1.2854 mm, 8 · 0.7854/1.2854 = 4.888 mm; diffusivities at 24 °C are
/// those at 0 °C · (297.15/273.15)^1.81 = 1.16466: oxygen 21.197, carbon dioxide 16.084, vapor 25.366 mm²/s,
/// so 103.61, 78.62 and 123.99 mm³/s. At 1.5 times rest 0.4904 mL/h = 0.13622 mm³/s: oxygen 20.9476 −
/// 0.1315 = 20.816 %, carbon dioxide 0.08 + 0.8 · 0.13622/78.62 = 0.2186 %. Vapor over moss at 24 °C is 2985
/// Pa = 21.766 g/m³, half of it outside: 123.99e-9 · 10.883 g/s · 172,800 s = 0.2332 g in 48 h.
/// </remarks>
public static class OwnCups
{
    private const double Celsius = 24.0;
    private static readonly CaseSource Source = new(
        "Parcel",
        "Own worked example, air and water of a cup",
        Evidence.WorkedExample,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Hours, shares of gases, water.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Reason = "Digits worked out.";
        var rest = new AnimalBreath(4.5, 1, 1.0);
        var holes = new VentHoles(8, 0.001, 0.0005);
        var cup = new CupAir(0.0005, holes, rest with { Activity = AnimalBreath.UsualActivity });
        var still = cup with { Animals = rest };
        (string What, string Unit, double Value, double Tolerance, Func<double> Got)[] rows =
        [
            ("heat of a frog at rest", "mW", 1.825, 6e-4, () => 1e3 * rest.Watts(Celsius)),
            ("oxygen of a frog at rest", "mL/h", 0.3269, 6e-5, () => 3.6e9 * rest.OxygenPerSecond(Celsius)),
            ("sealed cup, until 19 % of oxygen", "h", 29.8, 0.06, () =>
                still.SealedSeconds(ChamberAir.PoorOxygen, Celsius) / 3600.0
            ),
            ("eight holes of 1 mm, oxygen left", "%", 20.816, 6e-4, () => 100.0 * cup.SteadyOxygen(Celsius)),
            ("eight holes of 1 mm, carbon dioxide", "%", 0.2186, 6e-5, () =>
                100.0 * cup.SteadyCarbonDioxide(Celsius)
            ),
            ("eight holes of 1 mm, water lost in 48 h at 50 % around", "g", 0.2332, 3e-4, () =>
                1e3 * cup.WaterPerSecond(Celsius, 0.5) * 172_800.0
            ),
            ("three frogs, heat", "mW", 5.476, 1e-3, () => 1e3 * (rest with { Count = 3 }).Watts(Celsius)),
        ];
        foreach (var (what, unit, value, tolerance, got) in rows)
        {
            yield return Source.Case($"{what}", unit, (value, tolerance), Reason, got);
        }
    }
}
