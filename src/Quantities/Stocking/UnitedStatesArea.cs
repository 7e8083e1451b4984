using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Stocking;

/// <summary>Half a square foot of floor for each adult.</summary>
internal static class UnitedStatesArea
{
    private static readonly Citation Page = new(
        "us-stocking-page",
        "0.5 sq ft, given as 465 cm2, for each adult",
        Provenance.CommonPractice
    );

    private static readonly Figure Each = Figure.Given(
        "floor for each adult, United States rule",
        0.0465,
        Unit.SquareCentimeter,
        Page
    );

    public static readonly StockingRule Rule = new(
        "us-area",
        "United States area rule",
        "465 cm2 (half a square foot) of floor for each adult.",
        Page,
        (species, box) =>
            species.Taxon == "poison frog"
                ? StockingVerdict.Allow(
                    StockingMeasure.Below(box.GrossFloor / Each, "United States area rule", Page)
                )
                : StockingVerdict.Not("the rule was made for poison frogs")
    );
}
