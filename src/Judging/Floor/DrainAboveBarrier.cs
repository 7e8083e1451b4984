using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>Water must stay a centimeter below the barrier, else the soil stands in it.</summary>
internal static class DrainAboveBarrier
{
    public static readonly Rule Rule = new(
        "drain-above-barrier",
        Protects.Build,
        FormattableString.Invariant(
            $"the outlet stands higher than {DrainMark.BelowBarrier.Value:0.#} cm below the barrier"
        ),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            finding.Limit is { } highest
                ? DesignFix.From(
                    $"the outlet at {FixEdit.Written(design.Document, "drain.height", highest.Si)}",
                    FixEdit.Length(design.Document, "drain.height", highest.Si)
                )
                : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var drainage = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage);
        if (drainage is null || n.Design.Design.Drain?.Height is not { } typed)
        {
            yield break;
        }

        var outlet = n.Design.Figure("drain.height", "height of the outlet", typed, Unit.Centimeter);
        var highest = Figure
            .NotNegative(drainage.Depth - DrainMark.BelowBarrier)
            .As("highest outlet", Unit.Centimeter, DrainMark.BelowBarrier.Origin);
        if (outlet.Si > highest.Si + Gaps.Slack)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The outlet is {outlet.Value:0.#} cm high; below a barrier at "
                        + $"{drainage.Depth.Value:0.#} cm "
                        + $"water may stand {highest.Value:0.#} cm high, else the soil draws it up."
                ),
                (outlet, highest),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Set the outlet {(outlet.Si - highest.Si) * 100:0.#} cm lower."
                ),
                "drain.height"
            );
        }
    }
}
