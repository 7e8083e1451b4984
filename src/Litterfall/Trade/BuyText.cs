using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Workshop.Buying;

namespace Litterfall.App.Trade;

/// <summary>The result of <c>buy</c>: one JSON document, or a list for people.</summary>
internal static class BuyText
{
    /// <summary>One JSON document.</summary>
    public static string Json(BuyCase asked, PurchasePlan plan, double milliseconds) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteString("status", plan.IsProved ? "proved" : "found");
            json.WriteNumber("totalCents", plan.TotalCents);
            json.WriteNumber("boundCents", plan.BoundCents);
            json.WriteStartArray("purchases");
            foreach (var line in plan.Lines)
            {
                json.WriteStartObject();
                json.WriteString("supplier", line.Offer.Supplier);
                json.WriteString("product", line.Offer.Product);
                json.WriteNumber("packLitres", line.Offer.PackLiters);
                json.WriteNumber("packs", line.Packs);
                json.WriteNumber("cents", line.Cents);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Rest(json, plan);
            json.WriteStartArray("explanations");
            foreach (var sentence in PurchaseWords.Explain(asked.Purchase, plan))
            {
                json.WriteStringValue(sentence);
            }

            json.WriteEndArray();
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    private static void Rest(Utf8JsonWriter json, PurchasePlan plan)
    {
        json.WriteStartArray("delivery");
        foreach (var order in plan.Deliveries)
        {
            json.WriteStartObject();
            json.WriteString("supplier", order.Supplier.Name);
            json.WriteNumber("goodsCents", order.GoodsCents);
            json.WriteNumber("cents", order.Cents);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("leftover");
        foreach (var left in plan.Leftovers)
        {
            json.WriteStartObject();
            json.WriteString("product", left.Product.Name);
            json.WriteNumber("litres", left.Liters);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A list for people, one part for each supplier.</summary>
    public static string List(BuyCase asked, PurchasePlan plan)
    {
        var text = new StringBuilder();
        foreach (var order in plan.Deliveries)
        {
            var table = new TextTable("", "", "", "");
            foreach (var line in plan.Lines.Where(l => l.Offer.Supplier == order.Supplier.Name))
            {
                table.Add(
                    line.Offer.Product,
                    line.Packs.ToString(CultureInfo.InvariantCulture),
                    FormattableString.Invariant($"× {line.Offer.PackLiters:0.###} L"),
                    Money(line.Cents)
                );
            }

            table.Add("delivery", "", "", order.Cents == 0 ? "free" : Money(order.Cents));
            text.Append(Terminal.Clean(order.Supplier.Name)).Append('\n').Append(table).Append('\n');
        }

        text.Append(
                plan.Lines.Count == 0
                    ? "Nothing to buy: the stock covers it.\n"
                    : $"Total {Money(plan.TotalCents)}"
            )
            .Append(
                plan.Lines.Count == 0 ? ""
                : plan.IsProved ? "; there is no cheaper way.\n"
                : $"; the search was stopped, and nothing below {Money(plan.BoundCents)} is possible.\n"
            );
        foreach (var sentence in PurchaseWords.Explain(asked.Purchase, plan))
        {
            text.Append(Terminal.Wrapped($"– {sentence}.", "  "));
        }

        return text.ToString();
    }

    private static string Money(long cents) => (cents / 100m).ToString("0.00", CultureInfo.InvariantCulture);
}
