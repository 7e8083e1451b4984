using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Plants;

/// <summary>Plants of a protected kind without proof of where they come from.</summary>
internal static class PlantPapersMissing
{
    public static readonly Rule Rule = new(
        "plant-papers-missing",
        Protects.Person,
        "a plant of a kind in an appendix of the trade convention has no papers (caution), or nothing "
            + "says so",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Appendix = new(
        "cites",
        "recalled: appendix II holds all orchids; check the current list, its exceptions and your own law",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var plant in Plantings.Of(n))
        {
            if (plant.Species.Cites?.Text is not ("I" or "II") || plant.Entry.Papers == PaperState.Held)
            {
                continue;
            }

            var isMissing = plant.Entry.Papers == PaperState.Missing;
            yield return Rule.Found(
                isMissing ? Severity.Caution : Severity.Note,
                isMissing
                    ? $"Proof of legal origin is missing for {plant.Species.Name}, a kind in CITES Appendix "
                        + $"{plant.Species.Cites!.Text}: selling it across a border can be an offense."
                    : $"{plant.Species.Name}: CITES Appendix {plant.Species.Cites!.Text}; no papers "
                        + "recorded.",
                (null, null),
                "File the nursery's invoice or certificate of artificial propagation; the law of the place "
                    + "decides.",
                $"{plant.Path}.papers",
                Appendix
            );
        }
    }
}
