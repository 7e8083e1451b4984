using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Load;

/// <summary>A shelf inside the box sags under what stands on it.</summary>
internal static class ShelfSags
{
    public static readonly Rule Rule = new(
        "shelf-sags",
        Protects.Build,
        "a shelf inside, as it is held, sags under its load by more than "
            + FormattableString.Invariant($"span ÷ {HeldPanes.StandardShare.Si:0} or ")
            + FormattableString.Invariant($"{HeldPanes.StandardMost.Value:0} mm (caution), or than span ÷ ")
            + FormattableString.Invariant($"{HeldPanes.GapShare.Si:0}, where it shows (note)"),
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n) =>
        n
            .Panes.Where(pane =>
                pane.Pane.StartsWith("shelf", StringComparison.Ordinal) && LidSags.Trips(pane)
            )
            .Select(Found);

    private static Finding Found(PaneCheck pane)
    {
        bool isFar = pane.Sag.Si > pane.SagLimit!.Si;
        var limit = isFar ? pane.SagLimit : pane.GapLimit!;
        return Rule.Found(
            isFar ? Severity.Caution : Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Under its load the {pane.Pane.Replace('-', ' ')} inside, {pane.Held}, sags by "
                    + $"{pane.Sag.Value:0.#} mm; {(isFar ? "at most" : "it shows from")} {limit.Value:0.#} mm"
                    + $"{(isFar ? " is allowed" : "")}. "
                    + $"{(pane.IsLinear ? "" : LidSags.Rough)}"
                    + $"The load is taken as spread evenly. This is an estimate: ask a glazier."
            ),
            (pane.Sag, limit),
            pane.Fix,
            pane.Key
        );
    }
}
