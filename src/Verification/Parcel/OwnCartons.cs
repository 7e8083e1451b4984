using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>Surfaces and conductances of a carton of 30 × 20 × 20 cm inside, worked out by hand.</summary>
/// <remarks>
/// 25 mm: inside 2 (0.06 + 0.04 + 0.06) = 0.32 m², outside 35 × 25 × 25 cm 2 (0.0875 + 0.0625 + 0.0875) =
/// 0.475 m², A = √(0.32 · 0.475) = √0.152 = 0.38987 m². R = 0.025/0.036 + 0.15 = 0.69444 + 0.15 = 0.84444,
/// U = 1.18421, UA = 0.46169 W/K. Foam of 0.036 W/(m K) and films with card of 0.15 m² K/W are recalled. One
/// m² K/W is 10.7639 ft² · 1.8 °F · 0.2930711 W h/Btu = 5.67826 ft² °F h/Btu (foot, inch and Btu by
/// definition).
/// </remarks>
public static class OwnCartons
{
    private const double ImperialPerSi = 10.763_910_4 * 1.8 * 0.293_071_07;
    private static readonly CaseSource Source = new(
        "Parcel",
        "Own worked example, conductance of a carton",
        Evidence.WorkedExample,
        Provenance.Recalled
    );

    // wall mm; A m², U W/(m² K), UA W/K, R of the foam m² K/W and ft² °F h/Btu
    private static readonly (double Wall, double A, double U, double Ua, double R, double Imperial)[] Rows =
    [
        (20.0, 0.3759, 1.4173, 0.5328, 0.556, 3.15),
        (25.0, 0.3899, 1.1842, 0.4617, 0.694, 3.94),
        (40.0, 0.4317, 0.7930, 0.3423, 1.111, 6.31),
        (50.0, 0.4596, 0.6498, 0.2986, 1.389, 7.89),
    ];

    /// <summary>The carton of these examples.</summary>
    internal static CartonShell Carton(double wallMillimeters) =>
        new(0.30, 0.20, 0.20, wallMillimeters / 1000.0, 0.036, 0.15);

    /// <summary>The cases.</summary>
    /// <returns>Surfaces, conductances, resistances.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Four = "Four digits.";
        foreach (var row in Rows)
        {
            var shell = Carton(row.Wall);
            string wall = FormattableString.Invariant($"{row.Wall} mm of foam");
            yield return Source.Case($"surface, {wall}", "m²", (row.A, 6e-5), Four, () => shell.Area);
            yield return Source.Case($"transmittance, {wall}", "W/(m² K)", (row.U, 6e-5), Four, () =>
                shell.Transmittance
            );
            yield return Source.Case($"UA, {wall}", "W/K", (row.Ua, 6e-5), Four, () => shell.Conductance);
            yield return Source.Case($"resistance, {wall}", "m² K/W", (row.R, 6e-4), "Three digits.", () =>
                shell.WallResistance
            );
            yield return Source.Case(
                $"resistance, {wall}",
                "ft² °F h/Btu",
                (row.Imperial, 6e-3),
                "Two digits behind the point.",
                () => shell.WallResistance * ImperialPerSi
            );
        }

        var usual = Carton(25.0);
        yield return Source.Case($"inside surface", "m²", (0.32, 1e-12), "Exact.", () => usual.InsideArea);
        yield return Source.Case($"outside surface, 25 mm", "m²", (0.475, 1e-12), "Exact.", () =>
            usual.OutsideArea
        );
        yield return Source.Case($"room inside", "L", (12.0, 1e-9), "Exact.", () => 1e3 * usual.InsideVolume);
    }
}
