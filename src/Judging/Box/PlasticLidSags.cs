using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Load;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>A plastic lid takes up water on its wet side and sags; a long one opens gaps.</summary>
internal static class PlasticLidSags
{
    private static readonly Figure LongestSpan = Figure.Given(
        "longest span of a plastic lid without a bar",
        0.4,
        Unit.Centimeter,
        Citation.Habit("acrylic lids of 3 to 6 mm sag and bow in humid boxes: brace them over 40 cm")
    );

    public static readonly Rule Rule = new(
        "acrylic-lid-sags",
        Protects.Build,
        FormattableString.Invariant(
            $"a lid of acrylic or polycarbonate spans over {LongestSpan.Value:0.##} cm without a bar under "
        ) + "it, and carries its own weight without the sag of lid-sags: damp still bows it",
        Judge
    )
    {
        Needs = Stage.Quantities,
        Fix = (finding, design) =>
            DesignFix.From(
                "a bar under the middle of the lid",
                DesignEdits.Set(design.Document, finding.Where, "true")
            ),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Design.Design.Lid is not { Braced: false }
            || !Materials.IsPlastic(n.Design.Find("lid.material"))
            || n.Panes.Any(pane => pane.Pane == "lid" && LidSags.Trips(pane))
        )
        {
            yield break;
        }

        // The longer edge counts: bowing follows it, and a lid that lies on two edges spans it.
        var span = Figure
            .Max(n.Box.OpeningLength, n.Box.OpeningDepth)
            .As("longest span of the lid", Unit.Centimeter);
        if (span.Si > LongestSpan.Si + Gaps.Slack)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The {n.Design.Entry("lid.material").Name} of the lid spans {span.Value:0.#} "
                        + $"cm; plastic "
                        + $"over {LongestSpan.Value:0} cm can sag and bow in a humid box, and the edges open."
                ),
                (span, LongestSpan),
                "Set a bar under its middle and enter it, or take glass.",
                "lid.braced"
            );
        }
    }
}
