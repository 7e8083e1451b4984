using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Openings;

namespace Litterfall.Judging.Box;

/// <summary>A vent that its wall or lid cannot hold: too large, across the sill, or over another.</summary>
internal static class VentDoesNotFit
{
    public static readonly Rule Rule = new(
        "vent-does-not-fit",
        Protects.Build,
        "a vent is larger than its wall or lid, lies beyond it, across the sill or over another vent, or "
            + "leaves a sliver of glass that cannot be cut",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => Smaller(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Vents.Count == 0 || !n.Box.IsBuildable)
        {
            yield break;
        }

        if (n.Design.Design is { Lid: null, Box.Opening: Opening.Top })
        {
            foreach (var vent in VentShape.Of(n.Design, n.Box).Where(v => v.Side == Side.Top))
            {
                yield return NoLid(vent);
            }
        }

        foreach (var plan in OpeningPlans.All(n.Design, n.Box))
        {
            foreach (var vent in plan.Outside)
            {
                yield return Found(n, plan, vent);
            }
        }
    }

    private static Finding NoLid(VentShape vent) =>
        Rule.Found(
            Severity.Note,
            FormattableString.Invariant(
                $"Vent {vent.Index + 1} is in the lid, and the box has none: it is open on top anyway."
            ),
            (null, null),
            "Enter a lid, or take the vent out.",
            $"{vent.Path}.side"
        );

    private static Finding Found(DesignNumbers n, OpeningPlan plan, VentShape vent)
    {
        var place = plan.Side == Side.Top ? "the lid" : $"the {plan.Side.ToString().ToLowerInvariant()}";
        var number = vent.Index + 1;
        var long_ = vent.Length.Si > plan.Length.Si + Gaps.Slack;
        var most = plan.Side == Side.Top ? Room(plan) : plan.Length;
        if (long_ || vent.Length.Si > most.Si + Gaps.Slack)
        {
            return Rule.Found(
                Severity.Stop,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Vent {number} is {vent.Length.Value:0} mm long; {place} has room for {most.Value:0} mm."
                ),
                (vent.Length, most),
                "Make it shorter, or put it into another side.",
                $"{vent.Path}.length"
            );
        }

        var why =
            plan.Cells is [{ Kind: CellKind.Mesh }] ? "the lid is mesh already"
            : Sill(n, plan, vent) is { } sill ? sill
            : vent.Width.Si > plan.Width.Si ? "it is higher than its side"
            : "it lies beyond its edge, over another vent, or leaves a strip of glass too narrow to cut";
        return Rule.Found(
            Severity.Caution,
            FormattableString.Invariant($"Vent {number} cannot be built into {place} where it is: {why}."),
            (vent.Width, null),
            "Move it, make it smaller, or give two vents of one side the same height.",
            plan.Side == Side.Top ? $"{vent.Path}.behind" : $"{vent.Path}.height"
        );
    }

    /// <summary>Longest opening that a strip of the lid holds.</summary>
    private static Figure Room(OpeningPlan plan) =>
        Figure
            .NotNegative(plan.Length - Figure.Number(2) * OpeningPolicy.VentMargin)
            .As("longest opening in a strip", Unit.Millimeter);

    private static string? Sill(DesignNumbers n, OpeningPlan plan, VentShape vent)
    {
        if (
            plan.Side != Side.Front
            || n.Design.Design.Box is not { Opening: Opening.Front, Sill: { } sill }
            || vent.Across is not { } middle
        )
        {
            return null;
        }

        var low = middle.Si - (vent.Width.Si / 2);
        return low < sill.Si && middle.Si + (vent.Width.Si / 2) > sill.Si
                ? FormattableString.Invariant(
                    $"it lies across the upper edge of the sill ({sill.Si * 100:0.#} cm)"
                )
            : low < sill.Si ? "it lies in the sill, which holds the soil"
            : null;
    }

    private static DesignFix? Smaller(Finding finding, DesignDocument document)
    {
        if (FixEdit.Index(finding) is not { } i || document.Design.Vents.Count <= i)
        {
            return null;
        }

        var vent = document.Design.Vents[i];
        if (finding is { Limit: { } limit } && vent.Length is not null)
        {
            var length = Math.Floor(limit.Si * 100) / 100;
            return DesignFix.From(
                $"vent {i + 1} {FixEdit.Written(document, finding.Where, length)} long",
                FixEdit.Length(document, finding.Where, length)
            );
        }

        if (
            document.Design.Box is { Opening: Opening.Front, Sill: { } sill }
            && (vent.Side ?? Side.Front) == Side.Front
            && vent.Height is not null
        )
        {
            var height = FixEdit.Rounded(
                sill.Si + ((vent.Width ?? vent.Diameter)?.Si ?? VentShape.UsualWidth.Si) / 2
            );
            return DesignFix.From(
                $"vent {i + 1} over the sill, middle at {FixEdit.Written(document, finding.Where, height)}",
                FixEdit.Length(document, finding.Where, height)
            );
        }

        return null;
    }
}
