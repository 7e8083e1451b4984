namespace Litterfall.Physics.Crew;

/// <summary>An animal of the clean-up crew by its rates at any temperature.</summary>
/// <remarks>
/// Development by degree days over a lower threshold. Springtails: eggs and life span after Fountain and
/// Hopkin 2005 and
/// Choi et al. 2002, or even laying up to a heat limit; isopods: broods by degree days, as Horváthová et al.
/// 2015 and
/// Waller and Verdi 2016 have them, between the warmths of McQueen and Carnio 1974. Most values are
/// recalled; the catalog says which.
/// </remarks>
public abstract record CrewSpecies
{
    private const double LeastWarmth = 1e-9;

    /// <summary>Lower threshold of development, °C.</summary>
    public required double ThresholdCelsius { get; init; }

    /// <summary>Degree days from laid to hatched, K d.</summary>
    public required double EggKelvinDays { get; init; }

    /// <summary>Degree days from hatched to first laying, K d.</summary>
    public required double JuvenileKelvinDays { get; init; }

    /// <summary>At which warmth it lays.</summary>
    public LayingWarmth Laying { get; init; } = LayingWarmth.Any;

    /// <summary>True for springtails, whose laying falls as the ground dries.</summary>
    public abstract bool NeedsDamp { get; }

    /// <summary>Share of its development done when it hatches.</summary>
    public double HatchShare => EggKelvinDays / (EggKelvinDays + JuvenileKelvinDays);

    /// <summary>Rates at a temperature.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public abstract LifeTable At(double celsius);

    /// <summary>Days for so many degree days; infinite at and below the threshold.</summary>
    /// <param name="kelvinDays">Degree days, K d.</param>
    /// <param name="celsius">Temperature, °C.</param>
    protected double Days(double kelvinDays, double celsius) =>
        celsius - ThresholdCelsius > LeastWarmth
            ? kelvinDays / (celsius - ThresholdCelsius)
            : double.PositiveInfinity;
}

/// <summary>A springtail whose eggs and life span are known at some temperatures.</summary>
public sealed record LifespanSpringtail : CrewSpecies
{
    /// <summary>
    /// Eggs in a life at three rising temperatures, straight between; as at the first below it.
    /// </summary>
    public required (double Celsius, double Eggs)[] EggsPerLife { get; init; }

    /// <summary>Mean life span at two temperatures, d; exponential between and beyond.</summary>
    public required (
        (double Celsius, double Days) Cool,
        (double Celsius, double Days) Warm
    ) Life
    { get; init; }

    /// <summary>Share of eggs that hatch up to <see cref="HatchBestTo"/>.</summary>
    public required double Hatch { get; init; }

    /// <summary>Warmest with the best hatching, °C.</summary>
    public required double HatchBestTo { get; init; }

    /// <summary>Nothing hatches from here on, °C.</summary>
    public required double HatchStopsAt { get; init; }

    /// <summary>Share that lives from hatched to adult.</summary>
    public required double Survival { get; init; }

    /// <inheritdoc/>
    public override bool NeedsDamp => true;

    /// <inheritdoc/>
    public override LifeTable At(double celsius)
    {
        double egg = Days(EggKelvinDays, celsius);
        double juvenile = Days(JuvenileKelvinDays, celsius);
        var ((coolAt, cool), (warmAt, warm)) = Life;
        double life = cool * Math.Exp(-Math.Log(cool / warm) / (warmAt - coolAt) * (celsius - coolAt));
        double adult = life - juvenile;
        double hatch = Hatch * Math.Clamp((HatchStopsAt - celsius) / (HatchStopsAt - HatchBestTo), 0.0, 1.0);
        return adult > 1.0
            ? new LifeTable(
                egg,
                juvenile,
                Laying.Share(celsius) * Eggs(celsius) / adult,
                hatch * Survival,
                1.0 - (1.0 / adult)
            )
            : new LifeTable(
                egg,
                juvenile,
                0.0,
                hatch * Survival,
                Math.Max(0.0, 1.0 - (1.0 / Math.Max(life, 1.0)))
            );
    }

    private double Eggs(double celsius)
    {
        if (celsius >= HatchStopsAt)
        {
            return 0.0;
        }

        var before = EggsPerLife[0];
        foreach (var next in EggsPerLife.Skip(1).Append((HatchStopsAt, 0.0)))
        {
            if (celsius <= next.Item1)
            {
                double share = Math.Max(0.0, (celsius - before.Celsius) / (next.Item1 - before.Celsius));
                return before.Eggs + (share * (next.Item2 - before.Eggs));
            }

            before = next;
        }

        return 0.0;
    }
}

/// <summary>A springtail of warm places that lays evenly.</summary>
public sealed record TropicalSpringtail : CrewSpecies
{
    private const double FullWarmth = 15.0;

    /// <summary>
    /// Laid by each adult and day from 15 K over the threshold on, 1/d; less in proportion below.
    /// </summary>
    public required double EggsPerDay { get; init; }

    /// <summary>Share of eggs that hatch up to <see cref="HatchBestTo"/>.</summary>
    public required double Hatch { get; init; }

    /// <summary>Warmest with the best hatching, °C.</summary>
    public required double HatchBestTo { get; init; }

    /// <summary>Nothing hatches from here on, °C.</summary>
    public required double HatchStopsAt { get; init; }

    /// <summary>Share that lives from hatched to adult.</summary>
    public required double Survival { get; init; }

    /// <summary>Mean life of adults, d.</summary>
    public required double AdultDays { get; init; }

    /// <summary>
    /// From which warmth on adults die, °C, and how long they then live, d; null where unknown.
    /// </summary>
    public (double Celsius, double Days)? Heat { get; init; }

    /// <inheritdoc/>
    public override bool NeedsDamp => true;

    /// <inheritdoc/>
    public override LifeTable At(double celsius) =>
        new(
            Days(EggKelvinDays, celsius),
            Days(JuvenileKelvinDays, celsius),
            EggsPerDay
                * Laying.Share(celsius)
                * Math.Clamp((celsius - ThresholdCelsius) / FullWarmth, 0.0, 1.0),
            Hatch * Math.Clamp((HatchStopsAt - celsius) / (HatchStopsAt - HatchBestTo), 0.0, 1.0) * Survival,
            1.0 - DyingPerDay(celsius)
        );

    /// <summary>Share of adults that die in a day; rises within the edge above the heat that kills.</summary>
    private double DyingPerDay(double celsius)
    {
        double usual = 1.0 / AdultDays;
        return Heat is { } heat
            ? usual
                + (
                    ((1.0 / heat.Days) - usual)
                    * Math.Clamp((celsius - heat.Celsius) / LayingWarmth.EdgeKelvin, 0.0, 1.0)
                )
            : usual;
    }
}

/// <summary>An isopod: broods in a pouch.</summary>
public sealed record IsopodLife : CrewSpecies
{
    /// <summary>Degree days between two broods, K d.</summary>
    public required double BroodKelvinDays { get; init; }

    /// <summary>Young of a brood.</summary>
    public required double Brood { get; init; }

    /// <summary>Share of females, 0 to 1; females are counted.</summary>
    public required double FemaleShare { get; init; }

    /// <summary>Share that is born alive, and of these that lives to breed.</summary>
    public required (double Birth, double Juvenile) Survival { get; init; }

    /// <summary>Mean life of adults, d.</summary>
    public required double AdultDays { get; init; }

    /// <summary>Growth falls from here on, °C, and is nothing at the second.</summary>
    public required (double FallsFrom, double ZeroAt) Heat { get; init; }

    /// <inheritdoc/>
    public override bool NeedsDamp => false;

    /// <inheritdoc/>
    public override LifeTable At(double celsius)
    {
        double speed = Math.Clamp((Heat.ZeroAt - celsius) / (Heat.ZeroAt - Heat.FallsFrom), 0.0, 1.0);
        double brood = Days(BroodKelvinDays, celsius);
        return new LifeTable(
            Days(EggKelvinDays, celsius) / speed,
            Days(JuvenileKelvinDays, celsius) / speed,
            double.IsFinite(brood) ? FemaleShare * Brood / brood * speed * Laying.Share(celsius) : 0.0,
            Survival.Birth * Survival.Juvenile,
            1.0 - (1.0 / AdultDays)
        );
    }
}
