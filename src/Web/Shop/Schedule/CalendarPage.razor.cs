using Litterfall.Domain.Trade;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>Settings of the calendar: days, places, people, holidays.</summary>
public sealed partial class CalendarPage
{
    private CalendarDraft? draft;
    private IReadOnlyList<LaborStage> labor = [];
    private int version;
    private string? told;
    private string? fault;

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => ReadAsync();

    private async Task ReadAsync()
    {
        var view = await Desk.LoadAsync();
        version = view.CalendarVersion;
        labor = [.. view.Terms.Labor.Where(l => l.For != LaborFor.Visits)];
        draft = new CalendarDraft(view.Calendar);
    }

    private async Task SaveAsync()
    {
        told = null;
        (var calendar, fault) = draft!.Read();
        if (calendar is null)
        {
            return;
        }

        fault = await Desk.KeepAsync(calendar, version);
        if (fault is not null)
        {
            return;
        }

        await ReadAsync();
        fault = await Desk.ReplanAsync("the calendar was changed");
        told = fault is null ? "Saved, and planned again." : "Saved.";
    }

    private static string Short(DayOfWeek day) => day.ToString()[..3];
}
