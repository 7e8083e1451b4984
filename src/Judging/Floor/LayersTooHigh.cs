using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Floor;

/// <summary>The layers are higher than the box.</summary>
internal static class LayersTooHigh
{
    public static readonly Rule Rule = new(
        "layers-higher-than-box",
        Protects.Build,
        "the highest stack of layers reaches the inside height",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var stack = Figure
            .Total([.. n.Layers.Select(l => l.Highest)], Unit.Meter.Dimension)
            .As("highest stack of layers", Unit.Centimeter);
        if (stack.Si < n.Box.InsideHeight.Si || !n.Box.IsBuildable)
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Stop,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The layers stand {stack.Value:0.#} cm high, the box is "
                    + $"{n.Box.InsideHeight.Value / 10:0.#} cm high inside."
            ),
            (stack, n.Box.InsideHeight),
            "Make the layers thinner or the box higher.",
            Controls.Soil(n.Design.Design)
        );
    }
}
