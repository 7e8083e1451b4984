using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Animals;

/// <summary>Animals from the wild.</summary>
internal static class WildCaught
{
    public static readonly Rule Rule = new(
        "wild-caught",
        Protects.Person,
        "animals are entered as wild-caught",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Cautions = Citation.Recalled(
        "keeper-practice",
        "wild-caught animals can hold toxins and parasites and need papers"
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var animal in Residents.Present(n).Where(a => a.Entry.Origin == AnimalOrigin.WildCaught))
        {
            yield return Rule.Found(
                Severity.Caution,
                $"{animal.Species.Name} come from the wild: they may hold toxins and parasites, and taking "
                    + "them may have been unlawful.",
                (null, null),
                $"Take captive-bred animals; else gloves, {Practice.WildApart} of quarantine, and papers "
                    + $"from "
                    + "the country of origin.",
                $"{animal.Path}.origin",
                Cautions
            );
        }
    }
}
