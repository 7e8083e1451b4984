using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Stock;

/// <summary>A good on the page of stock.</summary>
/// <param name="Good">The good.</param>
/// <param name="Lots">Its lots with something left, the first to spoil first.</param>
/// <param name="OnHand">On hand, in its unit.</param>
/// <param name="Usable">Of it free to use.</param>
/// <param name="Value">What it cost, net.</param>
public sealed record StockRow(
    Good Good,
    IReadOnlyList<LotAccount> Lots,
    double OnHand,
    double Usable,
    decimal Value
)
{
    private const double Wide = 120;
    private const double Mark = 40;

    /// <summary>Reads a good from the book.</summary>
    /// <param name="view">Stock.</param>
    /// <param name="good">The good.</param>
    /// <param name="day">Today.</param>
    public static StockRow From(StockView view, Good good, DateOnly day)
    {
        var lots = view
            .Book.LotsOf(good.Key)
            .Where(l => l.HasSome)
            .OrderBy(l => l.Lot.Expires ?? DateOnly.MaxValue)
            .ToList();
        return new(
            good,
            lots,
            view.Book.OnHand(good.Key),
            view.Book.Usable(good.Key, day),
            view.Book.Value(good.Key)
        );
    }

    /// <summary>True below the re-order point.</summary>
    public bool IsLow => Good.ReorderAt > 0 && Usable < Good.ReorderAt;

    /// <summary>Day the first of its lots spoils; null where none does.</summary>
    public DateOnly? Spoils => Lots.Min(l => l.Lot.Expires);

    /// <summary>What the stick shows, in words.</summary>
    public string StickWords =>
        Good.ReorderAt > 0
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{Usable / Good.ReorderAt:0.#} times the re-order point"
            )
            : "no re-order point";

    /// <summary>
    /// A dip stick: how high the stock stands against the re-order point, which is marked at a third.
    /// </summary>
    public string Stick
    {
        get
        {
            if (Good.ReorderAt <= 0)
            {
                return "";
            }

            var to = Math.Min(Wide, Usable / Good.ReorderAt * Mark);
            var look = IsLow ? "low" : "";
            return string.Create(
                CultureInfo.InvariantCulture,
                $"""
                <svg viewBox="0 0 {Wide} 16" aria-hidden="true" class="{look}">
                <path class="rule" d="M0 12H{Wide}"/>
                <path class="fill" d="M0 9H{to:0.#}"/><path class="mark" d="M{Mark} 2V14"/></svg>
                """
            );
        }
    }
}
