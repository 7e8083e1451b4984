using System.Collections.Immutable;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Buying;
using Litterfall.Workshop.Orders;

namespace Litterfall.Workshop.Supplying;

/// <summary>How a purchase is wanted.</summary>
/// <param name="Currency">Currency of the workshop; offers in another are left out and named.</param>
/// <param name="Today">Today.</param>
public sealed record BuyingWish(string Currency, DateOnly Today)
{
    /// <summary>Most that is spent, delivery in; null for no limit.</summary>
    public decimal? Budget { get; init; }

    /// <summary>Keys of suppliers that something must be bought from.</summary>
    public Seq<string> MustUse { get; init; } = [];

    /// <summary>Keys of goods that are not bought now.</summary>
    public Seq<string> NotNow { get; init; } = [];
}

/// <summary>What to buy where.</summary>
/// <param name="Plan">The plan; null where nothing can be bought.</param>
/// <param name="Purchases">One for each supplier, without numbers.</param>
/// <param name="Reasons">Why it came out so, a sentence each.</param>
/// <param name="Without">Goods that nobody offers.</param>
/// <param name="Trouble">Why nothing can be bought; empty where something can.</param>
public sealed record BuyingPlan(
    PurchasePlan? Plan,
    Seq<Purchase> Purchases,
    Seq<string> Reasons,
    Seq<NetNeed> Without,
    string Trouble
)
{
    private const decimal CentsPerUnit = 100;

    /// <summary>Goods and deliveries, net.</summary>
    public decimal Total => (Plan?.TotalCents ?? 0) / CentsPerUnit;

    /// <summary>Finds the cheapest purchase of all needs.</summary>
    /// <param name="needs">Needs.</param>
    /// <param name="supply">What is bought from whom.</param>
    /// <param name="wish">How it is wanted.</param>
    /// <param name="cancel">Ends the search; the best purchase found by then is told.</param>
    public static BuyingPlan Find(
        IEnumerable<NetNeed> needs,
        ShopSupply supply,
        BuyingWish wish,
        CancellationToken cancel = default
    )
    {
        var suppliers = supply.Suppliers.Where(s => s.Currency == wish.Currency).ToList();
        var wanted = needs.Where(n => n.ToBuy > 0 && !wish.NotNow.Contains(n.Good.Key)).ToList();
        var named = wanted.SelectMany(n => n.Offers).ToHashSet(StringComparer.Ordinal);
        var bound = wanted.Where(n => n.Offers.Count > 0).Select(n => n.Good.Key).ToHashSet();
        var offers = supply
            .Offers.Where(o => o.Amount > 0 && suppliers.Exists(s => s.Key == o.Supplier))
            .Where(o => !bound.Contains(o.Good) || named.Contains(o.Key))
            .ToLookup(o => o.Good, StringComparer.Ordinal);
        var without = wanted.FindAll(n => !offers[n.Good.Key].Any());
        var bought = wanted.FindAll(n => offers[n.Good.Key].Any());
        if (bought.Count == 0)
        {
            return new(null, [], [], [.. without], "");
        }

        var chosen = bought.SelectMany(n => offers[n.Good.Key]).ToImmutableArray();
        var asked = Case(bought, chosen, suppliers, wish);
        var (plan, refusal) = PurchasePlanner.Find(asked, cancel);
        return plan is null
            ? new(null, [], [], [.. without], $"{refusal!.Message}; expected {refusal.Expected}.")
            : new(
                plan,
                Split(plan, asked, chosen, (bought, suppliers, wish)),
                PurchaseWords.Explain(asked, plan),
                [.. without],
                ""
            );
    }

    private static PurchaseCase Case(
        List<NetNeed> needs,
        ImmutableArray<Offer> offers,
        List<Supplier> suppliers,
        BuyingWish wish
    )
    {
        var used = offers.Select(o => o.Supplier).ToHashSet(StringComparer.Ordinal);
        return new PurchaseCase
        {
            Suppliers =
            [
                .. suppliers
                    .Where(s => used.Contains(s.Key))
                    .Select(s => new PurchaseSupplier(
                        s.Key,
                        Cents(s.Delivery),
                        s.FreeFrom is { } free ? Cents(free) : null,
                        Cents(s.MinimumOrder),
                        wish.MustUse.Contains(s.Key)
                    )
                    {
                        Title = s.Name,
                    }),
            ],
            Products =
            [
                .. needs.Select(n => new PurchaseProduct(n.Good.Key, n.ToBuy, 0)
                {
                    Title = n.Good.Name,
                    Unit = Sign(n.Good.Unit),
                    ShelfLifeDays = n.Good.KeepsDays,
                }),
            ],
            Offers =
            [
                .. offers.Select(o => new PurchaseOffer(
                    o.Supplier,
                    o.Good,
                    o.Amount,
                    [.. o.Tiers.Select(t => new PriceBreak(t.FromPacks, Cents(t.Price)))]
                )),
            ],
            BudgetCents = wish.Budget is { } most ? Cents(most) : null,
        };
    }

    private static Seq<Purchase> Split(
        PurchasePlan plan,
        PurchaseCase asked,
        ImmutableArray<Offer> offers,
        (List<NetNeed> Needs, List<Supplier> Suppliers, BuyingWish Wish) of
    )
    {
        Offer Kept(PurchaseOffer offer) =>
            offers[Enumerable.Range(0, offers.Length).First(i => ReferenceEquals(asked.Offers[i], offer))];
        return
        [
            .. plan.Deliveries.Select(d =>
            {
                var lines = plan
                    .Lines.Where(l => l.Offer.Supplier == d.Supplier.Name && l.Packs > 0)
                    .Select(l => (Offer: Kept(l.Offer), l.Packs, Price: l.Cents / CentsPerUnit / l.Packs))
                    .ToList();
                var lead = of.Suppliers.First(s => s.Key == d.Supplier.Name).LeadDays;
                return new Purchase
                {
                    Number = 0,
                    Supplier = d.Supplier.Name,
                    Day = of.Wish.Today,
                    Delivery = d.Cents / CentsPerUnit,
                    Expected = WorkDays.After(of.Wish.Today, lead),
                    Lines =
                    [
                        .. lines.Select(l => new Domain.Trade.PurchaseLine(l.Offer.Key, l.Packs, l.Price, 0)),
                    ],
                    Orders =
                    [
                        .. of
                            .Needs.Where(n => lines.Exists(l => l.Offer.Good == n.Good.Key))
                            .SelectMany(n => n.Orders)
                            .Distinct()
                            .Order(),
                    ],
                };
            }),
        ];
    }

    private static string Sign(StockUnit unit) =>
        unit switch
        {
            StockUnit.Liters => "L",
            StockUnit.Kilograms => "kg",
            StockUnit.Meters => "m",
            StockUnit.SquareMeters => "m²",
            _ => "pieces",
        };

    private static long Cents(decimal sum) =>
        (long)Math.Round(sum * CentsPerUnit, 0, MidpointRounding.AwayFromZero);
}
