using System.Globalization;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Stock;
using Litterfall.Instructions.Parts;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Batches;
using Litterfall.Workshop.Mixing;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Batches;

/// <summary>Cards and labels of soil batches.</summary>
/// <param name="view">Batches as they stand.</param>
/// <param name="sheet">What the papers share.</param>
/// <param name="papers">Papers of stock.</param>
internal sealed class BatchPapers(BatchView view, ShopSheet sheet, StockPapers papers)
{
    /// <summary>A card for each tub of a plan; null where nothing is mixed.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="more">Liters for stock.</param>
    public PaperFile? Cards(RecipeEntry recipe, double more)
    {
        var plan = view.Plan(recipe, more);
        if (plan.Mix is not { } mix)
        {
            return null;
        }

        var cards = new List<BatchCardText>();
        foreach (var batch in mix.Batches)
        {
            for (var i = 0; i < batch.Count; i++)
            {
                cards.Add(Card(plan, batch, (cards.Count + 1, mix.BatchCount)));
            }
        }

        return BatchCard.Write(sheet, cards);
    }

    /// <summary>A label for the batch and one for the bag of each order it was made for.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="lot">Its lot.</param>
    /// <param name="isCut">True for sheets to cut out.</param>
    public PaperFile Labels(SoilBatch batch, LotAccount lot, bool isCut)
    {
        var main = papers.Label(lot);
        var bags = batch.Orders.Select(order => new LabelText(
            LotNumber.Checked(lot.Lot.Id),
            papers.Code(lot.Lot.Id),
            view.Stock.GoodOf(lot).Name,
            [
                $"for {view.Stock.OrderName(order)}",
                .. BagLiters(order, batch.Recipe),
                $"mixed {StockWords.Day(batch.Day)}",
                "_____ L in this bag",
            ]
        ));
        return papers.Labels([main, .. bags], isCut);
    }

    private IEnumerable<string> BagLiters(int order, string recipe)
    {
        var liters = view.Needs.Where(n => n.Order.Number == order && n.Recipe == recipe).Sum(n => n.Liters);
        return liters > 0 ? [string.Create(CultureInfo.InvariantCulture, $"needs {liters:0.0} L")] : [];
    }

    private BatchCardText Card(BatchPlan plan, MixBatch batch, (int One, int All) which)
    {
        var jug = view.Terms.JugLiters > 0 ? view.Terms.JugLiters : 1;
        return new()
        {
            Recipe = plan.Recipe.Name,
            Which = LotLabels.Which(which.One, which.All),
            Code = plan.Recipe.Key.ToUpperInvariant(),
            MixedLiters = batch.MixedLiters,
            LooseLiters = batch.LooseLiters,
            TubLiters = view.Terms.TubLiters,
            JugLiters = jug,
            WaterLiters = batch.WaterLiters,
            Kilograms = batch.Kg,
            Parts =
            [
                .. plan
                    .Parts.Zip(batch.Shares)
                    .Select(p => new BatchCardPart(
                        p.First.Name,
                        p.First.Lots.Lots.IsEmpty
                            ? "none in stock"
                            : string.Join(", ", p.First.Lots.Lots.Select(l => l.Lot.Lot.Id)),
                        p.Second.JugLiters,
                        p.Second.JugLiters / jug,
                        p.Second.Kg
                    )),
            ],
            Orders =
            [
                .. plan.Needs.Select(n =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{view.Stock.OrderName(n.Order.Number)} {n.Item}, {n.Liters:0.0} L"
                    )
                ),
            ],
            Learned = view.Learned(plan.Recipe.Key).Yield is { } yield
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"Your batches yield {100 * yield.Mean:0} %, "
                        + $"the next one {100 * yield.Low:0}–{100 * yield.High:0} %."
                )
                : "",
            Cautions =
            [
                .. plan.Recipe.Parts.Select(p => view.Catalog.Find(p.Material)).OfType<CatalogEntry>()
                    is var all
                && all.Any(Goods.IsDusty)
                    ? [Goods.DustCaution]
                    : Array.Empty<string>(),
                .. all.Any(Goods.IsSphagnum) ? [Goods.MossCaution] : Array.Empty<string>(),
            ],
        };
    }
}
