using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Openings;

namespace Litterfall.Judging.Box;

/// <summary>An inset pane that may not go in once both tolerances go the wrong way.</summary>
internal static class LidFit
{
    private static readonly Figure LeastPlay = Figure.Choice(
        "least play",
        0.5,
        Unit.Millimeter,
        "a pane must go in without force"
    );

    public static readonly Rule Rule = new(
        "lid-may-not-fit",
        Protects.Build,
        FormattableString.Invariant(
            $"with the shop's tolerance less than {LeastPlay.Value:0.##} mm of play is left around an "
        ) + "inset pane",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                $"{Clearance} of play round the lid",
                DesignEdits.Set(design.Document, "lid.gap", Clearance)
            ),
    };

    private static string Clearance =>
        FormattableString.Invariant($"{OpeningPolicy.LidClearance.Value:0.#} mm");

    private static readonly Figure ShopTolerance = Figure.Given(
        "cutting tolerance of an ordinary shop",
        0.0015,
        Unit.Millimeter,
        Citation.Habit("±1.5 mm in an ordinary shop, ±0.8 mm in a careful one")
    );

    private static readonly Figure OpeningTolerance = Figure.Choice(
        "measuring tolerance of the opening",
        1,
        Unit.Millimeter,
        "three readings with a tape, smallest taken"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Design.Design.Lid is not { Overlap: null } lid
            || n.Design.Find("lid.material") is not SheetEntry
        )
        {
            yield break;
        }

        var gap = lid.Gap is { } g
            ? n.Design.Figure("lid.gap", "lid clearance on each side", g, Unit.Millimeter)
            : OpeningPolicy.LidClearance;
        var play = (Figure.Number(2) * gap - ShopTolerance - OpeningTolerance).As(
            "play of the lid at worst",
            Unit.Millimeter
        );
        if (play.Si < LeastPlay.Si - 1e-9)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"With {gap.Value:0.#} mm on each side the lid may not go in: at worst "
                        + $"{Worst(play.Value)}, and glass cannot be recut by less than "
                        + $"about half its thickness."
                ),
                (play, LeastPlay),
                $"Give {Clearance} on each side, or let the lid overlap and lie on the rim.",
                "lid.gap"
            );
        }
    }

    private static string Worst(double millimeters) =>
        millimeters < 0
            ? FormattableString.Invariant($"it is {-millimeters:0.#} mm too large")
            : FormattableString.Invariant($"{millimeters:0.#} mm of play are left");
}
