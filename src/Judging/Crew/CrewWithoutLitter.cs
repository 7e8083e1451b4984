using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Crew;

/// <summary>A crew without leaves starves.</summary>
internal static class CrewWithoutLitter
{
    private static readonly Figure Least = Figure.Given(
        "least leaf litter",
        0.02,
        Unit.Centimeter,
        Citation.Habit("keep at least 2 cm of leaf litter")
    );

    public static readonly Rule Rule = new(
        "crew-without-litter",
        Protects.Build,
        FormattableString.Invariant(
            $"a clean-up crew is seeded under less than {Least.Value:0.##} cm of leaf litter"
        ),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => FixEdit.OakLeaves(design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var litter = Crews.Litter(n);
        if (!Crews.Of(n).Any() || litter.Si >= Least.Si - 1e-9)
        {
            yield break;
        }

        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The clean-up crew has {litter.Value:0.#} cm of leaf litter to live on, less than "
                    + $"{Least.Value:0}."
            ),
            (litter, Least),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Add {(Least.Si - litter.Si) * 100:0.#} cm of leaves, or feed the crew by hand."
            ),
            "floor.litter.depth"
        );
    }
}
