using Litterfall.Domain.Cultures;
using Litterfall.Store;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Cultures;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>The culture shelf as it stands.</summary>
/// <param name="Stock">Stock, with the names of orders and customers.</param>
/// <param name="Book">Cultures, feeders, needs and what follows.</param>
/// <param name="Shelves">Shelves as they are kept.</param>
/// <param name="Fed">Animals in care as they are kept.</param>
/// <param name="Versions">Versions of the cultures by number.</param>
public sealed record CultureView(
    StockView Stock,
    CultureBook Book,
    IReadOnlyList<Kept<CultureShelf>> Shelves,
    IReadOnlyList<Kept<FedGroup>> Fed,
    IReadOnlyDictionary<string, int> Versions
)
{
    /// <summary>Name of a shelf.</summary>
    /// <param name="key">Its key.</param>
    public string ShelfName(string key) => Book.Shelves.FirstOrDefault(s => s.Key == key)?.Name ?? "no shelf";

    /// <summary>Free places of a shelf, lowest board first.</summary>
    /// <param name="shelf">The shelf.</param>
    public IEnumerable<(int Board, int Place)> Free(CultureShelf shelf)
    {
        var taken = Book
            .Standing.Where(c => c.Shelf == shelf.Key)
            .Select(c => (c.Board, c.Place))
            .ToHashSet();
        return from board in Enumerable.Range(1, shelf.Boards)
               from place in Enumerable.Range(1, shelf.PlacesPerBoard)
               where !taken.Contains((board, place))
               select (board, place);
    }

    /// <summary>Animals in a culture today: "about 340 (230–510)"; empty for flies.</summary>
    /// <param name="culture">The culture.</param>
    public string Animals(Culture culture)
    {
        if (Book.Kind(culture.Species) is null || !culture.IsStanding)
        {
            return "";
        }

        var today = Book.Curve(culture).On(Book.Today);
        return $"about {CultureWords.About(today.Animals)} ({CultureWords.About(today.Low)}–"
            + $"{CultureWords.About(today.High)})";
    }
}
