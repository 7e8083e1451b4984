namespace Litterfall.Physics.Light;

/// <summary>Photons and lumens of a spectrum.</summary>
/// <remarks>
/// Lumens by the photopic curve of CIE 1924 with 683.002 lm/W, photons of 400 to 700 nm. Sums by trapezoids
/// of 1 nm,
/// straight between the values given.
/// </remarks>
public static class Spectrum
{
    /// <summary>
    /// Lumens of a watt at the peak of the photopic curve, lm/W (CIE 018: 683.002 at 555 nm in air).
    /// </summary>
    public const double PeakLumensPerWatt = 683.002;

    /// <summary>
    /// Photons of a joule at a wavelength of 1 nm, µmol/(J nm): 1/(N_A h c), exact constants of the 2019 SI.
    /// </summary>
    public const double MicromolesPerJouleNanometer =
        1e6 * 1e-9 / (6.02214076e23 * 6.62607015e-34 * 299792458.0);

    private const double FirstNanometer = 380.0;
    private const double LastNanometer = 780.0;
    private const double FirstPhoton = 400.0;
    private const double LastPhoton = 700.0;

    /// <summary>V(λ) every 5 nm from 380 to 780 nm (CIE 1924, as CIE 018 tabulates it).</summary>
    private static readonly double[] Photopic =
    [
        0.000039,
        0.000064,
        0.000120,
        0.000217,
        0.000396,
        0.000640,
        0.001210,
        0.002180,
        0.004000,
        0.007300,
        0.011600,
        0.016840,
        0.023000,
        0.029800,
        0.038000,
        0.048000,
        0.060000,
        0.073900,
        0.090980,
        0.112600,
        0.139020,
        0.169300,
        0.208020,
        0.258600,
        0.323000,
        0.407300,
        0.503000,
        0.608200,
        0.710000,
        0.793200,
        0.862000,
        0.914850,
        0.954000,
        0.980300,
        0.994950,
        1.000000,
        0.995000,
        0.978600,
        0.952000,
        0.915400,
        0.870000,
        0.816300,
        0.757000,
        0.694900,
        0.631000,
        0.566800,
        0.503000,
        0.441200,
        0.381000,
        0.321000,
        0.265000,
        0.217000,
        0.175000,
        0.138200,
        0.107000,
        0.081600,
        0.061000,
        0.044580,
        0.032000,
        0.023200,
        0.017000,
        0.011920,
        0.008210,
        0.005723,
        0.004102,
        0.002929,
        0.002091,
        0.001484,
        0.001047,
        0.000740,
        0.000520,
        0.000361,
        0.000249,
        0.000172,
        0.000120,
        0.000085,
        0.000060,
        0.000042,
        0.000030,
        0.000021,
        0.000015,
    ];

    /// <summary>The photopic curve V(λ), 0 to 1.</summary>
    /// <param name="nanometers">Wavelength, nm; 0 outside 380 to 780.</param>
    public static double Visibility(double nanometers)
    {
        double place = (nanometers - FirstNanometer) / 5.0;
        if (!(place >= 0.0 && place <= Photopic.Length - 1))
        {
            return 0.0;
        }

        int k = Math.Min((int)place, Photopic.Length - 2);
        return Photopic[k] + ((place - k) * (Photopic[k + 1] - Photopic[k]));
    }

    /// <summary>Photons of 400 to 700 nm for each kilolumen, µmol/s.</summary>
    /// <param name="nanometers">Wavelengths, nm, rising; two or more.</param>
    /// <param name="values">Power per wavelength in any unit, not negative.</param>
    /// <returns>The ratio; not a number where the spectrum has no visible light.</returns>
    /// <exception cref="ArgumentException">
    /// The two have different lengths, or fewer than two values.
    /// </exception>
    public static double MicromolesPerKilolumen(
        ReadOnlySpan<double> nanometers,
        ReadOnlySpan<double> values
    ) =>
        1000.0
        * MicromolesPerJouleNanometer
        * Sum(nanometers, values, (FirstPhoton, LastPhoton), static nm => nm)
        / (PeakLumensPerWatt * Sum(nanometers, values, (FirstNanometer, LastNanometer), Visibility));

    private static double Sum(
        ReadOnlySpan<double> nanometers,
        ReadOnlySpan<double> values,
        (double From, double To) range,
        Func<double, double> weight
    )
    {
        if (nanometers.Length != values.Length || nanometers.Length < 2)
        {
            throw new ArgumentException(
                "A spectrum has as many values as wavelengths, two or more.",
                nameof(values)
            );
        }

        double sum = 0.0;
        int place = 0;
        for (double nm = range.From; nm <= range.To + 1e-9; nm += 1.0)
        {
            bool isEnd = nm < range.From + 0.5 || nm > range.To - 0.5;
            sum += (isEnd ? 0.5 : 1.0) * weight(nm) * At(nanometers, values, nm, ref place);
        }

        return sum;
    }

    private static double At(
        ReadOnlySpan<double> nanometers,
        ReadOnlySpan<double> values,
        double nm,
        ref int place
    )
    {
        while (place < nanometers.Length - 2 && nanometers[place + 1] < nm)
        {
            place++;
        }

        if (nm < nanometers[place] || nm > nanometers[place + 1])
        {
            return 0.0;
        }

        double share = (nm - nanometers[place]) / (nanometers[place + 1] - nanometers[place]);
        return values[place] + (share * (values[place + 1] - values[place]));
    }
}
