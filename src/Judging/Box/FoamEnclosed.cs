using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>Foam that keeps expanding behind trapped wood has burst panes.</summary>
internal static class FoamEnclosed
{
    public static readonly Rule Rule = new(
        "foam-enclosed",
        Protects.Person,
        "expanding foam is poured into a closed space",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            DesignFix.From(
                "foam poured with an open face",
                DesignEdits.Set(design.Document, finding.Where, "false")
            ),
    };

    private static readonly Citation Thread = new(
        "foam-forum",
        "thread on a tank burst the day after foam was poured behind trapped wood",
        Provenance.CommonPractice
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Background?.Poured is { Enclosed: true })
        {
            yield return Rule.Found(
                Severity.Stop,
                "Foam is poured into a closed space: it keeps expanding, and has burst a tank the day after.",
                (null, null),
                "Leave an open face to every pour, never pour behind trapped wood, and pour in thin lifts.",
                "background.poured.enclosed",
                Thread
            );
        }
    }
}
