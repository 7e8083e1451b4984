using System.Globalization;
using Litterfall.Domain.Schedule;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Workshop.Orders;
using Litterfall.Workshop.Scheduling;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>
/// The week: orders over weeks, what is taken of hands and places, who does what on which day.
/// </summary>
public sealed partial class WeekPage
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
    private readonly CancellationTokenSource leaving = new();
    private PlanView? view;
    private WeekChart? chart;
    private IReadOnlyList<DayTask> tasks = [];
    private DateOnly monday;
    private bool isBusy;
    private string? told;
    private string? fault;
    private IDisposable? watch;

    /// <summary>A day of the week that is shown; this week otherwise.</summary>
    [SupplyParameterFromQuery(Name = "day")]
    public string? Asked { get; set; }

    /// <summary>Number of an order that waits, told by another page; null for none.</summary>
    [SupplyParameterFromQuery(Name = "slip")]
    public int? Slip { get; set; }

    /// <summary>What of it waits.</summary>
    [SupplyParameterFromQuery(Name = "stage")]
    public string? Stage { get; set; }

    /// <summary>The first day on which it is possible.</summary>
    [SupplyParameterFromQuery(Name = "from")]
    public string? From { get; set; }

    /// <summary>Why it waits.</summary>
    [SupplyParameterFromQuery(Name = "why")]
    public string? Why { get; set; }

    private PlanHold? Waits =>
        Slip is { } order && Day(From) is { } first
            ? new(order, Stage ?? StageKey.Pack, first, Why ?? "")
            : null;

    private List<PlanMove> Moves => [.. view!.Plan.Moves.Where(m => !m.IsTold)];

    private IEnumerable<PlannedOrder> Late => view!.Plan.Orders.Where(o => o.Blocker.Length > 0);

    private string ChartWords => string.Join(". ", chart!.Rows.Select(r => r.Words));

    /// <inheritdoc/>
    protected override void OnInitialized() => watch = Store.WatchShop(() => _ = InvokeAsync(AgainAsync));

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => ReadAsync();

    private async Task ReadAsync()
    {
        var read = await Desk.LoadAsync(leaving.Token);
        monday = WorkDays.Monday(Day(Asked) ?? read.Today);
        tasks = await Sources.FindAsync(read, monday, monday.AddDays(6), leaving.Token);
        chart = WeekChart.Draw(read, monday);
        view = read;
    }

    private async Task AgainAsync()
    {
        try
        {
            await ReadAsync();
            StateHasChanged();
        }
        catch (Exception e) when (e is OperationCanceledException || StoreTrouble.Words(e) is not null)
        {
            // The page was left, or the next change brings it.
        }
    }

    private async Task PlanAsync(string why, Func<ShopPlan, ShopPlan>? change = null)
    {
        (isBusy, told, fault) = (true, null, null);
        try
        {
            fault = await Desk.ReplanAsync(why, change, leaving.Token);
            await ReadAsync();
            told = Moves.Count switch
            {
                0 => "Planned. No customer's day has changed.",
                1 => "Planned. One customer is to be told of a new day.",
                var n => FormattableString.Invariant($"Planned. {n} customers are to be told of new days."),
            };
        }
        catch (OperationCanceledException)
        {
            // The page was left.
        }
        finally
        {
            isBusy = false;
        }
    }

    private Task HoldAsync(PlanHold hold) =>
        PlanAsync(hold.Why, p =>
            p with
            {
                Holds = [.. p.Holds.Where(h => h.Order != hold.Order || h.Stage != hold.Stage), hold],
            }
        );

    private async Task ToldAsync(PlanMove move)
    {
        fault = await Desk.ToldAsync(move);
        await ReadAsync();
    }

    private string Address(int days) => $"/week?day={Iso(monday.AddDays(days))}";

    internal static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", Invariant);

    internal static DateOnly? Day(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", Invariant, DateTimeStyles.None, out var day) ? day : null;

    private static string N(double number) => number.ToString("0.##", Invariant);

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        leaving.Cancel();
        leaving.Dispose();
    }
}
