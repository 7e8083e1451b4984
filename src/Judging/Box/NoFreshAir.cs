using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>A closed box without a vent, or one into which it mists while hardly any air leaves.</summary>
internal static class NoFreshAir
{
    public static readonly Rule Rule = new(
        "no-fresh-air",
        Protects.Animal,
        "the top is closed and no vent or open mesh is entered, or a misting system runs at "
            + "less than one air change per hour, held or computed",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Air,
        Fix = (finding, design) =>
            finding.Where == "vents" && design.Document.Design.Vents.Count == 0
                ? FixEdit.Vents("a vent low in front and one on top", design.Document, "front", "top")
                : null,
    };

    private static readonly Citation Habit = Citation.Habit(
        "a lid that closes altogether keeps the water in and the fresh air out; boxes for frogs have vents"
    );

    private static readonly Figure LeastUnderMisting = Figure.Choice(
        "least air changes per hour under a misting system",
        1,
        Unit.One,
        "a nearly closed lid lets 0.2 to 1 pass; then far less water leaves than a misting system brings"
    );

    private static readonly Figure AnHour = Figure.Choice(
        "one hour",
        1,
        Unit.Hour,
        "air changes count per hour"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var design = n.Design.Design;
        if (design.Headspace is null && design.Vents.Count == 0 && IsClosed(n))
        {
            yield return Rule.Found(
                n.WithAnimals(Severity.Caution, Severity.Note),
                "The top is closed and there is no vent: no fresh air comes in but at the gaps.",
                (null, null),
                "Add a low vent in front and a high one, or take a mesh lid with an open share.",
                "vents",
                Habit
            );
        }
        else if (
            design.Misting is { Times.Count: > 0 }
            && Changes(n) is { } changes
            && changes.Value < LeastUnderMisting.Value - 1e-9
        )
        {
            yield return Rule.Found(
                n.WithAnimals(Severity.Caution, Severity.Note),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The misting system wets a box whose air is replaced only {changes.Value:0.##} "
                        + $"times an hour: little water can leave, and the soil may turn sour."
                ),
                (changes, LeastUnderMisting),
                "Open or add a vent, or mist far less, and watch the level.",
                design.Headspace is null ? Controls.Vents(design) : "headspace.hold.airChanges"
            );
        }
    }

    /// <summary>Air changes an hour: held, else computed.</summary>
    private static Figure? Changes(DesignNumbers n) =>
        n.Design.Design.Headspace is { Hold.AirChanges: { } typed }
            ? Figure.Given(
                "air changes per hour as entered",
                typed.Si * 3600,
                Unit.One,
                new Citation("design", "headspace.hold.airChanges", Provenance.Entered),
                $"typed as '{typed.Text}'"
            )
        : n.Climate is { Computed: not null, AirChanges.Value: { } computed }
            ? (computed * AnHour).As("air changes per hour as computed", Unit.One)
        : null;

    private static bool IsClosed(DesignNumbers n) =>
        n.Design.Design.Lid is { } lid
            ? n.Design.Find("lid.material") is SheetEntry || lid.Share is { Si: <= 0 }
            : n.Design.Design.Box.Opening == Opening.Front;
}
