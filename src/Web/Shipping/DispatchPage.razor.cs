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

    /// <summary>Parcels that cannot go on their day, or on none; why, and what helps.</summary>
    private List<(Kept<Parcel> Parcel, ShipReason? Reason, string Next)> Held =>
        weeks is null
            ? []
            :
            [
                .. view!
                    .Waiting.Where(p => weeks.ContainsKey(p.Key))
                    .Select(p => (Parcel: p, Week: weeks[p.Key], Day: HeldDay(p.Value, weeks[p.Key])))
                    .Where(p => p.Day is not null)
                    .Select(p => (p.Parcel, First(p.Day!.Reasons), Next(p.Week, First(p.Day.Reasons)))),
            ];

    /// <summary>The day that works, where the cure of a reason does not name it already.</summary>
    private static string Next(WeekVerdict week, ShipReason? reason) =>
        week.Days.FirstOrDefault(d => d.Day == (week.NextDay ?? week.NextDayOnceDone)) is not { } next
            ? "No day of this week works."
        : reason?.CureDay == next.Day ? ""
        : next.MayShip ? $"First day that works: {ShipWords.Day(next.Day)}."
        : $"First day that works, {OpenTasks.Once(next)}: {ShipWords.Day(next.Day)}.";

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
            : week.NextDay is not null ? null
            : week.Days.FirstOrDefault(d => d.Day == week.NextDayOnceDone) ?? First(week.Days);
    }

    private static T? First<T>(IReadOnlyList<T> all)
        where T : class => all.Count > 0 ? all[0] : null;

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
