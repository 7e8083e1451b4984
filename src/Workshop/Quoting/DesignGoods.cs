using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Instructions.Buying;

namespace Litterfall.Workshop.Quoting;

/// <summary>
/// The goods of a design as it is sold: all that its shopping list has, but for what stays in the workshop.
/// Bulk goods count with the liters that go in, not with whole bags.
/// </summary>
public static class DesignGoods
{
    /// <summary>Gear that serves every build; the overhead pays for it. Own choice.</summary>
    private static readonly ImmutableArray<string> Tools =
    [
        "bleach",
        "cleaning-spirit",
        "gloves",
        "cut-gloves",
        "goggles",
        "dust-mask",
    ];

    /// <summary>Reads the goods for all boxes of a design.</summary>
    /// <param name="numbers">Its numbers; shape is enough.</param>
    /// <param name="kind">Built and planted here, or a boxed kit, which goes out without plants.</param>
    /// <param name="hasAnimals">True where the animals of the design are sold with it.</param>
    public static ImmutableArray<GoodNeed> Read(DesignNumbers numbers, OrderItemKind kind, bool hasAnimals)
    {
        var isBuilt = kind == OrderItemKind.Build;
        var lines = ShoppingList
            .Of(numbers)
            .Lines.Where(l => l.Kind is not (ShoppingKind.Bulk or ShoppingKind.FromStock))
            .Where(l => !Tools.Contains(l.Key) && (isBuilt || l.Kind != ShoppingKind.Plant))
            .Where(l => hasAnimals || !IsFeeder(numbers, l))
            .Select(l => Line(numbers, l));
        return
        [
            .. numbers
                .Packs.Select(p => new GoodNeed(p.Material.Key, p.Material.Name)
                {
                    Liters = p.Need.Si * 1000,
                })
                .Concat(lines)
                .Concat(hasAnimals && isBuilt ? Animals(numbers) : [])
                .GroupBy(n => (n.Key, n.Millimeters))
                .Select(Together),
        ];
    }

    private static GoodNeed Line(DesignNumbers numbers, ShoppingLine line)
    {
        if (line.Area is { } area)
        {
            return new(line.Key, numbers.Design.Catalog.Find(line.Key)?.Name ?? line.Item)
            {
                SquareMeters = area.Si,
                Millimeters = line.Thickness?.Si * 1000,
            };
        }

        var pack = numbers.Design.Catalog.Find<PackEntry>(line.Key);
        var pieces = line.Pieces?.Si;
        return line.Kind == ShoppingKind.Box
            ? Box(line)
            : new(line.Key, line.Item)
            {
                Other = pack?.Material is { } material ? [material] : [],
                Pieces = pieces,
                Meters = pieces * line.Length?.Si,
                Kilograms = line.Mass?.Si,
                Liters = line.Liters?.Si * 1000,
                IsLive = line.Kind is ShoppingKind.Plant or ShoppingKind.Crew || IsFeeder(numbers, line),
            };
    }

    /// <summary>A bought box is told apart by its outside size in whole centimeters.</summary>
    private static GoodNeed Box(ShoppingLine line)
    {
        var size = new[] { line.Length, line.Width, line.Height }
            .OfType<Domain.Figures.Figure>()
            .Select(f => Math.Round(f.Si * 100).ToString("0", CultureInfo.InvariantCulture))
            .ToArray();
        return new($"box-{string.Join('x', size)}", $"{line.Item} {string.Join(" × ", size)} cm")
        {
            Other = [line.Key],
            Pieces = line.Pieces?.Si,
        };
    }

    private static IEnumerable<GoodNeed> Animals(DesignNumbers numbers) =>
        numbers
            .Design.Design.Animals.Where(a => a.Count > 0)
            .Select(a => new GoodNeed(a.Kind, numbers.Design.Catalog.Find(a.Kind)?.Name ?? a.Kind)
            {
                Key = numbers.Design.Catalog.Find(a.Kind)?.Key ?? a.Kind,
                Pieces = (double)a.Count * numbers.Design.Design.Boxes,
                IsLive = true,
            });

    private static bool IsFeeder(DesignNumbers numbers, ShoppingLine line) =>
        line.Kind == ShoppingKind.Supply && numbers.Design.Catalog.Find<FeederEntry>(line.Key) is not null;

    private static GoodNeed Together(IEnumerable<GoodNeed> same)
    {
        var all = same.ToArray();
        return all.Length == 1
            ? all[0]
            : all[0] with
            {
                Liters = Sum(all, n => n.Liters),
                Kilograms = Sum(all, n => n.Kilograms),
                Meters = Sum(all, n => n.Meters),
                Pieces = Sum(all, n => n.Pieces),
                SquareMeters = Sum(all, n => n.SquareMeters),
                IsLive = all.Any(n => n.IsLive),
            };
    }

    private static double? Sum(GoodNeed[] needs, Func<GoodNeed, double?> measure) =>
        needs.All(n => measure(n) is null) ? null : needs.Sum(n => measure(n) ?? 0);
}
