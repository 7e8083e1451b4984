using System.Collections.Immutable;
using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>Parts that no plan holds.</summary>
public static class OpenParts
{
    /// <summary>What is left of the wanted parts, the ones wanted first in front.</summary>
    /// <param name="wanted">All parts of a material.</param>
    /// <param name="jobs">Plans of that material, in any state.</param>
    public static ImmutableArray<WantedPart> Left(
        IEnumerable<WantedPart> wanted,
        IEnumerable<CuttingJob> jobs
    )
    {
        var held = Held(jobs);
        var left = ImmutableArray.CreateBuilder<WantedPart>();
        foreach (
            var part in wanted
                .OrderBy(p => p.Day ?? DateOnly.MaxValue)
                .ThenBy(p => p.Order ?? int.MaxValue)
                .ThenBy(p => p.For, StringComparer.Ordinal)
        )
        {
            var taken = Math.Min(part.Count, held.GetValueOrDefault(part.Mark));
            if (taken > 0)
            {
                held[part.Mark] -= taken;
            }

            if (part.Count > taken)
            {
                left.Add(part with { Count = part.Count - taken });
            }
        }

        return left.ToImmutable();
    }

    /// <summary>How many of each part plans hold, given up ones not counted.</summary>
    internal static Dictionary<(int? Order, string For, string Part, double Length, double Width), int> Held(
        IEnumerable<CuttingJob> jobs
    ) =>
        jobs.Where(j => j.State != CuttingJobState.Dropped)
            .SelectMany(j => j.Pieces)
            .GroupBy(p => (p.Order, p.For, p.Part, p.Length, p.Width))
            .ToDictionary(g => g.Key, g => g.Count());
}
