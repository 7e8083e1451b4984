using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Buying;

/// <summary>What closes holes and carries shelves.</summary>
internal static class BoxGoods
{
    private const int Corners = 4;

    public static IEnumerable<ShoppingLine> Of(DesignNumbers numbers) =>
        [.. Joints(numbers), .. Passages(numbers), .. Shelves(numbers)];

    /// <summary>Silicone of a box that is glued here: around the base and up the four corners.</summary>
    private static IEnumerable<ShoppingLine> Joints(DesignNumbers numbers)
    {
        var box = numbers.Box;
        if (
            numbers.Design.Design.Box.Panes != PaneSource.Cut
            || numbers.Design.Catalog.Find<AdhesiveEntry>("silicone-neutral")
                is not { BeadVolume: { } bead, Cartridge: { } tube }
        )
        {
            yield break;
        }

        var seams = (
            Figure.Number(2) * (box.InsideLength + box.InsideDepth)
            + Figure.Number(Corners) * box.InsideHeight
        ).As("joints of the box", Unit.Meter);
        var boxes = numbers.Design.Count("boxes", "number of boxes", numbers.Design.Design.Boxes);
        var volume = (boxes * seams * bead).As("silicone of the joints", Unit.Milliliter);
        yield return GoodLines.Line(
            numbers,
            new Good("pack-silicone-neutral-cartridge", "box")
            {
                Pieces = EquipmentPick.Whole("cartridges for the joints", volume, tube),
                Kind = ShoppingKind.Sealant,
                Note =
                    $"for {NumberText.Fine(seams)} of joints a box, beside that of barrier and background; "
                    + "a glazier decides whether it carries the box",
            }
        );
    }

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
