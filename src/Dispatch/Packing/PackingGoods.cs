using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using static System.FormattableString;

namespace Litterfall.Dispatch.Packing;

/// <summary>What is laid out for a parcel, with the amounts taken from stock.</summary>
internal static class PackingGoods
{
    private const string Moss = "long-fibre-sphagnum";
    private const double MossKilogramsPerLiter = 0.03;
    private const double FewGrams = 1000;

    /// <summary>The list to tick off, in the order in which it is laid out.</summary>
    public static Seq<PackingLine> List(PackingCase asked, List<PackedItem> items, double paddingLiters)
    {
        var lines = new List<PackingLine>
        {
            new("1", $"{asked.Carton.Name} with its liner", asked.Carton.Good, Pieces(asked.Carton.Good, 1)),
        };
        foreach (var use in asked.Packs.Where(p => p.Count > 0))
        {
            var pack = asked.Rules.Packs.First(p => p.Key == use.Pack);
            lines.Add(new(Count(use.Count), pack.Name, pack.Good, Pieces(pack.Good, use.Count)));
        }

        foreach (var cups in items.Where(i => i.Stock is not null).GroupBy(i => i.Stock!))
        {
            var count = cups.Sum(i => i.Cup.Count);
            lines.Add(
                new(Count(count), $"{cups.Key.Name} with lid", cups.Key.Good, Pieces(cups.Key.Good, count))
            );
        }

        Add(lines, asked, items);
        lines.Add(new(Invariant($"{paddingLiters:0.#} L"), "loose padding, clean and dry", "", 0));
        foreach (var item in items)
        {
            var key = item.Traveler.Content.Key;
            var good = asked.Goods.Any(g => g.Key == key) ? key : "";
            var from = item.Cup.From.Length > 0 ? $", from {item.Cup.From}" : "";
            lines.Add(
                new(Count(item.Cup.Count), item.Traveler.Name + from, good, Pieces(good, item.Cup.Count))
            );
        }

        return [.. lines];
    }

    private static void Add(List<PackingLine> lines, PackingCase asked, List<PackedItem> items)
    {
        var dry = items.Sum(i => i.Cup.Count * i.Cup.MossGrams);
        var water = items.Sum(i => i.Cup.Count * i.Cup.WaterGrams);
        if (dry <= 0)
        {
            return;
        }

        var good = asked.Goods.FirstOrDefault(g => g.Key == Moss);
        var units = good?.Unit switch
        {
            StockUnit.Liters => dry / 1000 / MossKilogramsPerLiter,
            StockUnit.Kilograms => dry / 1000,
            _ => 0,
        };
        lines.Add(
            new(Mass(dry), "long-fiber moss, dry, clean", good is null ? "" : Moss, Math.Round(units, 4))
        );
        lines.Add(new(Mass(water), "water without chlorine, for the moss", "", 0));
    }

    private static string Count(int count) => Invariant($"{count}");

    private static double Pieces(string good, int count) => good.Length > 0 ? count : 0;

    private static string Mass(double grams) =>
        grams < FewGrams ? Invariant($"{grams:0.#} g") : Invariant($"{grams / 1000:0.##} kg");
}
