using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>A thick pour does not cure inside and goes on swelling.</summary>
internal static class FoamPourTooThick
{
    public static readonly Rule Rule = new(
        "foam-pour-too-thick",
        Protects.Build,
        "one pour of expanding foam is thicker than the lift its can allows",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => Lifts(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Box.BackgroundThickness is not { } whole
            || n.Design.Find<BackgroundEntry>("background.material")?.PouredFrom?.Text is not { } can
            || n.Design.Catalog.Find<AdhesiveEntry>(can)?.LiftThickness is not { Si: > 0 } most
        )
        {
            yield break;
        }

        var pour = n.Design.Design.Background!.Poured?.Lift is { } lift
            ? n.Design.Figure("background.poured.lift", "thickness of one pour", lift, Unit.Millimeter)
            : whole;
        if (pour.Si > most.Si + Gaps.Slack)
        {
            var pours = Math.Max(1, Math.Ceiling(whole.Si / most.Si - 1e-9));
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"One pour of foam is {pour.Value:0.#} mm thick; over {most.Value:0} mm it cures "
                        + $"late inside and goes on swelling."
                ),
                (pour, most),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Pour {whole.Value:0.#} mm in {pours:0} lifts of {whole.Value / pours:0.#} mm, "
                        + $"each cured before the next, and enter the thickness of one."
                ),
                "background.poured.lift"
            );
        }
    }

    private static DesignFix? Lifts(Finding finding, DesignDocument document)
    {
        if (FixEdit.Times(finding) is not { } share)
        {
            return null;
        }

        var lifts = Math.Ceiling(1 / share);
        var each = FormattableString.Invariant($"{finding.Measured!.Si / lifts * 1000:0} mm");
        return DesignFix.From(
            FormattableString.Invariant($"{lifts:0} lifts of {each}"),
            DesignEdits.Set(document, finding.Where, each)
        );
    }
}
