using Litterfall.Domain.Schedule;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Orders;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>What is to be done on a day, in large rows for a phone; one tap ticks a task off.</summary>
public sealed partial class TodayPage
{
    private const int DaysLate = 60;
    private readonly CancellationTokenSource leaving = new();
    private PlanView? view;
    private IReadOnlyList<DayTask> tasks = [];
    private DateOnly day;
    private string? told;
    private string? fault;
    private IDisposable? watch;

    /// <summary>The day; today otherwise.</summary>
    [SupplyParameterFromQuery(Name = "day")]
    public string? Asked { get; set; }

    /// <summary>One person's tasks; everybody's otherwise.</summary>
    [SupplyParameterFromQuery(Name = "who")]
    public string? Who { get; set; }

    private IEnumerable<DayTask> Mine =>
        tasks.Where(t => string.IsNullOrEmpty(Who) || t.Who.Length == 0 || t.Who == Who);

    private List<DayTask> Open => [.. Mine.Where(t => t.Day == day && view!.Done(t.Key) is null)];

    /// <summary>Tasks of days before today that nobody has ticked off.</summary>
    private List<DayTask> Late =>
        day == view!.Today ? [.. Mine.Where(t => t.Day < day && view.Done(t.Key) is null)] : [];

    private List<(DayTask Task, DoneTask Mark)> Done =>
        [
            .. Mine.Select(t => (Task: t, Mark: view!.Done(t.Key)))
                .Where(t => t.Mark is not null && (t.Task.Day == day || t.Mark.Day == day))
                .Select(t => (t.Task, t.Mark!)),
        ];

    /// <inheritdoc/>
    protected override void OnInitialized() => watch = Store.WatchShop(() => _ = InvokeAsync(AgainAsync));

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => ReadAsync();

    private async Task ReadAsync()
    {
        var read = await Desk.LoadAsync(leaving.Token);
        day = WeekPage.Day(Asked) ?? read.Today;
        tasks = await Sources.FindAsync(read, day.AddDays(-DaysLate), day, leaving.Token);
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

    private async Task DoneAsync((DayTask Task, double Minutes) done)
    {
        fault =
            done.Task.Subjects.Count > 0
                ? await Rounds.DoneAsync(done.Task)
                : await Desk.DoneAsync(done.Task, done.Minutes, Who ?? "");
        told =
            fault is not null ? null
            : done is { Task.Stage: not null, Minutes: > 0 }
                ? $"{done.Task.Title}: done, {OrderShow.Time(done.Minutes)} written."
            : $"{done.Task.Title}: done.";
        await ReadAsync();
    }

    private async Task UndoAsync(DayTask task)
    {
        fault = await Desk.UndoAsync(task.Key);
        told = fault is null ? $"{task.Title}: taken back." : null;
        await ReadAsync();
    }

    private static string Address(DateOnly to, string? who) =>
        $"/today?day={WeekPage.Iso(to)}"
        + (string.IsNullOrEmpty(who) ? "" : $"&who={Uri.EscapeDataString(who)}");

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        leaving.Cancel();
        leaving.Dispose();
    }
}
