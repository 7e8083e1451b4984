using Litterfall.Domain.DesignFile;
using Litterfall.Judging;
using Litterfall.Store;
using Litterfall.Web.Library;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Litterfall.Web.Desk;

/// <summary>
/// Computes in the background the verdict of designs nobody has opened since they came in, one after the
/// other and only while nobody works.
/// </summary>
public sealed partial class VerdictKeeper(
    BenchStore store,
    BenchLibrary library,
    TimeProvider clock,
    ILogger<VerdictKeeper> log
) : BackgroundService
{
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(4);
    private long lastChange;
    private Guid judged;
    private bool isLoaded;

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var watch = store.Watch(
            (id, _) =>
            {
                if (id != judged)
                {
                    Interlocked.Exchange(ref lastChange, clock.GetTimestamp());
                }
            }
        );
        try
        {
            while (true)
            {
                await Task.Delay(Quiet, clock, stoppingToken);
                await RoundAsync(stoppingToken);
            }
        }
        catch (OperationCanceledException)
        {
            // The bench closes.
        }
    }

    /// <summary>What goes wrong with the store is told; the bench goes on without verdicts.</summary>
    private async Task RoundAsync(CancellationToken cancel)
    {
        try
        {
            if (!isLoaded)
            {
                await library.LoadAsync(cancel);
                isLoaded = true;
            }

            while (IsQuiet && await NextAsync(cancel))
            {
                await Task.Yield();
            }
        }
        catch (Exception trouble) when (trouble is not OperationCanceledException)
        {
            Failed(log, "the list", trouble);
        }
    }

    private bool IsQuiet =>
        Interlocked.Read(ref lastChange) is var last && (last == 0 || clock.GetElapsedTime(last) > Quiet);

    /// <summary>Judges one design; false where none is left.</summary>
    private async Task<bool> NextAsync(CancellationToken cancel)
    {
        var next = (await store.DesignsAsync(cancel)).FirstOrDefault(d => d.Verdict is null);
        if (next is null || await store.DesignAsync(next.Id, cancel) is not { } stored)
        {
            return false;
        }

        string verdict;
        try
        {
            verdict =
                DesignReader.Read(stored.Name, stored.Text).Value is { } document
                && library.Check(document) is { Value: { } design, IsGood: true }
                    ? Verdict.Of(
                        await Task.Run(() => DesignRun.Execute(design), cancel),
                        UnitPreferences.Metric
                    )
                    : "Cannot be calculated as entered.";
        }
        catch (Exception trouble) when (trouble is not OperationCanceledException)
        {
            Failed(log, stored.Name, trouble);
            verdict = "Could not be calculated.";
        }

        judged = stored.Id;
        await store.JudgeAsync(stored.Id, stored.Version, verdict, cancel);
        judged = default;
        return true;
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "no verdict for {Design}")]
    private static partial void Failed(ILogger log, string design, Exception trouble);
}
