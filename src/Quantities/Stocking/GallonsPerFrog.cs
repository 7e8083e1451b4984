using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>Ten gallons for the first frog, five for each more.</summary>
internal static class GallonsPerFrog
{
    private static readonly Citation Pages = new(
        "us-gallon-pages",
        "10 gal for the first frog, 5 gal for each more",
        Provenance.CommonPractice
    );

    private static readonly Figure First = Amount("volume for the first frog", 10);
    private static readonly Figure More = Amount("volume for each further frog", 5);

    public static readonly StockingRule Rule = new(
        "us-gallons",
        "Gallon rule",
        "10 US gal of box for the first frog and 5 gal for each more.",
        Pages,
        Judge
    );

    private static StockingVerdict Judge(StockedSpecies species, BoxGeometry box) =>
        !species.IsFrog ? StockingVerdict.Not("the rule was made for small frogs")
        : species.Body is not { } body ? StockingVerdict.Not(StockingMeasure.NoLength)
        : body.Si > 0.05 + 1e-9
            ? StockingVerdict.Not(
                "the rule was made for small frogs; we read it as bodies of up to 50 mm (own choice)"
            )
        : StockingVerdict.Allow(
            StockingMeasure.Staged(StockingMeasure.Volume(box), First, 1, More, "gallon rule")
        );

    private static Figure Amount(string name, double gallons) =>
        Figure.Given(name, Unit.Gallon.ToSiValue(gallons), Unit.Gallon, Pages);
}
