using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Photons and lumens of the illuminants of CIE 015:2018 and ISO/CIE 11664-2, as a public color-science
/// repository tabulates
/// them (every 5 nm from 380 to 780 nm; D65 every 10): the sums were done by another program.
/// </summary>
public static class CieIlluminants
{
    private static readonly CaseSource Source = new(
        "Light",
        "CIE 015:2018 and CIE 1924",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    // Light-emitting diodes: blue pump 2998, 4103 and 6598 K; three colors 2840 K; violet pump 2724 K.
    private static readonly double[] Warm = Table(
        """
        0.00 0.00 0.00 0.01 0.02 0.05 0.11 0.24 0.50 0.96 1.71 2.82 4.71 7.87 10.56 10.24
        7.94 6.25 5.23 4.36 4.00 4.17 4.59 5.21 5.96 6.72 7.44 8.11 8.74 9.39 10.06 10.75
        11.49 12.25 13.05 13.86 14.70 15.50 16.28 17.00 17.69 18.31 18.83 19.24 19.51 19.59 19.48 19.19
        18.72 18.10 17.34 16.47 15.51 14.49 13.42 12.33 11.26 10.24 9.25 8.30 7.42 6.60 5.85 5.17
        4.55 3.99 3.49 3.04 2.65 2.31 2.01 1.75 1.52 1.32 1.15 1.00 0.87 0.76 0.67 0.59
        0.52
        """
    );

    private static readonly double[] Neutral = Table(
        """
        0.00 0.00 0.01 0.02 0.05 0.11 0.25 0.56 1.20 2.37 4.24 7.17 12.11 17.70 18.87 14.58
        9.90 7.53 6.02 5.11 5.17 5.82 6.77 7.88 8.94 9.82 10.52 11.06 11.51 11.93 12.37 12.83
        13.31 13.79 14.26 14.68 15.08 15.42 15.72 15.97 16.18 16.37 16.50 16.55 16.50 16.32 16.00 15.54
        14.96 14.27 13.48 12.62 11.71 10.78 9.85 8.93 8.04 7.20 6.42 5.69 5.02 4.42 3.88 3.39
        2.95 2.56 2.22 1.92 1.65 1.43 1.23 1.06 0.91 0.78 0.68 0.58 0.50 0.43 0.37 0.32
        0.28
        """
    );

    private static readonly double[] Daylight = Table(
        """
        0.00 0.01 0.01 0.03 0.07 0.16 0.35 0.78 1.67 3.30 5.94 9.92 16.15 25.15 32.34 31.18
        23.46 16.39 12.08 9.08 7.21 6.48 6.49 7.05 8.10 9.45 10.88 12.22 13.38 14.29 14.98 15.48
        15.81 16.01 16.10 16.13 16.10 15.98 15.77 15.50 15.15 14.76 14.31 13.79 13.22 12.59 11.91 11.20
        10.47 9.73 9.00 8.27 7.57 6.90 6.25 5.65 5.08 4.55 4.06 3.61 3.22 2.86 2.54 2.26
        2.00 1.75 1.54 1.36 1.20 1.05 0.93 0.82 0.72 0.64 0.56 0.49 0.44 0.39 0.35 0.31
        0.27
        """
    );

    private static readonly double[] ThreeColors = Table(
        """
        0.00 0.00 0.00 0.01 0.02 0.05 0.11 0.24 0.50 0.94 1.60 2.43 3.38 4.59 5.84 5.56
        4.00 3.14 2.80 2.68 3.03 3.98 5.53 7.84 10.96 14.61 18.01 20.24 20.57 19.22 16.93 14.58
        12.61 11.09 9.93 9.11 8.60 8.31 8.21 8.24 8.42 8.74 9.25 10.00 11.10 12.74 15.35 19.43
        26.01 36.47 51.10 62.69 52.07 28.62 15.50 9.58 6.54 4.95 4.01 3.37 2.89 2.51 2.18 1.92
        1.67 1.44 1.25 1.09 0.93 0.82 0.71 0.61 0.53 0.45 0.40 0.35 0.30 0.27 0.24 0.21
        0.17
        """
    );

    private static readonly double[] VioletPump = Table(
        """
        0.01 0.03 0.14 0.61 2.62 8.43 16.51 17.90 11.26 5.94 3.31 2.25 2.07 2.29 2.68 3.15
        3.64 4.18 4.83 5.57 6.40 7.27 8.08 8.73 9.21 9.54 9.75 9.91 10.06 10.26 10.51 10.82
        11.17 11.55 11.92 12.30 12.68 13.07 13.52 14.06 14.70 15.46 16.38 17.39 18.50 19.51 20.52 21.52
        22.38 23.07 23.51 23.71 23.67 23.35 22.81 22.01 21.03 19.91 18.69 17.39 16.05 14.69 13.36 12.04
        10.80 9.62 8.54 7.57 6.68 5.86 5.12 4.46 3.88 3.37 2.94 2.54 2.21 1.90 1.65 1.44
        1.22
        """
    );

    private static readonly double[] D65 = Table(
        """
        49.9755 54.6482 82.7549 91.4860 93.4318 86.6823 104.865 117.008
        117.812 114.861 115.923 108.811 109.354 107.802 104.790 107.689
        104.405 104.046 100.000 96.3342 95.7880 88.6856 90.0062 89.5991
        87.6987 83.2886 83.6992 80.0268 80.2146 82.2778 78.2842 69.7213
        71.6091 74.3490 61.6040 69.8856 75.0870 63.5927 46.4182 66.8054 63.3828
        """
    );

    /// <summary>The cases.</summary>
    /// <returns>Ratios.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (string Name, double[] Values, double PerKilolumen)[] rows =
        [
            ("LED-B2 2998 K", Warm, 14.726),
            ("LED-B3 4103 K", Neutral, 14.337),
            ("LED-B5 6598 K", Daylight, 14.409),
            ("LED-RGB1 2840 K", ThreeColors, 16.518),
            ("LED-V1 2724 K", VioletPump, 18.840),
        ];
        const string Reason = "Printed digits; V(λ) every 5 nm here, every 1 nm there.";
        foreach (var (name, values, kilolumen) in rows)
        {
            double[] nm = Wavelengths(5.0);
            yield return Source.Case(
                $"{name}, photons of a kilolumen",
                "µmol/s",
                CaseSource.Within(1e-3, kilolumen),
                Reason,
                () => Spectrum.MicromolesPerKilolumen(nm, values)
            );
        }

        foreach (var one in Daylight65AndWire())
        {
            yield return one;
        }
    }

    /// <summary>D65, µmol/s for a kilolumen.</summary>
    internal static double DaylightPerKilolumen() => Spectrum.MicromolesPerKilolumen(Wavelengths(10.0), D65);

    /// <summary>Illuminant A, µmol/s for a kilolumen.</summary>
    internal static double FilamentPerKilolumen() =>
        Spectrum.MicromolesPerKilolumen(Wavelengths(5.0), [.. Wavelengths(5.0).Select(Wire)]);

    private static IEnumerable<VerificationCase> Daylight65AndWire()
    {
        double[] tens = Wavelengths(10.0);
        double[] wire = [.. Wavelengths(5.0).Select(Wire)];
        const string Tens = "Spectrum every 10 nm here, every nm there.";
        yield return Source.Case(
            $"D65, photons of a kilolumen",
            "µmol/s",
            CaseSource.Within(2e-3, 18.019),
            Tens,
            () => Spectrum.MicromolesPerKilolumen(tens, D65)
        );
        yield return Source.Case(
            $"A by Planck's law at 2848 K with c2 of 14,350 µm K, photons of a kilolumen",
            "µmol/s",
            CaseSource.Within(1e-3, 19.898),
            "Closed form of the spectrum.",
            () => Spectrum.MicromolesPerKilolumen(Wavelengths(5.0), wire)
        );
        yield return Source.Case(
            $"equal energy, photons of a kilolumen",
            "µmol/s",
            CaseSource.Within(1e-3, 18.899),
            "Closed form of the spectrum.",
            () => Spectrum.MicromolesPerKilolumen([300.0, 800.0], [1.0, 1.0])
        );
        yield return Source.Case(
            $"one line at 555 nm, photons of a kilolumen: 8.3594e-3 × 555 ÷ 683.002",
            "µmol/s",
            CaseSource.Within(1e-4, 6.7927),
            "Five digits.",
            () => 1000.0 * Spectrum.MicromolesPerJouleNanometer * 555.0 / Spectrum.PeakLumensPerWatt
        );
    }

    private static double[] Table(string text) =>
        [
            .. text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
                .Select(word => double.Parse(word, CultureInfo.InvariantCulture)),
        ];

    private static double[] Wavelengths(double step) =>
        [.. Enumerable.Range(0, (int)(400.0 / step) + 1).Select(i => 380.0 + (step * i))];

    private static double Wire(double nm) =>
        100.0
        * Math.Pow(560.0 / nm, 5.0)
        * (Math.Exp(1.435e7 / (2848.0 * 560.0)) - 1.0)
        / (Math.Exp(1.435e7 / (2848.0 * nm)) - 1.0);
}
