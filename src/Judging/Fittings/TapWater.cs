using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>Chlorine and chloramine harm amphibians and crew; minerals spot the glass.</summary>
internal static class TapWater
{
    public static readonly Rule Rule = new(
        "tap-water",
        Protects.Animal,
        "tap water is used for misting",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                "mist with purified water",
                DesignEdits.Set(design.Document, "habits.water", "purified")
            ),
    };

    private static readonly Citation Practice = new(
        "keeper-practice",
        "recalled: standing 24 to 48 h removes chlorine, not chloramine; low-mineral water for misting",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Design.Design.Habits?.Water == MistWater.Tap)
        {
            yield return Rule.Found(
                n.WithAnimals(Severity.Caution, Severity.Note),
                "Tap water may hold chlorine or chloramine, which can harm amphibians, and minerals, "
                    + "which spot the glass and clog the nozzles.",
                (null, null),
                "Take reverse-osmosis, distilled or rain water; standing for a day or two drives out "
                    + "chlorine "
                    + "only.",
                "habits.water",
                Practice
            );
        }
    }
}
