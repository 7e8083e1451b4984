using Litterfall.Domain.Figures;
using Litterfall.Physics.Crew;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Crew;

/// <summary>
/// Growth of crew populations worked out by another program from the same life tables: day classes in whole
/// days, roots of their
/// equation, damp, removal, crowding, and a negative test against three stages. Rates after Fountain and
/// Hopkin 2005, Choi et
/// al. 2002, Wang et al. 2022 and isopod papers; most of them recalled.
/// </summary>
public static class OwnLifeTables
{
    private const string Digits = "Seven printed digits.";
    private static readonly CaseSource Source = new(
        "Crew",
        "Own worked example, life tables of the crew",
        Evidence.OtherCode,
        Provenance.Recalled
    );

    private static readonly LifespanSpringtail Folsomia = new()
    {
        ThresholdCelsius = 8.6,
        EggKelvinDays = 97.0,
        JuvenileKelvinDays = 257.0,
        EggsPerLife = [(15.0, 1100.0), (21.0, 900.0), (27.0, 100.0)],
        Life = ((15.0, 240.0), (24.0, 111.0)),
        Hatch = 0.85,
        HatchBestTo = 21.0,
        HatchStopsAt = 28.0,
        Survival = 0.8,
    };

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
    };

    private static readonly IsopodLife Trichorhina = Isopod((975.0, 360.0), 5.9, 1.0, 0.5, 250.0);
    private static readonly IsopodLife Porcellionides = Isopod((700.0, 360.0), 24.0, 0.55, 0.5, 180.0);
    private static readonly IsopodLife Armadillidium = Isopod((2000.0, 540.0), 27.0, 0.5, 0.4, 500.0);

    private static IsopodLife Isopod(
        (double Growth, double Brood) kelvinDays,
        double brood,
        double females,
        double survival,
        double adult
    ) =>
        new()
        {
            ThresholdCelsius = 11.0,
            EggKelvinDays = 180.0,
            JuvenileKelvinDays = kelvinDays.Growth,
            BroodKelvinDays = kelvinDays.Brood,
            Brood = brood,
            FemaleShare = females,
            Survival = (0.975, survival),
            AdultDays = adult,
            Heat = (30.0, 35.0),
        };

    /// <summary>The cases.</summary>
    /// <returns>Growth factors and counts.</returns>
    public static IEnumerable<VerificationCase> Cases() =>
        [.. Growth(), .. Real(), .. Damp(), .. Taken(), .. Counts(), .. Vessel()];

    private static (string Name, CrewSpecies Species, (double Celsius, double Factor)[] Rows)[] Tables =>
        [
            (
                "Folsomia candida",
                Folsomia,
                [
                    (15, 1.074049),
                    (18, 1.106417),
                    (20, 1.122915),
                    (22, 1.140264),
                    (24, 1.129840),
                    (26, 1.090006),
                    (27, 1.046119),
                ]
            ),
            (
                "tropical springtail",
                Tropical,
                [
                    (18, 1.072445),
                    (20, 1.092237),
                    (22, 1.112487),
                    (24, 1.136395),
                    (26, 1.149002),
                    (28, 1.167678),
                    (30, 1.183317),
                ]
            ),
            (
                "Trichorhina tomentosa",
                Trichorhina,
                [(18, 1.008957), (20, 1.011935), (22, 1.014892), (24, 1.017865), (26, 1.020894)]
            ),
            (
                "Porcellionides pruinosus",
                Porcellionides,
                [(18, 1.014681), (20, 1.019398), (22, 1.024193), (24, 1.028898), (26, 1.033687)]
            ),
            (
                "Armadillidium vulgare",
                Armadillidium,
                [(18, 1.006660), (20, 1.008750), (22, 1.010835), (24, 1.012901), (26, 1.015041)]
            ),
        ];

    private static IEnumerable<VerificationCase> Growth()
    {
        foreach (var (name, species, rows) in Tables)
        {
            foreach (var (celsius, factor) in rows)
            {
                yield return Source.Case(
                    $"{name} at {celsius} °C, growth of a day",
                    "1",
                    (factor, 6e-7),
                    Digits,
                    () => species.At(celsius).Whole.GrowthFactor()
                );
            }
        }

        foreach (var one in Ends())
        {
            yield return one;
        }
    }

    private static IEnumerable<VerificationCase> Ends()
    {
        yield return Source.Case(
            $"Folsomia candida at 28 °C, growth of a day less its adults' survival",
            "1",
            (0.0, 1e-12),
            "Nothing hatches: it dies out.",
            () => Folsomia.At(28.0).GrowthFactor() - Folsomia.At(28.0).AdultSurvivalPerDay
        );
        yield return Source.Case(
            $"Folsomia candida at 22 °C, days to double",
            "d",
            (5.28, 5e-3),
            "Three digits.",
            () => Math.Log(2.0) / Math.Log(Folsomia.At(22.0).Whole.GrowthFactor())
        );
        yield return Source.Case(
            $"Trichorhina tomentosa at 24 °C, days to double",
            "d",
            (39.1, 0.05),
            "Three digits.",
            () => Math.Log(2.0) / Math.Log(Trichorhina.At(24.0).Whole.GrowthFactor())
        );
        yield return Source.Case(
            $"three stages with chances to move on instead of day classes, 22 °C: how far they are off",
            "1",
            (1.28659 - 1.140264, 5e-5),
            "The wrong model must differ: its growth is 1.28659.",
            () => ThreeStages() - Folsomia.At(22.0).Whole.GrowthFactor()
        );
    }

    /// <summary>
    /// Stage matrix of eggs, juveniles and adults with chances of 1/7 and 1/19: the root of its cubic by
    /// bisection.
    /// </summary>
    private static double ThreeStages()
    {
        var t = Folsomia.At(22.0);
        double hatch = t.SurvivalToAdult / 0.8;
        double egg = Math.Pow(hatch, 1.0 / 7.0);
        double juvenile = Math.Pow(0.8, 1.0 / 19.0);
        double low = 1.0;
        double high = 3.0;
        for (int i = 0; i < 200; i++)
        {
            double l = 0.5 * (low + high);
            double value =
                ((l - (egg * 6.0 / 7.0)) * (l - (juvenile * 18.0 / 19.0)) * (l - t.AdultSurvivalPerDay))
                - (t.EggsPerDay * (egg / 7.0) * (juvenile / 19.0));
            (low, high) = value > 0.0 ? (low, l) : (l, high);
        }

        return low;
    }

    /// <summary>
    /// Ageing in fractions of the development, run for 600 days, against the root for ages in parts of days.
    /// </summary>
    private static IEnumerable<VerificationCase> Real()
    {
        (double Celsius, double Factor)[] rows =
        [
            (15, 1.073696),
            (18, 1.104832),
            (20, 1.126117),
            (22, 1.138376),
            (24, 1.129900),
            (26, 1.092069),
        ];
        foreach (var (celsius, factor) in rows)
        {
            yield return Source.Case(
                $"Folsomia candida at {celsius} °C, ageing by fractions, growth of a day after 600",
                "1",
                CaseSource.Within(3e-3, factor),
                "Bound on ageing in fractions: 0.3 %.",
                () =>
                {
                    var rates = Folsomia.At(celsius);
                    var population = new CrewPopulation(rates, 100.0, 0.0, 0.0);
                    double before = 0.0;
                    for (int day = 0; day < 600; day++)
                    {
                        before = population.Mobile;
                        population.Step(rates, 1.0);
                    }

                    return population.Mobile / before;
                }
            );
        }
    }

    private static IEnumerable<VerificationCase> Damp()
    {
        (double Kilopascals, double Share, double Factor)[] rows =
        [
            (-2.0, 1.0, 1.140264),
            (-5.0, 0.5452, 1.119594),
            (-8.0, 0.3120, 1.101526),
            (-10.0, 0.2012, 1.088033),
            (-12.0, 0.1107, 1.070736),
            (-15.0, 0.0, 0.991117),
        ];
        foreach (var (kilopascals, share, factor) in rows)
        {
            yield return Source.Case(
                $"share of eggs laid at {kilopascals} kPa",
                "1",
                (share, 6e-5),
                "Four digits.",
                () => GroundDamp.Usual.Laying(kilopascals)
            );
            yield return Source.Case(
                $"Folsomia candida at 22 °C and {kilopascals} kPa, growth of a day",
                "1",
                (factor, 2e-6),
                Digits,
                () =>
                {
                    var rates = Folsomia.At(22.0).Whole;
                    return (
                        rates with
                        {
                            EggsPerDay = rates.EggsPerDay * GroundDamp.Usual.Laying(kilopascals),
                        }
                    ).GrowthFactor();
                }
            );
        }
    }

    private static IEnumerable<VerificationCase> Taken()
    {
        (double Celsius, double Share)[] rows =
        [
            (18, 0.1221),
            (20, 0.1403),
            (22, 0.1549),
            (24, 0.1423),
            (26, 0.1024),
        ];
        foreach (var (celsius, share) in rows)
        {
            yield return Source.Case(
                $"Folsomia candida at {celsius} °C, share that can be taken each day",
                "1/d",
                (share, 6e-5),
                "Four digits.",
                () => Folsomia.At(celsius).Whole.SustainableRemoval()
            );
        }

        yield return Source.Case(
            $"Folsomia candida at 22 °C crowded with Kc 11.213, animals after 3000 days",
            "1",
            (5000.0, 5.0),
            "Kc (R0 − 1) by the balance of a life.",
            () =>
            {
                var rates = Folsomia.At(22.0).Whole;
                var population = new CrewPopulation(rates, 100.0, 0.0, 0.0);
                for (int day = 0; day < 3000; day++)
                {
                    population.Step(rates, 1.0 / (1.0 + (population.Mobile / 11.213)));
                }

                return population.Mobile;
            }
        );
        yield return Source.Case(
            $"share of a growing culture that can be sold each week, Folsomia candida at 22 °C",
            "1",
            (0.6010, 6e-5),
            "Four digits: 1 − λ^−7.",
            () => 1.0 - Math.Pow(Folsomia.At(22.0).Whole.GrowthFactor(), -7.0)
        );
    }

    private static IEnumerable<VerificationCase> Counts()
    {
        (
            string Name,
            CrewSpecies Species,
            double Celsius,
            double Adults,
            (int Day, double Mobile)[] Rows
        )[] runs =
        [
            (
                "Folsomia candida",
                Folsomia,
                22.0,
                100.0,
                [(14, 3830), (21, 6814), (28, 9182), (35, 18072), (42, 107112)]
            ),
            (
                "Trichorhina tomentosa",
                Trichorhina,
                24.0,
                50.0,
                [(30, 183.1), (60, 372.2), (90, 494.3), (120, 714.4), (180, 2641.9), (240, 6870.6)]
            ),
            (
                "Porcellionides pruinosus",
                Porcellionides,
                24.0,
                50.0,
                [(30, 332.8), (60, 691.2), (90, 1057.8), (120, 3717.7), (180, 17244.5)]
            ),
        ];
        foreach (var (name, species, celsius, adults, rows) in runs)
        {
            foreach (var (day, mobile) in rows)
            {
                yield return Source.Case(
                    $"{adults} adults of {name} at {celsius} °C, mobile animals on day {day}",
                    "1",
                    (mobile, mobile < 2000.0 ? 0.1 : mobile * 1.5e-4),
                    "Digits printed.",
                    () =>
                    {
                        var rates = species.At(celsius).Whole;
                        var population = new CrewPopulation(rates, adults, 0.0, 0.0);
                        for (int d = 0; d < day; d++)
                        {
                            population.Step(rates, 1.0);
                        }

                        return population.Mobile;
                    }
                );
            }
        }
    }

    /// <summary>
    /// A vessel of the reproduction test (OECD 232, recalled: at least 100 juveniles after 28 days at 20 °C
    /// from ten that are
    /// 10 to 12 days old): ten of eleven days.
    /// </summary>
    private static IEnumerable<VerificationCase> Vessel()
    {
        var end = new Lazy<CrewPopulation>(() =>
        {
            var rates = Folsomia.At(20.0).Whole;
            double live = Math.Pow(rates.SurvivalToAdult, 1.0 / (rates.Days - 1.0));
            var population = new CrewPopulation(rates, 0.0, 10.0 / Math.Pow(live, 11.0), 0.0);
            for (int day = 0; day < 11 + 28; day++)
            {
                population.Step(rates, 1.0);
            }

            return population;
        });
        const string Reason = "Digits printed.";
        yield return Source.Case($"vessel of ten, juveniles", "1", (405.7, 0.06), Reason, () =>
            end.Value.Juveniles
        );
        yield return Source.Case($"vessel of ten, adults", "1", (7.7, 0.06), Reason, () => end.Value.Adults);
        yield return Source.Case($"vessel of ten, eggs", "1", (476.0, 0.6), Reason, () => end.Value.Eggs);
    }
}
