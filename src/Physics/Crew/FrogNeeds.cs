namespace Litterfall.Physics.Crew;

/// <summary>What a small frog spends, eats and leaves.</summary>
/// <remarks>
/// Resting rate of the order of Gatten, Reid and Full 1992 and of Taigen and Pough (recalled): 0.10 M^0.84
/// mL/h of oxygen at
/// 25 °C, 2.2 times for 10 K, 20.1 J/mL. Composition of flies after Yuan et al. 2022 (read).
/// </remarks>
public static class FrogNeeds
{
    /// <summary>Energy of an adult fruit fly of the small kind: 0.30 mg at 24.5 kJ/g, J.</summary>
    public const double SmallFlyJoules = 7.35;

    /// <summary>Energy of an adult springtail: 0.040 mg at 23 kJ/g, J.</summary>
    public const double SpringtailJoules = 0.92;

    private const double OxygenJoules = 20.1;
    private const double FlyDryMilligrams = 0.30;
    private const double Metabolizable = 0.80;
    private const double Indigestible = 0.20;

    // Prey sizes by mass of prey over mass of eater, soft over a factor of four. Own choices, set so that
    // frogs of half a gram take young springtails and those of six grams only some adults, as stomachs tell
    // (fewer springtails in larger frogs: abstract on Andinobates minutus).
    private const double TooSmall = 1e-5;
    private const double SmallSeen = 4e-5;
    private const double LargeTaken = 0.01;
    private const double TooLarge = 0.04;
    private const double NitrogenShare = 0.09;

    /// <summary>Energy spent at rest, J/d.</summary>
    /// <param name="grams">Body mass, g.</param>
    /// <param name="celsius">Temperature, °C.</param>
    public static double RestingJoulesPerDay(double grams, double celsius) =>
        24.0 * OxygenJoules * 0.10 * Math.Pow(grams, 0.84) * Math.Pow(2.2, (celsius - 25.0) / 10.0);

    /// <summary>Energy of the food it needs, J/d.</summary>
    /// <param name="grams">Body mass, g.</param>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="activity">1.5 for adults, 2 for the growing, 2.5 for breeding females.</param>
    public static double FoodJoulesPerDay(double grams, double celsius, double activity) =>
        RestingJoulesPerDay(grams, celsius) * activity / Metabolizable;

    /// <summary>Dry food for so much energy in flies, mg.</summary>
    /// <param name="joules">Energy, J.</param>
    public static double FlyDryMass(double joules) => joules / SmallFlyJoules * FlyDryMilligrams;

    /// <summary>Nitrogen it gives off, for it keeps none: 9 % of its dry food, mg.</summary>
    /// <param name="dryMilligrams">Dry food, mg.</param>
    public static double NitrogenMilligrams(double dryMilligrams) => NitrogenShare * dryMilligrams;

    /// <summary>Dry feces: a fifth of its dry food, mg.</summary>
    /// <param name="dryMilligrams">Dry food, mg.</param>
    public static double FecesMilligrams(double dryMilligrams) => Indigestible * dryMilligrams;

    /// <summary>
    /// Chalk that brings flies to a ratio of calcium to phosphorus, mg of CaCO3 for each mg of dry flies.
    /// </summary>
    /// <param name="ratio">Calcium to phosphorus, 1.5 as a rule.</param>
    /// <param name="phosphorus">Share of phosphorus in dry flies (0.011, recalled).</param>
    /// <param name="calcium">Share of calcium (0.0011, Barker et al. 1998, abstract).</param>
    public static double ChalkPerDryFood(double ratio, double phosphorus, double calcium) =>
        Math.Max(0.0, (ratio * phosphorus) - calcium) / 0.4004;

    /// <summary>
    /// Prey one animal takes in a day: a D ÷ (1 + a h D), and not more than it wants (Holling 1959).
    /// </summary>
    /// <param name="density">Prey, 1/m².</param>
    /// <param name="searchSquareMeters">Ground it searches in a day, m².</param>
    /// <param name="handlingDays">Time for each prey, d.</param>
    /// <param name="wanted">Most it wants, 1/d.</param>
    public static double Take(double density, double searchSquareMeters, double handlingDays, double wanted)
    {
        double found = searchSquareMeters * density;
        return Math.Min(wanted, found / (1.0 + (handlingDays * found)));
    }

    /// <summary>
    /// Share of prey of a size that an animal bothers with: none far too small or too large for it, all
    /// between.
    /// </summary>
    /// <param name="preyMilligrams">Fresh mass of the prey, mg.</param>
    /// <param name="grams">Mass of the animal, g.</param>
    /// <returns>0 to 1.</returns>
    public static double Sees(double preyMilligrams, double grams)
    {
        double ratio = preyMilligrams / 1000.0 / grams;
        return Math.Min(
            Math.Clamp(Math.Log(ratio / TooSmall) / Math.Log(SmallSeen / TooSmall), 0.0, 1.0),
            Math.Clamp(Math.Log(TooLarge / ratio) / Math.Log(TooLarge / LargeTaken), 0.0, 1.0)
        );
    }
}
