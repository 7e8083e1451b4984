using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Animals;

/// <summary>Animals that live half in water, without enough of it.</summary>
internal static class NeedsWaterArea
{
    public static readonly Rule Rule = new(
        "needs-water-area",
        Protects.Animal,
        "the species is kept with a share of the floor under water, and the box has less or says nothing",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            finding.Limit is { } share && design.Design.Basins.Count == 0
                ? DesignFix.From(
                    FormattableString.Invariant($"{share.Si * 100:0} % of the floor under water"),
                    DesignEdits.Set(
                        design.Document,
                        "waterArea",
                        FormattableString.Invariant($"{share.Si * 100:0} %")
                    )
                )
                : null,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var species in StockedSpecies.Of(n.Design))
        {
            var needs = species.Species.WaterShare;
            if (needs is null)
            {
                continue;
            }

            var area = WaterBasins.Area(n.Design, n.Box);
            var has =
                area is not null && n.Box.OpenFloor.Si > 0
                    ? (area / n.Box.OpenFloor).As("open water", Unit.Percent)
                    : Figure.Choice("open water", 0, Unit.Percent, "the design names none");
            if (has.Si >= needs.Si - 1e-9)
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{species.Species.Name} is kept with {needs.Value:0.#} % of the floor as open water; "
                        + $"the box has {has.Value:0.#} %."
                ),
                (has, needs),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Make {needs.Value:0.#} % of the floor a water part with an easy way out, and enter it "
                        + $"as a basin with its length, width, depth and sides."
                ),
                n.Design.Design.Basins.Count > 0 ? "basins[0].length" : "waterArea"
            );
        }
    }
}
