using System.Collections.Immutable;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>The cutting table as it stands.</summary>
/// <param name="Stock">Stock and the names it is told with.</param>
/// <param name="Facts">What the table knows.</param>
/// <param name="Materials">What is to be cut, by material.</param>
/// <param name="Jobs">Plans, the last first.</param>
/// <param name="Panels">Loose panels.</param>
public sealed record CuttingView(
    StockView Stock,
    TableFacts Facts,
    ImmutableArray<CutMaterial> Materials,
    ImmutableArray<Kept<CuttingJob>> Jobs,
    ImmutableArray<Kept<LoosePanel>> Panels
)
{
    /// <summary>The shop's own rules with their versions.</summary>
    public ImmutableArray<Kept<CuttingRules>> Rules { get; init; } = [];

    /// <summary>Designs that cannot be computed, by name.</summary>
    public ImmutableArray<string> Unread { get; init; } = [];

    /// <summary>A plan by its number; null where there is none.</summary>
    /// <param name="number">Its number.</param>
    public Kept<CuttingJob>? Find(int number) => Jobs.FirstOrDefault(j => j.Value.Number == number);

    /// <summary>A material by its key; null where there is none.</summary>
    /// <param name="key">Its key.</param>
    public CutMaterial? Material(string key) => Materials.FirstOrDefault(m => m.Key == key);

    /// <summary>Why a plan no longer holds; null where it does.</summary>
    /// <param name="job">The plan.</param>
    public string? Stale(CuttingJob job) => StaleJob.Find(job, Facts, Stock.OrderName);

    /// <summary>What is to be done at the table in the days that come.</summary>
    /// <param name="days">How many days, today included.</param>
    public IEnumerable<DayTask> Coming(int days) =>
        CuttingTasks.Find(
            Facts.Jobs,
            Materials,
            (Facts.Today, Facts.Today.AddDays(days - 1)),
            new Dictionary<int, OrderDays>(),
            CuttingDesk.MinutesPerPart(this)
        );

    /// <summary>Offcuts on the rack, the oldest first.</summary>
    public IEnumerable<LotAccount> Rack =>
        Facts
            .Book.Lots.Where(a => a.HasSome && a.Lot.Form == Domain.Stock.SheetForm.Offcut)
            .OrderBy(a => a.Lot.Since)
            .ThenBy(a => a.Lot.Id, StringComparer.Ordinal);

    /// <summary>Goods that come in sheets or on rolls, by name.</summary>
    public IEnumerable<Good> SheetGoods =>
        Stock.AllGoods.Where(g => g.Kind == GoodKind.Sheet && g.Key != "box");

    /// <summary>Whom parts are for: "LD-204 LD-204: shelf kits", "stock".</summary>
    /// <param name="order">Number of the order.</param>
    /// <param name="tank">Its tank.</param>
    public string Whom(int? order, string tank) =>
        order is not { } number ? tank
        : tank.StartsWith(Stock.OrderName(number), StringComparison.Ordinal) ? tank
        : $"{Stock.OrderName(number)} {tank}";
}
