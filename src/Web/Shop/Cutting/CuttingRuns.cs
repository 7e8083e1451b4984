using System.Collections.Concurrent;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.CuttingRoom;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>
/// Searches for cutting plans that run behind the pages: they go on when somebody leaves the page, show the
/// best plan so far, and keep it when they end or are stopped.
/// </summary>
public sealed class CuttingRuns(CutSolver solver, CuttingDesk desk) : IDisposable
{
    /// <summary>Longest search: the usual job is proved long before.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);

    private const string NoPlan = "Stopped before any plan was found.";

    /// <summary>One try of how much stock gives.</summary>
    private static readonly TimeSpan Glance = TimeSpan.FromSeconds(1);

    private readonly ConcurrentDictionary<string, CuttingRun> runs = new(StringComparer.Ordinal);

    /// <summary>Called when a search of some material has news.</summary>
    public event Action? Changed;

    /// <summary>The search of a material, running or ended; null where there was none.</summary>
    /// <param name="key">Key of the material.</param>
    public CuttingRun? Find(string key) => runs.GetValueOrDefault(key);

    /// <summary>Begins to search unless a search of this material runs.</summary>
    /// <param name="material">The material.</param>
    /// <param name="isStockAlone">True to cut what stock gives, the orders wanted first in front.</param>
    /// <returns>The task that ends when the plan is kept.</returns>
    public Task StartAsync(CutMaterial material, bool isStockAlone)
    {
        if (Find(material.Key) is { IsRunning: true })
        {
            return Task.CompletedTask;
        }

        var run = new CuttingRun();
        runs[material.Key] = run;
        return Task.Run(() => SearchAsync(run, material, isStockAlone));
    }

    /// <summary>Ends a search; the best plan so far is kept.</summary>
    /// <param name="key">Key of the material.</param>
    public void Stop(string key) => Find(key)?.Stop.Cancel();

    /// <summary>Forgets how a search ended.</summary>
    /// <param name="key">Key of the material.</param>
    public void Forget(string key)
    {
        if (Find(key) is { IsRunning: false } && runs.TryRemove(key, out var run))
        {
            run.Dispose();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var key in runs.Keys)
        {
            Stop(key);
        }
    }

    private async Task SearchAsync(CuttingRun run, CutMaterial material, bool isStockAlone)
    {
        try
        {
            var draft = isStockAlone ? FromStock(run, material) : TaskDraft.Make(material);
            run.Fault = draft is null ? Nothing(isStockAlone) : solver.Refusal(draft.Task);
            if (draft is not null && run.Fault is null)
            {
                run.Draft = draft;
                var (tried, plan) = Solve(run, draft, Longest);
                await KeepAsync(run, material, tried, plan);
            }
        }
        catch (OperationCanceledException)
        {
            run.Fault = NoPlan;
        }
        finally
        {
            run.IsRunning = false;
            Changed?.Invoke();
        }
    }

    /// <summary>A plan is kept when a checker that shares nothing with the solver finds no fault.</summary>
    private async Task KeepAsync(CuttingRun run, CutMaterial material, TaskDraft draft, CuttingPlan? plan)
    {
        run.Best = plan;
        if (plan is not { Sheets.Count: > 0 })
        {
            run.Fault = run.Stop.IsCancellationRequested ? NoPlan : CutSolver.Short(draft.Task);
        }
        else if (solver.Faults(draft.Task, plan) is { Count: > 0 } faults)
        {
            run.Fault = $"The plan did not pass its check, and was not kept: {faults[0]}";
        }
        else
        {
            (run.Number, run.Fault) = await desk.KeepAsync((n, when) => draft.Keep(n, material, plan, when));
        }
    }

    private TaskDraft? FromStock(CuttingRun run, CutMaterial material) =>
        TaskDraft.FromStock(material, draft =>
            solver.Refusal(draft.Task) is null && Solve(run, draft, Glance).Plan is not null
        );

    /// <summary>
    /// The solver takes one roll at a time: the first that suffices, stock before what is bought.
    /// </summary>
    private (TaskDraft Tried, CuttingPlan? Plan) Solve(CuttingRun run, TaskDraft draft, TimeSpan limit)
    {
        foreach (var tried in draft.OneRollEach().Where(d => solver.Refusal(d.Task) is null))
        {
            if (
                solver.Solve(tried.Task, limit, better => Tell(run, tried, better), run.Stop.Token) is
                { } plan
            )
            {
                return (tried, plan);
            }
        }

        return (draft, null);
    }

    private void Tell(CuttingRun run, TaskDraft draft, CuttingPlan better)
    {
        (run.Draft, run.Best) = (draft, better);
        Changed?.Invoke();
    }

    private static string Nothing(bool isStockAlone) =>
        isStockAlone
            ? "Stock does not give even the first part. Buy a sheet, or plan with sheets to buy."
            : "There is nothing to cut, or no sheet of a known size in stock or on offer.";
}

/// <summary>One search as it stands.</summary>
public sealed class CuttingRun : IDisposable
{
    /// <summary>True while it searches.</summary>
    public bool IsRunning { get; internal set; } = true;

    /// <summary>The best plan so far; null before the first.</summary>
    public CuttingPlan? Best { get; internal set; }

    /// <summary>What is searched; null before it is known.</summary>
    public TaskDraft? Draft { get; internal set; }

    /// <summary>Number it was kept under; 0 before.</summary>
    public int Number { get; internal set; }

    /// <summary>Why there is no plan; null where there is one, or it runs.</summary>
    public string? Fault { get; internal set; }

    internal CancellationTokenSource Stop { get; } = new();

    /// <inheritdoc/>
    public void Dispose() => Stop.Dispose();
}
