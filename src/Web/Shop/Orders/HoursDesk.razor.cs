using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Quoting;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>Hours that were worked, and what the order really cost.</summary>
public sealed partial class HoursDesk
{
    private const double MostHours = 24;
    private string stage = "";
    private string time = "";
    private string who = "";
    private string usual = "";
    private DateOnly day;
    private ActualCost? actual;

    /// <summary>The store.</summary>
    [Inject]
    public required BenchStore Store { get; set; }

    /// <summary>The order.</summary>
    [Parameter, EditorRequired]
    public required OrderWork Work { get; set; }

    /// <summary>Told with null when something was written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        day = Work.Today;
        stage = Work.Terms.Labor.Count > 0 ? Work.Terms.Labor[0].Key : "other";
        usual = await OrderBook.WhoAsync(Store);
    }

    /// <inheritdoc/>
    protected override void OnParametersSet() =>
        actual = Work.Accepted is { } quote
            ? ActualCost.Compare(Work.Order, quote, Work.Stock.UsedBy(Work.Order.Number))
            : null;

    private string Name(string key) =>
        Work.Terms.Labor.FirstOrDefault(s => s.Key == key)?.Name ?? key.Replace('-', ' ');

    private IEnumerable<Row> Rows
    {
        get
        {
            var (option, now) = (Work.Option!, actual!.Sheet);
            var cost = option.Cost;
            yield return new("Materials", Money(cost.Materials), Money(now.Cost.Materials));
            yield return new("Plants, animals, cultures", Money(cost.Live), Money(now.Cost.Live));
            yield return new(
                "Hours of work",
                OrderShow.Time(option.Minutes.Sum(m => m.Minutes)),
                OrderShow.Time((double)now.Case.Hours * 60)
            );
            yield return new("Labor", Money(cost.Labor), Money(now.Cost.Labor));
            yield return new("Overhead", Money(cost.Overhead), Money(now.Cost.Overhead));
            yield return new(
                "Packaging and shipping",
                Money(cost.Packaging + cost.Shipping),
                Money(now.Cost.Packaging + now.Cost.Shipping)
            );
            yield return new("Reserve for losses", Money(cost.Reserve), Money(now.Cost.Reserve));
            yield return new("Cost", Money(cost.Total), Money(now.Cost.Total), true);
            yield return new("Payment fee", Money(cost.Fee), Money(now.Fee));
            yield return new("Price before tax", Money(option.Net), Money(now.NetCharged));
            yield return new("Profit", Money(option.Net - cost.Total - cost.Fee), Money(now.Profit), true);
            yield return new(
                "Margin",
                OrderShow.Percent(
                    option.Net > 0 ? 100 * (option.Net - cost.Total - cost.Fee) / option.Net : null
                ),
                OrderShow.Percent(now.MarginPercent)
            );
        }
    }

    private async Task AddAsync()
    {
        var minutes = Minutes(time);
        var refusal =
            minutes is not > 0 ? $"“{time}” is no time; enter it such as 1:30 or 90 min."
            : minutes > MostHours * 60 ? "Enter at most 24 hours at a time."
            : day > Work.Today ? "Work cannot be written for a day to come."
            : null;
        if (refusal is not null)
        {
            await OnDone.InvokeAsync(refusal);
            return;
        }

        var worked = new WorkedTime(
            stage,
            minutes!.Value,
            day,
            who.Trim() is { Length: > 0 } name ? name : usual
        );
        var fault = await Work.KeepAsync(
            Work.Order with
            {
                Worked = [.. Work.Order.Worked, worked],
            },
            $"{OrderShow.Time(worked.Minutes)} of {Name(stage)}"
        );
        if (fault is null)
        {
            time = "";
        }

        await OnDone.InvokeAsync(fault);
    }

    private async Task RemoveAsync(int index) =>
        await OnDone.InvokeAsync(
            await Work.KeepAsync(
                Work.Order with
                {
                    Worked = [.. Work.Order.Worked.Where((_, i) => i != index)],
                },
                "a time was taken back"
            )
        );

    /// <summary>"1:30", "90", "90 min", "1.5 h"; minutes where no unit is typed.</summary>
    private static double? Minutes(string text)
    {
        var typed = text.Trim().Replace(',', '.').ToLowerInvariant();
        var parts = typed.Split(':');
        if (parts.Length == 2)
        {
            return Number(parts[0]) is { } hours && Number(parts[1]) is < 60 and { } rest
                ? hours * 60 + rest
                : null;
        }

        return typed.EndsWith("min", StringComparison.Ordinal) ? Number(typed[..^3])
            : typed.EndsWith('h') ? Number(typed[..^1]) * 60
            : Number(typed);
    }

    private static double? Number(string text) =>
        double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n)
            ? n
            : null;

    private static string Money(decimal amount) => OrderText.Money(amount);

    private sealed record Row(string Name, string Quoted, string Actual, bool IsSum = false);
}
