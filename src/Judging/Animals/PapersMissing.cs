using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Animals;

/// <summary>A protected species without proof of legal origin.</summary>
internal static class PapersMissing
{
    public static readonly Rule Rule = new(
        "papers-missing",
        Protects.Person,
        "an animal of appendix I or II of the trade convention has no papers, or nothing says so",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Appendix = new(
        "cites",
        "recalled: appendices I and II; check the current list, its dates and your own law",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var animal in Residents.Present(n).Where(a => a.Species.Cites?.Text is "I" or "II"))
        {
            if (animal.Entry.Papers == PaperState.Held)
            {
                continue;
            }

            var missing = animal.Entry.Papers == PaperState.Missing;
            yield return Rule.Found(
                missing ? Severity.Stop : Severity.Caution,
                missing
                    ? $"Proof of legal origin is missing for {animal.Species.Name}, a CITES Appendix "
                        + $"{animal.Species.Cites!.Text} species: keeping or selling it can be an offense."
                    : $"{animal.Species.Name}: CITES Appendix {animal.Species.Cites!.Text} species; no "
                        + $"papers "
                        + "recorded.",
                (null, null),
                missing
                    ? "Refuse the animals until their papers are there; ask the authority in charge."
                    : "File the proof of legal origin, then enter that its papers are held. The law of "
                        + "the place decides.",
                $"{animal.Path}.papers",
                Appendix
            );
        }
    }
}
