using System.Globalization;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Web.Library;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Stock;

/// <summary>Papers of stock as it is now.</summary>
/// <param name="view">Stock.</param>
/// <param name="sheet">What the papers share.</param>
/// <param name="link">Address that a code leads to, with the number behind it; empty for the number
/// alone.</param>
internal sealed class StockPapers(StockView view, ShopSheet sheet, string link)
{
    private static readonly UnitPreferences Plain = UnitPreferences.Metric;

    /// <summary>What the code of a lot holds.</summary>
    /// <param name="lot">Number of the lot.</param>
    public string Code(string lot) => $"{link}{LotNumber.Checked(lot)}".ToUpperInvariant();

    /// <summary>The label of a lot.</summary>
    /// <param name="lot">The lot.</param>
    public LabelText Label(LotAccount lot)
    {
        var good = view.GoodOf(lot);
        var parts = Genealogy.EdgesInto(lot).Select(e => e.From).ToList();
        return new(
            LotNumber.Checked(lot.Lot.Id),
            Code(lot.Lot.Id),
            good.Name,
            [
                .. new[]
                {
                    $"{Size(lot.Lot) ?? Amount(lot.Lot.Amount, good)}, {StockWords.Day(lot.Lot.Since)}",
                    lot.Lot.Order is { } order ? $"order {view.OrderName(order)}" : "",
                    Living(good, lot),
                    lot.Lot.Expires is { } last ? $"good until {StockWords.Day(last)}" : "",
                    parts.Count > 0 ? $"of {string.Join(", ", parts)}" : "",
                    lot.Lot.SupplierLot is { } theirs ? $"their lot {theirs}" : "",
                }.Where(t => t.Length > 0),
            ]
        );
    }

    /// <summary>Labels for a roll, or on sheets to cut out.</summary>
    /// <param name="labels">The labels.</param>
    /// <param name="isCut">True for sheets.</param>
    public PaperFile Labels(IEnumerable<LabelText> labels, bool isCut) =>
        isCut ? LotLabels.Sheets(sheet, labels) : LotLabels.Roll(sheet, labels);

    /// <summary>The list for a count, in the order of the walk.</summary>
    public PaperFile Count() =>
        StockLists.Count(
            sheet,
            [
                .. view
                    .Book.Lots.Where(l => l.HasSome)
                    .OrderBy(l => view.GoodOf(l).Walk)
                    .ThenBy(view.PlaceOf, StringComparer.OrdinalIgnoreCase)
                    .ThenBy(l => l.Lot.Id, StringComparer.Ordinal)
                    .Select(l => new CountLine(
                        view.PlaceOf(l),
                        l.Lot.Id,
                        view.GoodOf(l).Name,
                        Amount(l.OnHand, view.GoodOf(l))
                    )),
            ]
        );

    /// <summary>The recall sheet of a lot.</summary>
    /// <param name="recall">Where it went.</param>
    public PaperFile Recall(Recall recall)
    {
        var lot = recall.Lot;
        var supplier =
            lot.Lot.Supplier is { } key && view.Suppliers.TryGetValue(key, out var from)
                ? $", from {from.Name}"
                : "";
        return StockLists.Recall(
            sheet,
            new(
                lot.Lot.Id,
                $"{view.GoodOf(lot).Name}{supplier}, since {StockWords.Day(lot.Lot.Since)}, "
                    + $"{Amount(lot.Lot.Amount, view.GoodOf(lot))}"
                    + (lot.Lot.SupplierLot is { } theirs ? $", their lot {theirs}" : "")
                    + (lot.Bar(sheet.Day) is { } bar ? $": {bar}." : "."),
                [.. recall.Orders.Select(Line)],
                [
                    .. recall.OnHand.Select(l =>
                        $"{l.Lot.Id}, {Amount(l.OnHand, view.GoodOf(l))}, {view.PlaceOf(l)}"
                    ),
                ],
                [.. recall.Into.Select(l => l.Lot.Id)],
                [.. Genealogy.Ancestors(view.Book, lot.Lot.Id)]
            )
        );
    }

    private RecallLine Line(RecalledOrder recalled)
    {
        var lots = string.Join(
            ", ",
            recalled.Lots.Select(l => $"{Amount(l.Amount, view.GoodOf(l.Lot))} of {l.Lot.Lot.Id}")
        );
        if (view.OrderOf(recalled.Order) is not { } order)
        {
            return new("not known", "", recalled.Order, lots);
        }

        var customer = view.Customers.GetValueOrDefault(order.Customer);
        return new(
            view.CustomerOf(order),
            customer is null
                ? ""
                : string.Join(
                    ", ",
                    new[] { customer.Phone, customer.Mail }.Concat(customer.Address).Where(t => t.Length > 0)
                ),
            view.OrderName(order.Number),
            lots
        );
    }

    /// <summary>Edges of an offcut: its area says nothing to who looks for a piece.</summary>
    private static string? Size(Lot lot)
    {
        if (lot is not { Form: SheetForm.Offcut, LengthMillimeters: { } length, WidthMillimeters: { } width })
        {
            return null;
        }

        var thick = lot.ThicknessMillimeters is { } mm
            ? string.Create(CultureInfo.InvariantCulture, $" × {mm:0.#}")
            : "";
        return string.Create(CultureInfo.InvariantCulture, $"offcut {length:0.#} × {width:0.#}{thick} mm");
    }

    private static string Living(Good good, LotAccount lot) =>
        good.Kind switch
        {
            GoodKind.Plant => "live plants",
            GoodKind.Animal => "live animals",
            GoodKind.Culture => "live animals, 18–24 °C",
            _ => "",
        } + (lot.Lot.Line is { } line ? $" line {line}" : "");

    private static string Amount(double amount, Good good) => StockWords.Amount(amount, good.Unit, Plain);
}
