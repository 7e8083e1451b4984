using Litterfall.Domain.Cultures;
using Litterfall.Physics.Crew;

namespace Litterfall.Workshop.Cultures;

/// <summary>
/// One culture in the model, led from day to day: ages, how sure they are, and the cup's plateau. Counts
/// correct it by weight: the new number is N^(1 − w)·count^w with w = v ÷ (v + e²), v the variance of the
/// logarithm of the model and e the error of the count (a Kalman step in logarithms).
/// </summary>
public sealed class CultureRun
{
    private readonly CultureKind kind;
    private CrewPopulation animals;
    private double plateau;
    private double variance;

    private CultureRun(CultureKind kind, CrewPopulation animals, double plateau, double variance) =>
        (this.kind, this.animals, this.plateau, this.variance) = (kind, animals, plateau, variance);

    /// <summary>A culture on its first day.</summary>
    /// <param name="kind">The animal.</param>
    /// <param name="walking">Animals that walk, males too.</param>
    /// <param name="isFromAdults">True where all of them are adults.</param>
    /// <param name="liters">Substrate, liters.</param>
    /// <param name="celsius">Temperature of the day, °C.</param>
    public static CultureRun Start(
        CultureKind kind,
        double walking,
        bool isFromAdults,
        double liters,
        double celsius
    )
    {
        var rates = kind.Rates(celsius);
        var females = walking * kind.Females;
        return new(
            kind,
            isFromAdults ? new CrewPopulation(rates, females, 0, 0) : CrewPopulation.Settled(rates, females),
            kind.PlateauOf(liters),
            Square(CulturePractice.StartError.Si)
        );
    }

    /// <summary>Animals that walk, males too.</summary>
    public double Walking => animals.Mobile / kind.Females;

    /// <summary>Adults, males too.</summary>
    public double Adults => animals.Adults / kind.Females;

    /// <summary>Animals that walk at most; infinite where nobody tells.</summary>
    public double Plateau => plateau / kind.Females;

    /// <summary>Factor above and below within which 95 % of cases lie.</summary>
    public double Band => Math.Exp(2 * Math.Sqrt(Math.Min(variance, Square(CulturePractice.MostError.Si))));

    /// <summary>True from the share of the plateau on where growth slows.</summary>
    public bool IsNearPlateau => animals.Mobile >= CulturePractice.NearPlateau.Si * plateau;

    /// <summary>
    /// One day: the day classes without a limit, up to what the cup holds; those beyond it starve. Crowding
    /// that bears on laying alone would halve the eggs of a cup that holds a five-hundredth of its plateau,
    /// for one adult has hundreds of young: no cup is seen to grow like that.
    /// </summary>
    /// <param name="rates">Rates of the day.</param>
    public void Day(LifeTable rates)
    {
        animals.Step(rates, 1);
        if (animals.Mobile > plateau)
        {
            animals.TakeMobile(1 - (plateau / animals.Mobile));
        }

        variance = Math.Min(
            variance + Square(CulturePractice.DriftError.Si),
            Square(CulturePractice.MostError.Si)
        );
    }

    /// <summary>Takes in a count; a cup that is counted above its plateau holds more than was told.</summary>
    /// <param name="counted">Animals that walk.</param>
    /// <param name="way">How they were counted.</param>
    /// <returns>Weight of the count, 0 to 1.</returns>
    public double Count(double counted, CountWay way)
    {
        var error = ErrorOf(way);
        var weight = variance / (variance + Square(error));
        // Nobody finds none for certain: an empty count is less than one animal.
        var found = Math.Max(counted, 0.5) * kind.Females;
        if (animals.Mobile > 0)
        {
            animals.Scale(Math.Pow(found / animals.Mobile, weight));
        }

        variance *= 1 - weight;
        plateau = Math.Max(plateau, animals.Mobile);
        return weight;
    }

    /// <summary>Takes animals out.</summary>
    /// <param name="taken">Animals that walk; never more than there are.</param>
    public void Harvest(double taken)
    {
        if (animals.Mobile > 0)
        {
            animals.TakeMobile(Math.Min(1, taken * kind.Females / animals.Mobile));
        }
    }

    /// <summary>Takes a share of everything out, eggs too, into fresh substrate.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    /// <param name="liters">Substrate of the new culture, liters.</param>
    /// <returns>What was taken out.</returns>
    public CultureRun Split(double share, double liters)
    {
        var part = animals.Copy();
        part.Scale(share);
        animals.Scale(1 - share);
        return new(kind, part, kind.PlateauOf(liters), variance);
    }

    /// <summary>The same, to be led another way.</summary>
    public CultureRun Copy() => new(kind, animals.Copy(), plateau, variance);

    /// <summary>Error of a way to count, as the standard deviation of the logarithm.</summary>
    /// <param name="way">The way.</param>
    public static double ErrorOf(CountWay way) =>
        way switch
        {
            CountWay.All => CulturePractice.CountError.Si,
            CountWay.Sample => CulturePractice.SampleError.Si,
            _ => CulturePractice.EyeError.Si,
        };

    private static double Square(double value) => value * value;
}
