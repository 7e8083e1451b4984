using System.Globalization;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Sums;
using Litterfall.Workshop.Pricing;

namespace Litterfall.App.Trade;

/// <summary>The result of <c>quote</c>: one JSON document, or a sheet for people.</summary>
internal static class QuoteText
{
    /// <summary>One JSON document.</summary>
    public static string Json(QuoteCase asked, CostSheet sheet, double milliseconds) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteString("currency", asked.Price.Currency);
            json.WriteStartObject("cost");
            foreach (var (name, amount) in sheet.Cost.Named.Append(("total", sheet.Cost.Total)))
            {
                Number(json, name, amount);
            }

            json.WriteEndObject();
            Number(json, "net", sheet.Net);
            Number(json, "tax", sheet.Tax);
            Number(json, "gross", sheet.Gross);
            json.WriteNumber("chargedCents", sheet.ChargedCents);
            Number(json, "fee", sheet.Fee);
            Number(json, "profit", sheet.Profit);
            Number(json, "marginPercent", sheet.MarginPercent);
            Number(json, "markUpPercent", sheet.MarkUpPercent);
            Charged(json, asked, sheet);
            Number(json, "floorNet", sheet.FloorNet);
            Number(json, "contribution", sheet.Contribution);
            Number(json, "breakEvenUnits", sheet.BreakEvenUnits);
            Number(json, "noProfitLossPercent", sheet.BreakingChancePercent);
            Losses(json, asked);
            Sensitivity(json, sheet.Sensitivity());
            json.WriteNumber("elapsedMs", milliseconds);
            json.WriteEndObject();
        });

    private static void Charged(Utf8JsonWriter json, QuoteCase asked, CostSheet sheet)
    {
        var bill = Bill(asked, sheet);
        json.WriteStartObject("bill");
        json.WriteNumber("pieces", asked.Pieces);
        json.WriteNumber("netCents", Cents(bill.Net));
        json.WriteNumber("taxCents", Cents(bill.Tax));
        json.WriteNumber("grossCents", Cents(bill.Gross));
        json.WriteEndObject();
    }

    private static TaxedSum Bill(QuoteCase asked, CostSheet sheet)
    {
        var isGross = asked.Price.PricesIncludeTax || asked.Price.Charge is not null;
        var shown = isGross ? sheet.Charged.Gross : sheet.Charged.Net;
        var rule = asked.Price.Tax with { IsIncluded = isGross };
        return rule.Sum([.. Enumerable.Repeat(shown, asked.Pieces)], asked.TaxRounding);
    }

    private static void Losses(Utf8JsonWriter json, QuoteCase asked)
    {
        if (asked.Seen is { } seen)
        {
            json.WriteStartObject("lossRate");
            json.WriteNumber("seenPercent", 100.0 * seen.Seen);
            json.WriteNumber("seenPercentLow", 100.0 * seen.Low);
            json.WriteNumber("seenPercentHigh", 100.0 * seen.High);
            json.WriteNumber("meanPercent", 100.0 * seen.Mean);
            json.WriteNumber("p95Percent", 100.0 * seen.P95);
            json.WriteEndObject();
        }

        if (asked.Box is { } box)
        {
            json.WriteStartObject("boxLoss");
            json.WriteNumber("expected", box.Expected);
            json.WriteNumber("atLeastOnePercent", 100.0 * box.AtLeastOne);
            json.WriteEndObject();
        }

        if (Fund(asked) is { } fund)
        {
            var each = LossReserve.Replacement(asked.Price);
            json.WriteStartObject("lossFund");
            json.WriteNumber("lossesMean", fund.Mean);
            json.WriteNumber("lossesP95", fund.Quantile(0.95));
            json.WriteNumber("lossesP99", fund.Quantile(0.99));
            Number(json, "mean", (decimal)fund.Mean * each);
            Number(json, "p95", fund.Quantile(0.95) * each);
            Number(json, "p99", fund.Quantile(0.99) * each);
            json.WriteEndObject();
        }
    }

    private static LossFund? Fund(QuoteCase asked) =>
        asked is { Shipments: { } count, Price.Loss: { } loss }
            ? new LossFund(count, (double)(loss.ChancePercent / 100m))
            : null;

    private static void Sensitivity(Utf8JsonWriter json, Seq<SensitivityRow> rows)
    {
        json.WriteStartArray("sensitivity");
        foreach (var row in rows)
        {
            json.WriteStartObject();
            json.WriteString("input", row.Input);
            Number(json, "low", row.Low);
            Number(json, "high", row.High);
            Number(json, "elasticity", row.Elasticity);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A sheet for people.</summary>
    public static string Sheet(QuoteCase asked, CostSheet sheet)
    {
        var money = asked.Price.Currency is { } currency ? " " + currency : "";
        var table = new TextTable("", "");
        foreach (var (name, amount) in sheet.Breakdown())
        {
            table.Add(Words(name), Money(amount));
        }

        var bill = Bill(asked, sheet);
        var text = new StringBuilder()
            .Append("What the price without tax pays for")
            .Append(money.Length > 0 ? "," : "")
            .Append(money)
            .Append('\n')
            .Append(table)
            .Append('\n')
            .Append(Totals(asked, sheet, money))
            .Append(Slip(sheet, money));
        if (asked.Pieces > 1)
        {
            text.Append(
                $"{asked.Pieces} pieces: {Money(bill.Net)} + {Money(bill.Tax)} tax = "
                    + $"{Money(bill.Gross)}{money}\n"
            );
        }

        return text.Append(Range(sheet)).Append(LossWords(asked, money)).ToString();
    }

    private static string Totals(QuoteCase asked, CostSheet sheet, string money)
    {
        var table = new TextTable("", "", "");
        table.Add("price without tax", Money(sheet.Charged.Net), "");
        table.Add("tax", Money(sheet.Charged.Tax), $"{Plain(asked.Price.TaxPercent)} %");
        table.Add("price charged", Money(sheet.Charged.Gross), money.Trim());
        table.Add("margin", Percent(sheet.MarginPercent), "% of the price without tax");
        table.Add("mark-up", Percent(sheet.MarkUpPercent), "% on top of all costs; not the margin");
        if (sheet.FloorNet is { } floor)
        {
            table.Add("lowest price", Money(floor), "without tax; below it every piece loses money");
        }

        if (asked.Price.FixedCosts is { } costs)
        {
            var told = sheet.BreakEvenUnits is { } units
                ? $"{Plain(units)} {(units == 1m ? "piece pays" : "pieces pay")} the fixed {Money(costs)}"
                : $"no number of pieces pays the fixed {Money(costs)}";
            table.Add("each piece brings", Money(sheet.Contribution), told);
        }

        return table.ToString();
    }

    private static string Slip(CostSheet sheet, string money) =>
        sheet.MarkUpSlip is { } slip && sheet.Case.MarginPercent is > 0m and { } margin
            ? $"\nPutting {Plain(margin)} % on top of the cost would make {Money(slip.Net)}{money} "
                + $"without tax. That is a margin of only {Percent(slip.MarginPercent)} %.\n"
            : "";

    private static string Range(CostSheet sheet)
    {
        var table = new TextTable("20 % off", "lower", "higher", "% per %");
        foreach (var row in sheet.Sensitivity())
        {
            table.Add(
                Words(row.Input),
                row.Low is { } low ? Money(low) : "–",
                row.High is { } high ? Money(high) : "–",
                row.Elasticity?.ToString("0.000", CultureInfo.InvariantCulture) ?? "–"
            );
        }

        return table.IsEmpty ? "" : $"\nPrice without tax when one number is 20 % lower or higher\n{table}";
    }

    private static string LossWords(QuoteCase asked, string money)
    {
        var text = new StringBuilder();
        if (asked.Seen is { } seen)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n{seen.Lost} of {seen.Shipped} shipments lost: ")
                .Append(
                    CultureInfo.InvariantCulture,
                    $"{100 * seen.Seen:0.0} %, between {100 * seen.Low:0.0} and "
                )
                .Append(CultureInfo.InvariantCulture, $"{100 * seen.High:0.0} % (95 % interval); ")
                .Append(
                    CultureInfo.InvariantCulture,
                    $"with what was expected before, {100 * seen.Mean:0.0} %\n"
                );
        }

        if (asked.Box is { } box)
        {
            text.Append(CultureInfo.InvariantCulture, $"\nBox of {box.Animals}: {box.Expected:0.00} lost on ")
                .Append(
                    CultureInfo.InvariantCulture,
                    $"average; at least one in {100 * box.AtLeastOne:0.0} % of boxes\n"
                );
        }

        if (Fund(asked) is { } fund)
        {
            var each = LossReserve.Replacement(asked.Price);
            text.Append(
                    CultureInfo.InvariantCulture,
                    $"\n{fund.Shipments} shipments: {fund.Mean:0.0} lost on "
                )
                .Append(CultureInfo.InvariantCulture, $"average; with 95 % certainty no more than ")
                .Append(CultureInfo.InvariantCulture, $"{fund.Quantile(0.95)}, so keep ")
                .Append(Money(fund.Quantile(0.95) * each))
                .Append(money)
                .Append(" aside\n");
        }

        return text.ToString();
    }

    private static string Words(string name) =>
        name switch
        {
            "live" => "plants and animals",
            "reserve" => "loss reserve",
            "lossChance" => "chance of loss",
            _ => name,
        };

    private static long Cents(decimal amount) => (long)(100m * amount);

    private static void Number(Utf8JsonWriter json, string key, decimal? number)
    {
        if (number is { } value)
        {
            json.WriteNumber(key, (double)value);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    private static string Money(decimal amount) =>
        RoundingRule.Cent.Round(amount).ToString("0.00", CultureInfo.InvariantCulture);

    private static string Plain(decimal number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    private static string Percent(decimal? number) =>
        number?.ToString("0.0", CultureInfo.InvariantCulture) ?? "–";
}
