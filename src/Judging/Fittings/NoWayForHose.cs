using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>Nozzles sit under a closed lid, and nothing lets their hose in.</summary>
internal static class NoWayForHose
{
    private static readonly Figure Strip = Figure.Given(
        "width of a strip for hoses",
        0.03,
        Unit.Millimeter,
        Citation.Habit("a lift-out strip for hoses and cables is 20 to 40 mm wide, the middle taken")
    );

    public static readonly Rule Rule = new(
        "no-way-for-hose",
        Protects.Build,
        "nozzles hang under a lid of glass or plastic, and neither a strip nor a hole lets their hose in",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                FormattableString.Invariant($"a latched strip of {Strip.Value:0} mm at the back of the lid"),
                WithStrip(design.Document)
            ),
    };

    private static Domain.Faults.Reading<DesignDocument> WithStrip(DesignDocument document)
    {
        var strip = DesignEdits.Set(
            document,
            "lid.strip",
            FormattableString.Invariant($"{Strip.Value:0} mm")
        );
        return strip.Value is { } so ? DesignEdits.Set(so, "lid.latched", "true") : strip;
    }

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var design = n.Design.Design;
        if (
            design is { Misting: not null, Lid: { Strip: null } }
            && n.Design.Find("lid.material") is SheetEntry
            && !design.Passages.Any(p => p.In != PassagePart.Barrier)
        )
        {
            yield return Rule.Found(
                Severity.Note,
                "Nozzles hang under the lid, and no strip and no hole lets their hose in.",
                (null, null),
                "Give the lid a strip at the back, or enter the hole it goes through.",
                "lid.strip"
            );
        }
    }
}
