using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>
/// CRC Handbook of Chemistry and Physics, Diffusion in gases (table read on the web; after Marrero and Mason
/// 1972): vapor and carbon dioxide in a large excess of air at 101.325 kPa. Oxygen in nitrogen is recalled.
/// </summary>
public static class LideDiffusion
{
    private static readonly CaseSource Source = new(
        "Parcel",
        "CRC Handbook, diffusion in gases",
        Evidence.PrintedTable,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Diffusivities.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Reason = "Two compilations of measurements that scatter by some per cent.";
        const double Share = 0.05;
        (string Gas, double Celsius, double Printed, Func<double, double> Law)[] rows =
        [
            ("water vapor in air", 0.0, 0.219, Massman1998.WaterVapor),
            ("water vapor in air", 20.0, 0.242, Massman1998.WaterVapor),
            ("water vapor in air", 100.0, 0.399, Massman1998.WaterVapor),
            ("carbon dioxide in air", 20.0, 0.160, Massman1998.CarbonDioxide),
            ("carbon dioxide in air", 100.0, 0.252, Massman1998.CarbonDioxide),
        ];
        foreach (var (gas, celsius, printed, law) in rows)
        {
            yield return Source.Case(
                $"{gas} at {celsius} °C",
                "cm²/s",
                CaseSource.Within(Share, printed),
                Reason,
                () => 1e4 * law(celsius)
            );
        }

        yield return (Source with { Provenance = Provenance.Recalled }).Case(
            $"oxygen in nitrogen at 20 °C",
            "cm²/s",
            CaseSource.Within(Share, 0.202),
            Reason,
            () => 1e4 * Massman1998.Oxygen(20.0)
        );
    }
}
