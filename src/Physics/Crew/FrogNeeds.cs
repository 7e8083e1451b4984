namespace Litterfall.Physics.Crew;

/// <summary>What a small frog spends, eats and leaves.</summary>
/// <remarks>
/// Resting rate of the order of Gatten, Reid and Full 1992 and of Taigen and Pough (recalled): 0.10 M^0.84
/// mL/h of oxygen at
/// 25 °C, 2.2 times for 10 K, 20.1 J/mL. Composition of flies after Yuan et al. 2022 (read).
/// </remarks>
public sealed record FrogNeeds
{
    /// <summary>As recalled and read; see the remarks.</summary>
    public static readonly FrogNeeds Usual = new();

    /// <summary>Energy of an adult fruit fly of the small kind: 0.30 mg at 24.5 kJ/g, J.</summary>
    public double SmallFlyJoules { get; init; } = 7.35;

    /// <summary>Dry mass of such a fly, mg.</summary>
    public double FlyDryMilligrams { get; init; } = 0.30;

    /// <summary>Energy of an adult springtail: 0.040 mg at 23 kJ/g, J.</summary>
    public double SpringtailJoules { get; init; } = 0.92;

    /// <summary>Oxygen at rest of an animal of 1 g at 25 °C, mL/h.</summary>
    public double OxygenPerHour { get; init; } = 0.10;

    /// <summary>Exponent of its mass.</summary>
    public double MassExponent { get; init; } = 0.84;

    /// <summary>Factor on it for 10 K.</summary>
    public double Q10 { get; init; } = 2.2;

    /// <summary>Energy of a milliliter of oxygen, J.</summary>
    public double OxygenJoules { get; init; } = 20.1;

    /// <summary>Share of the energy in its food that it can use.</summary>
    public double Metabolizable { get; init; } = 0.80;

    /// <summary>Share of its dry food that it leaves as feces.</summary>
    public double Indigestible { get; init; } = 0.20;

    /// <summary>Nitrogen in dry flies.</summary>
    public double NitrogenShare { get; init; } = 0.09;

    /// <summary>
    /// Prey of this mass over that of its eater is too small to be seen. This and the three that follow are
    /// own
    /// choices, set so that frogs of half a gram take young springtails and those of six grams only some
    /// adults,
    /// as stomachs tell (fewer springtails in larger frogs: abstract on Andinobates minutus).
    /// </summary>
    public double TooSmall { get; init; } = 1e-5;

    /// <summary>From here on all is seen.</summary>
    public double SmallSeen { get; init; } = 4e-5;

    /// <summary>Up to here all is taken.</summary>
    public double LargeTaken { get; init; } = 0.01;

    /// <summary>From here on nothing is.</summary>
    public double TooLarge { get; init; } = 0.04;

    /// <summary>Energy spent at rest, J/d.</summary>
    /// <param name="grams">Body mass, g.</param>
    /// <param name="celsius">Temperature, °C.</param>
    public double RestingJoulesPerDay(double grams, double celsius) =>
        24.0
        * OxygenJoules
        * OxygenPerHour
        * Math.Pow(grams, MassExponent)
        * Math.Pow(Q10, (celsius - 25.0) / 10.0);

    /// <summary>Energy of the food it needs, J/d.</summary>
    /// <param name="grams">Body mass, g.</param>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="activity">1.5 for adults, 2 for the growing, 2.5 for breeding females.</param>
    public double FoodJoulesPerDay(double grams, double celsius, double activity) =>
        RestingJoulesPerDay(grams, celsius) * activity / Metabolizable;

    /// <summary>Dry food for so much energy in flies, mg.</summary>
    /// <param name="joules">Energy, J.</param>
    public double FlyDryMass(double joules) => joules / SmallFlyJoules * FlyDryMilligrams;

    /// <summary>Nitrogen it gives off, for it keeps none, mg.</summary>
    /// <param name="dryMilligrams">Dry food, mg.</param>
    public double NitrogenMilligrams(double dryMilligrams) => NitrogenShare * dryMilligrams;

    /// <summary>Dry feces, mg.</summary>
    /// <param name="dryMilligrams">Dry food, mg.</param>
    public double FecesMilligrams(double dryMilligrams) => Indigestible * dryMilligrams;

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
    public double Sees(double preyMilligrams, double grams)
    {
        double ratio = preyMilligrams / 1000.0 / grams;
        return Math.Min(
            Math.Clamp(Math.Log(ratio / TooSmall) / Math.Log(SmallSeen / TooSmall), 0.0, 1.0),
            Math.Clamp(Math.Log(TooLarge / ratio) / Math.Log(TooLarge / LargeTaken), 0.0, 1.0)
        );
    }
}
