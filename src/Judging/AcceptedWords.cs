using Litterfall.Domain.Findings;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging;

/// <summary>A finding that somebody accepts, as every list of findings tells it.</summary>
public static class AcceptedWords
{
    /// <summary>"Accepted: the lid sags ... because ..., on 14 August 2026, by ...".</summary>
    /// <param name="finding">A finding that is accepted.</param>
    public static string Of(Finding finding)
    {
        var accepted = finding.Accepted!;
        var by = accepted.By is { } name ? $", by {name}" : "";
        return $"Accepted: {finding.Text} Because: {accepted.Reason.TrimEnd('.')} "
            + $"({NumberText.Day(accepted.On)}{by}).";
    }
}
