using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>Options side by side with all parts of their cost.</summary>
public sealed partial class OptionTable
{
    /// <summary>The options.</summary>
    [Parameter, EditorRequired]
    public required IReadOnlyList<PricedOption> Options { get; set; }

    /// <summary>The order.</summary>
    [Parameter, EditorRequired]
    public required OrderWork Work { get; set; }

    private static IReadOnlyList<Row> Rows { get; } =
    [
        new("Materials with waste", o => Money(o.Option.Cost.Materials)),
        new("Plants, animals, cultures", o => Money(o.Option.Cost.Live)),
        new("Hours of work", o => OrderShow.Time(o.Option.Minutes.Sum(m => m.Minutes))),
        new("Labor", o => Money(o.Option.Cost.Labor)),
        new("Overhead", o => Money(o.Option.Cost.Overhead)),
        new("Packaging", o => Money(o.Option.Cost.Packaging)),
        new("Shipping", o => Money(o.Option.Cost.Shipping)),
        new("Reserve for losses", o => Money(o.Option.Cost.Reserve)),
        new("Cost", o => Money(o.Option.Cost.Total), true),
        new("Payment fee", o => Money(o.Option.Cost.Fee)),
        new("Profit", o => Money(o.Option.Net - o.Option.Cost.Total - o.Option.Cost.Fee)),
        new("Price before tax", o => Money(o.Option.Net), true),
        new("Tax", o => Money(o.Option.Tax)),
        new("Price with tax", o => Money(o.Option.Gross), true),
        new("Margin", o => OrderShow.Percent(o.Sheet.MarginPercent)),
        new("Mark-up", o => OrderShow.Percent(o.Sheet.MarkUpPercent)),
    ];

    /// <summary>The usual slip, told with the numbers of the first option.</summary>
    private string Slip =>
        Options[0].Sheet.MarkUpSlip is { } slip && Options[0].Sheet.Case.MarginPercent is { } margin
            ? $"Cost plus {OrderShow.Percent(margin)} would be {Money(slip.Net)} before tax: a margin of "
                + $"{OrderShow.Percent(slip.MarginPercent)} only."
            : "";

    private string Stage(string key) =>
        Work.Terms.Labor.FirstOrDefault(s => s.Key == key)?.Name ?? key.Replace('-', ' ');

    private static string Money(decimal amount) => OrderText.Money(amount);

    private sealed record Row(string Name, Func<PricedOption, string> Show, bool IsSum = false);
}
