using System.Globalization;
using System.Text;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Workshop.Scheduling.Cases;

namespace Litterfall.App.Trade;

/// <summary>The result of <c>schedule</c>: one JSON document, or a list for people.</summary>
internal static class ScheduleText
{
    /// <summary>One JSON document.</summary>
    public static string Json(CasePlan plan, double milliseconds) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteString("status", plan.IsProved ? "proved" : "found");
            json.WriteNumber("objective", plan.Objective);
            json.WriteNumber("bound", plan.Bound);
            json.WriteStartArray("orders");
            foreach (var days in plan.Orders)
            {
                json.WriteStartObject();
                json.WriteNumber("id", days.Order.Id);
                json.WriteNumber("quarantineStart", days.QuarantineStart);
                json.WriteNumber("plant", days.Plant);
                json.WriteNumber("growInEnd", days.Plant + days.Order.GrowInDays);
                json.WriteNumber("pack", days.Ship);
                json.WriteNumber("ship", days.Ship);
                json.WriteNumber("arrive", days.Arrive);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("blocking");
            foreach (var sentence in plan.Blocking)
            {
                json.WriteStringValue(sentence);
            }

            json.WriteEndArray();
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    /// <summary>A list for people, one line for each order.</summary>
    public static string List(CasePlan plan)
    {
        var table = new TextTable(
            "order",
            "plants in",
            "plant",
            "grown in",
            "pack and ship",
            "arrive",
            "late"
        );
        foreach (var days in plan.Orders)
        {
            table.Add(
                Number(days.Order.Id),
                Number(days.QuarantineStart),
                Number(days.Plant),
                Number(days.Plant + days.Order.GrowInDays),
                Number(days.Ship),
                Number(days.Arrive),
                days.Tardy == 0 ? "" : Number(days.Tardy)
            );
        }

        var text = new StringBuilder()
            .Append(table)
            .Append('\n')
            .Append(CultureInfo.InvariantCulture, $"Objective {plan.Objective}")
            .Append(
                plan.IsProved
                    ? "; there is no better plan.\n"
                    : FormattableString.Invariant(
                        $"; the search was stopped, and nothing below {plan.Bound} is possible.\n"
                    )
            );
        foreach (var sentence in plan.Blocking)
        {
            text.Append(Terminal.Wrapped($"– {sentence}.", "  "));
        }

        return text.ToString();
    }

    private static string Number(int day) => day.ToString(CultureInfo.InvariantCulture);
}
