using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>Froglets and flies leave between sliding or hinged panes.</summary>
internal static class DoorGap
{
    public static readonly Rule Rule = new(
        "door-gap",
        Protects.Animal,
        FormattableString.Invariant(
            $"the gap of closed doors is over {Gaps.Froglet.Value:0.#} mm (animals), or over "
        ) + FormattableString.Invariant($"{Gaps.Fly.Value:0.#} mm (feeder flies)"),
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Box.Doors?.Gap is not { } typed || typed.Si <= Gaps.Fly.Si + Gaps.Slack)
        {
            yield break;
        }

        var gap = n.Design.Figure("box.doors.gap", "widest gap of the closed doors", typed, Unit.Millimeter);
        var wide = gap.Si > Gaps.Froglet.Si + Gaps.Slack;
        yield return Rule.Found(
            wide ? n.WithAnimals(Severity.Stop, Severity.Caution) : Severity.Caution,
            wide
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"The closed doors leave a gap of {gap.Value:0.#} mm: over {Gaps.Froglet.Value:0.#} mm "
                        + $"froglets can get out."
                )
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"The closed doors leave a gap of {gap.Value:0.#} mm: over {Gaps.Fly.Value:0.#} mm small "
                        + $"feeder flies can get out."
                ),
            (gap, wide ? Gaps.Froglet : Gaps.Fly),
            wide
                ? FormattableString.Invariant(
                    $"Close it to {Gaps.Froglet.Value:0.#} mm, and to {Gaps.Fly.Value:0.#} mm with a "
                ) + "brush or lip where flies are fed."
                : FormattableString.Invariant(
                    $"Close it to {Gaps.Fly.Value:0.#} mm with a brush or lip where flies are fed."
                ),
            "box.doors.gap"
        );
    }
}
