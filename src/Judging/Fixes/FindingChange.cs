using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Findings;

namespace Litterfall.Judging.Fixes;

/// <summary>
/// What a change does to the findings of a design. Findings are the same where their rule and the thing they
/// speak of are; things of a list go by their kind, so that taking one out renames no other.
/// </summary>
internal sealed class FindingChange
{
    private readonly DesignResult before;
    private readonly DesignResult after;
    private readonly ILookup<string, Finding> had;
    private readonly ILookup<string, Finding> has;

    public FindingChange(DesignResult before, DesignResult after)
    {
        (this.before, this.after) = (before, after);
        had = Keyed(before);
        has = Keyed(after);
    }

    /// <summary>True where a finding of the design before is gone.</summary>
    public bool IsGone(Finding target)
    {
        var key = Key(before, target);
        return has[key].Count() < had[key].Count();
    }

    /// <summary>
    /// True where something came that weighs as much as what is solved: a stop in any case; beside a caution
    /// or a note a caution; for a stop of the build a caution that protects life; beside a note as many
    /// findings as there were.
    /// </summary>
    public bool IsWorse(Finding target) =>
        Came(Severity.Stop).Any()
        || (target.Severity < Severity.Stop && Came(Severity.Caution).Any())
        || (
            target.Protects == Protects.Build && Came(Severity.Caution).Any(f => f.Protects != Protects.Build)
        )
        || (target.Severity == Severity.Note && Count(after, Severity.Note) >= Count(before, Severity.Note));

    /// <summary>Findings at least as severe of which there are more than before.</summary>
    public IEnumerable<Finding> Came(Severity least) =>
        has.SelectMany(now =>
            now.Where(f => f.Severity >= least).Skip(had[now.Key].Count(f => f.Severity >= least))
        );

    /// <summary>The lesser findings that came, as sentences.</summary>
    public ImmutableArray<string> Brings => [.. Came(Severity.Note).Select(f => f.Text)];

    /// <summary>How good a design is: the fewer stops, then cautions, then notes the better.</summary>
    public static (int Stops, int Cautions, int Notes) Score(DesignResult result) =>
        (
            result.Open.Count(f => f.Severity == Severity.Stop),
            result.Open.Count(f => f.Severity == Severity.Caution),
            result.Open.Count(f => f.Severity == Severity.Note)
        );

    /// <summary>Rule and thing of a finding.</summary>
    public static string Key(DesignResult result, Finding finding) =>
        $"{finding.Slug} {Named(result.Numbers.Design.Design, finding.About)}";

    private static int Count(DesignResult result, Severity least) =>
        result.Open.Count(f => f.Severity >= least);

    private static ILookup<string, Finding> Keyed(DesignResult result) =>
        result
            .Open.Where(f => !f.Slug.StartsWith("acceptance", StringComparison.Ordinal))
            .ToLookup(f => Key(result, f), StringComparer.Ordinal);

    private static string Named(Design design, string path)
    {
        var (open, close) = (
            path.IndexOf('[', StringComparison.Ordinal),
            path.IndexOf(']', StringComparison.Ordinal)
        );
        if (
            open < 0
            || !int.TryParse(
                path.AsSpan(open + 1, close - open - 1),
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out var i
            )
        )
        {
            return path;
        }

        var list = path[..open];
        return Kind(design, list, i) is { } kind ? $"{list} {kind}{path[(close + 1)..]}" : path;
    }

    private static string? Kind(Design design, string list, int index) =>
        list switch
        {
            "plants" => design.Plants.ElementAtOrDefault(index)?.Kind,
            "animals" => design.Animals.ElementAtOrDefault(index)?.Kind,
            "ratedFor" => design.RatedFor.ElementAtOrDefault(index)?.Kind,
            "crew" => design.Crew.ElementAtOrDefault(index)?.Kind,
            "hardscape" => design.Hardscape.ElementAtOrDefault(index)?.Material,
            _ => null,
        };
}
