using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Stock;

/// <summary>Stock and the names it is told with.</summary>
/// <param name="Book">The book of stock.</param>
/// <param name="Goods">Goods by key.</param>
/// <param name="Suppliers">Suppliers by key.</param>
/// <param name="Orders">Orders, the last first.</param>
/// <param name="Customers">Customers by key.</param>
/// <param name="Terms">The workshop; null before it said anything of itself.</param>
public sealed record StockView(
    StockBook Book,
    IReadOnlyDictionary<string, Good> Goods,
    IReadOnlyDictionary<string, Supplier> Suppliers,
    IReadOnlyList<Order> Orders,
    IReadOnlyDictionary<string, Customer> Customers,
    ShopTerms? Terms
)
{
    /// <summary>Nothing yet.</summary>
    public static StockView Empty { get; } =
        new(
            StockBook.Empty,
            new Dictionary<string, Good>(),
            new Dictionary<string, Supplier>(),
            [],
            new Dictionary<string, Customer>(),
            null
        );

    /// <summary>Keys of the goods that somebody described.</summary>
    public IReadOnlySet<string> Described { get; init; } = new HashSet<string>();

    /// <summary>True for a good that somebody described, not one told by the library alone.</summary>
    /// <param name="good">Key of the good.</param>
    public bool IsKept(string good) => Described.Contains(good);

    /// <summary>ISO 4217 code of the workshop's money.</summary>
    public string Currency => Terms?.Currency ?? "EUR";

    /// <summary>A good by its key; one made up from the key where nobody described it.</summary>
    /// <param name="key">Key of the good.</param>
    public Good GoodOf(string key) =>
        Goods.TryGetValue(key, out var good)
            ? good
            : new()
            {
                Key = key,
                Name = key.Replace('-', ' '),
                Kind = GoodKind.Tank,
                Unit = StockUnit.Pieces,
            };

    /// <summary>The good of a lot.</summary>
    /// <param name="lot">The lot.</param>
    public Good GoodOf(LotAccount lot) => GoodOf(lot.Lot.Good);

    /// <summary>An order by the number that lines name it with; null where it is none.</summary>
    /// <param name="named">As the line names it.</param>
    public Order? OrderOf(string named) =>
        int.TryParse(named, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? Orders.FirstOrDefault(o => o.Number == number)
            : null;

    /// <summary>Number of an order as people read it.</summary>
    /// <param name="number">Its running number.</param>
    public string OrderName(int number) =>
        string.Create(CultureInfo.InvariantCulture, $"{Terms?.OrderPrefix}{number}");

    /// <summary>Name of the customer of an order.</summary>
    /// <param name="order">The order.</param>
    public string CustomerOf(Order order) =>
        Customers.TryGetValue(order.Customer, out var customer) ? customer.Name : order.Customer;

    /// <summary>Where a lot stands.</summary>
    /// <param name="lot">The lot.</param>
    public string PlaceOf(LotAccount lot) => lot.Place.Length > 0 ? lot.Place : GoodOf(lot).Place;

    /// <summary>All goods that are described or have lots, by name.</summary>
    public IEnumerable<Good> AllGoods =>
        Goods
            .Values.Concat(Book.Goods.Where(g => !Goods.ContainsKey(g)).Select(GoodOf))
            .OrderBy(g => g.Name, StringComparer.OrdinalIgnoreCase);
}
