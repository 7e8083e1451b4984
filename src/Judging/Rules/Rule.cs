using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;

namespace Litterfall.Judging.Rules;

/// <summary>One rule: what it protects, when it trips, and how it judges a design.</summary>
/// <param name="Slug">Its stable name, e.g. "soil-above-sill".</param>
/// <param name="Protects">Whom or what it protects.</param>
/// <param name="TripsWhen">When it trips, in half a sentence, for the handbook.</param>
/// <param name="Judge">What it finds; nothing where the design is inside the limit.</param>
public sealed record Rule(
    string Slug,
    Protects Protects,
    string TripsWhen,
    Func<DesignNumbers, IEnumerable<Finding>> Judge
)
{
    /// <summary>The last stage it looks at.</summary>
    public required Stage Needs { get; init; }

    /// <summary>What changes of mist, vents and lamps may clear its findings.</summary>
    public LeverReach Levers { get; init; }

    /// <summary>
    /// A change of the design that answers a finding; null where only a person can know it, such as papers or
    /// quarantine.
    /// </summary>
    public Func<Finding, CheckedDesign, DesignFix?>? Fix { get; init; }

    /// <summary>
    /// Several changes that may answer a finding, the best first; the checked one is offered.
    /// </summary>
    public Func<Finding, CheckedDesign, IEnumerable<DesignFix?>>? Fixes { get; init; }

    /// <summary>A finding of this rule.</summary>
    /// <param name="severity">How much it matters.</param>
    /// <param name="text">One plain sentence with the measured value and the limit.</param>
    /// <param name="values">What the design has and what the rule allows; null where not measured.</param>
    /// <param name="fix">What would make it disappear.</param>
    /// <param name="control">The key whose control resolves it, and the part it speaks of.</param>
    /// <param name="source">Source of the rule where it has no numeric limit.</param>
    public Finding Found(
        Severity severity,
        string text,
        (Figure? Measured, Figure? Limit) values,
        string fix,
        Control control,
        Citation? source = null
    ) =>
        new(Slug, severity, Protects, text, values.Measured, values.Limit, fix)
        {
            Where = control.Key,
            About = control.About.Length > 0 ? control.About : control.Key,
            Rule = source ?? Citation.OwnDerivation,
        };
}
