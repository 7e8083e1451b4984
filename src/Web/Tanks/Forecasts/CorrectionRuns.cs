using System.Collections.Concurrent;
using Litterfall.Running.Correcting;

namespace Litterfall.Web.Tanks.Forecasts;

/// <summary>
/// Corrections that run behind the pages: they go on when somebody leaves the page, tell how far they are,
/// and stay until the log grows.
/// </summary>
public sealed class CorrectionRuns : IDisposable
{
    private readonly ConcurrentDictionary<string, CorrectionRun> runs = new(StringComparer.Ordinal);

    /// <summary>Called when a correction has news.</summary>
    public event EventHandler? Changed;

    /// <summary>The correction of a tank, running or ended; null where there was none.</summary>
    /// <param name="code">Number of the tank.</param>
    public CorrectionRun? Find(string code) => runs.GetValueOrDefault(code);

    /// <summary>Begins to compute unless it does already.</summary>
    /// <param name="code">Number of the tank.</param>
    /// <param name="tank">What is known of it.</param>
    public Task StartAsync(string code, TankCase tank)
    {
        if (Find(code) is { IsRunning: true })
        {
            return Task.CompletedTask;
        }

        var run = new CorrectionRun(tank);
        runs[code] = run;
        return Task.Run(() => Compute(run));
    }

    /// <summary>Ends a correction.</summary>
    /// <param name="code">Number of the tank.</param>
    public void Stop(string code) => Find(code)?.Stop.Cancel();

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var run in runs.Values)
        {
            run.Stop.Cancel();
        }
    }

    private void Compute(CorrectionRun run)
    {
        try
        {
            run.Result = Corrector.Run(
                run.Tank,
                new CorrectionWish(),
                share => Tell(run, share),
                run.Stop.Token
            );
            run.Fault = run.Result is null
                ? "The forecast of this design did not come out. Open the design and check what it says."
                : null;
        }
        catch (OperationCanceledException)
        {
            run.Fault = "Stopped before it was done.";
        }
        finally
        {
            run.IsRunning = false;
            Changed?.Invoke(this, EventArgs.Empty);
        }
    }

    /// <summary>Pages hear of every twentieth part.</summary>
    private void Tell(CorrectionRun run, double share)
    {
        var part = (int)(20 * share);
        if (part > run.Twentieths)
        {
            run.Twentieths = part;
            Changed?.Invoke(this, EventArgs.Empty);
        }
    }
}

/// <summary>One correction as it stands.</summary>
/// <param name="tank">What is known of the tank.</param>
public sealed class CorrectionRun(TankCase tank)
{
    /// <summary>What is known of the tank.</summary>
    public TankCase Tank => tank;

    /// <summary>True while it computes.</summary>
    public bool IsRunning { get; internal set; } = true;

    /// <summary>Twentieths done.</summary>
    public int Twentieths { get; internal set; }

    /// <summary>What came out; null before, and where nothing did.</summary>
    public TankCorrection? Result { get; internal set; }

    /// <summary>Why nothing came out.</summary>
    public string? Fault { get; internal set; }

    internal CancellationTokenSource Stop { get; } = new();
}
