namespace Litterfall.Documents.Views;

/// <summary>
/// Colors of light maps: cividis (Nuñez, Anderton and Renslow 2018), even in lightness, so that it reads the
/// same in
/// grey and with any color vision. A polynomial through the published table, recalled.
/// </summary>
internal static class Cividis
{
    private static readonly double[] Red = [-4.54, -35.34, 2381.73, -6402.7, 7024.72, -2710.57];
    private static readonly double[] Green = [32.49, 170.73, 52.82, -131.46, 176.58, -67.37];
    private static readonly double[] Blue = [81.24, 442.36, -2482.43, 6167.24, -6614.94, 2475.67];

    /// <summary>The color of a share, 0 dark blue to 1 yellow, as 0xRRGGBB.</summary>
    public static uint At(double share)
    {
        double t = Math.Clamp(share, 0.0, 1.0);
        return (Part(Red, t) << 16) | (Part(Green, t) << 8) | Part(Blue, t);
    }

    private static uint Part(double[] terms, double t)
    {
        double sum = 0.0;
        for (int i = terms.Length - 1; i >= 0; i--)
        {
            sum = (sum * t) + terms[i];
        }

        return (uint)Math.Clamp(Math.Round(sum), 0.0, 255.0);
    }
}
