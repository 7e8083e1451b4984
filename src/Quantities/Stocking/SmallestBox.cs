using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>
/// The species' own smallest box and the animals it is for. Such sizes are trade names of outside sizes, so
/// they are compared with the outside edges where these are known.
/// </summary>
internal static class SmallestBox
{
    private static readonly Citation Recalled = new(
        "keeper-practice",
        "recalled: smallest box of each species",
        Provenance.Recalled
    );

    public static readonly StockingRule Rule = new(
        "species-box",
        "Smallest box of the species",
        "The smallest box practice gives for the species and the animals it is for.",
        Recalled,
        Judge
    );

    private static StockingVerdict Judge(StockedSpecies species, BoxGeometry box)
    {
        var entry = species.Species;
        if (
            entry.SmallestBoxLength is not { } needLength
            || entry.SmallestBoxDepth is not { } needDepth
            || entry.SmallestBoxHeight is not { } needHeight
            || entry.SmallestBoxCount is not { } count
        )
        {
            return StockingVerdict.Not("the library has no smallest box for it");
        }

        var length = box.OutsideLength ?? box.InsideLength;
        var depth = box.OutsideDepth ?? box.InsideDepth;
        var height = box.OutsideHeight ?? box.InsideHeight;
        var smallest = string.Create(
            CultureInfo.InvariantCulture,
            $"{needLength.Si * 100:0.#} x {needDepth.Si * 100:0.#} x {needHeight.Si * 100:0.#} cm"
        );
        var fits =
            IsAtLeast(Figure.Max(length, depth), Figure.Max(needLength, needDepth))
            && IsAtLeast(Figure.Min(length, depth), Figure.Min(needLength, needDepth))
            && IsAtLeast(height, needHeight);
        var allowed = fits
            ? StockingMeasure.Below(
                count
                    * (
                        (length * depth).As("floor by the sizes compared", Unit.SquareCentimeter)
                        / (needLength * needDepth).As("floor of the smallest box", Unit.SquareCentimeter)
                    ),
                "smallest box of the species",
                count.Origin
            )
            : None(count.Origin, [length, depth, height, needLength, needDepth, needHeight]);
        var where = box.OutsideLength is null ? "inside, as no outside is known" : "outside";
        return new StockingVerdict
        {
            Allowed = allowed,
            Remark = fits ? "" : $"the box is smaller than {smallest} in at least one edge",
            Text = string.Create(
                CultureInfo.InvariantCulture,
                $"{smallest} for {count.Value:0.#}, more by the floor; the sizes are names of outside sizes, "
                    + $"compared {where}."
            ),
            Citation = count.Origin,
        };
    }

    private static bool IsAtLeast(Figure has, Figure needs) => has.Si >= needs.Si - 1e-9;

    private static Figure None(Citation origin, Figure[] edges) =>
        Figure
            .Computed("0, because an edge of the box is below the smallest box", 0, Dimension.None, edges)
            .As("allowed by the smallest box of the species", Unit.One, origin);
}
