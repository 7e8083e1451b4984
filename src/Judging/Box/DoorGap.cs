using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
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
        Fix = (_, design) => Sealed(design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Design.Design.Box.Doors is not { Gap: { } typed, Seal: DoorSeal.None } doors
            || typed.Si <= Gaps.Fly.Si + Gaps.Slack
        )
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
            FormattableString.Invariant(
                $"{Closed(doors)} closes it; small flies need {Gaps.Fly.Value:0.#} mm or less."
            ),
            "box.doors.gap"
        );
    }

    /// <summary>What closes the gap of doors of a kind: panes that slide can never touch.</summary>
    private static string Closed(Doors doors) =>
        doors.Kind switch
        {
            DoorKind.Sliding or null =>
                "Panes that slide past each other always leave the distance of their tracks: a brush strip "
                    + "on the inner edge of the outer pane",
            DoorKind.Hinged => "A clear lip along the edge where the panes meet",
            DoorKind.LiftOut => "Foam or tape in its channels",
            _ => throw new InvalidOperationException("This kind of door is not known."),
        };

    private static DesignFix? Sealed(DesignDocument document)
    {
        var kind = document.Design.Box.Doors?.Kind switch
        {
            DoorKind.Hinged => "lip",
            DoorKind.LiftOut => "tape",
            _ => "brush",
        };
        return DesignFix.From(
            $"a {kind} seal along the doors",
            DesignEdits.Set(document, "box.doors.seal", kind)
        );
    }
}
