using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>Looks on two cores for a way to get all parts out of given sheets.</summary>
/// <param name="parts">Kinds of parts.</param>
/// <param name="rules">What cuts there may be.</param>
/// <param name="seed">Seed of the random numbers.</param>
/// <param name="budget">Turns that are left for all.</param>
internal sealed class FillSearch(ImmutableArray<GridPart> parts, CutRules rules, int seed, TurnBudget budget)
{
    private const int Searches = 2;
    private const int FirstTurns = 600;

    /// <summary>Cuts of every sheet, or null where none were found.</summary>
    /// <param name="wanted">Parts, by kind.</param>
    /// <param name="sheets">The sheets, one each.</param>
    /// <param name="turns">Most turns of each search.</param>
    /// <param name="cancel">Ends it early.</param>
    public CutNode?[]? Find(
        IReadOnlyList<int> wanted,
        IReadOnlyList<GridSheet> sheets,
        int turns,
        CancellationToken cancel
    )
    {
        if (wanted.Sum(p => parts[p].Area) > sheets.Sum(s => s.Area) * (1 + 1e-12))
        {
            return null;
        }

        var searches = new RebuildSearch[Searches];
        for (var i = 0; i < Searches; i++)
        {
            searches[i] = new(parts, wanted, [.. sheets], rules, seed * 7919 + i);
            if (searches[i].Over.Count == 0)
            {
                return Trees(searches[i], sheets.Count);
            }
        }

        // Rounds of growing length, each from warm to cold; all searches end a round together, so that the
        // same seed gives the same plan.
        turns = Math.Min(turns, budget.Left);
        for (var (done, round) = (0, FirstTurns); done < turns && !cancel.IsCancellationRequested; round *= 2)
        {
            var now = Math.Min(round, turns - done);
            done += now;
            budget.Take(now);
            for (var (slice, slices) = (0, Math.Max(1, now / FirstTurns)); slice < slices; slice++)
            {
                Parallel.For(0, Searches, i =>
                    searches[i].Run(now / slices, (double)slice / slices, (slice + 1.0) / slices, cancel)
                );
                if (searches.FirstOrDefault(s => s.Over.Count == 0) is { } found)
                {
                    return Trees(found, sheets.Count);
                }
            }
        }

        return null;
    }

    private static CutNode?[] Trees(RebuildSearch search, int sheets) =>
        [.. Enumerable.Range(0, sheets).Select(search.Tree)];
}
