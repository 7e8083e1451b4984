using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>Without a low vent carbon dioxide may collect at the floor; one page says so.</summary>
internal static class TopVentsOnly
{
    public static readonly Rule Rule = new(
        "top-vents-only",
        Protects.Animal,
        "all vents are in the upper third or on top",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => FixEdit.Vents("a vent low in front", design.Document, "front"),
    };

    private static readonly Citation Claim = Citation.Habit(
        "one housing page warns that vents only at the top let carbon dioxide collect at the floor; "
            + "unverified"
    );

    private static readonly Figure UpperThird = Figure.Choice(
        "share of the height below which a vent is not high",
        2.0 / 3.0 * 100,
        Unit.Percent,
        "a vent in the upper third draws no air along the floor"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var vents = n.Design.Design.Vents;
        if (vents.Count == 0 || !n.Box.IsBuildable || !vents.All(vent => IsHigh(vent, n.Box.InsideHeight.Si)))
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Note,
            vents.Count == 1
                ? "The only vent is at the top; some keepers warn that carbon dioxide then collects at "
                    + "the floor."
                : "All vents are at the top; some keepers warn that carbon dioxide then collects at the "
                    + "floor.",
            (null, null),
            "Add a low vent in front above the layers; air then rises through the box by itself.",
            "vents",
            Claim
        );
    }

    private static bool IsHigh(Vent vent, double inside) =>
        vent.Side == Side.Top || vent.Height?.Si >= UpperThird.Si * inside - Gaps.Slack;
}
