using System.Globalization;
using System.Text.Json.Nodes;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Batches;
using Litterfall.Workshop.Goods;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Batches;

/// <summary>Soil batches of this bench: what orders need, how it is made, what was made of it.</summary>
public sealed class BatchDesk(
    BenchStore store,
    BenchLibrary library,
    StockShelf shelf,
    OrderNumbers numbers
)
{
    private static readonly ShopTerms Blank = new() { Name = "Workshop" };

    /// <summary>Everything the page of batches shows.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<BatchView> LoadAsync(CancellationToken cancel = default)
    {
        await library.LoadAsync(cancel);
        var stock = await shelf.LoadAsync(cancel);
        var batches = await store.RecordsAsync<SoilBatch>(cancel);
        var needs = new List<MixNeed>();
        foreach (var order in stock.Orders.Where(o => o.IsOpen).OrderBy(o => o.Promised ?? DateOnly.MaxValue))
        {
            foreach (var item in order.Items)
            {
                if (await NeedAsync(order, item, cancel) is { } need)
                {
                    needs.Add(need);
                }
            }
        }

        return new(
            stock,
            library.Catalog,
            [.. MixNeed.Open(needs, stock.Book)],
            [.. batches.OrderBy(b => b.Value.Day).ThenBy(b => b.Key, StringComparer.Ordinal)],
            stock.Terms ?? Blank,
            shelf.Today
        );
    }

    /// <summary>Writes a mix as made: lots, lines and its record in one step; then learns its yield.</summary>
    /// <param name="view">What was shown.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">What was measured.</param>
    /// <returns>The lot, and a sentence: what was learned, or why it is not written.</returns>
    public async Task<(string? Lot, string Told)> MakeAsync(
        BatchView view,
        BatchPlan plan,
        BatchMeasure measure
    )
    {
        var who = await shelf.WhoAsync();
        var good = MixGood(view, plan.Recipe);
        var lot = LotNumber.Next(good, view.Stock.Book.Lots.Select(l => l.Lot.Id));
        var (run, fault) = BatchRun.Make(plan, lot, measure, view.Stock.Book, (shelf.Today, who));
        if (run is null)
        {
            return (null, fault!);
        }

        var change = new ShopChange(who).Keep(lot, 0, run.Batch, $"{plan.Recipe.Name} mixed");
        if (!view.Stock.IsKept(good.Key))
        {
            change.Keep(good.Key, 0, good, "mixed for the first time");
        }

        change.Add(run.Step.Lots[0]);
        foreach (var line in run.Step.Lines)
        {
            change.Add(line);
        }

        return await shelf.WriteAsync(change) is { } refused
            ? (null, refused)
            : (lot, $"{lot} is written. {await LearnAsync(plan.Recipe.Key)}");
    }

    /// <summary>Adds what was measured later; one sentence.</summary>
    /// <param name="batch">The batch as it was shown.</param>
    /// <param name="changed">The batch with what was measured.</param>
    public async Task<string> MeasureAsync(Kept<SoilBatch> batch, SoilBatch changed)
    {
        var change = new ShopChange(await shelf.WhoAsync()).Keep(
            batch.Key,
            batch.Version,
            changed,
            "measured"
        );
        return await shelf.WriteAsync(change)
            ?? $"{changed.Lot} is measured. {await LearnAsync(changed.Recipe)}";
    }

    /// <summary>
    /// Puts the yield of all measured batches into the workshop's own entry of the recipe: quantities of designs
    /// use it and say so.
    /// </summary>
    /// <param name="recipe">Key of the recipe.</param>
    /// <returns>What designs use now, or what kept it; empty where nothing was measured.</returns>
    public async Task<string> LearnAsync(string recipe)
    {
        var batches = (await store.RecordsAsync<SoilBatch>())
            .Select(b => b.Value)
            .Where(b => b.Recipe == recipe)
            .OrderBy(b => b.Day)
            .ToList();
        if (
            BatchLearning.From(batches).Yield is not { } yield
            || library.Catalog.Find<RecipeEntry>(recipe) is not { } entry
        )
        {
            return "";
        }

        var told = BatchLearning.Told(batches);
        var json = JsonNode.Parse(OwnEntry.Json(entry))!;
        json["values"]![GroundEntry.MixingYieldKey] = new JsonObject
        {
            ["value"] = Percent(yield.Mean),
            ["low"] = Percent(yield.Low),
            ["high"] = Percent(Math.Min(1, yield.High)),
            ["unit"] = Unit.Percent.Symbol,
            ["source"] = "workshop",
            ["place"] = told,
            ["provenance"] = "measured",
        };
        var fault = await OwnEntry.AddAsync(library, json.ToJsonString(), told);
        return fault
            ?? string.Create(
                CultureInfo.InvariantCulture,
                $"{entry.Name} yields {100 * yield.Mean:0} %, {told}; designs use it now."
            );
    }

    private static double Percent(double share) => Math.Round(100 * share, 2);

    private async Task<MixNeed?> NeedAsync(Order order, OrderItem item, CancellationToken cancel)
    {
        if (item.Good is { } good)
        {
            return library.Catalog.Find<RecipeEntry>(good) is { Parts.IsDefaultOrEmpty: false } recipe
                ? new(order, item.Name, recipe.Key, item.Amount)
                : null;
        }

        return await numbers.FindAsync(item, cancel) is { } shape
            ? MixNeed.FromDesign(order, item, shape)
            : null;
    }

    private static Good MixGood(BatchView view, RecipeEntry recipe) =>
        view.Stock.Goods.TryGetValue(recipe.Key, out var known)
            ? known with
            {
                Letters = known.Letters.Length > 0 ? known.Letters : "MIX",
            }
            : LibraryGoods.From(recipe)! with
            {
                Letters = "MIX",
                Place = "mixing tubs",
            };
}
