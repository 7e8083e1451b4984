using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>Water runs along a cable into its socket.</summary>
internal static class NoDripLoop
{
    public static readonly Rule Rule = new(
        "no-drip-loop",
        Protects.Person,
        "the electrical parts are described and their cables have no drip loops",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                "a drip loop in every cable",
                DesignEdits.Set(design.Document, "electrics.dripLoops", "true")
            ),
    };

    private static readonly Citation Practice = new(
        "keeper-practice",
        "recalled: every cable hangs in a loop below its socket, so that water drips off",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (Devices.Any(n) && n.Design.Design.Electrics is { DripLoops: false })
        {
            yield return Rule.Found(
                Severity.Caution,
                "The cables have no drip loops: water runs along a cable into its socket.",
                (null, null),
                "Hang every cable in a loop below its socket, and enter that they have loops.",
                "electrics.dripLoops",
                Practice
            );
        }
    }
}
