using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Several species in one box: poison, fights, prey and disease.</summary>
internal static class MixedSpecies
{
    public static readonly Rule Rule = new(
        "mixed-species",
        Protects.Animal,
        "more than one species of animal shares the box",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Figure One = Figure.Given(
        "species in one box",
        1,
        Unit.One,
        new Citation("keeper-practice", "recalled: one species in each box", Provenance.Recalled)
    );

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var species = StockedSpecies.Of(n.Design);
        if (species.Length > 1)
        {
            yield return Rule.Found(
                Severity.Stop,
                $"{species.Length.ToString(CultureInfo.InvariantCulture)} species share the box: "
                    + $"{string.Join(", ", species.Select(s => s.Species.Name))}. They may poison, eat or "
                    + "infect each other.",
                (
                    Figure.Given(
                        "species of the design",
                        species.Length,
                        Unit.One,
                        new Citation("design", species[0].Where, Provenance.Entered)
                    ),
                    One
                ),
                "Give each species its own box.",
                $"{species[^1].Item}.animal"
            );
        }
    }
}
