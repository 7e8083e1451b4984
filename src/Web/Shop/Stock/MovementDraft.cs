using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Web.Library;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Stock;

/// <summary>What is typed about goods that come, go or are moved; becomes lines of the book.</summary>
public sealed class MovementDraft
{
    /// <summary>What happened.</summary>
    public StockWish Wish { get; set; } = StockWish.Use;

    /// <summary>Key of the good.</summary>
    public string Good { get; set; } = "";

    /// <summary>Number of the lot; empty for the proposed ones.</summary>
    public string Lot { get; set; } = "";

    /// <summary>Amount as typed.</summary>
    public string Amount { get; set; } = "";

    /// <summary>Lot it goes into as typed; empty where nobody says.</summary>
    public string Into { get; set; } = "";

    /// <summary>Number of the order it is sold to; empty for none.</summary>
    public string Order { get; set; } = "";

    /// <summary>Place it goes to.</summary>
    public string Place { get; set; } = "";

    /// <summary>Day.</summary>
    public DateOnly Day { get; set; }

    /// <summary>In words.</summary>
    public string Note { get; set; } = "";

    /// <summary>Key of the supplier; empty for what was made or bred here.</summary>
    public string Supplier { get; set; } = "";

    /// <summary>Number that the supplier gave the lot.</summary>
    public string SupplierLot { get; set; } = "";

    /// <summary>What all of it cost, net, as typed; empty for nothing.</summary>
    public string Price { get; set; } = "";

    /// <summary>Last day of use; null for what keeps.</summary>
    public DateOnly? Expires { get; set; }

    /// <summary>First day out of quarantine; null for none.</summary>
    public DateOnly? QuarantinedUntil { get; set; }

    /// <summary>Breeding line or mother culture.</summary>
    public string Line { get; set; } = "";

    /// <summary>True where the book is taken as wrong and stock may go below nothing.</summary>
    public bool MayGoBelow { get; set; }

    /// <summary>Wishes that go with a kind of good.</summary>
    /// <param name="good">The good; null before one is chosen.</param>
    public static IEnumerable<StockWish> Wishes(Good? good) =>
        Enum.GetValues<StockWish>()
            .Where(w =>
                w switch
                {
                    StockWish.Died or StockWish.Split => good?.IsLive != false,
                    _ => true,
                }
            );

    /// <summary>
    /// Lots the amount would be taken from; null where it does not read or a lot is chosen.
    /// </summary>
    /// <param name="view">Stock.</param>
    /// <param name="preferences">Units of the reader.</param>
    public Picking? Proposal(StockView view, UnitPreferences preferences) =>
        Good.Length > 0
        && Lot.Length == 0
        && Wish is not StockWish.Receive
        && StockWords.Read(Amount, view.GoodOf(Good).Unit, preferences) is > 0 and var amount
            ? Picking.Propose(view.Book, Good, amount, Day, null, OrderNumber)
            : null;

    /// <summary>What is written, or one sentence on what is missing.</summary>
    /// <param name="view">Stock.</param>
    /// <param name="who">Who writes it.</param>
    /// <param name="preferences">Units of the reader.</param>
    public (StockStep? Step, string? Fault) Build(StockView view, string who, UnitPreferences preferences)
    {
        if (Good.Length == 0)
        {
            return (null, "Choose the good.");
        }

        var good = view.GoodOf(Good);
        if (StockWords.Read(Amount, good.Unit, preferences) is not (> 0 and var amount))
        {
            return (
                null,
                $"Give the amount in {StockWords.UnitWord(good.Unit, preferences)} as a number above 0."
            );
        }

        if (good.Unit == StockUnit.Pieces && good.IsLive && amount != Math.Floor(amount))
        {
            return (null, $"{good.Name} is counted in whole numbers.");
        }

        return Wish == StockWish.Receive ? Received(view, good, amount, who) : Gone(view, amount, who);
    }

    private (StockStep? Step, string? Fault) Received(StockView view, Good good, double amount, string who)
    {
        var price = Price.Trim().Length == 0 ? 0 : StockWords.Price(Price);
        if (price is not { } paid)
        {
            return (null, $"The price '{Price.Trim()}' does not read; expected a number such as 12.50.");
        }

        if (Expires < Day)
        {
            return (null, "Its last day is before the day it came.");
        }

        var id = LotNumber.Next(good, view.Book.Lots.Select(l => l.Lot.Id));
        var lot = new Lot
        {
            Id = id,
            Good = good.Key,
            Since = Day,
            Supplier = Supplier.Length > 0 ? Supplier : null,
            SupplierLot = Empty(SupplierLot),
            Cost = paid,
            Amount = amount,
            Expires = Expires,
            QuarantinedUntil = QuarantinedUntil,
            Line = Empty(Line),
            Note = Note.Trim(),
        };
        var kind = Supplier.Length > 0 ? MovementKind.Received : MovementKind.Made;
        return (new([lot], [LineOf(id, kind, amount, who) with { Place = Empty(Place) }]), null);
    }

    private (StockStep? Step, string? Fault) Gone(StockView view, double amount, string who)
    {
        if (Wish == StockWish.Move && Place.Trim().Length == 0)
        {
            return (null, "Say where it goes.");
        }

        string? into = null;
        if (Wish == StockWish.Use && Into.Trim().Length > 0)
        {
            var (found, fault) = LotNumber.Read(Into, id => view.Book.Find(id) is not null);
            if (found is null)
            {
                return (null, fault);
            }

            into = found;
        }

        IReadOnlyList<(LotAccount Lot, double Amount)> parts;
        if (Lot.Length > 0)
        {
            if (view.Book.Find(Lot) is not { } lot)
            {
                return (null, $"There is no lot {Lot}.");
            }

            parts = [(lot, amount)];
        }
        else
        {
            var picking = Picking.Propose(view.Book, Good, amount, Day, null, OrderNumber);
            if (picking.IsShort)
            {
                return (null, Short(view, picking));
            }

            parts = [.. picking.Lots.Select(p => (p.Lot, p.Amount))];
        }

        if (into is not null && parts.Any(p => Closes(view.Book, p.Lot.Lot.Id, into)))
        {
            return (null, $"{into} is in it already: a lot cannot go into what it is made from.");
        }

        return Wish == StockWish.Split ? Split(view, parts, who) : (Step(parts, into, who), null);
    }

    private StockStep Step(IReadOnlyList<(LotAccount Lot, double Amount)> parts, string? into, string who) =>
        new(
            [],
            [
                .. parts.Select(p =>
                    LineOf(p.Lot.Lot.Id, Kind, p.Amount, who) with
                    {
                        Into = Wish == StockWish.Sell ? Empty(Order) : into,
                        Place = Wish == StockWish.Move ? Place.Trim() : null,
                    }
                ),
            ]
        )
        {
            MayGoBelow = MayGoBelow,
        };

    private (StockStep? Step, string? Fault) Split(
        StockView view,
        IReadOnlyList<(LotAccount Lot, double Amount)> parts,
        string who
    )
    {
        if (parts is not [var (from, amount)])
        {
            return (null, "Choose the one lot that is split.");
        }

        var id = LotNumber.Next(view.GoodOf(from), view.Book.Lots.Select(l => l.Lot.Id));
        var lot = from.Lot with
        {
            Id = id,
            Since = Day,
            Supplier = null,
            SupplierLot = null,
            Cost = 0,
            Amount = amount,
            Line = Empty(Line) ?? from.Lot.Line ?? from.Lot.Id,
            Note = Note.Trim(),
        };
        return (
            new(
                [lot],
                [
                    LineOf(from.Lot.Id, MovementKind.Used, amount, who) with
                    {
                        Into = id,
                    },
                    LineOf(id, MovementKind.Made, amount, who) with
                    {
                        Place = Empty(Place),
                    },
                ]
            ),
            null
        );
    }

    private static bool Closes(StockBook book, string from, string into) =>
        from == into || Genealogy.Descendants(book, into).Contains(from, StringComparer.Ordinal);

    private string Short(StockView view, Picking picking)
    {
        var good = view.GoodOf(Good);
        string Told(double amount) => StockWords.Amount(amount, good.Unit, UnitPreferences.Metric);
        var passed =
            picking.PassedOver.Length == 0
                ? ""
                : $" Not counted: {string.Join(
                ", ",
                picking.PassedOver.Select(p => $"{p.Lot.Lot.Id} ({p.Why})")
            )}.";
        return $"{Told(picking.Short)} of {good.Name} are missing; {Told(picking.Amount - picking.Short)} "
            + $"are free to use.{passed}";
    }

    private int? OrderNumber =>
        int.TryParse(Order, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private MovementKind Kind =>
        Wish switch
        {
            StockWish.Sell => MovementKind.Sold,
            StockWish.Move => MovementKind.Moved,
            StockWish.Died => MovementKind.Died,
            StockWish.ThrowAway => MovementKind.Scrapped,
            _ => MovementKind.Used,
        };

    private Movement LineOf(string lot, MovementKind kind, double amount, string who) =>
        new()
        {
            Lot = lot,
            Kind = kind,
            Amount = amount,
            Day = Day,
            Who = who,
            Note = Note.Trim(),
        };

    private static string? Empty(string text) => text.Trim().Length > 0 ? text.Trim() : null;
}
