using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trade;
using Litterfall.Instructions.Care;

namespace Litterfall.Workshop.Quoting;

/// <summary>What an option is, what it changes and who gains, in plain words.</summary>
public static class OptionText
{
    /// <summary>What is different.</summary>
    public static string Changes(OptionWish wish)
    {
        var isBuilt = wish.Items.Any(i => i.Item.Kind == OrderItemKind.Build);
        var isKit = wish.Items.Any(i => i.Item.Kind == OrderItemKind.Kit);
        return isBuilt && wish.Visits > 0
                ? $"As planted, and we come {Times(wish.Visits)} after delivery to trim, drain, add leaves "
                    + "and check the water."
            : isBuilt
                ? $"Built, planted and grown in here for {Weeks} weeks; handed over running"
                    + (wish.HasAnimals ? ", with its animals." : ".")
            : isKit
                ? "All parts cut to size and bagged by layer, with springtails and isopods; you build it "
                    + "from the sheets. Plants and animals are not in it."
            : "Loose goods, packed.";
    }

    /// <summary>What animals and customer gain.</summary>
    public static string Gains(OptionWish wish)
    {
        var isBuilt = wish.Items.Any(i => i.Item.Kind == OrderItemKind.Build);
        var isKit = wish.Items.Any(i => i.Item.Kind == OrderItemKind.Kit);
        return isBuilt && wish.Visits > 0
                ? "Somebody who built it looks after it through the first season, when most goes wrong."
            : isBuilt ? "Moss and roots hold and the springtails are at work before an animal moves in."
            : isKit
                ? "The lowest price. You need a weekend, and the tank needs its weeks of grow-in at your "
                    + "place before animals move in."
            : "";
    }

    /// <summary>A line of the quote.</summary>
    public static string Line(PricedItem item, OptionWish wish)
    {
        var line = item.Item;
        if (item.Numbers is not { } numbers)
        {
            return line.Name;
        }

        var box = numbers.Box;
        var size = string.Join(
            " × ",
            new[] { box.InsideLength, box.InsideDepth, box.InsideHeight }.Select(f =>
                Math.Round(f.Si * 100, 1).ToString("0.#", CultureInfo.InvariantCulture)
            )
        );
        var animals =
            wish.HasAnimals && line.Kind == OrderItemKind.Build && numbers.Design.Design.Animals.Count > 0
                ? $", with {Animals(item)}"
                : "";
        var kind = line.Kind == OrderItemKind.Kit ? "kit" : "planted tank";
        return $"{line.Name}: {kind}, inside {size} cm{animals}";
    }

    private static string Animals(PricedItem item) =>
        string.Join(
            " and ",
            item.Numbers!.Design.Design.Animals.Where(a => a.Count > 0)
                .Select(a =>
                {
                    var entry = item.Numbers.Design.Catalog.Find<AnimalEntry>(a.Kind);
                    var name = entry?.CommonFirst ?? a.Kind;
                    return string.Create(CultureInfo.InvariantCulture, $"{a.Count} × {name}");
                })
        );

    private static string Times(int visits) =>
        visits == 1 ? "once"
        : visits == 2 ? "twice"
        : string.Create(CultureInfo.InvariantCulture, $"{visits} times");

    private static string Weeks =>
        (CareIntervals.GrowIn.Value / 7).ToString("0", CultureInfo.InvariantCulture);
}
