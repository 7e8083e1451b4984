using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>Floor for the first two frogs and for each further one, by body length.</summary>
internal static class GermanArea
{
    private static readonly Citation Page = new(
        "german-stocking-page",
        "floor area for frogs below and from 3 cm",
        Provenance.CommonPractice
    );

    private static readonly Figure Bound = Amount(
        "body length that parts the German rule",
        3,
        Unit.Centimeter
    );
    private static readonly Figure SmallFirst = Amount("floor for the first two small frogs", 750);
    private static readonly Figure SmallMore = Amount("floor for each further small frog", 200);
    private static readonly Figure LargeFirst = Amount("floor for the first two larger frogs", 1200);
    private static readonly Figure LargeMore = Amount("floor for each further larger frog", 400);

    public static readonly StockingRule Rule = new(
        "german-area",
        "German area rule",
        "Bodies under 3 cm: 750 cm2 of floor for the first two and 200 cm2 for each more; from 3 cm: 1200 "
            + "and 400 cm2. Below the first amount none.",
        Page,
        Judge
    );

    private static StockingVerdict Judge(StockedSpecies species, BoxGeometry box)
    {
        if (species.Taxon != "poison frog")
        {
            return StockingVerdict.Not("the rule was made for poison frogs");
        }

        if (species.Body is not { } body)
        {
            return StockingVerdict.Not(StockingMeasure.NoLength);
        }

        var isSmall = body.Si < Bound.Si - 1e-9;
        return StockingVerdict.Allow(
            StockingMeasure.Staged(
                box.GrossFloor,
                isSmall ? SmallFirst : LargeFirst,
                2,
                isSmall ? SmallMore : LargeMore,
                "German area rule"
            ),
            $"as a {(isSmall ? "small" : "larger")} frog of up to {StockingMeasure.Millimeters(body)}"
        );
    }

    private static Figure Amount(string name, double number, Unit? unit = null)
    {
        var shown = unit ?? Unit.SquareCentimeter;
        return Figure.Given(name, shown.ToSiValue(number), shown, Page);
    }
}
