using Litterfall.Domain.Schedule;
using Litterfall.Running.Rounds;
using Litterfall.Running.Visits;
using Litterfall.Web.Shop.Cultures;
using Litterfall.Web.Shop.Cutting;
using Litterfall.Web.Shop.Nursery;
using Litterfall.Web.Shipping;
using Litterfall.Web.Tanks.Rounds;
using Litterfall.Web.Tanks.Visits;
using Litterfall.Workshop.Cultures;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Nursery;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>
/// Where tasks of a day come from. A subject adds itself here with one line: a pure function that returns its
/// tasks for a span of days.
/// </summary>
public sealed class TaskSources(
    CultureDesk cultures,
    NurseryDesk nursery,
    CuttingDesk cutting,
    RoundDesk rounds,
    VisitDesk visits,
    DispatchDesk dispatch
)
{
    /// <summary>Tasks of a span of days, the firm ones first on each day.</summary>
    /// <param name="view">The kept plan.</param>
    /// <param name="first">First day.</param>
    /// <param name="last">Last day, included.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<IReadOnlyList<DayTask>> FindAsync(
        PlanView view,
        DateOnly first,
        DateOnly last,
        CancellationToken cancel = default
    )
    {
        var all = new List<DayTask>();
        foreach (var source in Sources)
        {
            all.AddRange(await source(view, (first, last), cancel));
        }

        return
        [
            .. all.OrderBy(t => t.Day)
                .ThenByDescending(t => t.IsFirm)
                .ThenBy(t => t.Who, StringComparer.Ordinal)
                .ThenBy(t => t.Key, StringComparer.Ordinal),
        ];
    }

    // Whoever plants looks after what lives; whoever cuts, plans the cutting.
    private const string AnimalsAndPlants = "plant";
    private const string Cutting = "cut";
    private const string Packing = "pack";

    private delegate Task<IEnumerable<DayTask>> Source(
        PlanView view,
        (DateOnly First, DateOnly Last) span,
        CancellationToken cancel
    );

    /// <summary>The list of sources.</summary>
    private IEnumerable<Source> Sources =>
        [OrdersAsync, CulturesAsync, NurseryAsync, CuttingAsync, TanksAsync, VisitsAsync, ParcelsAsync];

    private static Task<IEnumerable<DayTask>> OrdersAsync(
        PlanView view,
        (DateOnly First, DateOnly Last) span,
        CancellationToken cancel
    ) =>
        Task.FromResult(
            view.Plan.Orders.SelectMany(o => o.Tasks)
                .Where(t => !t.IsCancelled && t.Task.Day >= span.First && t.Task.Day <= span.Last)
                .Select(t => t.Task)
        );

    private async Task<IEnumerable<DayTask>> CulturesAsync(
        PlanView view,
        (DateOnly First, DateOnly Last) span,
        CancellationToken cancel
    )
    {
        var shown = await cultures.LoadAsync(cancel);
        var first = NotBefore(view.Today, span.First);
        return first > span.Last
            ? []
            : For(view, AnimalsAndPlants, CultureTasks.Find(shown.Book, first, span.Last, view.Name));
    }

    private async Task<IEnumerable<DayTask>> NurseryAsync(
        PlanView view,
        (DateOnly First, DateOnly Last) span,
        CancellationToken cancel
    )
    {
        var shown = await nursery.LoadAsync(cancel);
        var first = NotBefore(view.Today, span.First);
        return first > span.Last
            ? []
            : For(view, AnimalsAndPlants, NurseryTasks.Find(shown.Book, first, span.Last));
    }

    private async Task<IEnumerable<DayTask>> CuttingAsync(
        PlanView view,
        (DateOnly First, DateOnly Last) span,
        CancellationToken cancel
    )
    {
        var shown = await cutting.LoadAsync(cancel);
        var first = NotBefore(view.Today, span.First);
        return first > span.Last ? [] : For(view, Cutting, shown.Tasks(first, span.Last));
    }

    private async Task<IEnumerable<DayTask>> TanksAsync(
        PlanView view,
        (DateOnly First, DateOnly Last) span,
        CancellationToken cancel
    )
    {
        var first = NotBefore(view.Today, span.First);
        return first > span.Last
            ? []
            : For(
                view,
                AnimalsAndPlants,
                RoundTasks.Find((await rounds.LoadAsync(cancel)).Book, first, span.Last)
            );
    }

    private async Task<IEnumerable<DayTask>> VisitsAsync(
        PlanView view,
        (DateOnly First, DateOnly Last) span,
        CancellationToken cancel
    )
    {
        var first = NotBefore(view.Today, span.First);
        if (first > span.Last)
        {
            return [];
        }

        var shown = await visits.LoadAsync(cancel);
        var coming = shown.Coming(span.Last.DayNumber - shown.Tanks.Today.DayNumber);
        return VisitPlan.Tasks(coming, shown.Customer, first);
    }

    private async Task<IEnumerable<DayTask>> ParcelsAsync(
        PlanView view,
        (DateOnly First, DateOnly Last) span,
        CancellationToken cancel
    )
    {
        var first = NotBefore(view.Today, span.First);
        return first > span.Last
            ? []
            : For(view, Packing, await dispatch.TasksAsync((first, span.Last), true, cancel));
    }

    /// <summary>Tasks of nobody go to who usually does a stage of such work.</summary>
    private static IEnumerable<DayTask> For(PlanView view, string stage, IEnumerable<DayTask> tasks)
    {
        var who = view.Calendar.Workers.FirstOrDefault(w => w.Stages.Contains(stage))?.Name ?? "";
        return tasks.Select(t => t.Who.Length == 0 ? t with { Who = who } : t);
    }

    /// <summary>These subjects put what is late on the first day that is asked for: that is today.</summary>
    private static DateOnly NotBefore(DateOnly today, DateOnly first) => first < today ? today : first;
}
