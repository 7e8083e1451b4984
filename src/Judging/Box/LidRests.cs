using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>A pane set into its opening falls through it unless something carries it.</summary>
internal static class LidRests
{
    private static readonly Figure UsualOverlap = Figure.Given(
        "overlap of a lid on the rim",
        0.006,
        Unit.Millimeter,
        Citation.Habit("a lid on the rim overlaps by 5 to 6 mm, the upper end taken")
    );

    public static readonly Rule Unsupported = new(
        "lid-without-support",
        Protects.Person,
        "a lid lies on the rim but is set into the opening, or overlaps by nothing",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                FormattableString.Invariant($"a lid that overlaps the rim by {UsualOverlap.Value:0} mm"),
                DesignEdits.Set(
                    design.Document,
                    "lid.overlap",
                    FormattableString.Invariant($"{UsualOverlap.Value:0} mm")
                )
            ),
    };

    public static readonly Rule Assumed = new(
        "lid-support-assumed",
        Protects.Build,
        "a lid is set into its opening and the design does not say what carries it",
        JudgeAssumed
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From("ledges under the lid", DesignEdits.Set(design.Document, "lid.rests", "ledges")),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Find("lid.material") is not SheetEntry || n.Design.Design.Lid is not { } lid)
        {
            yield break;
        }

        var nothing = lid.Overlap is { Si: <= 0 };
        if (nothing || (lid is { Rests: LidRest.Rim, Overlap: null } && n.Design.Design.Box.Rim is null))
        {
            yield return Unsupported.Found(
                Severity.Stop,
                nothing
                    ? "The lid overlaps the rim by nothing: it falls into the box."
                    : "The lid is as large as its opening and is to lie on the rim: it falls into the box.",
                (null, null),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Let it overlap the rim by {UsualOverlap.Value:0} mm on each side, or set it on ledges."
                ),
                nothing ? "lid.overlap" : "lid.rests"
            );
        }
    }

    private static IEnumerable<Finding> JudgeAssumed(DesignNumbers n)
    {
        if (
            n.Design.Find("lid.material") is SheetEntry
            && n.Design.Design
                is { Lid: { Rests: null, Overlap: null, Held: not PaneHold.Corners }, Box.Rim: null }
        )
        {
            yield return Assumed.Found(
                Severity.Note,
                "The lid is set into the box, and what carries it is not entered: ledges of the sheet of the "
                    + "walls are assumed, cut and drawn.",
                (null, null),
                "Choose ledges, clips, or a lid that lies on the rim.",
                "lid.rests"
            );
        }
    }
}
