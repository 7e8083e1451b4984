using System.Collections.Immutable;
using System.Diagnostics;
using Litterfall.Physics.Crew;

namespace Litterfall.Laboratory.Crew;

/// <summary>Runs a case of the crew day by day.</summary>
public static class CrewLab
{
    /// <summary>A few days more and the count leaves what a double can hold.</summary>
    private const double MostAnimals = 1e300;

    /// <summary>Runs it.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="progress">Told the days done.</param>
    /// <param name="cancel">Cancels between days.</param>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public static CrewOutcome Run(CrewCase asked, Action<double> progress, CancellationToken cancel)
    {
        var watch = Stopwatch.StartNew();
        var first = asked.Rates(0);
        double damp = asked.Laying;
        double growth = (first with { EggsPerDay = first.EggsPerDay * damp }).GrowthFactor(asked.Removal);
        var population = new CrewPopulation(
            first,
            asked.Start.Adults,
            asked.Start.Juveniles,
            asked.Start.Eggs
        );
        var days = ImmutableArray.CreateBuilder<CrewDay>(asked.Days + 1);
        days.Add(Day(0, population));
        (int, string)? stop = double.IsFinite(growth) ? null : (0, "the growth factor is not a number");
        for (int day = 0; day < asked.Days && stop is null; day++)
        {
            cancel.ThrowIfCancellationRequested();
            double crowd = asked.Crowding is { } half ? 1.0 / (1.0 + (population.Mobile / half)) : 1.0;
            population.Step(asked.Rates(day), damp * crowd, asked.Removal);
            days.Add(Day(day + 1, population));
            stop = IsCountable(days[^1]) ? null : (day + 1, "there are more animals than can be counted");
            progress(day + 1);
        }

        return new CrewOutcome(
            growth,
            days.ToImmutable(),
            Math.Round(watch.Elapsed.TotalMilliseconds, 3),
            stop
        );
    }

    private static bool IsCountable(CrewDay day) => day.Eggs + day.Mobile <= MostAnimals;

    private static CrewDay Day(int day, CrewPopulation p) => new(day, p.Eggs, p.Juveniles, p.Adults);
}
