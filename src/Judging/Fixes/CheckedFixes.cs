using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Levers;

namespace Litterfall.Judging.Fixes;

/// <summary>
/// The changes that solve a finding, each checked as a whole design before it is offered. What a rule itself
/// knows comes first; where mist, vents or lamps may help, their levers follow.
/// </summary>
/// <param name="Result">The design as it is, judged.</param>
public sealed record CheckedFixes(DesignResult Result)
{
    private readonly Dictionary<string, DesignResult?> seen = new(StringComparer.Ordinal);

    /// <summary>Called before each check, where more urgent work may be let by.</summary>
    public Action? Between { get; init; }

    /// <summary>Ends the search between and within checks.</summary>
    public CancellationToken Cancel { get; init; }

    /// <summary>
    /// What the rule of a finding knows to solve it, the first that does; null where none does.
    /// </summary>
    /// <param name="finding">A finding of the design.</param>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public CheckedFix? Quick(Finding finding)
    {
        foreach (var fix in RuleBook.Fixes(finding, Result.Numbers.Design))
        {
            if (Checked(finding, fix.Words, fix.Document) is { } good)
            {
                return good;
            }
        }

        return null;
    }

    /// <summary>
    /// The quick fixes of all open findings, one for each: first those that touch neither air nor light and
    /// are checked at once, then those that need a forecast, each in the order of the findings.
    /// </summary>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public IEnumerable<CheckedFix> All()
    {
        var dear = new List<Finding>();
        foreach (var finding in Result.Open)
        {
            if (RuleBook.Fixes(finding, Result.Numbers.Design).FirstOrDefault() is not { } first)
            {
                continue;
            }

            if (!IsCheap(first.Document))
            {
                dear.Add(finding);
            }
            else if (Quick(finding) is { } fix)
            {
                yield return fix;
            }
        }

        foreach (var finding in dear)
        {
            if (Quick(finding) is { } fix)
            {
                yield return fix;
            }
        }
    }

    private bool IsCheap(DesignDocument document) =>
        DesignChecker.Check(document, Result.Numbers.Design.Catalog, Result.Numbers.Design.Files).Value
            is { } changed
        && new DesignStages(changed, Result.Numbers.Stages, Cancel).IsTakenOver;

    /// <summary>
    /// The result with the levers of its findings, and those levers that solve one and bring nothing worse.
    /// </summary>
    public (DesignResult Result, ImmutableArray<CheckedFix> Fixes) Levers()
    {
        var found = LeverSearch.Search(Result, Between, Cancel);
        var fixes =
            from finding in Result.Open
            from lever in found
            where lever.Slug == finding.Slug
            let change = new FindingChange(Result, lever.After)
            where change.IsGone(finding) && !change.IsWorse(finding)
            select new CheckedFix(
                finding,
                LeverSearch.Words(lever.Fix),
                lever.After.Numbers.Design.Document,
                change.Brings
            );
        return (LeverSearch.With(Result, found), [.. fixes]);
    }

    /// <summary>A change as a checked fix; null where the finding stays or something worse comes.</summary>
    internal CheckedFix? Checked(Finding finding, string words, DesignDocument document) =>
        After(document, finding) is { } after
        && new FindingChange(Result, after) is var change
        && change.IsGone(finding)
        && !change.IsWorse(finding)
            ? new CheckedFix(finding, words, document, change.Brings)
            : null;

    /// <summary>
    /// The changed design as a whole; null where it does not read, or where its own rule finds as much as
    /// before, which needs only the stages of that rule.
    /// </summary>
    internal DesignResult? After(DesignDocument document, Finding? finding = null)
    {
        Cancel.ThrowIfCancellationRequested();
        if (seen.TryGetValue(document.Text, out var known))
        {
            return known;
        }

        Between?.Invoke();
        var design = Result.Numbers.Design;
        if (
            DesignChecker.Check(document, design.Catalog, design.Files)
            is not { Value: { } changed, IsGood: true }
        )
        {
            return seen[document.Text] = null;
        }

        var numbers = new DesignNumbers(
            new DesignStages(changed, Result.Numbers.Stages, Cancel),
            Reach.Whole
        );
        if (
            finding is not null
            && RuleBook.Find(finding.Slug) is { } rule
            && RuleBook.Judge(numbers, rule).Length >= Result.Findings.Count(f => f.Slug == finding.Slug)
        )
        {
            return null;
        }

        return seen[document.Text] = DesignRun.Execute(numbers, Cancel);
    }
}
