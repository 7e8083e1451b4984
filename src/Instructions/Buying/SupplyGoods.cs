using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Care;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Buying;

/// <summary>What plants, animals, cleaning and safe work need.</summary>
internal static class SupplyGoods
{
    /// <summary>Foam that is bought as board, carved and covered.</summary>
    private const string FoamBoard = "foam-board";

    public static IEnumerable<ShoppingLine> Of(DesignNumbers numbers) =>
        Cover(numbers)
            .Concat(Mounts(numbers))
            .Concat(Animals(numbers))
            .Concat(Cleaning(numbers))
            .Concat(Safety(numbers))
            .Select(good => GoodLines.Line(numbers, good with { Kind = ShoppingKind.Supply }))
            .Concat(Flies(numbers));

    private static IEnumerable<Good> Cover(DesignNumbers numbers)
    {
        var (design, box) = (numbers.Design, numbers.Box);
        if (
            box.BackgroundThickness is not { } thick
            || design.Find<BackgroundEntry>("background.material") is not { } entry
            || (entry.PouredFrom is null && entry.Key != FoamBoard)
        )
        {
            yield break;
        }

        var area = Figure
            .NotNegative(
                (box.GrossFloor - box.OpenFloor) / thick * (box.InsideHeight - box.BackgroundFrom!)
            )
            .As("face of the background", Unit.SquareMeter);
        var boxes = design.Count("boxes", "number of boxes", design.Design.Boxes);
        var loose = (boxes * area * EquipmentPolicy.CoverDepth * EquipmentPolicy.CoverLoose).As(
            "loose cover of the background",
            Unit.Liter
        );
        yield return new Good("cover-fiber", "background")
        {
            Pieces = boxes,
            Liters = loose,
            Note = "dry and fine; pressed on wet silicone",
        };
        if (design.Catalog.Find<BackgroundEntry>("background-cover")?.AdhesiveCoverage is { } coverage)
        {
            yield return new Good("pack-silicone-neutral-cartridge", "background")
            {
                Pieces = EquipmentPick.Whole(
                    "cartridges for the cover",
                    (boxes * area).As("faces to cover", Unit.SquareMeter),
                    coverage
                ),
                Note = "bed of the pressed cover, beside that of the sealing; no mildew inhibitor",
            };
        }
    }

    private static IEnumerable<Good> Mounts(DesignNumbers numbers)
    {
        var mounted = numbers.Design.Design.Plants.Where(p => p.Mounted).Sum(p => p.Count);
        if (mounted == 0)
        {
            yield break;
        }

        var plants = Figure.Number(mounted);
        yield return new Good("mount-pin", "plants")
        {
            Pieces = GoodLines.Each(
                numbers,
                "pins of mounted plants",
                (plants * EquipmentPolicy.PinsEach).As("pins of a box", Unit.One)
            ),
        };
        yield return new Good("mount-wire", "plants")
        {
            Pieces = GoodLines.Each(numbers, "lengths of wire", mounted),
            Length = EquipmentPolicy.WireEach,
            Note = "ends turned in; no copper",
        };
    }

    private static IEnumerable<Good> Animals(DesignNumbers numbers)
    {
        var design = numbers.Design.Design;
        if (design.WaterCups is > 0 and { } cups)
        {
            yield return new Good("water-cup", "waterCups")
            {
                Pieces = GoodLines.Each(numbers, "water cups", cups),
            };
        }

        if (design.Animals.Count > 0)
        {
            yield return new Good("feeding-dish", "animals")
            {
                Pieces = GoodLines.Each(numbers, "feeding dishes"),
            };
        }

        yield return new Good("tank-label", "tank")
        {
            Pieces = GoodLines.Each(numbers, "labels"),
            Note = "the number stands on the tank passport",
        };
    }

    /// <summary>The first cups of flies, where the animals eat them.</summary>
    private static IEnumerable<ShoppingLine> Flies(DesignNumbers numbers)
    {
        if (FoodDates.Cups(numbers) is { } flies)
        {
            yield return new ShoppingLine
            {
                Kind = ShoppingKind.Supply,
                Key = flies.Fly.Key,
                Item = $"culture of {flies.Fly.Name}",
                Pieces = GoodLines.Each(numbers, "cultures a week", flies.Cups),
                Where = "animals",
                Use = "first set of food",
                Note = "and as many every week: the calendar has the day",
            };
        }
    }

    private static IEnumerable<Good> Cleaning(DesignNumbers numbers)
    {
        if (numbers.Design.Design.Plants.Count > 0 || numbers.Dip is not null)
        {
            yield return new Good("bleach", "hygiene")
            {
                Pieces = Figure.Choice("bottles of bleach", 1, Unit.One, "one bottle dips many baths"),
                Liters = numbers.Dip?.ProductMilliliters,
                Note = "without scent, thickener or soap; read its strength; never with acid or ammonia",
            };
        }

        if (numbers.Sealants.Silicone.Si > 0 || numbers.Design.Design.Box.Panes == PaneSource.Cut)
        {
            var liters = GoodLines.Spirit(numbers);
            yield return new Good("cleaning-spirit", "box")
            {
                Pieces = numbers.Design.Catalog.Find<EquipmentEntry>("cleaning-spirit")
                    is { Volume: { } bottle }
                    ? EquipmentPick.Whole("bottles of spirit", liters, bottle)
                    : Figure.Choice("bottles of spirit", 1, Unit.One, "one for a bench"),
                Liters = liters,
                Note = "open window, no flame; let it dry before silicone",
            };
        }
    }

    private static IEnumerable<Good> Safety(DesignNumbers numbers)
    {
        yield return Pair("gloves");
        yield return Pair("cut-gloves");
        yield return Pair("goggles");
        if (numbers.Layers.Length > 0)
        {
            yield return Pair("dust-mask");
        }
    }

    private static Good Pair(string key) =>
        new(key, "box")
        {
            Pieces = Figure.Choice($"pieces of {key}", 1, Unit.One, "one for each who works"),
            Note = "one for each who works",
        };
}
