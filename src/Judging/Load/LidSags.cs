using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Load;

/// <summary>A lid as it is held sags by more than the standard of glass allows, or gapes.</summary>
internal static class LidSags
{
    public static readonly Rule Rule = new(
        "lid-sags",
        Protects.Build,
        "the lid or its strip, as it is held, sags by more than "
            + FormattableString.Invariant($"span ÷ {HeldPanes.StandardShare.Si:0} or ")
            + FormattableString.Invariant($"{HeldPanes.StandardMost.Value:0} mm (caution), or than span ÷ ")
            + FormattableString.Invariant($"{HeldPanes.GapShare.Si:0}, where it gapes (note)"),
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    internal const string Rough = "It bends by more than half its thickness, so the real sag is less. ";

    /// <summary>True where a pane sags by more than shows.</summary>
    public static bool Trips(PaneCheck pane) => pane.GapLimit is not null && pane.Sag.Si > pane.GapLimit.Si;

    private static IEnumerable<Finding> Judge(DesignNumbers n) =>
        n
            .Panes.Where(pane => pane.Pane is "lid" or "strip" && Trips(pane))
            .Select(pane => Found(pane, n.Design.Design.Lid is { Braced: true }));

    private static Finding Found(PaneCheck pane, bool isBraced)
    {
        bool isFar = pane.Sag.Si > pane.SagLimit!.Si;
        var limit = isFar ? pane.SagLimit : pane.GapLimit!;
        return Rule.Found(
            isFar ? Severity.Caution : Severity.Note,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Under its own weight the {pane.Pane}, held {pane.Held}, sags by "
                    + $"{pane.Sag.Value:0.#} mm; {(isFar ? "at most" : "it gapes from")} {limit.Value:0.#} mm"
                    + $"{(isFar ? " is allowed" : "")}. "
                    + $"{(pane.IsLinear ? "" : Rough)}"
                    + $"This is an estimate: ask a glazier."
            ),
            (pane.Sag, limit),
            isBraced
                ? "Take a thicker lid, or hold it on more of its edges."
                : "Set a bar under its middle, hold it on more of its edges, or take a thicker lid.",
            pane.Pane == "strip" ? "lid.strip" : "lid.thickness"
        );
    }
}
