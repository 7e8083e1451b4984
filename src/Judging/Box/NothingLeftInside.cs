using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>Glass or background leaves no room inside.</summary>
internal static class NothingLeftInside
{
    public static readonly Rule Rule = new(
        "nothing-left-inside",
        Protects.Build,
        "glass and background leave no room",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Figure Nothing = Figure.Choice(
        "room that must be left",
        0,
        Unit.Millimeter,
        "a box has an inside"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Box.IsBuildable)
        {
            yield break;
        }

        var smallest = Figure
            .Min(n.Box.OpenLength, n.Box.OpenDepth, n.Box.InsideHeight)
            .As("smallest inside edge", Unit.Millimeter);
        yield return Rule.Found(
            Severity.Stop,
            "Glass and background leave no room inside this box.",
            (smallest, Nothing),
            "Enter the real outside size and the real thickness of glass and background.",
            n.Design.Design.Box.Outside is null ? "box.inside.length" : "box.outside.length"
        );
    }
}
