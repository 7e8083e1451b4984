using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>Toughened glass breaks into crumbs when it is drilled.</summary>
internal static class ToughenedDrilled
{
    public static readonly Rule Rule = new(
        "toughened-drilled",
        Protects.Person,
        "a drain is drilled into a bought box of toughened glass",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            DesignFix.From(
                "a siphon instead of a drilled drain",
                DesignEdits.Set(design.Document, finding.Where, "siphon")
            ),
    };

    private static readonly Citation Standard = new(
        "en-12150-1",
        "recalled: toughened glass is cut and drilled before it is toughened, never after",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Design.Find<SheetEntry>("box.material")?.Recut?.Text == "no"
            && n.Design.Design is { Drain.Kind: DrainKind.Bulkhead, Box.Panes: PaneSource.Bought }
        )
        {
            yield return Rule.Found(
                Severity.Stop,
                "A bulkhead is drilled into toughened glass: the pane breaks into crumbs under the drill.",
                (null, null),
                "Take a siphon or standpipe, or have panes cut and drilled before they are toughened.",
                "drain.kind",
                Standard
            );
        }
    }
}
