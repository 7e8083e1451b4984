using System.Globalization;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Shop.Cultures;
using Litterfall.Domain.Cultures;
using Litterfall.Quantities.Measures;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Cultures;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>The round and the labels of cultures.</summary>
/// <param name="view">Cultures as they stand.</param>
/// <param name="sheet">What the papers share.</param>
/// <param name="papers">Papers of stock.</param>
internal sealed class CulturePapers(CultureView view, ShopSheet sheet, StockPapers papers)
{
    private const int Days = 7;

    /// <summary>Start list of a week and the round of today.</summary>
    public PaperFile Round()
    {
        var (book, today) = (view.Book, view.Book.Today);
        var tasks = CultureTasks
            .Find(book, today, today.AddDays(Days - 1), view.Stock.OrderName)
            .Where(t => !t.Key.StartsWith("culture-feed", StringComparison.Ordinal))
            .Where(t => !t.Key.StartsWith("culture-look", StringComparison.Ordinal));
        return CultureRound.Write(
            sheet,
            new(
                "Culture round",
                [.. tasks.Select(t => new RoundStart(t.Day, t.Title, t.Detail))],
                [
                    .. from shelf in book.Shelves
                    from culture in book.Standing.Where(c => c.Shelf == shelf.Key)
                    orderby shelf.Name, culture.Held.Length > 0, culture.Board, culture.Place
                    select Line(shelf, culture),
                ],
                [
                    .. book.Shorts.Select(s =>
                        $"{view.Stock.OrderName(s.Cover.Need.Order.Number)} is short of "
                        + $"{NumberText.Count(s.Cover.Missing, "cup", "cups")} of "
                        + $"{book.NameOf(s.Cover.Need.Species)} by {NumberText.Day(s.Cover.Need.Day)}."
                    ),
                    .. book
                        .Flies.Where(f => f.Famine is not null)
                        .Select(f =>
                            CultureWords.Told(
                                f.Famine!,
                                f.Kind.Entry.Called?.Text ?? f.Kind.Entry.Name,
                                today
                            )
                        ),
                ],
                [.. CultureWords.Cautions]
            )
        );
    }

    /// <summary>Labels of standing cultures, or of one.</summary>
    /// <param name="only">Number of one; null for all.</param>
    /// <param name="isCut">True for sheets to cut out.</param>
    public PaperFile? Labels(string? only, bool isCut)
    {
        var some = view.Book.Standing.Where(c => only is null || c.Number == only).Select(Label).ToList();
        return some.Count == 0 ? null : papers.Labels(some, isCut);
    }

    private LabelText Label(Culture culture) =>
        new(
            LotNumber.Checked(culture.Number),
            papers.Code(culture.Number),
            view.Book.NameOf(culture.Species),
            [
                $"line {culture.Line}, since {StockWords.Day(culture.Since)}",
                culture.Mother is { } mother ? $"split from {mother}" : "no mother of ours",
                "live animals, 18–24 °C",
            ]
        );

    private RoundLine Line(CultureShelf shelf, Culture culture)
    {
        var book = view.Book;
        var age = book.Today.DayNumber - culture.Since.DayNumber;
        var due =
            book.Kind(culture.Species) is null
            || book.Today < culture.LastFed.AddDays((int)CulturePractice.FeedEvery.Value)
                ? ""
                : "feed";
        var flags = string.Join(", ", CultureWords.Flags(culture, book));
        return new(
            shelf.Name,
            string.Create(CultureInfo.InvariantCulture, $"board {culture.Board}, {culture.Place}"),
            culture.Number,
            $"{book.NameOf(culture.Species)}, line {culture.Line}, {NumberText.Count(age, "day", "days")}",
            flags.Length > 0 ? flags : due
        );
    }
}
