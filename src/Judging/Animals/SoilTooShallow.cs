using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Burrowing animals without soil to burrow in.</summary>
internal static class SoilTooShallow
{
    public static readonly Rule Rule = new(
        "soil-too-shallow-to-burrow",
        Protects.Animal,
        "the thinnest soil is less than the share of its body length a burrowing species is given",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => FixEdit.MoreSoil(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            if (species.Species.SoilDepthShare is not { } share || species.Body is not { } body)
            {
                continue;
            }

            var needs = (share * body).As(
                $"soil depth {species.Species.Name} needs",
                Unit.Centimeter,
                share.Origin
            );
            var has = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Soil)?.Lowest
                ?? Figure.Choice("thinnest soil", 0, Unit.Centimeter, "the design has no soil");
            if (has.Si >= needs.Si - 1e-9)
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{species.Species.Name} burrows and is given {needs.Value:0.#} cm of soil; the "
                        + $"thinnest is "
                        + $"{has.Value:0.#} cm."
                ),
                (has, needs),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Add {(needs.Si - has.Si) * 100:0.#} cm of soil where it is thinnest."
                ),
                Controls.Soil(n.Design.Design)
            );
        }
    }
}
