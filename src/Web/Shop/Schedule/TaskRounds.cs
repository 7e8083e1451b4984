using Litterfall.Domain.Schedule;
using Litterfall.Web.Shop.Cultures;
using Litterfall.Web.Shop.Nursery;
using Litterfall.Workshop.Cultures;
using Litterfall.Workshop.Nursery;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Schedule;

/// <summary>Writes a round of feeding or looking for all its cultures or trays, in one step.</summary>
public sealed class TaskRounds(CultureDesk cultures, NurseryDesk nursery)
{
    /// <summary>Ticks a round off; null where it is written, else why not.</summary>
    /// <param name="task">The task; it names its cultures or trays.</param>
    public Task<string?> DoneAsync(DayTask task) =>
        task.Kind == TaskKind.Nursery ? TraysAsync(task)
        : CultureTasks.IsFeeding(task) ? CulturesAsync(task, "fed", Feed)
        : CulturesAsync(task, "looked at, nothing found", Look);

    private static Domain.Cultures.Culture Feed(
        Domain.Cultures.Culture culture,
        (DateOnly Day, string Who) when
    ) => culture with { Feedings = [.. culture.Feedings, new(when.Day, "", when.Who)] };

    private static Domain.Cultures.Culture Look(
        Domain.Cultures.Culture culture,
        (DateOnly Day, string Who) when
    ) => culture with { Looks = [.. culture.Looks, new(when.Day, "", when.Who)] };

    private async Task<string?> CulturesAsync(
        DayTask task,
        string note,
        Func<Domain.Cultures.Culture, (DateOnly, string), Domain.Cultures.Culture> change
    )
    {
        var view = await cultures.LoadAsync();
        var when = await cultures.NowAsync();
        var due = view.Book.Standing.Where(c => task.Subjects.Contains(c.Number));
        return await cultures.WriteAsync(
            view,
            new CultureStep([.. due.Select(c => change(c, when))], new StockStep([], []), note)
        );
    }

    private async Task<string?> TraysAsync(DayTask task)
    {
        var view = await nursery.LoadAsync();
        var when = await nursery.NowAsync();
        var seen = view
            .Book.Standing.Where(t => task.Subjects.Contains(t.Number))
            .SelectMany(t => NurserySteps.Inspect(view.Book, t, "", when).Trays);
        return await nursery.WriteAsync(
            view,
            new NurseryStep([.. seen], new StockStep([], []), "inspected, nothing found")
        );
    }
}
