using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>A hose leaves a gap in its hole through which animals go.</summary>
internal static class PassageGap
{
    public static readonly Rule Rule = new(
        "passage-gap",
        Protects.Animal,
        FormattableString.Invariant(
            $"an unsealed hole is over {Gaps.Froglet.Value:0.#} mm (animals), or over "
        )
            + FormattableString.Invariant($"{Gaps.Fly.Value:0.#} mm (feeder flies), wider than ")
            + "what goes through it",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            DesignFix.From("the hole sealed", DesignEdits.Set(design.Document, finding.Where, "true")),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Passages.Count; i++)
        {
            var passage = n.Design.Design.Passages[i];
            var gap = Gap(n, i);
            var wide = gap.Si > Gaps.Froglet.Si + Gaps.Slack;
            // No fly is fed below the barrier.
            var flies = passage.In != PassagePart.Barrier && gap.Si > Gaps.Fly.Si + Gaps.Slack;
            if (passage.Sealed || !(wide || flies))
            {
                continue;
            }

            yield return Rule.Found(
                wide ? n.WithAnimals(Severity.Stop, Severity.Caution) : Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The hole for the {passage.For} leaves a gap of {gap.Value:0.#} mm: over "
                        + $"{(wide ? Gaps.Froglet : Gaps.Fly).Value:0.#} mm {Who(wide, passage.In)}."
                ),
                (gap, wide ? Gaps.Froglet : Gaps.Fly),
                "Close it with a grommet, sponge or silicone, and enter that it is sealed.",
                $"passages[{i}].sealed"
            );
        }
    }

    private static string Who(bool wide, PassagePart part) =>
        !wide ? "small feeder flies can get out"
        : part == PassagePart.Barrier ? "froglets and crew get under the barrier"
        : "froglets can get out";

    private static Figure Gap(DesignNumbers n, int i)
    {
        var passage = n.Design.Design.Passages[i];
        var path = $"passages[{i}]";
        return Figure
            .NotNegative(
                n.Design.Figure($"{path}.hole", "width of the hole", passage.Hole, Unit.Millimeter)
                    - n.Design.Figure(
                        $"{path}.through",
                        $"thickness of the {passage.For}",
                        passage.Through,
                        Unit.Millimeter
                    )
            )
            .As($"gap beside the {passage.For}", Unit.Millimeter);
    }
}
