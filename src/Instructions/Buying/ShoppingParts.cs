using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Care;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Buying;

/// <summary>Lines for everything that is neither bulk nor cut.</summary>
internal static class ShoppingParts
{
    public static IEnumerable<ShoppingLine> Of(DesignNumbers numbers) =>
        [
            .. Box(numbers),
            .. Closures(numbers),
            .. Sealants(numbers),
            .. Hardscape(numbers),
            .. WaterGoods.Of(numbers),
            .. BoxGoods.Of(numbers),
            .. PowerGoods.Of(numbers),
            .. Lamps(numbers),
            .. SupplyGoods.Of(numbers),
            .. Plants(numbers),
            .. Crew(numbers),
        ];

    private static Figure Boxes(DesignNumbers numbers, string name, int perBox = 1)
    {
        var boxes = numbers.Design.Count("boxes", "number of boxes", numbers.Design.Design.Boxes);
        return (Figure.Number(perBox) * boxes).As(name, Unit.One);
    }

    private static string At(string list, int i) =>
        string.Create(CultureInfo.InvariantCulture, $"{list}[{i}]");

    private static IEnumerable<ShoppingLine> Box(DesignNumbers numbers)
    {
        // Panes that are cut stand in the list of panes, each with its size.
        if (numbers.Cuts.Any(c => c.Part.StartsWith("pane-", StringComparison.Ordinal)))
        {
            yield break;
        }

        var cut = numbers.Design.Design.Box.Panes == PaneSource.Cut;
        yield return new ShoppingLine
        {
            Kind = ShoppingKind.Box,
            Key = "box",
            Item = cut ? "panes of the box, as the glass drawing shows" : "glass box",
            Pieces = Boxes(numbers, cut ? "sets of panes" : "boxes to buy"),
            Length = numbers.Box.OutsideLength ?? numbers.Box.InsideLength,
            Width = numbers.Box.OutsideDepth ?? numbers.Box.InsideDepth,
            Height = numbers.Box.OutsideHeight ?? numbers.Box.InsideHeight,
            Thickness = numbers.Box.Walls,
            Where = "box",
            Note = numbers.Box.OutsideLength is null
                ? "sizes are inside; check the true size before you buy"
                : "sizes are outside, thickness is that of the walls; check the true size",
        };
    }

    /// <summary>What holds, guides and closes lid and doors.</summary>
    private static IEnumerable<ShoppingLine> Closures(DesignNumbers numbers)
    {
        var boxes = numbers.Design.Count("boxes", "number of boxes", numbers.Design.Design.Boxes);
        foreach (var good in ClosureGoods.Of(numbers.Design, numbers.Box, numbers.Doors))
        {
            yield return GoodLines.Line(
                numbers,
                new Good(good.Key, good.Where)
                {
                    Item = good.Item,
                    Pieces = good.Count is { } count
                        ? (count * boxes).As($"pieces of {good.Item}", Unit.One)
                        : boxes.As($"lengths of {good.Item}", Unit.One),
                    Length = good.Length,
                    Note = good.Note,
                }
            );
        }
    }

    private static IEnumerable<ShoppingLine> Sealants(DesignNumbers numbers)
    {
        var seal = numbers.Sealants;
        if (SiliconeGoods.Of(numbers) is { } silicone)
        {
            yield return silicone;
        }

        if (seal.FoamCans is { } cans)
        {
            yield return GoodLines.Priced(
                numbers,
                "pack-expanding-foam-can",
                new ShoppingLine
                {
                    Kind = ShoppingKind.Sealant,
                    Key = "expanding-foam",
                    Item = "expanding foam, can",
                    Pieces = cans,
                    Where = "background",
                    Note = $"cans differ: one gives {Told.FoamCan}",
                }
            );
        }
    }

    private static IEnumerable<ShoppingLine> Hardscape(DesignNumbers numbers)
    {
        for (var i = 0; i < numbers.Design.Design.Hardscape.Count; i++)
        {
            var key = At("hardscape", i);
            var entry = numbers.Design.Entry($"{key}.material");
            var pieces = Boxes(numbers, $"pieces of {entry.Name}");
            yield return new ShoppingLine
            {
                Kind = ShoppingKind.Hardscape,
                Key = entry.Key,
                Item = entry.Name,
                Pieces = pieces,
                Mass = (pieces * HardscapeSize.Mass(numbers.Design, i)).As(
                    $"mass of all {entry.Name}",
                    Unit.Kilogram
                ),
                Where = key,
            };
        }
    }

    private static IEnumerable<ShoppingLine> Lamps(DesignNumbers numbers)
    {
        for (var i = 0; i < numbers.Design.Design.Lamps.Count; i++)
        {
            var key = At("lamps", i);
            var entry = numbers.Design.Entry<LampEntry>($"{key}.lamp");
            yield return new ShoppingLine
            {
                Kind = ShoppingKind.Lamp,
                Key = entry.Key,
                Item = entry.Name,
                Pieces = Boxes(numbers, $"{entry.Name} for all boxes"),
                Where = key,
                Note = Watts(numbers, key, i) is { } watts
                    ? $"{NumberText.Of(watts)} each; fit for damp places"
                    : "fit for damp places",
            };
        }
    }

    private static Figure? Watts(DesignNumbers numbers, string key, int lamp) =>
        numbers.Design.Design.Lamps[lamp].Watts is { } typed
            ? numbers.Design.Figure($"{key}.watts", "power", typed, Unit.Watt)
            : null;

    private static IEnumerable<ShoppingLine> Plants(DesignNumbers numbers)
    {
        var rows = numbers
            .Design.Design.Plants.Select(
                (plant, i) =>
                    (Entry: numbers.Design.Entry<PlantEntry>($"{At("plants", i)}.plant"), plant.Count)
            )
            .GroupBy(row => row.Entry.Key, StringComparer.Ordinal);
        foreach (var row in rows)
        {
            var entry = row.First().Entry;
            yield return new ShoppingLine
            {
                Kind = ShoppingKind.Plant,
                Key = entry.Key,
                Item = entry.Name,
                Pieces = Boxes(numbers, $"{entry.Name} for all boxes", row.Sum(r => r.Count)),
                Where = "plants",
                Note =
                    $"untreated, without prills; {NumberText.Whole(CareIntervals.PlantQuarantine)} days "
                    + $"of quarantine "
                    + "before planting",
            };
        }
    }

    private static IEnumerable<ShoppingLine> Crew(DesignNumbers numbers)
    {
        foreach (var starter in CrewStarters.Of(numbers))
        {
            var line = new ShoppingLine
            {
                Kind = ShoppingKind.Crew,
                Key = starter.Crew.Key,
                Item = starter.Crew.Name,
                Pieces = starter.Pack is null ? null : starter.Cups,
                Where = starter.Key,
                Note =
                    $"{NumberText.Whole(starter.CountPerBox)} for each box; cups are rarely "
                    + $"counted: "
                    + "look before you seed; order for the planting day",
            };
            yield return starter.Pack is { } pack ? GoodLines.Priced(numbers, pack.Key, line) : line;
        }
    }
}
