using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Pricing;

namespace Litterfall.Workshop.Quoting;

/// <summary>A good as it was quoted and as it was used.</summary>
/// <param name="Name">As people call it.</param>
/// <param name="Unit">What it is counted in.</param>
/// <param name="Quoted">Amount that was quoted; 0 for what nobody quoted.</param>
/// <param name="QuotedCost">Its cost; null where no price was known.</param>
/// <param name="Used">Amount that went in.</param>
/// <param name="UsedCost">What its lots cost, first in first out as they were taken.</param>
public sealed record GoodActual(
    string Name,
    StockUnit Unit,
    double Quoted,
    decimal? QuotedCost,
    double Used,
    decimal UsedCost
);

/// <summary>Minutes of a stage as they were quoted and as they were worked.</summary>
/// <param name="Stage">Name of the stage.</param>
/// <param name="Quoted">Minutes that were quoted.</param>
/// <param name="Worked">Minutes that were worked.</param>
public sealed record StageActual(string Stage, double Quoted, double Worked);

/// <summary>What an order really cost against what was quoted.</summary>
/// <param name="Goods">Goods, in the order of the quote.</param>
/// <param name="Stages">Stages of work.</param>
/// <param name="Sheet">The charged price over what it really cost.</param>
/// <param name="HasGoods">False while no good is booked into its tanks: quoted cost counts then.</param>
/// <param name="HasHours">False while no hours are written: quoted hours count then.</param>
public sealed record ActualCost(
    Seq<GoodActual> Goods,
    Seq<StageActual> Stages,
    CostSheet Sheet,
    bool HasGoods,
    bool HasHours
)
{
    /// <summary>Compares.</summary>
    /// <param name="order">The order, accepted.</param>
    /// <param name="quote">The accepted quote.</param>
    /// <param name="used">What went into it, by key of the good.</param>
    public static ActualCost Compare(Order order, Quote quote, IReadOnlyDictionary<string, UsedGood> used)
    {
        var option = quote.Options[order.AcceptedOption];
        var terms = quote.Shop;
        var live = option.Goods.Where(g => g.IsLive).Select(g => g.Good).ToHashSet(StringComparer.Ordinal);
        var worked = order.Worked.Sum(w => w.Minutes);
        var minutes = worked > 0 ? worked : option.Minutes.Sum(m => m.Minutes);
        var hours = (decimal)minutes / 60;
        var sheet = CostSheet.From(
            new CostCase
            {
                Currency = terms.Currency,
                Materials =
                    used.Count > 0
                        ? used.Where(u => !live.Contains(u.Key)).Sum(u => u.Value.Cost)
                        : option.Cost.Materials,
                Live =
                    used.Count > 0
                        ? used.Where(u => live.Contains(u.Key)).Sum(u => u.Value.Cost)
                        : option.Cost.Live,
                Labor = hours > 0 ? [new(hours, terms.Wage)] : [],
                OverheadPerHour = terms.OverheadPerHour,
                OverheadPercent = terms.OverheadPercent,
                Packaging = option.Cost.Packaging,
                Shipping = option.Cost.Shipping,
                Fee = new(terms.FeePercent, terms.FeeFixed, terms.FeeOn == PaymentFeeOn.Gross),
                TaxPercent = terms.TaxPercent,
                PricesIncludeTax = terms.ShowsTaxIncluded,
                Rounding = SumRules.From(terms.Rounding),
                Charge = option.Gross,
            }
        );
        return new(GoodsOf(option, used), StagesOf(order, option, terms), sheet, used.Count > 0, worked > 0);
    }

    private static Seq<GoodActual> GoodsOf(QuoteOption option, IReadOnlyDictionary<string, UsedGood> used)
    {
        var quoted = option.Goods.Select(g => g.Good).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. option.Goods.Select(g =>
            {
                var taken = used.GetValueOrDefault(g.Good);
                return new GoodActual(g.Name, g.Unit, g.Amount, g.Cost, taken.Amount, taken.Cost);
            }),
            .. used.Where(u => !quoted.Contains(u.Key))
                .OrderBy(u => u.Key, StringComparer.Ordinal)
                .Select(u => new GoodActual(
                    u.Key.Replace('-', ' '),
                    StockUnit.Pieces,
                    0,
                    0,
                    u.Value.Amount,
                    u.Value.Cost
                )),
        ];
    }

    private static Seq<StageActual> StagesOf(Order order, QuoteOption option, ShopTerms terms)
    {
        var names = terms.Labor.ToDictionary(s => s.Key, s => s.Name, StringComparer.Ordinal);
        var quoted = option.Minutes.ToDictionary(m => m.Stage, m => m.Minutes, StringComparer.Ordinal);
        var worked = order.Worked.ToLookup(w => w.Stage, w => w.Minutes, StringComparer.Ordinal);
        return
        [
            .. quoted
                .Keys.Union(worked.Select(w => w.Key), StringComparer.Ordinal)
                .Select(key => new StageActual(
                    names.GetValueOrDefault(key) ?? key.Replace('-', ' '),
                    quoted.GetValueOrDefault(key),
                    worked[key].Sum()
                )),
        ];
    }
}
