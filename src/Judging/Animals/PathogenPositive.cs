using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Animals;

/// <summary>A swab that is positive, or not back yet.</summary>
internal static class PathogenPositive
{
    public static readonly Rule Rule = new(
        "pathogen-positive",
        Protects.Animal,
        "the swab for chytrid fungus and ranavirus is positive (stop) or not back yet",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Zoo = new(
        "keeper-practice",
        "recalled: swab at entry and before release from quarantine",
        Provenance.Recalled
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var animal in Residents.Present(n))
        {
            if (animal.Entry.Swab is not (TestResult.Positive or TestResult.Pending))
            {
                continue;
            }

            var positive = animal.Entry.Swab == TestResult.Positive;
            yield return Rule.Found(
                positive ? Severity.Stop : Severity.Caution,
                positive
                    ? $"The swab of {animal.Species.Name} is positive for chytrid fungus or ranavirus."
                    : $"The swab of {animal.Species.Name} is not back yet.",
                (null, null),
                positive
                    ? "Do not move them; ask an amphibian veterinarian, treat drain water and tools as "
                        + "infected."
                    : "Wait for the result before the animals move in.",
                $"{animal.Path}.swab",
                Zoo
            );
        }
    }
}
