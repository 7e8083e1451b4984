using System.Globalization;
using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Buying;

/// <summary>Why a purchase is what it is, in sentences.</summary>
public static class PurchaseWords
{
    /// <summary>
    /// What made a bigger pack or more packs cheaper, what more order value would bring at each supplier, and
    /// what is left over.
    /// </summary>
    /// <param name="asked">What was asked.</param>
    /// <param name="plan">The purchase.</param>
    public static Seq<string> Explain(PurchaseCase asked, PurchasePlan plan)
    {
        var products = PackProduct.All(asked).ToDictionary(p => p.Product.Name, StringComparer.Ordinal);
        return
        [
            .. plan.Lines.SelectMany(l =>
                Breaks(l, Titles(asked, l)).Concat(Bigger(products[l.Offer.Product], l, plan))
            ),
            .. plan.Deliveries.SelectMany(Orders),
            .. plan.Leftovers.Where(l => l.Liters > 0.0).Select(Left),
        ];
    }

    private static string Titles(PurchaseCase asked, PurchaseLine line) =>
        $"{asked.Suppliers.First(s => s.Name == line.Offer.Supplier).Title}, "
        + asked.Products.First(p => p.Name == line.Offer.Product).Title;

    private static IEnumerable<string> Breaks(PurchaseLine line, string titles)
    {
        var offer = line.Offer;
        if (
            offer.Breaks.Any(b => b.FromPacks == line.Packs)
            && line.Packs > 1
            && offer.Cents(line.Packs - 1) is { } fewer
            && fewer >= line.Cents
        )
        {
            yield return $"{titles}: buying {line.Packs} packs for "
                + $"{Money(line.Cents)} is cheaper than {line.Packs - 1} for {Money(fewer)}";
        }
    }

    private static IEnumerable<string> Bigger(PackProduct product, PurchaseLine line, PurchasePlan plan)
    {
        var smaller = product.Offers.Where(o => o.Offer.PackLiters < line.Offer.PackLiters).ToArray();
        var own = plan.Lines.Where(l => l.Offer.Product == line.Offer.Product).ToList();
        if (smaller.Length == 0 || own.Exists(l => l.Offer.PackLiters > line.Offer.PackLiters))
        {
            yield break;
        }

        var cover = ProductCover.Find(product with { Offers = smaller }, -1);
        var paid = own.Sum(l => l.Cents);
        if (cover is not null && cover.Cents > paid)
        {
            var pack = Amount(line.Offer.PackLiters, product.Product);
            yield return $"{product.Product.Title}: with the {pack} pack it costs {Money(paid)}; "
                + $"in smaller packs alone it would be {Money(cover.Cents)}";
        }
    }

    private static IEnumerable<string> Orders(PurchaseDelivery order)
    {
        var supplier = order.Supplier;
        if (order.Cents > 0 && supplier.FreeFromCents is { } free)
        {
            yield return $"{supplier.Title}: {Money(free - order.GoodsCents)} more reaches free delivery "
                + $"and saves {Money(order.Cents)}";
        }
        else if (order.Cents == 0 && supplier is { DeliveryCents: > 0, FreeFromCents: { } reached })
        {
            yield return $"{supplier.Title}: {Money(order.GoodsCents)} of goods reach free delivery, from "
                + $"{Money(reached)} on; {Money(order.GoodsCents - reached)} less still would";
        }

        if (supplier.MinOrderCents > 0)
        {
            yield return $"{supplier.Title}: the minimum order is {Money(supplier.MinOrderCents)}, "
                + $"this one is {Money(order.GoodsCents)}";
        }
    }

    private static string Left(PurchaseLeftover left) =>
        $"{left.Product.Title}: {Amount(left.Liters, left.Product)} left over"
        + (
            left.Product.ShelfLifeDays is { } days
                ? $"; use it within {days} {(days == 1 ? "day" : "days")} of delivery"
                : ""
        );

    private static string Money(long cents) => (cents / 100m).ToString("0.00", CultureInfo.InvariantCulture);

    private static string Amount(double amount, PurchaseProduct product) =>
        FormattableString.Invariant($"{amount:0.###} {product.Unit}");
}
