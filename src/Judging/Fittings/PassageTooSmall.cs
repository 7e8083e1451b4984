using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>A hose does not go through a smaller hole.</summary>
internal static class PassageTooSmall
{
    public static readonly Rule Rule = new(
        "passage-too-small",
        Protects.Build,
        "what goes through a hole is thicker than the hole",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Passages.Count; i++)
        {
            var passage = n.Design.Design.Passages[i];
            if (passage.Through.Si <= passage.Hole.Si + Gaps.Slack)
            {
                continue;
            }

            var path = $"passages[{i}]";
            var thick = n.Design.Figure(
                $"{path}.through",
                $"thickness of the {passage.For}",
                passage.Through,
                Unit.Millimeter
            );
            var hole = n.Design.Figure($"{path}.hole", "width of the hole", passage.Hole, Unit.Millimeter);
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The {passage.For} is {thick.Value:0.#} mm thick and does not go through a hole of "
                        + $"{hole.Value:0.#} mm."
                ),
                (thick, hole),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Make the hole {thick.Value:0.#} mm wide or a little more, and seal it."
                ),
                $"{path}.hole"
            );
        }
    }
}
