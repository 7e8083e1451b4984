using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Store;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shipping;

/// <summary>All parcels that wait, with the verdict of each day; what is held and why.</summary>
public sealed partial class DispatchPage : ComponentBase
{
    private readonly CancellationTokenSource closing = new();
    private UnitPreferences units = UnitPreferences.Metric;
    private DispatchView? view;
    private IReadOnlyDictionary<string, WeekVerdict>? weeks;
    private IDisposable? watch;

    private IEnumerable<DateOnly> Days =>
        Enumerable.Range(0, DispatchDesk.DaysAhead).Select(d => view!.Today.AddDays(d));

    /// <summary>Parcels that cannot go on their day, or on none.</summary>
    private List<(Kept<Parcel> Parcel, ShipReason? Reason, DateOnly? Next)> Held =>
        weeks is null
            ? []
            :
            [
                .. view!
                    .Waiting.Where(p => weeks.ContainsKey(p.Key))
                    .Select(p => (Parcel: p, Week: weeks[p.Key]))
                    .Select(p => (p.Parcel, Day: HeldDay(p.Parcel.Value, p.Week), p.Week.NextDay))
                    .Where(p => p.Day is not null)
                    .Select(p => (p.Parcel, First(p.Day!.Reasons), p.NextDay)),
            ];

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        units = await Preferences.LoadAsync();
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        closing.Cancel();
        closing.Dispose();
        watch?.Dispose();
    }

    private async Task LoadAsync()
    {
        try
        {
            view = await Desk.LoadAsync(closing.Token);
            StateHasChanged();
            weeks = await Desk.JudgeAsync(view, view.Waiting, closing.Token);
            StateHasChanged();
        }
        catch (OperationCanceledException)
        {
            // The page was left.
        }
    }

    private DayVerdict? Verdict(string parcel, DateOnly day) =>
        weeks?.GetValueOrDefault(parcel)?.Days.FirstOrDefault(d => d.Day == day);

    /// <summary>The day that is wished for or cleared where it may not go then, else the first.</summary>
    private static DayVerdict? HeldDay(Parcel parcel, WeekVerdict week)
    {
        var wished = parcel.ShipDay ?? parcel.WishedDay;
        var day = week.Days.FirstOrDefault(d => d.Day == wished);
        return day is { MayShip: false } ? day
            : week.NextDay is null ? First(week.Days)
            : null;
    }

    private static T? First<T>(IReadOnlyList<T> all)
        where T : class => all.Count > 0 ? all[0] : null;

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
