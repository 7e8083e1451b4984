using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Cutting;

namespace Litterfall.Judging.Load;

/// <summary>A closed door gives way under a hand by more than the standard of glass allows.</summary>
internal static class DoorGives
{
    public static readonly Rule Rule = new(
        "door-gives",
        Protects.Build,
        FormattableString.Invariant($"under a hand ({PushedDoors.Leaning.Value:0} N in its middle, ")
            + FormattableString.Invariant($"{PushedDoors.Opening.Value:0} N at its free edge; own choice) ")
            + FormattableString.Invariant($"a door bends by more than span ÷ {HeldPanes.StandardShare.Si:0} ")
            + FormattableString.Invariant($"or {HeldPanes.StandardMost.Value:0} mm"),
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n) =>
        n
            .Panes.Where(pane => pane.Pane == "door" && pane.Sag.Si > pane.SagLimit!.Si)
            .Select(pane =>
                Rule.Found(
                    Severity.Caution,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Under a hand a door, held {pane.Held}, bends by {pane.Sag.Value:0.#} mm; at most "
                            + $"{pane.SagLimit!.Value:0.#} mm is allowed. "
                            + $"{(pane.IsLinear ? "" : LidSags.Rough)}"
                            + $"It may jump out of what holds it. This is an estimate: ask a glazier."
                    ),
                    (pane.Sag, pane.SagLimit),
                    "Take thicker panes, or glass instead of plastic.",
                    pane.Key
                )
            );
}
