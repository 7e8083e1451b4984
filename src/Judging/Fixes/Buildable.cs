using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;

namespace Litterfall.Judging.Fixes;

/// <summary>What would make a design buildable, to be tried as one change.</summary>
/// <param name="Document">The changed design.</param>
/// <param name="Changes">What it changes, in words, in the order in which it was found.</param>
/// <param name="Solved">How many stops and cautions it solves.</param>
public sealed record BuildablePlan(DesignDocument Document, ImmutableArray<string> Changes, int Solved);

/// <summary>
/// Combines checked fixes until no stop is left that one of them solves, then no caution. All that rules know
/// is tried at once first, and by halves where that leads nowhere; what is left is solved one by one, each
/// step checked as a whole design.
/// </summary>
public static class Buildable
{
    private const int MostSteps = 24;
    private const int MostLeverRounds = 2;

    /// <summary>The plan; null where nothing that is open can be solved.</summary>
    /// <param name="start">The design, judged.</param>
    /// <param name="between">Called before each check, where more urgent work may be let by.</param>
    /// <param name="cancel">Ends the search.</param>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public static BuildablePlan? Search(
        DesignResult start,
        Action? between = null,
        CancellationToken cancel = default
    )
    {
        var state = new State(start, [], between, cancel);
        foreach (var severity in new[] { Severity.Stop, Severity.Caution })
        {
            state = Turned(Singly(Together(state, severity), severity), severity);
        }

        return state.Changes.IsEmpty
            ? null
            : new BuildablePlan(
                state.Now.Numbers.Design.Document,
                state.Changes,
                Weighty(start) - Weighty(state.Now)
            );
    }

    /// <summary>
    /// All first fixes of a severity at once: most touch different parts. Where that is worse than before,
    /// half of them.
    /// </summary>
    private static State Together(State state, Severity severity)
    {
        for (
            var left = Open(state.Now, severity).ToList();
            left.Count > 1;
            left = [.. left.Take(left.Count / 2)]
        )
        {
            var (document, words) = Composed(state, left);
            if (words.Count < 2)
            {
                return state;
            }

            if (state.Fixes.After(document) is { } after && IsBetter(state.Now, after, severity, words.Count))
            {
                return state.With(after, words);
            }
        }

        return state;
    }

    /// <summary>The first fixes of several findings, one written into the result of the other.</summary>
    private static (DesignDocument Document, List<string> Words) Composed(
        State state,
        IEnumerable<Finding> findings
    )
    {
        var design = state.Now.Numbers.Design;
        var words = new List<string>();
        foreach (var finding in findings)
        {
            if (
                RuleBook.Fixes(finding, design).FirstOrDefault() is not { } fix
                || words.Contains(fix.Words)
                || Domain.Checking.DesignChecker.Check(fix.Document, design.Catalog, design.Files).Value
                    is not { } next
            )
            {
                continue;
            }

            words.Add(fix.Words);
            var isShorter = Items(next.Design) < Items(design.Design);
            design = next;
            if (isShorter)
            {
                // What stands behind it has other numbers now: the rest waits for its own turn.
                break;
            }
        }

        return (design.Document, words);
    }

    /// <summary>Finding by finding, each fix checked alone.</summary>
    private static State Singly(State state, Severity severity)
    {
        var failed = new HashSet<string>(StringComparer.Ordinal);
        for (var step = 0; step < MostSteps; step++)
        {
            var next = Open(state.Now, severity)
                .FirstOrDefault(f => !failed.Contains(FindingChange.Key(state.Now, f)));
            if (next is null)
            {
                break;
            }

            if (state.Fixes.Quick(next) is { } fix && state.Fixes.After(fix.Document) is { } after)
            {
                state = state.With(after, [fix.Words]);
            }
            else
            {
                failed.Add(FindingChange.Key(state.Now, next));
            }
        }

        return state;
    }

    /// <summary>Mist, vents and lamps for what no rule knows a fix.</summary>
    private static State Turned(State state, Severity severity)
    {
        for (var round = 0; round < MostLeverRounds; round++)
        {
            if (!Open(state.Now, severity).Any(f => RuleBook.Find(f.Slug)?.Levers > Rules.LeverReach.None))
            {
                break;
            }

            var best = state
                .Fixes.Levers()
                .Fixes.Where(f => f.Finding.Severity == severity)
                .Select(f => (Fix: f, After: state.Fixes.After(f.Document)))
                .Where(pair => pair.After is not null)
                .OrderBy(pair => FindingChange.Score(pair.After!))
                .FirstOrDefault();
            if (best.After is null)
            {
                break;
            }

            state = state.With(best.After, [best.Fix.Words]);
        }

        return state;
    }

    /// <summary>
    /// True where as many findings are gone as fixes were taken, and nothing at least as severe came.
    /// </summary>
    private static bool IsBetter(DesignResult before, DesignResult after, Severity severity, int fixes)
    {
        var change = new FindingChange(before, after);
        return Open(before, severity).Count(change.IsGone) >= fixes && !change.Came(severity).Any();
    }

    private static IEnumerable<Finding> Open(DesignResult result, Severity severity) =>
        result.Open.Where(f => f.Severity == severity);

    private static int Weighty(DesignResult result) => result.Open.Count(f => f.Severity > Severity.Note);

    private static int Items(Domain.Design design) =>
        design.Plants.Count + design.Hardscape.Count + design.Vents.Count + design.Crew.Count;

    /// <summary>Where the search stands.</summary>
    private sealed record State(
        DesignResult Now,
        ImmutableArray<string> Changes,
        Action? Between,
        CancellationToken Cancel
    )
    {
        public CheckedFixes Fixes { get; } = new(Now) { Between = Between, Cancel = Cancel };

        public State With(DesignResult after, IEnumerable<string> words) =>
            new(after, [.. Changes, .. words], Between, Cancel);
    }
}
