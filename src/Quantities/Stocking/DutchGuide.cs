using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>A box of 50 × 50 × 50 cm for five medium or two to three large frogs.</summary>
internal static class DutchGuide
{
    private static readonly Citation Brochure = new(
        "dutch-brochure-2005",
        "50 x 50 x 50 cm for 5 medium or 2 to 3 large frogs",
        Provenance.CommonPractice
    );

    private static readonly Figure Floor = Figure.Given(
        "floor of the Dutch guide's box",
        0.25,
        Unit.SquareCentimeter,
        Brochure
    );

    private static readonly Figure Medium = Figure.Given("medium frogs in it", 5, Unit.One, Brochure);
    private static readonly Figure Large = Figure.Given("most large frogs in it", 3, Unit.One, Brochure);

    public static readonly StockingRule Rule = new(
        "dutch-guide",
        "Dutch guide",
        "A box of 50 x 50 x 50 cm holds 5 medium or 2 to 3 large frogs. We scale that by the floor, take the "
            + "upper number and round to the nearest; the guide itself gives the one box only.",
        Brochure,
        Judge
    );

    private static StockingVerdict Judge(StockedSpecies species, BoxGeometry box)
    {
        if (species.Taxon != "poison frog")
        {
            return StockingVerdict.Not("the guide is about poison frogs");
        }

        if (species.Body is not { } body)
        {
            return StockingVerdict.Not(StockingMeasure.NoLength);
        }

        // The guide does not say where medium ends; small frogs count as medium.
        var isMedium = body.Si < 0.04 - 1e-9;
        return StockingVerdict.Allow(
            StockingMeasure.Nearest(
                (isMedium ? Medium : Large) * box.GrossFloor / Floor,
                "Dutch guide, scaled",
                Brochure
            ),
            isMedium
                ? "read as medium, because its body stays under 40 mm (own choice)"
                : "read as large, because its body reaches 40 mm (own choice)"
        );
    }
}
