using System.Globalization;
using Litterfall.Domain.Schedule;
using Litterfall.Workshop.Scheduling;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>A task of a day with the minutes it is planned to take and one button.</summary>
public sealed partial class TaskRow
{
    private const double MostMinutes = 1440;
    private string minutes = "";
    private string shown = "";
    private string? fault;

    /// <summary>The task.</summary>
    [Parameter, EditorRequired]
    public required DayTask Task { get; set; }

    /// <summary>True where its day is over.</summary>
    [Parameter]
    public bool IsLate { get; set; }

    /// <summary>It was done, in so many minutes.</summary>
    [Parameter]
    public EventCallback<(DayTask Task, double Minutes)> OnDone { get; set; }

    /// <summary>
    /// True where one tap does it; else it is done on its own page, which knows what came of it.
    /// </summary>
    private bool IsTicked => Task.Kind is TaskKind.Order || Task.Subjects.Count > 0 || Task.Page.Length == 0;

    private string Words =>
        string.Join(
            " · ",
            new[] { IsLate ? $"planned for {PlanWords.Short(Task.Day)}" : "", Task.Who, Task.Detail }.Where(
                w => w.Length > 0
            )
        );

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (shown != Task.Key)
        {
            shown = Task.Key;
            minutes = Task.Minutes.ToString("0", CultureInfo.InvariantCulture);
        }
    }

    private async System.Threading.Tasks.Task DoneAsync()
    {
        var isRead = double.TryParse(
            minutes.Trim().Replace(',', '.'),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var read
        );
        var took =
            Task.Stage is null ? 0
            : isRead && read <= MostMinutes ? read
            : (double?)null;
        fault = took is null ? "Enter the minutes as a number from 0 to 1440." : null;
        if (took is { } known)
        {
            await OnDone.InvokeAsync((Task, known));
        }
    }
}
