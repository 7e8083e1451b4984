using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>Cut glass has sharp edges.</summary>
internal static class GlassEdges
{
    public static readonly Rule Rule = new(
        "glass-edges",
        Protects.Person,
        "a glass lid or panes are cut for this build",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Habit = Citation.Habit(
        "edges are seamed where covered and polished where touched; gloves and eye protection for cut glass"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var lid = Materials.IsGlass(n.Design.Find("lid.material"));
        if (lid || n.Design.Design.Box.Panes == PaneSource.Cut)
        {
            yield return Rule.Found(
                Severity.Note,
                "Cut glass has sharp edges and splinters.",
                (null, null),
                "Order the edges seamed, polished where they are touched; wear cut-proof gloves and goggles.",
                lid ? "lid.material" : "box.panes",
                Habit
            );
        }
    }
}
