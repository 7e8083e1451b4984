using System.Collections.Immutable;
using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Service;

/// <summary>Animals of one species in a tank.</summary>
/// <param name="Species">Key of the species; empty where nobody said.</param>
/// <param name="Count">How many the log leaves; never below 0.</param>
/// <param name="Missing">How many more went or died than had come; 0 where the log is whole.</param>
public sealed record AnimalCount(string Species, int Count, int Missing);

/// <summary>Counts animals from a log: what came in or was born, less what went or died.</summary>
public static class AnimalCounts
{
    /// <summary>Species with animals, or with a log that does not add up, by key.</summary>
    /// <param name="lines">Lines of one tank that count, in the order of time.</param>
    public static ImmutableArray<AnimalCount> Find(IEnumerable<CareEntry> lines)
    {
        var counts = new SortedDictionary<string, (int Count, int Missing)>(StringComparer.Ordinal);
        foreach (var line in lines.Where(IsOfAnimals))
        {
            var (count, missing) = counts.GetValueOrDefault(line.Species);
            count += Change(line);
            // What is counted stays: an animal nobody entered has left, the others are still there.
            counts[line.Species] = count < 0 ? (0, missing - count) : (count, missing);
        }

        return
        [
            .. counts
                .Where(c => c.Value is not (0, 0))
                .Select(c => new AnimalCount(c.Key, c.Value.Count, c.Value.Missing)),
        ];
    }

    /// <summary>True for lines that bring animals in, or take them out.</summary>
    /// <param name="line">The line.</param>
    public static bool IsOfAnimals(CareEntry line) =>
        line.Kind is CareKind.AnimalsIn or CareKind.AnimalsOut or CareKind.Born or CareKind.Died;

    /// <summary>What a line changes; one animal where it names no number.</summary>
    /// <param name="line">The line.</param>
    public static int Change(CareEntry line)
    {
        var count = (int)Math.Round(line.Amount ?? 1, MidpointRounding.AwayFromZero);
        return line.Kind is CareKind.AnimalsIn or CareKind.Born ? count : -count;
    }
}
