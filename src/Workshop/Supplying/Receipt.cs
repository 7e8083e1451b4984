using Litterfall.Domain.Lists;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Supplying;

/// <summary>What came of one line of a purchase.</summary>
/// <param name="Line">Index of the line.</param>
/// <param name="Packs">Packs that came.</param>
/// <param name="Price">Net price that was paid for one.</param>
/// <param name="SupplierLot">Number of the supplier; empty for none.</param>
public sealed record CameLine(int Line, int Packs, decimal Price, string SupplierLot)
{
    /// <summary>First day out of quarantine; null for goods that need none.</summary>
    public DateOnly? QuarantinedUntil { get; init; }
}

/// <summary>A delivery as it goes into the book: lots with what they cost, prices that are new.</summary>
/// <param name="Purchase">The purchase with what came.</param>
/// <param name="Lots">New lots.</param>
/// <param name="Lines">Lines that bring them in.</param>
/// <param name="Offers">Offers whose price was another one.</param>
public sealed record Receipt(Purchase Purchase, Seq<Lot> Lots, Seq<Movement> Lines, Seq<Offer> Offers)
{
    /// <summary>Why a delivery cannot be taken, in one sentence; null where it can.</summary>
    /// <param name="purchase">The purchase.</param>
    /// <param name="came">What came.</param>
    public static string? Refusal(Purchase purchase, IReadOnlyCollection<CameLine> came) =>
        purchase.State is not (PurchaseState.Planned or PurchaseState.Ordered)
            ? "This purchase is finished already."
        : came.All(c => c.Packs == 0) ? "Enter how many packs came."
        : came.FirstOrDefault(c => c.Packs < 0 || c.Packs > Open(purchase, c.Line)) is { } over
            ? $"Line {over.Line + 1} has {Open(purchase, over.Line)} packs open; {over.Packs} were entered."
        : came.Any(c => c.Price < 0) ? "A price must be 0 or more."
        : null;

    /// <summary>The book's side of a delivery.</summary>
    /// <param name="purchase">The purchase.</param>
    /// <param name="came">What came; one that <see cref="Refusal"/> lets pass.</param>
    /// <param name="supply">Offers and goods by key.</param>
    /// <param name="lots">Numbers of lots that are taken.</param>
    /// <param name="act">Who takes it in, and the day.</param>
    public static Receipt Read(
        Purchase purchase,
        IReadOnlyCollection<CameLine> came,
        (IReadOnlyDictionary<string, Offer> Offers, IReadOnlyDictionary<string, Good> Goods) supply,
        IEnumerable<string> lots,
        (string Who, DateOnly Day) act
    )
    {
        var taken = lots.ToList();
        var (fresh, lines, offers) = (new List<Lot>(), new List<Movement>(), new List<Offer>());
        foreach (var one in came.Where(c => c.Packs > 0))
        {
            var offer = supply.Offers[purchase.Lines[one.Line].Offer];
            var good = supply.Goods[offer.Good];
            var lot = new Lot
            {
                Id = LotNumber.Next(good, taken),
                Good = good.Key,
                Since = act.Day,
                Supplier = purchase.Supplier,
                SupplierLot = one.SupplierLot.Length > 0 ? one.SupplierLot : null,
                Amount = one.Packs * offer.Amount,
                Cost = one.Packs * one.Price,
                Expires = good.KeepsDays is { } days ? act.Day.AddDays(days) : null,
                QuarantinedUntil = one.QuarantinedUntil,
                Form = FormOf(offer),
                LengthMillimeters = offer.LengthMillimeters,
                WidthMillimeters = offer.WidthMillimeters,
                ThicknessMillimeters = offer.SheetMillimeters,
            };
            taken.Add(lot.Id);
            fresh.Add(lot);
            lines.Add(
                new Movement
                {
                    Lot = lot.Id,
                    Kind = MovementKind.Received,
                    Amount = lot.Amount,
                    Day = act.Day,
                    Who = act.Who,
                    Note = $"purchase {purchase.Number}",
                }
            );
            if (Priced(offer, one, act.Day) is { } changed)
            {
                offers.Add(changed);
            }
        }

        return new(Came(purchase, came), [.. fresh], [.. lines], [.. offers]);
    }

    /// <summary>Sheets and rolls of a known size can be cut by plan.</summary>
    private static SheetForm? FormOf(Offer offer) =>
        offer is not { LengthMillimeters: not null, WidthMillimeters: not null } ? null
        : offer.IsRoll ? SheetForm.Roll
        : SheetForm.Sheets;

    private static int Open(Purchase purchase, int line) =>
        purchase.Lines[line].Packs - purchase.Lines[line].Came;

    private static Purchase Came(Purchase purchase, IReadOnlyCollection<CameLine> came)
    {
        Seq<Domain.Trade.PurchaseLine> lines =
        [
            .. purchase.Lines.Select(
                (line, i) => line with { Came = line.Came + came.Where(c => c.Line == i).Sum(c => c.Packs) }
            ),
        ];
        return purchase with
        {
            Lines = lines,
            State = lines.All(l => l.Came >= l.Packs) ? PurchaseState.Received : PurchaseState.Ordered,
        };
    }

    /// <summary>The step of the price list that was paid for gets the price that was paid.</summary>
    private static Offer? Priced(Offer offer, CameLine one, DateOnly day)
    {
        if (offer.PriceOf(one.Packs) == one.Price)
        {
            return null;
        }

        var step = offer.Tiers.Last(t => t.FromPacks <= one.Packs);
        return offer with
        {
            Tiers = [.. offer.Tiers.Select(t => t == step ? t with { Price = one.Price } : t)],
            Dated = day,
        };
    }
}
