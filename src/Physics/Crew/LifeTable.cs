namespace Litterfall.Physics.Crew;

/// <summary>Rates of an animal at one temperature.</summary>
/// <param name="EggDays">Laid to hatched (isopods: in the pouch), d; infinite where nothing grows.</param>
/// <param name="JuvenileDays">Hatched to first laying, d.</param>
/// <param name="EggsPerDay">Laid by each adult counted, 1/d.</param>
/// <param name="SurvivalToAdult">Share of those laid that live to lay, 0 to 1.</param>
/// <param name="AdultSurvivalPerDay">Share of adults that live through a day, 0 to 1.</param>
public readonly record struct LifeTable(
    double EggDays,
    double JuvenileDays,
    double EggsPerDay,
    double SurvivalToAdult,
    double AdultSurvivalPerDay
)
{
    private const int Halvings = 200;
    private const double Most = 1000.0;

    /// <summary>Laid to first laying, d.</summary>
    public double Days => EggDays + JuvenileDays;

    /// <summary>The same with each stage in whole days, halves to even; one day at least.</summary>
    public LifeTable Whole =>
        double.IsFinite(Days)
            ? this with
            {
                EggDays = Math.Max(1.0, Math.Round(EggDays, MidpointRounding.ToEven)),
                JuvenileDays = Math.Max(1.0, Math.Round(JuvenileDays, MidpointRounding.ToEven)),
            }
            : this;

    /// <summary>The five rates, as they are given.</summary>
    public override string ToString() =>
        FormattableString.Invariant(
            $"{EggDays} + {JuvenileDays} d, {EggsPerDay} 1/d, S {SurvivalToAdult}, sA {AdultSurvivalPerDay}"
        );

    /// <summary>Young that live to lay, for each adult and day.</summary>
    public double NetPerDay => SurvivalToAdult * EggsPerDay;

    /// <summary>Young that live to lay, in the life of one adult: F ÷ (1 − sA).</summary>
    public double NetReproduction => NetPerDay / (1.0 - AdultSurvivalPerDay);

    /// <summary>
    /// Growth of a population in a day when the shares of ages have settled: the positive root of
    /// λ^A − sA (1 − μ) λ^(A − 1) − S m (1 − μ)^J = 0, A from laid to laying and J from hatched to laying.
    /// </summary>
    /// <param name="removal">Share μ of hatched animals taken each day, 0 to 1.</param>
    public double GrowthFactor(double removal = 0.0)
    {
        double stay = AdultSurvivalPerDay * (1.0 - removal);
        double days = Days;
        if (NetPerDay <= 0.0 || !double.IsFinite(days))
        {
            return stay;
        }

        double young = NetPerDay * Math.Pow(1.0 - removal, JuvenileDays);
        double low = stay;
        double high = Most;
        for (int i = 0; i < Halvings && high - low > 1e-15 * high; i++)
        {
            double middle = 0.5 * (low + high);
            // Divided by λ^A: falls in λ, so that no power overflows.
            bool isAbove = (stay / middle) + (young * Math.Pow(middle, -days)) < 1.0;
            (low, high) = isAbove ? (low, middle) : (middle, high);
        }

        return 0.5 * (low + high);
    }

    /// <summary>Largest share of hatched animals that can be taken each day without end.</summary>
    /// <returns>μ with a growth factor of 1; 0 where the population shrinks by itself.</returns>
    public double SustainableRemoval()
    {
        double low = 0.0;
        double high = 1.0;
        if (!double.IsFinite(Days) || NetPerDay + AdultSurvivalPerDay <= 1.0)
        {
            return 0.0;
        }

        for (int i = 0; i < Halvings && high - low > 1e-12; i++)
        {
            double middle = 0.5 * (low + high);
            double left = 1.0 - middle;
            bool grows = (AdultSurvivalPerDay * left) + (NetPerDay * Math.Pow(left, JuvenileDays)) > 1.0;
            (low, high) = grows ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }
}
