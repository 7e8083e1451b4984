using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// The ends of breeding in the life tables. Isopods between 17.5 and 27.5 °C (McQueen and Carnio 1974,
/// abstract), the tropical springtail fewer from 27 °C and none at 32 °C, adults gone in a week above it
/// (Manee et al. 2025, abstract). Worked by hand from laid, born and dying in a day; roots of λ^A − sA
/// λ^(A − 1) − F by Newton's method from above, not by the halving of the engine.
/// </summary>
public static class OwnBreedingWarmth
{
    private const string Closed = "Closed form, rounding alone.";

    private static readonly CaseSource Source = new(
        "Crew",
        "Own worked example, warmth at which the crew breeds",
        Evidence.ClosedForm,
        Provenance.Recalled
    );

    private static readonly TropicalSpringtail Tropical = new()
    {
        ThresholdCelsius = 10.0,
        EggKelvinDays = 90.0,
        JuvenileKelvinDays = 270.0,
        EggsPerDay = 5.0,
        Hatch = 0.85,
        HatchBestTo = 30.0,
        HatchStopsAt = 33.0,
        Survival = 0.8,
        AdultDays = 90.0,
        Laying = new LayingWarmth { LessFromCelsius = 27.0, ToCelsius = 32.0 },
        Heat = (32.0, 7.0),
    };

    private static readonly IsopodLife Trichorhina = new()
    {
        ThresholdCelsius = 11.0,
        EggKelvinDays = 180.0,
        JuvenileKelvinDays = 975.0,
        BroodKelvinDays = 360.0,
        Brood = 5.9,
        FemaleShare = 1.0,
        Survival = (0.975, 0.5),
        AdultDays = 250.0,
        Heat = (30.0, 35.0),
        Laying = new LayingWarmth { FromCelsius = 17.5, ToCelsius = 27.5 },
    };

    /// <summary>The cases.</summary>
    /// <returns>Laid in a day, young in a life, growth factors and counts.</returns>
    public static IEnumerable<VerificationCase> Cases() => [.. Isopods(), .. Springtails()];

    private static IEnumerable<VerificationCase> Isopods()
    {
        // Broods of 5.9 each 360/(T − 11) days; half of it a quarter of a kelvin inside of an end.
        (double Celsius, double Young)[] rows =
        [
            (10.5, 0.0),
            (17.5, 0.0),
            (17.75, 0.5 * 5.9 * 6.75 / 360.0),
            (18.0, 5.9 * 7.0 / 360.0),
            (27.0, 5.9 * 16.0 / 360.0),
            (27.25, 0.5 * 5.9 * 16.25 / 360.0),
            (27.5, 0.0),
            (30.0, 0.0),
        ];
        foreach (var (celsius, young) in rows)
        {
            yield return Source.Case(
                $"Trichorhina tomentosa at {celsius} °C, young of a day",
                "1/d",
                (young, 1e-12),
                Closed,
                () => Trichorhina.At(celsius).EggsPerDay
            );
        }

        // Without young 50 adults of 250 days are 50 × 0.996^100 = 33.489 after 100 days.
        foreach (double celsius in new[] { 17.4, 27.6 })
        {
            yield return Source.Case(
                $"50 adults of Trichorhina tomentosa at {celsius} °C, mobile animals on day 100",
                "1",
                (50.0 * Math.Pow(0.996, 100.0), 1e-9),
                Closed,
                () => Run(Trichorhina.At(celsius))
            );
        }
    }

    private static IEnumerable<VerificationCase> Springtails()
    {
        // 5 eggs a day, less a fifth for each kelvin over 27; hatched 0.85 up to 30 and 0.85/3 less for each
        // kelvin more, 0.8 of them grown up, 90 days of laying: young that live to lay in the life of one.
        (double Celsius, double Young)[] rows =
        [
            (27.0, 5.0 * 0.85 * 0.8 * 90.0),
            (29.5, 2.5 * 0.85 * 0.8 * 90.0),
            (31.0, 1.0 * 0.85 * 2.0 / 3.0 * 0.8 * 90.0),
            (32.0, 0.0),
        ];
        foreach (var (celsius, young) in rows)
        {
            yield return Source.Case(
                $"tropical springtail at {celsius} °C, young that live to lay in one life",
                "1",
                (young, 1e-9),
                Closed,
                () => Tropical.At(celsius).NetReproduction
            );
        }

        // λ^A − (1 − 1/90) λ^(A − 1) = F, F = 0.68 m: 28 °C A = 20, m = 4; 29.5 °C A = 5 + 14, m = 2.5;
        // 30 °C A = 4 + 14, m = 2.
        foreach (
            var (celsius, factor) in new[] { (28.0, 1.157580765), (29.5, 1.142770482), (30.0, 1.138597317) }
        )
        {
            yield return Source.Case(
                $"tropical springtail at {celsius} °C with fewer eggs from 27 °C, growth of a day",
                "1",
                (factor, 6e-10),
                "Digits of the second solution.",
                () => Tropical.At(celsius).Whole.GrowthFactor()
            );
        }

        yield return Source.Case(
            $"tropical springtail at 33 °C, adults that live through a day",
            "1",
            (6.0 / 7.0, 1e-12),
            Closed,
            () => Tropical.At(33.0).AdultSurvivalPerDay
        );
    }

    private static double Run(LifeTable rates)
    {
        var population = new CrewPopulation(rates, 50.0, 0.0, 0.0);
        for (int day = 0; day < 100; day++)
        {
            population.Step(rates, 1.0);
        }

        return population.Mobile;
    }
}
