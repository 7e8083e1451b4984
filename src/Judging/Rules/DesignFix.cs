using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;

namespace Litterfall.Judging.Rules;

/// <summary>A change of the design that answers a finding, to be tried.</summary>
/// <param name="Words">What it does.</param>
/// <param name="Document">The changed design.</param>
public sealed record DesignFix(string Words, DesignDocument Document)
{
    /// <summary>A fix where the edit came out; null where it did not.</summary>
    /// <param name="words">What it does.</param>
    /// <param name="edit">The edit.</param>
    public static DesignFix? From(string words, Reading<DesignDocument> edit) =>
        edit is { Value: { } changed, IsGood: true } ? new(words, changed) : null;
}
