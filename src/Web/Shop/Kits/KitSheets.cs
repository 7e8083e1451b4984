using System.Globalization;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Domain.Trade;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Kits;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Kits;

/// <summary>Papers of the kits of an order.</summary>
/// <param name="view">Kits as they stand.</param>
/// <param name="sheet">What the papers share.</param>
/// <param name="papers">Papers of stock.</param>
internal sealed class KitSheets(KitView view, ShopSheet sheet, StockPapers papers)
{
    private static readonly UnitPreferences Plain = UnitPreferences.Metric;

    private string Order => view.Stock.OrderName(view.Order.Number);

    private string About => $"{Order}, {view.Stock.CustomerOf(view.Order)}";

    /// <summary>What is picked for all kits that are not packed.</summary>
    public PaperFile Pick() =>
        StockLists.Pick(
            sheet,
            About,
            [
                .. view.Lines.SelectMany(l =>
                    l.Pick.Lines.Select(p => new PickLine(
                        p.Good?.Place ?? "not kept in stock",
                        p.Item.Name,
                        AmountOf(p, l.Pick.Kits),
                        LotsOf(p),
                        p.Item.Size
                    ))
                ),
            ]
        );

    /// <summary>A label for each bag of each kit.</summary>
    /// <param name="isCut">True for sheets to cut out.</param>
    public PaperFile Bags(bool isCut) =>
        papers.Labels(
            view.Lines.SelectMany(line =>
                Enumerable
                    .Range(1, Math.Max(1, Count(line)))
                    .SelectMany(kit =>
                        KitItem
                            .All(line.Numbers)
                            .Where(i => i.Letter.Length > 0)
                            .Select(bag => BagLabel(line, bag, kit))
                    )
            ),
            isCut
        );

    /// <summary>A packing list for each kit: packed ones with their lots, the others as they will be.</summary>
    public PaperFile Packing() =>
        KitPapers.Packing(
            sheet,
            view.Lines.SelectMany(line =>
                line.Packed.Select((kit, i) => Packed(line, kit, i + 1))
                    .Concat(
                        Enumerable
                            .Range(1, line.Pick.Kits)
                            .Select(i => Planned(line, line.Packed.Count + i, line.Pick.ByKit()[i - 1]))
                    )
            )
        );

    /// <summary>The leaflet in each box.</summary>
    public PaperFile? Leaflet() =>
        view.Lines.Count == 0
            ? null
            : KitPapers.Leaflet(
                sheet,
                new(
                    view.Lines[0].Item.Name,
                    [.. KitWords.Steps],
                    [
                        .. KitItem
                            .All(view.Lines[0].Numbers)
                            .Where(i => i.Letter.Length > 0)
                            .Select(b => $"{b.Letter}: {b.Name}, {Liters(b.Liters!.Value)}"),
                    ],
                    [.. KitWords.Cautions(view.Lines[0].Numbers)],
                    $"Questions: {view.Stock.Terms?.Name ?? "the workshop"}"
                        + $", {string.Join(", ", view.Stock.Terms?.Address ?? [])}"
                )
            );

    private static int Count(KitLine line) => line.Packed.Count + line.Pick.Kits;

    private LabelText BagLabel(KitLine line, KitItem bag, int kit)
    {
        var lot = line.Packed.ElementAtOrDefault(kit - 1)?.Lot.Id;
        var number = lot is null ? Order : LotNumber.Checked(lot);
        return new(
            $"Bag {bag.Letter}",
            lot is null ? number.ToUpperInvariant() : papers.Code(lot),
            bag.Name,
            [
                Liters(bag.Liters!.Value),
                $"kit {LotLabels.Which(kit, Count(line))}, {number}",
                line.Item.Name,
            ]
        );
    }

    private PackingText Packed(KitLine line, LotAccount kit, int which)
    {
        var lots = Genealogy.EdgesInto(kit).Select(e => view.Stock.Book.Find(e.From)!).ToList();
        return Text(
            line,
            (LotNumber.Checked(kit.Lot.Id), papers.Code(kit.Lot.Id), which),
            item =>
                string.Join(
                    ", ",
                    lots.Where(l => item.Other.Prepend(item.Key).Contains(l.Lot.Good, StringComparer.Ordinal))
                        .Select(l => l.Lot.Id)
                )
        );
    }

    private PackingText Planned(
        KitLine line,
        int which,
        IReadOnlyList<(KitPickLine Line, Picked Part)> parts
    ) =>
        Text(
            line,
            ($"{Order}, kit {which.ToString(CultureInfo.InvariantCulture)}", Order.ToUpperInvariant(), which),
            item => string.Join(", ", parts.Where(p => p.Line.Item == item).Select(p => p.Part.Lot.Lot.Id))
        );

    private PackingText Text(
        KitLine line,
        (string Number, string Code, int Which) kit,
        Func<KitItem, string> lots
    ) =>
        new(
            kit.Number,
            LotLabels.Which(kit.Which, Count(line)),
            kit.Code,
            $"{line.Item.Name}, {About}",
            [
                .. KitItem
                    .All(line.Numbers)
                    .OrderBy(i => i.Group)
                    .Select(i => new PackedLine(Group(i.Group), NameOf(i), AmountOf(i), Check(i), lots(i))),
            ]
        );

    private string Check(KitItem item)
    {
        if (item.Letter.Length == 0)
        {
            return item.Size.Length > 0 ? item.Size
                : item is { Pieces: not null, Kilograms: { } mass } ? $"{StockWords.Number(mass)} kg"
                : "";
        }

        if (view.KilogramsPerLiter(item) is not { } each)
        {
            return "_____ kg";
        }

        var (low, high) = KitWords.Weight(item.Liters!.Value, each);
        return high < 0.1
            ? string.Create(CultureInfo.InvariantCulture, $"{1000 * low:0}–{1000 * high:0} g")
            : string.Create(CultureInfo.InvariantCulture, $"{low:0.00}–{high:0.00} kg");
    }

    private static string NameOf(KitItem item) =>
        item.Letter.Length > 0 ? $"bag {item.Letter}: {item.Name}" : item.Name;

    private static string AmountOf(KitItem item) =>
        item.Letter.Length > 0 ? Liters(item.Liters!.Value)
        : item.Pieces is { } pieces ? StockWords.Number(Math.Ceiling(pieces - 1e-9))
        : item.Kilograms is { } mass ? $"{StockWords.Number(mass)} kg"
        : item.Liters is { } liters ? Liters(liters)
        : "";

    private static string AmountOf(KitPickLine pick, int kits) =>
        pick.Good is { } good ? StockWords.Amount(pick.Each * kits, good.Unit, Plain)
        : pick.Item.Pieces is { } pieces ? StockWords.Number(pieces * kits)
        : pick.Item.Liters is { } liters ? Liters(liters * kits)
        : pick.Item.Kilograms is { } mass ? $"{StockWords.Number(mass * kits)} kg"
        : "";

    private static string LotsOf(KitPickLine pick)
    {
        if (pick is not { Lots: { } lots, Good: { } good })
        {
            return "";
        }

        string Some(double amount) => StockWords.Amount(amount, good.Unit, Plain);
        return string.Join(
            ", ",
            lots.Lots.Select(l => $"{l.Lot.Lot.Id} {Some(l.Amount)}")
                .Concat(lots.IsShort ? [$"{Some(lots.Short)} missing"] : [])
        );
    }

    private static string Group(KitGroup group) =>
        group switch
        {
            KitGroup.Bags => "Bags",
            KitGroup.Flat => "Flat parts",
            KitGroup.Loose => "Wood and stone",
            KitGroup.Fittings => "Fittings",
            _ => "Living, last of all",
        };

    private static string Liters(double liters) => StockWords.Amount(liters, StockUnit.Liters, Plain);
}
