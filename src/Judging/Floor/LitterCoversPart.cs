using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Floor;

/// <summary>Leaves over the whole floor keep it moist and hide the frogs.</summary>
internal static class LitterCoversPart
{
    public static readonly Rule Rule = new(
        "litter-covers-part",
        Protects.Build,
        "the leaf litter covers only part of the floor",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => FixEdit.OakLeaves(design.Document),
    };

    private static readonly Figure Whole = Figure.Given(
        "covered share of the floor",
        1,
        Unit.Percent,
        Citation.Habit("leaf litter covers the whole floor")
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Floor.Litter?.Cover is { } typed && typed.Si < Whole.Si - 1e-9)
        {
            var cover = n.Design.Figure("floor.litter.cover", "floor under litter", typed, Unit.Percent);
            yield return Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The leaf litter covers {cover.Value:0} % of the floor; it is usual to cover all of it."
                ),
                (cover, Whole),
                "Cover the whole floor, or keep bare only what the moss needs.",
                "floor.litter.cover"
            );
        }
    }
}
