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
            .. Fittings(numbers),
            .. Lamps(numbers),
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
            yield return new ShoppingLine
            {
                Kind = ShoppingKind.Fitting,
                Key = good.Key,
                Item = good.Item,
                Pieces = good.Count is { } count
                    ? (count * boxes).As($"pieces of {good.Item}", Unit.One)
                    : boxes.As($"lengths of {good.Item}", Unit.One),
                Length = good.Length,
                Where = good.Where,
                Note = good.Note,
            };
        }
    }

    private static IEnumerable<ShoppingLine> Sealants(DesignNumbers numbers)
    {
        var seal = numbers.Sealants;
        if (seal.Silicone.Si > 0 && seal.Cartridges is { } cartridges)
        {
            yield return Priced(
                numbers,
                "pack-silicone-neutral-cartridge",
                new ShoppingLine
                {
                    Kind = ShoppingKind.Sealant,
                    Key = "silicone-neutral",
                    Item = "neutral-cure silicone, cartridge",
                    Pieces = cartridges,
                    Where = "floor.barrier",
                    Note = "no mildew inhibitor",
                }
            );
        }

        if (seal.FoamCans is { } cans)
        {
            yield return Priced(
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

    /// <summary>The line as a catalog pack with the workshop's price, where it has one.</summary>
    private static ShoppingLine Priced(DesignNumbers numbers, string pack, ShoppingLine line)
    {
        if (numbers.Design.Catalog.Find(pack) is not { } entry)
        {
            return line;
        }

        line = line with { Key = entry.Key, Item = entry.Name };
        if (
            line.Pieces is not { } pieces
            || numbers.Design.Catalog.Workshop?.Prices.GetValueOrDefault(pack) is not { } price
        )
        {
            return line;
        }

        var tier = price.Breaks.LastOrDefault(b => b.FromPacks <= pieces.Si) ?? price.Breaks[0];
        var each = Figure.Given(
            $"price of {entry.Name}",
            (double)tier.Price,
            Unit.Money,
            new Citation("workshop", price.Place, Provenance.Entered)
        );
        return line with
        {
            PriceEach = each,
            Price = (pieces * each).As($"price of all {entry.Name}", Unit.Money),
        };
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

    private static IEnumerable<ShoppingLine> Fittings(DesignNumbers numbers)
    {
        var design = numbers.Design.Design;
        if (design.Drain is { } drain)
        {
            yield return Fitting(
                numbers,
                drain.Kind switch
                {
                    DrainKind.Bulkhead => ("bulkhead", "bulkhead fitting with seal, tap and hose"),
                    DrainKind.Standpipe => ("standpipe", "bulkhead fitting with standpipe and hose"),
                    _ => ("siphon", "siphon hose and bulb"),
                },
                "drain"
            );
        }

        if (design.Floor.Drainage is not null)
        {
            yield return Fitting(
                numbers,
                ("dip-tube", "clear dip tube, as long as the box is high"),
                "drain"
            );
        }

        if (design.Misting is { } misting)
        {
            yield return Fitting(
                numbers,
                ("mist-nozzle", "mist nozzle with holder"),
                "misting",
                misting.Nozzles
            );
            yield return Fitting(
                numbers,
                ("mist-pump", "mist pump, timer, hose and water tank"),
                "misting"
            ) with
            {
                Note = "one pump can serve several boxes: measure each nozzle then",
            };
        }

        if (design.Heating is not null)
        {
            yield return Fitting(numbers, ("heating", "heat mat or cable with thermostat"), "heating");
        }
    }

    private static ShoppingLine Fitting(
        DesignNumbers numbers,
        (string Key, string Item) what,
        string where,
        int perBox = 1
    ) =>
        new()
        {
            Kind = ShoppingKind.Fitting,
            Key = what.Key,
            Item = what.Item,
            Pieces = Boxes(numbers, $"pieces of {what.Item}", perBox),
            Where = where,
        };

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
            yield return starter.Pack is { } pack ? Priced(numbers, pack.Key, line) : line;
        }
    }
}
