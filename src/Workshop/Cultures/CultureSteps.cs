using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Stock;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Cultures;

/// <summary>A step of work at the culture shelf: cultures as they are from then on, with lots and
/// lines.</summary>
/// <param name="Cultures">Cultures that change or are new.</param>
/// <param name="Stock">Lots and lines.</param>
/// <param name="Note">What was done.</param>
public sealed record CultureStep(ImmutableArray<Culture> Cultures, StockStep Stock, string Note);

/// <summary>Where new cultures go.</summary>
/// <param name="Numbers">Their numbers.</param>
/// <param name="Share">Share of the mother that they take together, 0 to 1.</param>
/// <param name="Liters">Substrate of each, liters.</param>
/// <param name="Places">Board and place of each.</param>
/// <param name="Shelf">Key of the shelf.</param>
public sealed record SplitWish(
    ImmutableArray<string> Numbers,
    double Share,
    double Liters,
    ImmutableArray<(int Board, int Place)> Places,
    string Shelf
);

/// <summary>
/// Steps of work at the culture shelf, or why they cannot be taken. Each culture is one piece of its lot;
/// what is spooned out of it into another one is a line of the book, so that a recall finds it, and the
/// fresh substrate that fills it up again is a count.
/// </summary>
public static class CultureSteps
{
    private static readonly StockStep Nothing = new([], []);

    /// <summary>A new culture that no culture of the workshop is the mother of.</summary>
    /// <param name="culture">The culture.</param>
    /// <param name="supplier">Key of the supplier; null for none.</param>
    /// <param name="cost">What it cost, net.</param>
    /// <param name="when">Day, and who starts it.</param>
    public static CultureStep Start(
        Culture culture,
        string? supplier,
        decimal cost,
        (DateOnly Day, string Who) when
    ) =>
        new(
            [culture],
            new StockStep(
                [Lot(culture) with { Supplier = supplier, Cost = cost }],
                [
                    Line(
                        culture.Number,
                        supplier is null ? MovementKind.Made : MovementKind.Received,
                        1,
                        (culture.Since, when.Who),
                        "started"
                    ),
                ]
            ),
            $"{culture.Number} started"
        );

    /// <summary>Splits a culture into new ones of its line.</summary>
    /// <param name="mother">The mother.</param>
    /// <param name="walking">Animals that walk in it.</param>
    /// <param name="wish">Where the new ones go.</param>
    /// <param name="when">Day, and who splits.</param>
    public static (CultureStep? Step, string? Fault) Split(
        Culture mother,
        double walking,
        SplitWish wish,
        (DateOnly Day, string Who) when
    )
    {
        if (!mother.IsUsable)
        {
            return (null, Barred(mother));
        }

        if (wish.Numbers.IsEmpty || wish.Share is <= 0 or >= 1)
        {
            return (null, "Type how many new cups, and a share of the mother between 1 and 99 %.");
        }

        var each = wish.Share / wish.Numbers.Length;
        var daughters = Daughters(mother, Math.Round(walking * each), wish, when.Day);
        Movement[] lines =
        [
            .. daughters.Select(d =>
                Line(d.Number, MovementKind.Made, 1, when, $"split off {mother.Number}")
            ),
            .. daughters.Select(d =>
                Line(mother.Number, MovementKind.Used, each, when, "split") with
                {
                    Into = d.Number,
                }
            ),
            Line(mother.Number, MovementKind.Counted, wish.Share, when, "filled up with fresh substrate"),
        ];
        return (
            new(
                [
                    mother with
                    {
                        Splits =
                        [
                            .. mother.Splits,
                            .. daughters.Select(d => new CultureSplit(when.Day, d.Number, each, when.Who)),
                        ],
                    },
                    .. daughters,
                ],
                new StockStep([.. daughters.Select(Lot)], [.. lines]),
                string.Create(CultureInfo.InvariantCulture, $"{mother.Number} split into {daughters.Length}")
            ),
            null
        );
    }

    private static ImmutableArray<Culture> Daughters(
        Culture mother,
        double startedWith,
        SplitWish wish,
        DateOnly day
    ) =>
        [
            .. wish.Numbers.Select(
                (number, i) =>
                    new Culture
                    {
                        Number = number,
                        Species = mother.Species,
                        Line = mother.Line,
                        Mother = mother.Number,
                        Since = day,
                        Liters = wish.Liters,
                        StartedWith = startedWith,
                        Shelf = wish.Shelf,
                        Board = wish.Places[i].Board,
                        Place = wish.Places[i].Place,
                    }
            ),
        ];

    /// <summary>Takes animals out of a culture.</summary>
    /// <param name="culture">The culture.</param>
    /// <param name="animals">Animals that walk in it, and those taken.</param>
    /// <param name="into">Lot of the tank or kit they go to; any other place in words.</param>
    /// <param name="book">The book of stock.</param>
    /// <param name="when">Day, and who takes them.</param>
    public static (CultureStep? Step, string? Fault) Harvest(
        Culture culture,
        (double Walking, double Taken) animals,
        string into,
        StockBook book,
        (DateOnly Day, string Who) when
    )
    {
        if (!culture.IsUsable)
        {
            return (null, Barred(culture));
        }

        if (animals.Taken <= 0)
        {
            return (null, "Type how many animals you took out.");
        }

        var share = animals.Walking > 0 ? Math.Min(1, animals.Taken / animals.Walking) : 1;
        var after = culture with
        {
            Harvests = [.. culture.Harvests, new(when.Day, animals.Taken, into, when.Who)],
        };
        var lot = LotNumber.Read(into.Length > 0 ? into : "-", id => book.Find(id) is not null).Lot;
        var stock =
            lot is null || lot == culture.Number || book.Find(culture.Number) is null
                ? Nothing
                : new StockStep(
                    [],
                    [
                        Line(culture.Number, MovementKind.Used, share, when, "harvest") with
                        {
                            Into = lot,
                        },
                        Line(culture.Number, MovementKind.Counted, share, when, "it grows back"),
                    ]
                );
        return (new([after], stock, $"{culture.Number} harvested"), null);
    }

    /// <summary>Ends a culture.</summary>
    /// <param name="culture">The culture.</param>
    /// <param name="reason">Why, and in words.</param>
    /// <param name="book">The book of stock.</param>
    /// <param name="when">Day, and who ends it.</param>
    public static CultureStep End(
        Culture culture,
        (CultureEnd Reason, string Note) reason,
        StockBook book,
        (DateOnly Day, string Who) when
    ) =>
        new(
            [culture with { End = new(when.Day, reason.Reason, reason.Note, when.Who) }],
            book.Find(culture.Number) is { HasSome: true } lot
                ? new StockStep(
                    [],
                    [Line(culture.Number, MovementKind.Scrapped, lot.OnHand, when, Words(reason))]
                )
                : Nothing,
            $"{culture.Number} ended: {Words(reason)}"
        );

    /// <summary>
    /// Puts all cultures of a line and what was split off them on hold; lots that their animals went into,
    /// too.
    /// </summary>
    /// <param name="line">Its cultures.</param>
    /// <param name="reason">What was found.</param>
    /// <param name="book">The book of stock.</param>
    /// <param name="when">Day, and who found it.</param>
    public static CultureStep Hold(
        IEnumerable<Culture> line,
        string reason,
        StockBook book,
        (DateOnly Day, string Who) when
    )
    {
        ImmutableArray<Culture> here = [.. line.Where(c => c.IsStanding)];
        var lines = here.SelectMany(c => Holds.WithDescendants(book, c.Number, when.Day, when.Who, reason))
            .GroupBy(l => l.Lot, StringComparer.Ordinal)
            .Select(g => g.First());
        return new(
            [.. here.Where(c => c.Held.Length == 0).Select(c => c with { Held = reason })],
            new StockStep([], [.. lines]),
            $"held: {reason}"
        );
    }

    /// <summary>Throws away all cultures of a line that still stand.</summary>
    /// <param name="line">Its cultures.</param>
    /// <param name="reason">Why, and in words.</param>
    /// <param name="book">The book of stock.</param>
    /// <param name="when">Day, and who does it.</param>
    public static CultureStep Discard(
        IEnumerable<Culture> line,
        (CultureEnd Reason, string Note) reason,
        StockBook book,
        (DateOnly Day, string Who) when
    )
    {
        var ends = line.Where(c => c.IsStanding).Select(c => End(c, reason, book, when)).ToList();
        return new(
            [.. ends.SelectMany(e => e.Cultures)],
            new StockStep([], [.. ends.SelectMany(e => e.Stock.Lines)]),
            $"line thrown away: {Words(reason)}"
        );
    }

    /// <summary>Why a culture was ended, in a word or two.</summary>
    /// <param name="reason">The reason.</param>
    public static string Word(CultureEnd reason) =>
        reason switch
        {
            CultureEnd.Mites => "mites",
            CultureEnd.Mold => "mold",
            CultureEnd.Dried => "dried out",
            CultureEnd.Heat => "too warm",
            CultureEnd.Sour => "sour",
            CultureEnd.GoneOut => "gone out",
            _ => "old",
        };

    private static string Words((CultureEnd Reason, string Note) reason) =>
        reason.Note.Length > 0 ? $"{Word(reason.Reason)}, {reason.Note}" : Word(reason.Reason);

    private static string Barred(Culture culture) =>
        culture.End is null
            ? $"{culture.Number} is on hold: {culture.Held}. Nothing leaves it until it is released."
            : $"{culture.Number} has ended: {Word(culture.End.Reason)}.";

    private static Lot Lot(Culture culture) =>
        new()
        {
            Id = culture.Number,
            Good = culture.Species,
            Since = culture.Since,
            Amount = 1,
            Line = culture.Line,
        };

    private static Movement Line(
        string lot,
        MovementKind kind,
        double amount,
        (DateOnly Day, string Who) when,
        string note
    ) =>
        new()
        {
            Lot = lot,
            Kind = kind,
            Amount = amount,
            Day = when.Day,
            Who = when.Who,
            Note = note,
        };
}
