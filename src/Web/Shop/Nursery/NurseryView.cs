using Litterfall.Domain.Nursery;
using Litterfall.Store;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Nursery;

namespace Litterfall.Web.Shop.Nursery;

/// <summary>Plants as they stand.</summary>
/// <param name="Stock">Stock, with the names of orders and suppliers.</param>
/// <param name="Book">Trays, clocks, losses, needs.</param>
/// <param name="Mothers">Mother plants as they are kept.</param>
/// <param name="Versions">Versions of the trays by number.</param>
public sealed record NurseryView(
    StockView Stock,
    NurseryBook Book,
    IReadOnlyList<Kept<MotherPlant>> Mothers,
    IReadOnlyDictionary<string, int> Versions
)
{
    /// <summary>Name of a supplier.</summary>
    /// <param name="key">Its key.</param>
    public string SupplierName(string key) =>
        Stock.Suppliers.TryGetValue(key, out var supplier) ? supplier.Name : key;

    /// <summary>First free place of a bench; the one behind the last where all are taken.</summary>
    /// <param name="bench">Key of the bench.</param>
    public int FreePlace(string bench)
    {
        var taken = Book.Standing.Where(t => t.Bench == bench).Select(t => t.Place).ToHashSet();
        return Enumerable.Range(1, taken.Count + 1).First(p => !taken.Contains(p));
    }
}
