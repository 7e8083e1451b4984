using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;

namespace Litterfall.Judging;

/// <summary>A computed and judged design.</summary>
public sealed record DesignResult(
    DesignNumbers Numbers,
    ImmutableArray<Finding> Findings,
    ReportObject Report
)
{
    /// <summary>Findings that nobody accepts.</summary>
    public IEnumerable<Finding> Open => Findings.Where(f => f.IsOpen);

    /// <summary>True when something must stop the build that nobody accepts.</summary>
    public bool Stops => Open.Any(f => f.Severity == Severity.Stop);
}

/// <summary>The main path from a checked design to quantities and findings.</summary>
public static class DesignRun
{
    /// <summary>Computes, judges and reports.</summary>
    /// <param name="design">The design.</param>
    /// <param name="cancel">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public static DesignResult Execute(CheckedDesign design, CancellationToken cancel = default) =>
        Execute(new DesignNumbers(design, cancel), cancel);

    /// <summary>The same from stages of which some may be computed.</summary>
    /// <param name="numbers">Numbers of the design.</param>
    /// <param name="cancel">Cancels between stages and between rules.</param>
    public static DesignResult Execute(DesignNumbers numbers, CancellationToken cancel = default)
    {
        numbers.Stages.Prepare(cancel);
        var findings = RuleBook.Judge(numbers, cancel);
        return new DesignResult(numbers, findings, CheckReport.Write(numbers, findings));
    }
}
