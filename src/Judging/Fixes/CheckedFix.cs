using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;

namespace Litterfall.Judging.Fixes;

/// <summary>
/// A change that solves a finding and was checked as a whole design: the finding is gone, and nothing worse
/// came.
/// </summary>
/// <param name="Finding">What it solves.</param>
/// <param name="Words">What it does.</param>
/// <param name="Document">The changed design.</param>
/// <param name="Brings">Sentences of lesser findings that the changed design has and this one has
/// not.</param>
public sealed record CheckedFix(
    Finding Finding,
    string Words,
    DesignDocument Document,
    ImmutableArray<string> Brings
);
