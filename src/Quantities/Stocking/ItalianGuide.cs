using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>Four to five climbers in 60 × 60 × 80 cm, or ground dwellers in 70 × 70 × 50 cm.</summary>
internal static class ItalianGuide
{
    private static readonly Citation Guide = new(
        "italian-keeping-guide",
        "4 to 5 climbers in 60 x 60 x 80 cm; 4 to 5 ground dwellers in 70 x 70 x 50 cm",
        Provenance.CommonPractice
    );

    private static readonly Figure Climbers = Box("floor of the Italian guide's box for climbers", 3600);
    private static readonly Figure Ground = Box("floor of the Italian guide's box for ground dwellers", 4900);
    private static readonly Figure Most = Figure.Given("most frogs in it", 5, Unit.One, Guide);

    public static readonly StockingRule Rule = new(
        "italian-guide",
        "Italian guide",
        "4 to 5 climbers in 60 x 60 x 80 cm, 4 to 5 ground dwellers in 70 x 70 x 50 cm. We scale that by the "
            + "floor, take the upper number and round to the nearest; the guide itself gives the two "
            + "boxes only.",
        Guide,
        Judge
    );

    private static StockingVerdict Judge(StockedSpecies species, BoxGeometry box) =>
        species.Taxon != "poison frog" ? StockingVerdict.Not("the guide is about poison frogs")
        : species.Species.Habit?.Text is null
            ? StockingVerdict.Not("the library does not say whether it climbs")
        : StockingVerdict.Allow(
            StockingMeasure.Nearest(
                Most * box.GrossFloor / (species.IsClimber ? Climbers : Ground),
                "Italian guide, scaled",
                Guide
            ),
            species.IsClimber ? "as a climber" : "as a ground dweller"
        );

    private static Figure Box(string name, double squareCentimeters) =>
        Figure.Given(name, Unit.SquareCentimeter.ToSiValue(squareCentimeters), Unit.SquareCentimeter, Guide);
}
