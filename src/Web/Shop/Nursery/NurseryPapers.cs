using System.Globalization;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Shop.Cultures;
using Litterfall.Domain.Nursery;
using Litterfall.Quantities.Measures;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Nursery;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Nursery;

/// <summary>The round and the labels of plants.</summary>
/// <param name="view">Plants as they stand.</param>
/// <param name="sheet">What the papers share.</param>
/// <param name="papers">Papers of stock.</param>
internal sealed class NurseryPapers(NurseryView view, ShopSheet sheet, StockPapers papers)
{
    private const int Days = 7;

    /// <summary>Tasks of a week and the round of today.</summary>
    public PaperFile Round()
    {
        var (book, today) = (view.Book, view.Book.Today);
        return CultureRound.Write(
            sheet,
            new(
                "Plant round",
                [
                    .. NurseryTasks
                        .Find(book, today, today.AddDays(Days - 1))
                        .Select(t => new RoundStart(t.Day, t.Title, t.Detail)),
                ],
                [
                    .. from bench in book.Benches
                    from tray in book.Standing.Where(t => t.Bench == bench.Key)
                    orderby bench.Use, bench.Name, tray.Place
                    select Line(bench, tray),
                ],
                [
                    .. book
                        .Covers.Where(c => c.Missing > 0)
                        .Select(c =>
                            $"{view.Stock.OrderName(c.Need.Order.Number)} is short of "
                            + $"{NumberText.Count(c.Missing, "plant", "plants")} of "
                            + $"{book.NameOf(c.Need.Plant)} "
                            + $"by {NumberText.Day(c.Need.Day)}."
                        ),
                ],
                [.. NurseryWords.Cautions]
            )
        );
    }

    /// <summary>Labels of standing trays, or of one.</summary>
    /// <param name="only">Number of one; null for all.</param>
    /// <param name="isCut">True for sheets to cut out.</param>
    public PaperFile? Labels(string? only, bool isCut)
    {
        var some = view.Book.Standing.Where(t => only is null || t.Number == only).Select(Label).ToList();
        return some.Count == 0 ? null : papers.Labels(some, isCut);
    }

    private LabelText Label(PlantTray tray) =>
        new(
            LotNumber.Checked(tray.Number),
            papers.Code(tray.Number),
            view.Book.NameOf(tray.Plant),
            [
                $"{NumberText.Count(tray.Plants, "plant", "plants")}, {StockWords.Day(tray.Since)}",
                tray.Mother is { } mother ? $"cut from {mother}"
                : tray.Supplier is { } supplier ? $"from {view.SupplierName(supplier)}"
                : "own plants",
                tray.IsInQuarantine ? "quarantine: do not move" : "live plants",
            ]
        );

    private RoundLine Line(NurseryBench bench, PlantTray tray)
    {
        var stand = view.Book.Stand(tray);
        return new(
            bench.Name,
            string.Create(CultureInfo.InvariantCulture, $"tray {tray.Place}"),
            tray.Number,
            $"{view.Book.NameOf(tray.Plant)}, {NumberText.Count(stand.Left, "plant", "plants")}",
            tray.IsInQuarantine ? "quarantine"
                : stand.PotOn <= view.Book.Today && tray.Potted is null ? "pot"
                : ""
        );
    }
}
