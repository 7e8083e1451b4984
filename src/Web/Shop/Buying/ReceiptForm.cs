using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Shop.Terms;
using Litterfall.Workshop.Supplying;

namespace Litterfall.Web.Shop.Buying;

/// <summary>A delivery as it is typed.</summary>
public sealed class ReceiptForm
{
    private const int QuarantineDays = 30;
    private readonly BuyingDesk desk;

    /// <summary>Begins with what is open.</summary>
    /// <param name="purchase">The purchase.</param>
    /// <param name="desk">Names and days.</param>
    public ReceiptForm(Kept<Purchase> purchase, BuyingDesk desk)
    {
        (Purchase, this.desk) = (purchase, desk);
        Rows =
        [
            .. purchase
                .Value.Lines.Select((line, i) => (line, i))
                .Where(l => l.line.Packs > l.line.Came)
                .Select(l => new ReceiptRow(l.i, desk.Good(l.line.Offer), l.line)
                {
                    IsPlant = IsOf(l.line, GoodKind.Plant),
                }),
        ];
    }

    /// <summary>The purchase.</summary>
    public Kept<Purchase> Purchase { get; }

    /// <summary>Lines that are open.</summary>
    public IReadOnlyList<ReceiptRow> Rows { get; }

    /// <summary>What is wrong with all of it; null where nothing is.</summary>
    public string? Fault { get; private set; }

    /// <summary>What came; null where something cannot be taken.</summary>
    public List<CameLine>? Read()
    {
        var came = Rows.Select(row => row.Read(desk.Today.AddDays(QuarantineDays))).ToList();
        Fault = Rows.Any(r => r.HasFault)
            ? "Some fields cannot be taken yet; each says why."
            : Receipt.Refusal(Purchase.Value, came);
        return Fault is null ? came : null;
    }

    private bool IsOf(PurchaseLine line, GoodKind kind) =>
        desk.Offers.GetValueOrDefault(line.Offer) is { } offer
        && desk.Goods.GetValueOrDefault(offer.Good)?.Kind == kind;
}

/// <summary>One line of a delivery as it is typed.</summary>
/// <param name="index">Index of the line of the purchase.</param>
/// <param name="good">Name of the good.</param>
/// <param name="line">The line.</param>
public sealed class ReceiptRow(int index, string good, PurchaseLine line)
{
    /// <summary>Name of the good.</summary>
    public string Good { get; } = good;

    /// <summary>Packs that came.</summary>
    public TypedText Packs { get; } = TypedText.ForNumber("Packs", line.Packs - line.Came);

    /// <summary>Price that was paid.</summary>
    public TypedText Price { get; } = TypedText.ForMoney("Paid for each, net", line.Price);

    /// <summary>Number of the supplier.</summary>
    public TypedText Lot { get; } = new("Number on the pack", "");

    /// <summary>True for plants: they go into quarantine first.</summary>
    public bool IsPlant { get; init; }

    /// <summary>True where a field has a fault.</summary>
    public bool HasFault => Packs.Fault is not null || Price.Fault is not null || Lot.Fault is not null;

    /// <summary>What came.</summary>
    /// <param name="free">First day out of quarantine.</param>
    public CameLine Read(DateOnly free) =>
        new(index, Packs.Whole(0, 1_000_000), Price.Money(), Lot.Free())
        {
            QuarantinedUntil = IsPlant ? free : null,
        };
}
