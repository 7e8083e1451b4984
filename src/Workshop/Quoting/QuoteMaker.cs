using System.Globalization;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Sums;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Pricing;
using Parts = Litterfall.Domain.Trade.CostParts;

namespace Litterfall.Workshop.Quoting;

/// <summary>Whom a quote is for, and with what prices.</summary>
/// <param name="Terms">Figures of the workshop.</param>
/// <param name="Customer">The customer: retail or wholesale.</param>
/// <param name="Prices">Prices of goods.</param>
public sealed record QuoteBasis(ShopTerms Terms, Customer Customer, PriceBook Prices)
{
    /// <summary>Margin on the net price, percent.</summary>
    public decimal Margin => Customer.IsWholesale ? Terms.WholesaleMargin : Terms.RetailMargin;
}

/// <summary>
/// Prices options: goods, work, overhead and the rest from the design and the shop's figures.
/// </summary>
public static class QuoteMaker
{
    /// <summary>Why no price can be had, in one sentence; null where one can.</summary>
    public static string? Refusal(QuoteBasis basis, OptionWish wish) =>
        wish.Items.IsEmpty ? "There is nothing in the order to price. Add a design or goods first."
        : wish.Price is < 0 ? "A price must be 0 or more."
        : wish.Price is null && !Case(basis, wish, []).LeavesRoom
            ? "Margin and payment fee together take 100 % of the price or more. Lower one of them."
        : null;

    /// <summary>Prices an option.</summary>
    /// <param name="basis">Whom it is for, and with what prices.</param>
    /// <param name="wish">What it holds; one that <see cref="Refusal"/> lets pass.</param>
    public static PricedOption Price(QuoteBasis basis, OptionWish wish)
    {
        var terms = basis.Terms;
        var items = wish.Items.Select(i => Counted(basis, wish, i)).ToList();
        var minutes = LaborPlan.Minutes(
            terms.Labor,
            Counts(wish, OrderItemKind.Kit),
            Counts(wish, OrderItemKind.Build),
            wish.Visits
        );
        var listed = items.Sum(i => i.Listed ?? 0);
        var all = Case(basis, wish, [.. items.SelectMany(i => i.Goods)], minutes);
        var sheet =
            listed > 0 && wish.Price is null ? Listed(basis, wish, items, minutes, all) : CostSheet.From(all);
        var option = new QuoteOption
        {
            Name = wish.Name,
            Changes = wish.Changes.Length > 0 ? wish.Changes : OptionText.Changes(wish),
            Gains = wish.Gains.Length > 0 ? wish.Gains : OptionText.Gains(wish),
            Lines = Lines(wish, items, sheet),
            Net = sheet.Charged.Net,
            Tax = sheet.Charged.Tax,
            Gross = sheet.Charged.Gross,
            Cost = Rounded(sheet),
            Minutes = minutes,
            Visits = wish.Visits,
            HasAnimals = wish.HasAnimals,
            Items = [.. wish.Items.Select(i => i.Item)],
            Goods = Together(items.SelectMany(i => i.Goods)),
        };
        return new(
            option,
            sheet,
            [.. option.Goods.Where(g => g.Cost is null && g.Amount > 0)],
            MarginMoves.Tell(sheet)
        );
    }

    /// <summary>An item with its goods; loose goods of the price list have their own price.</summary>
    private sealed record CountedItem(
        PricedItem Item,
        Seq<QuotedGood> Goods,
        double Minutes,
        decimal? Listed
    );

    private static CountedItem Counted(QuoteBasis basis, OptionWish wish, PricedItem item)
    {
        var line = item.Item;
        if (item.Numbers is not { } numbers)
        {
            var good = basis.Prices.Find(line.Good ?? "");
            return new(
                item,
                [basis.Prices.Price(Loose(line, good))],
                0,
                good?.SellsFor * (decimal)line.Amount
            );
        }

        var factor = line.Amount / numbers.Design.Design.Boxes;
        var hasAnimals = wish.HasAnimals && line.Kind == OrderItemKind.Build;
        var counts = LaborCounts.Read(numbers, line.Kind, line.Amount);
        var isKit = line.Kind == OrderItemKind.Kit;
        var minutes = LaborPlan.Minutes(
            basis.Terms.Labor,
            isKit ? counts : default,
            isKit ? default : counts,
            0
        );
        return new(
            item,
            [
                .. DesignGoods
                    .Read(numbers, line.Kind, hasAnimals)
                    .Select(n => basis.Prices.Price(n.Times(factor))),
            ],
            minutes.Sum(m => m.Minutes),
            null
        );
    }

    private static GoodNeed Loose(OrderItem line, Good? good)
    {
        double? In(StockUnit unit) => good?.Unit == unit ? line.Amount : null;
        return new(line.Good ?? line.Name, line.Name)
        {
            Liters = In(StockUnit.Liters),
            Kilograms = In(StockUnit.Kilograms),
            Meters = In(StockUnit.Meters),
            SquareMeters = In(StockUnit.SquareMeters),
            Pieces = good is null ? line.Amount : In(StockUnit.Pieces),
            IsLive = good?.IsLive == true,
        };
    }

    private static LaborCounts Counts(OptionWish wish, OrderItemKind kind) =>
        wish
            .Items.Where(i => i.Numbers is not null && i.Item.Kind == kind)
            .Select(i => LaborCounts.Read(i.Numbers!, kind, i.Item.Amount))
            .Aggregate(default(LaborCounts), (a, b) => a + b);

    private static CostCase Case(
        QuoteBasis basis,
        OptionWish wish,
        Seq<QuotedGood> goods,
        Seq<WorkedMinutes>? minutes = null
    )
    {
        var terms = basis.Terms;
        var dead = goods.Where(g => !g.IsLive).ToList();
        var materials = dead.Sum(g => g.Cost ?? 0);
        var wasted = dead.Where(HasWaste).Sum(g => g.Cost ?? 0);
        var live = goods.Where(g => g.IsLive).Sum(g => g.Cost ?? 0);
        var hours = (minutes ?? []).Sum(m => (decimal)m.Minutes) / 60;
        return new CostCase
        {
            Currency = terms.Currency,
            Materials = materials,
            WastePercent = materials > 0 ? terms.WastePercent * wasted / materials : 0,
            Labor = hours > 0 ? [new(hours, terms.Wage)] : [],
            OverheadPerHour = terms.OverheadPerHour,
            OverheadPercent = terms.OverheadPercent,
            Live = live,
            Packaging = wish.Packaging ?? terms.Packaging,
            Shipping = wish.Shipping ?? terms.Shipping,
            Loss =
                live > 0 && terms.LossPercent > 0
                    ? new(terms.LossPercent, terms.IsReplacedAgain, null)
                    : null,
            Fee = new(terms.FeePercent, terms.FeeFixed, terms.FeeOn == PaymentFeeOn.Gross),
            MarginPercent = wish.Price is null ? wish.Margin ?? basis.Margin : null,
            TaxPercent = terms.TaxPercent,
            PricesIncludeTax = terms.ShowsTaxIncluded,
            Rounding = SumRules.From(terms.Rounding),
            Charge = wish.Price is { } price ? SumRules.Gross(terms, price) : null,
        };
    }

    /// <summary>Liters and areas lose something besides; what is counted in pieces does not.</summary>
    private static bool HasWaste(QuotedGood good) =>
        good.Unit is StockUnit.Liters or StockUnit.SquareMeters or StockUnit.Kilograms;

    /// <summary>Goods of the price list keep their price; the margin counts for the rest.</summary>
    private static CostSheet Listed(
        QuoteBasis basis,
        OptionWish wish,
        List<CountedItem> items,
        Seq<WorkedMinutes> minutes,
        CostCase all
    )
    {
        var listed = items.Sum(i => i.Listed ?? 0);
        var rest = items.Where(i => i.Listed is null).SelectMany(i => i.Goods);
        var priced = Case(basis, wish, [.. rest], minutes);
        var isAll = items.All(i => i.Listed is not null) && minutes.Count == 0;
        var net = listed + (isAll ? priced.Packaging + priced.Shipping : CostSheet.From(priced).Net);
        return CostSheet.From(all with { Charge = priced.Tax.Charge(net).Gross, MarginPercent = null });
    }

    /// <summary>
    /// One line for each item, in shares of its cost; visits and shipping are told with them.
    /// </summary>
    private static Seq<QuoteLine> Lines(OptionWish wish, List<CountedItem> items, CostSheet sheet)
    {
        var minutes = items.Sum(i => i.Minutes);
        var labor = sheet.Cost.Labor;
        var weights = items
            .Select(i =>
                i.Listed
                ?? i.Goods.Sum(g => g.Cost ?? 0) + (minutes > 0 ? labor * (decimal)(i.Minutes / minutes) : 0)
            )
            .ToList();
        var parts = Shares.Split(sheet.Charged.Net, weights, RoundingRule.Cent);
        var lines = items.Select(
            (item, i) => new QuoteLine(OptionText.Line(item.Item, wish), item.Item.Item.Amount, parts[i])
        );
        return wish.Visits > 0
            ? [.. lines, new QuoteLine("Care visits after delivery, in the price", wish.Visits, 0)]
            : [.. lines];
    }

    /// <summary>Cost in cents: parts that add up to what is spent of the charged price.</summary>
    private static Parts Rounded(CostSheet sheet)
    {
        var parts = sheet.Breakdown().ToDictionary(p => p.Name, p => p.Amount, StringComparer.Ordinal);
        return new(
            parts["materials"],
            parts["labor"],
            parts["overhead"],
            parts["live"],
            parts["packaging"],
            parts["shipping"],
            parts["reserve"],
            parts["fee"]
        );
    }

    private static Seq<QuotedGood> Together(IEnumerable<QuotedGood> goods) =>
        [
            .. goods
                .GroupBy(g => (g.Good, g.Unit))
                .Select(g =>
                    g.First() with
                    {
                        Amount = g.Sum(x => x.Amount),
                        Cost = g.Any(x => x.Cost is null) ? null : g.Sum(x => x.Cost),
                    }
                ),
        ];
}
