using Litterfall.Physics.Crew;

namespace Litterfall.Physics.Parcel;

/// <summary>Oxygen, carbon dioxide and heat of animals at rest, after <see cref="FrogNeeds"/>.</summary>
/// <remarks>
/// Resting rates are recalled; a published upper curve is twice as high. Animals in a moving box are not at
/// rest: the activity of 1.5 that food uses is the least to take.
/// </remarks>
/// <param name="Grams">Mass of one animal, g.</param>
/// <param name="Count">Animals.</param>
/// <param name="Activity">Times the resting rate.</param>
public readonly record struct AnimalBreath(double Grams, int Count, double Activity)
{
    private const double SecondsPerDay = 86_400.0;
    private const double CubicMetersPerMilliliter = 1e-6;

    /// <summary>Activity of an adult over a day, times the resting rate, as for its food; recalled.</summary>
    public const double UsualActivity = 1.5;

    /// <summary>
    /// Carbon dioxide given off for oxygen used, by volume: 0.8, between fat (0.7) and sugar (1.0); recalled.
    /// </summary>
    public const double RespiratoryQuotient = 0.8;

    /// <summary>Heat they give off, W.</summary>
    /// <param name="celsius">Body temperature, °C.</param>
    public double Watts(double celsius) =>
        Count * Activity * FrogNeeds.Usual.RestingJoulesPerDay(Grams, celsius) / SecondsPerDay;

    /// <summary>Oxygen they use, m³/s.</summary>
    /// <param name="celsius">Body temperature, °C.</param>
    public double OxygenPerSecond(double celsius) =>
        Watts(celsius) / FrogNeeds.Usual.OxygenJoules * CubicMetersPerMilliliter;

    /// <summary>Carbon dioxide they give off, m³/s.</summary>
    /// <param name="celsius">Body temperature, °C.</param>
    public double CarbonDioxidePerSecond(double celsius) => RespiratoryQuotient * OxygenPerSecond(celsius);
}
