using Litterfall.Domain;
using Litterfall.Forecasting;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Buying;

/// <summary>What closes holes and carries shelves.</summary>
internal static class BoxGoods
{
    private const int Corners = 4;

    public static IEnumerable<ShoppingLine> Of(DesignNumbers numbers) =>
        [.. Passages(numbers), .. Shelves(numbers)];

    private static IEnumerable<ShoppingLine> Passages(DesignNumbers numbers)
    {
        for (var i = 0; i < numbers.Design.Design.Passages.Count; i++)
        {
            var passage = numbers.Design.Design.Passages[i];
            yield return GoodLines.Line(
                numbers,
                new Good("grommet", $"passages[{NumberText.Integer(i)}]")
                {
                    Pieces = GoodLines.Each(numbers, $"grommets for {passage.For}"),
                    Note = $"{passage.For}: hole {passage.Hole.Text}, {passage.Through.Text} through it",
                }
            );
        }
    }

    private static IEnumerable<ShoppingLine> Shelves(DesignNumbers numbers)
    {
        for (var i = 0; i < numbers.Design.Design.Shelves.Count; i++)
        {
            if (numbers.Design.Design.Shelves[i].Held == ShelfHold.Corners)
            {
                yield return GoodLines.Line(
                    numbers,
                    new Good("shelf-clip", $"shelves[{NumberText.Integer(i)}]")
                    {
                        Pieces = GoodLines.Each(numbers, "clips of the shelf", Corners),
                        Note = "fit for its thickness and load: the maker's figure decides",
                    }
                );
            }
        }
    }
}
