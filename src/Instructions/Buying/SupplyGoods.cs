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
        if (SiliconeGoods.Covered(numbers) is not { } area)
        {
            yield break;
        }

        var design = numbers.Design;
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

    /// <summary>The first cups of flies, where animals of the box eat them; kits are sold without.</summary>
    private static IEnumerable<ShoppingLine> Flies(DesignNumbers numbers)
    {
        if (numbers.Design.Design.Animals.Count > 0 && FoodDates.Cups(numbers) is { } flies)
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

        if (SiliconeGoods.Of(numbers) is not null)
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
