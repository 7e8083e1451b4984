using System.Collections.Immutable;

namespace Litterfall.Physics.Air;

/// <summary>
/// Long-wave exchange in a box through one radiant node: the mean radiant temperature network of Carroll
/// (1980), Building and Environment 15 (recalled). Each surface is joined to the node by
/// 1/g = (1 − ε)/(ε h) + 1/(F h), F = 1/(1 − A F/Σ A F), h = 4 σ T³. What the surfaces exchange sums to zero.
/// </summary>
public static class Carroll1980
{
    private const double StefanBoltzmann = 5.670374419e-8;
    private const int Rounds = 200;

    /// <summary>Coefficient of black surfaces near a temperature, 4 σ T³, W/(m² K).</summary>
    /// <param name="celsius">Mean temperature, °C.</param>
    public static double Black(double celsius)
    {
        double kelvin = celsius + Constants.ZeroCelsiusKelvin;
        return 4.0 * StefanBoltzmann * kelvin * kelvin * kelvin;
    }

    /// <summary>Conductance of each surface to the radiant node, W/K.</summary>
    /// <param name="areasSquareMeters">Areas, m².</param>
    /// <param name="emissivities">Emissivities, above 0 to 1.</param>
    /// <param name="celsius">Mean temperature, °C.</param>
    public static ImmutableArray<double> Conductances(
        ImmutableArray<double> areasSquareMeters,
        ImmutableArray<double> emissivities,
        double celsius
    )
    {
        double h = Black(celsius);
        var factor = new double[areasSquareMeters.Length];
        Array.Fill(factor, 1.0);
        for (int round = 0; round < Rounds; round++)
        {
            double sum = 0.0;
            for (int i = 0; i < factor.Length; i++)
            {
                sum += areasSquareMeters[i] * factor[i];
            }

            for (int i = 0; i < factor.Length; i++)
            {
                // The factor of a surface as large as all others together has no bound.
                double share = Math.Min(areasSquareMeters[i] * factor[i] / sum, 0.9);
                factor[i] = 0.5 * (factor[i] + (1.0 / (1.0 - share)));
            }
        }

        return
        [
            .. areasSquareMeters.Select(
                (area, i) =>
                    area / (((1.0 - emissivities[i]) / (emissivities[i] * h)) + (1.0 / (factor[i] * h)))
            ),
        ];
    }
}
