using System.Collections.Immutable;
using Litterfall.Physics.Crew;

namespace Litterfall.Laboratory.Crew;

/// <summary>A case of <c>lab crew</c>.</summary>
/// <param name="Species">A crew animal of the library; null for a life table.</param>
/// <param name="Table">A life table; null for a crew animal.</param>
/// <param name="Celsius">Temperatures day by day; the last one holds.</param>
/// <param name="Days">Days to run.</param>
public sealed record CrewCase(
    CrewSpecies? Species,
    LifeTable? Table,
    ImmutableArray<double> Celsius,
    int Days
)
{
    /// <summary>Adults, juveniles and eggs to begin with.</summary>
    public required (double Adults, double Juveniles, double Eggs) Start { get; init; }

    /// <summary>Matric potential, kPa; null without a limit.</summary>
    public double? Kilopascals { get; init; }

    /// <summary>Mobile animals at which laying is halved; null without crowding.</summary>
    public double? Crowding { get; init; }

    /// <summary>Share of hatched animals taken at the end of each day.</summary>
    public double Removal { get; init; }

    /// <summary>True where every day has one temperature: then stages have whole days.</summary>
    public bool IsEven => Table is not null || Celsius.All(c => c == Celsius[0]);

    /// <summary>Rates of a day, counted from 0.</summary>
    public LifeTable Rates(int day)
    {
        var rates = Table ?? Species!.At(Celsius[Math.Min(day, Celsius.Length - 1)]);
        return IsEven ? rates.Whole : rates;
    }

    /// <summary>Factor of laying by the damp of the ground.</summary>
    public double Laying =>
        Kilopascals is not { } damp ? 1.0
        : Species?.NeedsDamp is false
            ? Kelvin.RelativeHumidity(1000.0 * damp, Celsius[0] + 273.15) >= LeastHumidity ? 1.0
                : 0.0
        : GroundDamp.Usual.Laying(damp);

    /// <summary>Isopods breed from 92 % on (McQueen and Carnio 1974: 95 ± 3 %, abstract).</summary>
    private const double LeastHumidity = 0.92;
}

/// <summary>One day of a case.</summary>
/// <param name="Day">Days since the start.</param>
/// <param name="Eggs">Eggs.</param>
/// <param name="Juveniles">Hatched, not yet adult.</param>
/// <param name="Adults">Adults.</param>
public readonly record struct CrewDay(int Day, double Eggs, double Juveniles, double Adults)
{
    /// <summary>Juveniles and adults.</summary>
    public double Mobile => Juveniles + Adults;
}

/// <summary>What a case came to.</summary>
/// <param name="GrowthFactor">Growth of a day when the shares of ages have settled.</param>
/// <param name="Days">The days.</param>
/// <param name="Milliseconds">Time it took, ms.</param>
/// <param name="StoppedEarly">Day and reason where there were more animals than numbers.</param>
public sealed record CrewOutcome(
    double GrowthFactor,
    ImmutableArray<CrewDay> Days,
    double Milliseconds,
    (int Day, string Reason)? StoppedEarly
);
