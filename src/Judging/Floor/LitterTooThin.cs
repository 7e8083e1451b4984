using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>Frogs hide in the leaves and the crew lives on them.</summary>
internal static class LitterTooThin
{
    private static readonly Figure Least = Figure.Given(
        "thinnest litter",
        0.02,
        Unit.Centimeter,
        Citation.Habit("2 to 5 cm of loose litter, topped up so that 2 cm are left")
    );

    public static readonly Rule Rule = new(
        "litter-too-thin",
        Protects.Build,
        FormattableString.Invariant($"the leaf litter is under {Least.Value:0.##} cm deep"),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => FixEdit.OakLeaves(design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var litter = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter);
        if (litter is not null && litter.Depth.Si < Least.Si - Gaps.Slack)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The leaf litter is {litter.Depth.Value:0.#} cm deep; frogs hide in it and the "
                        + $"crew lives on it from {Least.Value:0} cm up."
                ),
                (litter.Depth, Least),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Add {(Least.Si - litter.Depth.Si) * 100:0.#} cm of loose leaves, of two or more kinds."
                ),
                "floor.litter.depth"
            );
        }
    }
}
