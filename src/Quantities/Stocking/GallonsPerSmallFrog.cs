using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>Five gallons for each small frog.</summary>
internal static class GallonsPerSmallFrog
{
    private static readonly Citation Pages = new(
        "us-gallon-pages",
        "5 gal for each small frog",
        Provenance.CommonPractice
    );

    private static readonly Figure Each = Figure.Given(
        "volume for each small frog, gallon rule",
        Unit.Gallon.ToSiValue(5),
        Unit.Gallon,
        Pages
    );

    public static readonly StockingRule Rule = new(
        "us-gallons-small",
        "Gallon rule for small frogs",
        "5 US gal of box for each small frog.",
        Pages,
        Judge
    );

    private static StockingVerdict Judge(StockedSpecies species, BoxGeometry box) =>
        !species.IsFrog ? StockingVerdict.Not("the rule was made for small frogs")
        : species.Body is not { } body ? StockingVerdict.Not(StockingMeasure.NoLength)
        : body.Si >= 0.03 - 1e-9
            ? StockingVerdict.Not(
                "the rule was made for small frogs; we read it as bodies under 30 mm (own choice)"
            )
        : StockingVerdict.Allow(
            StockingMeasure.Below(StockingMeasure.Volume(box) / Each, "gallon rule for small frogs", Pages)
        );
}
