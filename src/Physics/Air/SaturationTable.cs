using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Air;

/// <summary>
/// Saturation pressure and its slope from a cubic table of a quarter of a kelvin over −20 to 80 °C: within
/// 1e-9 of <see cref="HylandWexler1983"/>, and its own derivative, so that Newton's method sees one function.
/// Outside its range it goes on along the last cubic.
/// </summary>
public static class SaturationTable
{
    private const double LowestCelsius = -20.0;
    private const int PerKelvin = 4;
    private const int Intervals = 100 * PerKelvin;
    private static readonly double[] Cubics = Fill();

    /// <summary>Saturation pressure, Pa, and its slope, Pa/K.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (double Pascals, double Slope) At(double celsius)
    {
        double place = (celsius - LowestCelsius) * PerKelvin;
        int i = Math.Clamp((int)place, 0, Intervals - 1);
        double s = place - i;
        var cubic = Cubics.AsSpan(4 * i, 4);
        return (
            cubic[0] + (s * (cubic[1] + (s * (cubic[2] + (s * cubic[3]))))),
            PerKelvin * (cubic[1] + (s * ((2.0 * cubic[2]) + (3.0 * s * cubic[3]))))
        );
    }

    private static double[] Fill()
    {
        var cubics = new double[4 * Intervals];
        for (int i = 0; i < Intervals; i++)
        {
            var (near, nearSlope) = Knot(i);
            var (far, farSlope) = Knot(i + 1);
            double rise = far - near;
            cubics[4 * i] = near;
            cubics[(4 * i) + 1] = nearSlope;
            cubics[(4 * i) + 2] = (3.0 * rise) - (2.0 * nearSlope) - farSlope;
            cubics[(4 * i) + 3] = nearSlope + farSlope - (2.0 * rise);
        }

        return cubics;
    }

    private static (double Pascals, double SlopePerInterval) Knot(int i)
    {
        double kelvin = LowestCelsius + ((double)i / PerKelvin) + Constants.ZeroCelsiusKelvin;
        double pascals = Math.Exp(HylandWexler1983.LogSaturation(kelvin));
        return (pascals, pascals * HylandWexler1983.LogSlope(kelvin) / PerKelvin);
    }
}
