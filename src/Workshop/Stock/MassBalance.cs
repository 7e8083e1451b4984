using System.Collections.Immutable;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Stock;

/// <summary>
/// Whether what came in is what went out, was thrown away or is still here. What counts found beyond the book
/// is what does not add up.
/// </summary>
/// <param name="In">Received or made, in the unit of the good.</param>
/// <param name="Used">Went into other lots.</param>
/// <param name="Sold">Went to customers.</param>
/// <param name="Wasted">Died or was thrown away.</param>
/// <param name="OnHand">Still here.</param>
/// <param name="Allowed">
/// Share of what came in that may be missing: 2 % of bulk goods after their shrinkage, nothing of what is
/// counted in pieces.
/// </param>
public sealed record MassBalance(
    double In,
    double Used,
    double Sold,
    double Wasted,
    double OnHand,
    double Allowed
)
{
    /// <summary>Share of bulk goods that may be missing: jugs and bags are not read finer.</summary>
    public const double BulkTolerance = 0.02;

    /// <summary>What is missing, in the unit of the good; negative where there is too much.</summary>
    public double Missing => In - Used - Sold - Wasted - OnHand;

    /// <summary>What is missing as a share of what came in; 0 where nothing came.</summary>
    public double MissingShare => In > 0 ? Missing / In : 0;

    /// <summary>True where it adds up within what is allowed.</summary>
    public bool IsEven => Math.Abs(Missing) <= (Allowed * In) + (StockGate.Rounding * Math.Max(1, In));

    /// <summary>The balance of one lot.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="unit">What its good is counted in.</param>
    public static MassBalance ForLot(LotAccount lot, StockUnit unit) =>
        new(lot.In, lot.Used, lot.Sold, lot.Wasted, lot.OnHand, Tolerance(unit));

    /// <summary>The balance of all lots of a good.</summary>
    /// <param name="book">The book of stock.</param>
    /// <param name="good">The good.</param>
    public static MassBalance ForGood(StockBook book, Good good)
    {
        var lots = book.LotsOf(good.Key).ToList();
        return new(
            lots.Sum(a => a.In),
            lots.Sum(a => a.Used),
            lots.Sum(a => a.Sold),
            lots.Sum(a => a.Wasted),
            lots.Sum(a => a.OnHand),
            Tolerance(good.Unit)
        );
    }

    /// <summary>Lines that used something without saying for what, or for a lot that is not there.</summary>
    /// <param name="book">The book of stock.</param>
    public static ImmutableArray<BookLine> Unassigned(StockBook book) =>
        [
            .. book
                .Lots.SelectMany(a => a.Standing)
                .Where(l =>
                    l.Line.Kind == MovementKind.Used
                    && (l.Line.Into is not { } into || book.Find(into) is null)
                )
                .OrderBy(l => l.Line.Id),
        ];

    /// <summary>
    /// Share of the parts that mixing took, by volume; null where a lot was not made from others.
    /// </summary>
    /// <param name="lot">A batch of mix.</param>
    public static double? Shrinkage(LotAccount lot)
    {
        var parts = -lot.Feeds.Sum(f => f.Line.Effect);
        return parts > 0 && lot.In > 0 ? 1 - ((lot.In + lot.Counted) / parts) : null;
    }

    private static double Tolerance(StockUnit unit) => unit == StockUnit.Pieces ? 0 : BulkTolerance;
}
