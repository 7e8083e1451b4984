using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>Liters for each frog, by body length, with a smallest box for small ones.</summary>
internal static class VolumePerAnimal
{
    private static readonly Citation Recalled = new(
        "keeper-practice",
        "recalled: 20 L for each animal below 25 mm and 60 L in all, 40 L for each from 25 to 50 mm",
        Provenance.Recalled
    );

    private static readonly Figure Small = Amount("volume for each small frog", 20);
    private static readonly Figure Least = Amount("smallest box for small frogs", 60);
    private static readonly Figure Larger = Amount("volume for each larger frog", 40);

    public static readonly StockingRule Rule = new(
        "volume",
        "Volume rule",
        "Bodies under 25 mm: 20 L of box for each and 60 L in all; from 25 to 50 mm: 40 L for each.",
        Recalled,
        Judge
    );

    private static StockingVerdict Judge(StockedSpecies species, BoxGeometry box)
    {
        if (!species.IsFrog)
        {
            return StockingVerdict.Not("the rule was made for frogs and toads");
        }

        if (species.Body is not { } body)
        {
            return StockingVerdict.Not(StockingMeasure.NoLength);
        }

        var volume = StockingMeasure.Volume(box);
        if (body.Si > 0.05 + 1e-9)
        {
            return StockingVerdict.Not(
                $"it gives no number for bodies over 50 mm, this one reaches "
                    + $"{StockingMeasure.Millimeters(body)}"
            );
        }

        if (body.Si >= 0.025 - 1e-9)
        {
            return StockingVerdict.Allow(StockingMeasure.Below(volume / Larger, "volume rule", Recalled));
        }

        return volume.Si < Least.Si - 1e-12
            ? StockingVerdict.Allow(
                Figure
                    .Computed(
                        "0, because the box is less than the smallest",
                        0,
                        Dimension.None,
                        volume,
                        Least
                    )
                    .As("allowed by the volume rule", Unit.One, Recalled),
                "the box is below the smallest of 60 L"
            )
            : StockingVerdict.Allow(StockingMeasure.Below(volume / Small, "volume rule", Recalled));
    }

    private static Figure Amount(string name, double liters) =>
        Figure.Given(name, Unit.Liter.ToSiValue(liters), Unit.Liter, Recalled);
}
