using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Stock;

/// <summary>Holds of a lot and of all that came out of it.</summary>
public static class Holds
{
    /// <summary>
    /// Lines that hold a lot and its descendants: what was split off a culture, mixed, built into kits and
    /// tanks. Lots on hold already and lots of which nothing is left get none.
    /// </summary>
    /// <param name="book">The book of stock.</param>
    /// <param name="lot">Number of the lot.</param>
    /// <param name="day">Day.</param>
    /// <param name="who">Who holds it.</param>
    /// <param name="reason">What was found.</param>
    public static IReadOnlyList<Movement> WithDescendants(
        StockBook book,
        string lot,
        DateOnly day,
        string who,
        string reason
    )
    {
        var lots = Genealogy.Descendants(book, lot).Prepend(lot).Select(book.Find).OfType<LotAccount>();
        return
        [
            .. lots.Where(a => !a.IsHeld && (a.HasSome || a.Lot.Id == lot))
                .Select(a =>
                    Line(a, MovementKind.Held, (day, who), a.Lot.Id == lot ? reason : $"from {lot}: {reason}")
                ),
        ];
    }

    /// <summary>The line that holds or releases one lot.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="kind">Held or Released.</param>
    /// <param name="when">Day, and who writes it.</param>
    /// <param name="reason">Why.</param>
    public static Movement Line(
        LotAccount lot,
        MovementKind kind,
        (DateOnly Day, string Who) when,
        string reason
    ) =>
        new()
        {
            Lot = lot.Lot.Id,
            Kind = kind,
            Amount = 0,
            Day = when.Day < lot.Lot.Since ? lot.Lot.Since : when.Day,
            Who = when.Who,
            Note = reason,
        };
}
