using System.Collections.Immutable;
using Litterfall.Documents.Views;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;
using Litterfall.Judging;
using Litterfall.Judging.Fixes;

namespace Litterfall.Web.Desk;

/// <summary>A design with what is computed of it so far; each look replaces the one before.</summary>
/// <param name="Document">The design as written.</param>
public sealed record DeskLook(DesignDocument Document)
{
    /// <summary>The checked design; null where it has faults.</summary>
    public CheckedDesign? Checked { get; init; }

    /// <summary>What keeps it from being computed.</summary>
    public ImmutableArray<TextFault> Faults { get; init; } = [];

    /// <summary>Sizes and quantities, at once.</summary>
    public DesignNumbers? Shape { get; init; }

    /// <summary>With a month of air and floor; of the design before while its own is computed.</summary>
    public DesignNumbers? Month { get; init; }

    /// <summary>True while <see cref="Month"/> is of the design before.</summary>
    public bool MonthIsOld { get; init; }

    /// <summary>Everything, with findings; of the design before while its own is computed.</summary>
    public DesignResult? Whole { get; init; }

    /// <summary>True while <see cref="Whole"/> is of the design before.</summary>
    public bool WholeIsOld { get; init; }

    /// <summary>Checked fixes of its findings, as far as they are found.</summary>
    public ImmutableArray<CheckedFix> Fixes { get; init; } = [];

    /// <summary>True once what would fix each finding has been searched.</summary>
    public bool HasFixes { get; init; }

    /// <summary>The checked fixes of a finding.</summary>
    /// <param name="finding">A finding of <see cref="Whole"/>.</param>
    public IEnumerable<CheckedFix> FixesOf(Finding finding) =>
        WholeIsOld
            ? []
            : Fixes.Where(f =>
                f.Finding.Slug == finding.Slug
                && f.Finding.About == finding.About
                && f.Finding.Text == finding.Text
            );

    /// <summary>Its light, or that of the design before.</summary>
    public LightFigures? Light { get; init; }

    /// <summary>True while <see cref="Light"/> is of the design before.</summary>
    public bool LightIsOld { get; init; }

    /// <summary>Views of the shape; null where it has faults.</summary>
    public DesignViews? Views { get; init; }

    /// <summary>The numbers to show: all, or those there are.</summary>
    public ReportObject? Report { get; init; }

    /// <summary>A figure of the report; null where it is not there.</summary>
    /// <param name="key">Key as in a check, such as "water.gainMlPerDay".</param>
    public ReportNumber? Number(string key) =>
        Report is { } report ? ReportPath.Find(report, key) as ReportNumber : null;
}
