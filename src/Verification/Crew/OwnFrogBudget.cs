using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Food, waste and chalk of small frogs worked out by hand from recalled metabolic rates and read
/// compositions.
/// </summary>
public static class OwnFrogBudget
{
    private static readonly CaseSource Source = new(
        "Crew",
        "Own worked example, budget of a frog",
        Evidence.WorkedExample,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Joules, flies, milligrams.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"resting rate of 4.5 g at 24 °C",
            "J/d",
            (157.7, 0.06),
            "Four digits.",
            () => FrogNeeds.Usual.RestingJoulesPerDay(4.5, 24.0)
        );
        (double Grams, double Activity, double Joules)[] rows =
        [
            (0.10, 2.0, 16.1),
            (0.50, 1.5, 46.7),
            (0.73, 1.5, 64.2),
            (1.2, 1.5, 97.4),
            (2.3, 1.5, 168.3),
            (3.4, 1.5, 233.7),
            (4.5, 1.5, 295.7),
            (6.0, 1.5, 376.5),
            (7.0, 1.5, 428.6),
            (50.0, 1.5, 2235.0),
        ];
        foreach (var (grams, activity, joules) in rows)
        {
            yield return Source.Case(
                $"food of {grams} g at 24 °C, activity {activity}",
                "J/d",
                (joules, joules > 1000.0 ? 0.6 : 0.06),
                "Digits printed.",
                () => FrogNeeds.Usual.FoodJoulesPerDay(grams, 24.0, activity)
            );
        }

        foreach (var one in Budget())
        {
            yield return one;
        }
    }

    private static IEnumerable<VerificationCase> Budget()
    {
        yield return Source.Case($"small flies a day for 4.5 g", "1", (40.2, 0.06), "Three digits.", () =>
            FrogNeeds.Usual.FoodJoulesPerDay(4.5, 24.0, 1.5) / FrogNeeds.Usual.SmallFlyJoules
        );
        yield return Source.Case(
            $"nitrogen of two frogs of 4.5 g on 0.18 m²",
            "g/m²/y",
            (4.41, 0.006),
            "Three digits.",
            () =>
                2.0
                * FrogNeeds.Usual.NitrogenMilligrams(
                    FrogNeeds.Usual.FlyDryMass(FrogNeeds.Usual.FoodJoulesPerDay(4.5, 24.0, 1.5))
                )
                * 365.0
                / 1000.0
                / 0.18
        );
        yield return Source.Case($"feces of two frogs of 4.5 g", "mg/d", (4.83, 0.006), "Three digits.", () =>
            2.0
            * FrogNeeds.Usual.FecesMilligrams(
                FrogNeeds.Usual.FlyDryMass(FrogNeeds.Usual.FoodJoulesPerDay(4.5, 24.0, 1.5))
            )
        );
        (double Saturation, double Share)[] air = [(0.9, 0.317), (0.5, 1.0)];
        foreach (var (saturation, share) in air)
        {
            yield return Source.Case(
                $"decay in pores {100.0 * saturation} % full",
                "1",
                (share, 6e-4),
                "Three digits.",
                () => LitterDecay.Usual.Air(saturation)
            );
        }

        yield return Source.Case(
            $"oak litter of 54 g on its first day, 1.476 a year at 24 °C",
            "g/d",
            (0.2183, 1e-4),
            "The constant has four digits: 1.476 ± 0.0005.",
            () => 54.0 * LitterDecay.Usual.PerDay(1.476, 24.0, -5.0, 0.5, 0.0)
        );
    }
}
