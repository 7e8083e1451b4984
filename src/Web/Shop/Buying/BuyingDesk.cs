using System.Globalization;
using Litterfall.Documents.Shop;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Shop.Orders;
using Litterfall.Web.Shop.Stock;
using Litterfall.Web.Shop.Terms;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Supplying;

namespace Litterfall.Web.Shop.Buying;

/// <summary>What the page of purchases shows.</summary>
public sealed class BuyingDesk
{
    private readonly ShopTerms terms;
    private readonly Dictionary<string, string> names;

    private BuyingDesk(ShopTerms terms, ShopSupply supply, DateOnly today)
    {
        (this.terms, Supply, Today) = (terms, supply, today);
        Offers = supply.Offers.ToDictionary(o => o.Key, StringComparer.Ordinal);
        Goods = supply.Goods.ToDictionary(g => g.Key, StringComparer.Ordinal);
        names = supply.Suppliers.ToDictionary(s => s.Key, s => s.Name, StringComparer.Ordinal);
    }

    /// <summary>Goods, offers, suppliers and purchases.</summary>
    public ShopSupply Supply { get; }

    /// <summary>Today.</summary>
    public DateOnly Today { get; }

    /// <summary>Offers by key.</summary>
    public IReadOnlyDictionary<string, Offer> Offers { get; }

    /// <summary>Goods by key.</summary>
    public IReadOnlyDictionary<string, Good> Goods { get; }

    /// <summary>Suppliers.</summary>
    public IReadOnlyCollection<Supplier> Suppliers => Supply.Suppliers;

    /// <summary>Goods of which something must be bought.</summary>
    public IReadOnlyList<NetNeed> ToBuy { get; private init; } = [];

    /// <summary>Purchases that are not finished first, then the last finished ones.</summary>
    public IReadOnlyList<Kept<Purchase>> Purchases { get; private init; } = [];

    /// <summary>Keys of goods that are not bought now.</summary>
    public HashSet<string> NotNow { get; } = new(StringComparer.Ordinal);

    /// <summary>Keys of suppliers that something must be bought from.</summary>
    public HashSet<string> MustUse { get; } = new(StringComparer.Ordinal);

    /// <summary>Most that is spent.</summary>
    public TypedText Budget { get; } = TypedText.ForMoney("Spend at most", null, "Empty for no limit.");

    /// <summary>Reads everything.</summary>
    /// <param name="store">The bench.</param>
    /// <param name="shelf">The book of stock.</param>
    public static async Task<BuyingDesk> OpenAsync(BenchStore store, StockShelf shelf)
    {
        const int finished = 6;
        var (terms, _) = await OrderBook.TermsAsync(store);
        var supply = await OrderBook.SupplyAsync(store);
        var orders = await OrderBook.AllAsync<Order>(store);
        var today = shelf.Today;
        var stock = StockPicture.Read(await shelf.BookAsync(), today);
        var purchases = (await store.RecordsAsync<Purchase>())
            .OrderByDescending(p => p.Value.Number)
            .ToList();
        var planned = PlannedNeed.Read(await OrderBook.AllAsync<CuttingJob>(store));
        return new BuyingDesk(terms, supply, today)
        {
            ToBuy = [.. NetNeed.Read(orders, stock, supply, planned).Where(n => n.ToBuy > 0)],
            Purchases = [.. purchases.Where(IsOpen), .. purchases.Where(p => !IsOpen(p)).Take(finished)],
        };
    }

    /// <summary>How the purchase is wanted; null where a field has a fault.</summary>
    public BuyingWish? Wish()
    {
        var most = Budget.MoneyOrNone();
        return Budget.Fault is not null
            ? null
            : new BuyingWish(terms.Currency, Today)
            {
                Budget = most,
                MustUse = [.. MustUse.Order(StringComparer.Ordinal)],
                NotNow = [.. NotNow.Order(StringComparer.Ordinal)],
            };
    }

    /// <summary>Leaves a good out of the purchase, or takes it in again.</summary>
    public void Leave(NetNeed need, bool isLeft)
    {
        if (isLeft)
        {
            NotNow.Add(need.Good.Key);
        }
        else
        {
            NotNow.Remove(need.Good.Key);
        }
    }

    /// <summary>Something must be bought from a supplier, or not.</summary>
    public void Require(Supplier supplier, bool isRequired)
    {
        if (isRequired)
        {
            MustUse.Add(supplier.Key);
        }
        else
        {
            MustUse.Remove(supplier.Key);
        }
    }

    /// <summary>Name of a supplier.</summary>
    public string Supplier(string key) => names.GetValueOrDefault(key, key);

    /// <summary>Name of a good in an offer.</summary>
    public string Good(string offer) =>
        Offers.GetValueOrDefault(offer) is { } found
            ? Goods.GetValueOrDefault(found.Good)?.Name ?? found.Good.Replace('-', ' ')
            : offer.Replace('-', ' ');

    /// <summary>A purchase as its list says it; null where there is none.</summary>
    /// <param name="store">The bench.</param>
    /// <param name="key">Key of the purchase.</param>
    public async Task<PurchaseText?> TextAsync(BenchStore store, string key)
    {
        if (await store.RecordAsync<Purchase>(key) is not { Value: { } purchase })
        {
            return null;
        }

        var supplier = Suppliers.FirstOrDefault(s => s.Key == purchase.Supplier);
        return new PurchaseText(
            key,
            Supplier(purchase.Supplier),
            supplier?.Notes ?? "",
            [
                .. purchase.Lines.Select(l => new BuyLine(
                    Good(l.Offer),
                    Offers.GetValueOrDefault(l.Offer)?.Pack ?? "",
                    l.Packs.ToString(CultureInfo.InvariantCulture),
                    Money(l.Price),
                    Money(l.Packs * l.Price)
                )),
            ],
            purchase.Delivery == 0 ? "free" : Money(purchase.Delivery),
            Money(purchase.Lines.Sum(l => l.Packs * l.Price) + purchase.Delivery)
        );
    }

    /// <summary>Number of an order as people say it.</summary>
    public string Order(int number) => $"{terms.OrderPrefix}{number.ToString(CultureInfo.InvariantCulture)}";

    /// <summary>A sum with its currency.</summary>
    public string Money(decimal sum) =>
        string.Create(CultureInfo.InvariantCulture, $"{sum:#,0.00} {terms.Currency}");

    /// <summary>An amount in its unit; a dash for none.</summary>
    public static string Amount(double amount, StockUnit unit) =>
        amount == 0
            ? "–"
            : string.Create(CultureInfo.InvariantCulture, $"{Shown(amount, unit):0.##} {Sign(unit, amount)}");

    /// <summary>A day.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>How far a purchase is.</summary>
    public static string State(PurchaseState state) =>
        state switch
        {
            PurchaseState.Planned => "on the list",
            PurchaseState.Ordered => "ordered",
            PurchaseState.Received => "came",
            _ => "called off",
        };

    private static bool IsOpen(Kept<Purchase> kept) =>
        kept.Value.State is PurchaseState.Planned or PurchaseState.Ordered;

    private static double Shown(double amount, StockUnit unit) =>
        unit == StockUnit.Pieces ? Math.Ceiling(amount) : Math.Round(amount, 2);

    private static string Sign(StockUnit unit, double amount) =>
        unit switch
        {
            StockUnit.Liters => "L",
            StockUnit.Kilograms => "kg",
            StockUnit.Meters => "m",
            StockUnit.SquareMeters => "m²",
            _ => amount <= 1 ? "piece" : "pieces",
        };
}
