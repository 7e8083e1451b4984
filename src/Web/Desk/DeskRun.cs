using System.Diagnostics;
using Litterfall.Documents.Views;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Judging.Fixes;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;

namespace Litterfall.Web.Desk;

/// <summary>
/// Computes a design in stages, each shown as it is ready: sizes and drawing at once, a month of air and
/// floor within a tenth of a second, then light, crew, bands, findings, and last what would fix these. The
/// next change cancels what is left of the last.
/// </summary>
/// <param name="library">The library.</param>
/// <param name="show">Called with each look as it is ready.</param>
public sealed class DeskRun(BenchLibrary library, Action<DeskLook> show) : IDisposable
{
    private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(250);

    // What would fix a finding is looked for by one at a time: it may take seconds.
    private static readonly SemaphoreSlim Searches = new(1);
    private readonly Lock gate = new();
    private CancellationTokenSource running = new();
    private CancellationTokenSource pausing = new();
    private (DeskLook Look, bool IsPassing)? next;
    private bool isBusy;
    private DeskLook? last;

    /// <summary>False where nobody asks what would fix its findings, as of a design that is tried.</summary>
    public bool WantsFixes { get; init; } = true;

    /// <summary>A design computed before, of which what no change reaches is taken over.</summary>
    public DeskLook? Beside
    {
        init => last = value is null ? null : value with { Fixes = [], HasFixes = false };
    }

    /// <summary>True while the map of light is looked at: then it comes first.</summary>
    public bool WantsLight { get; set; }

    /// <summary>Work of the change that was begun last; done when nothing is left to compute.</summary>
    public Task Done { get; private set; } = Task.CompletedTask;

    /// <summary>
    /// What is shown: the newest document with what is computed of it. Work on a document before never comes
    /// back over it.
    /// </summary>
    public DeskLook? Look
    {
        get
        {
            lock (gate)
            {
                return last;
            }
        }
    }

    /// <summary>Begins with a document: its shape is ready when this returns.</summary>
    /// <param name="document">The design.</param>
    /// <param name="isPassing">True while a hand drags: no findings are searched.</param>
    public DeskLook Begin(DesignDocument document, bool isPassing = false)
    {
        var look = Shape(document);
        lock (gate)
        {
            running.Cancel();
            last = look;
            next = look.Checked is null ? null : (look, isPassing);
            if (next is not null && !isBusy)
            {
                isBusy = true;
                Done = Task.Run(WorkAsync, CancellationToken.None);
            }
        }

        return look;
    }

    /// <summary>Stops what is computed, until the next beginning.</summary>
    public void Pause()
    {
        lock (gate)
        {
            next = null;
            running.Cancel();
            pausing.Cancel();
            pausing = new CancellationTokenSource();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Pause();

    /// <summary>
    /// One worker for each desk. Its place in the row is kept while the hand moves on: when its turn comes it
    /// takes the newest look and leaves out those between, so that a drag neither piles up work nor starves.
    /// </summary>
    private async Task WorkAsync()
    {
        while (IsWanted(out var pause))
        {
            Step? step = null;
            try
            {
                await Turns.OfMachine.RunAsync(
                    WorkKind.Month,
                    () =>
                    {
                        step = Newest();
                        step = step is null ? null : step with { Look = Monthly(step) };
                        return step;
                    },
                    pause
                );
                if (step is { IsPassing: false })
                {
                    await WholeAsync(step.Look, step.Cancel);
                }
            }
            catch (OperationCanceledException)
            {
                // The next change is on its way, or the desk is left.
            }
            catch (Exception trouble) when (step is not null)
            {
                Failed(step, trouble);
            }
        }
    }

    /// <summary>False where nothing is left to compute: the worker ends.</summary>
    private bool IsWanted(out CancellationToken pause)
    {
        lock (gate)
        {
            pause = pausing.Token;
            isBusy = next is not null;
            return isBusy;
        }
    }

    private Step? Newest()
    {
        lock (gate)
        {
            if (next is not { } one)
            {
                return null;
            }

            next = null;
            running = new CancellationTokenSource();
            return new(one.Look, one.IsPassing, running.Token);
        }
    }

    private DeskLook Shape(DesignDocument document)
    {
        var reading = library.Check(document);
        if (reading.Value is not { } design || !reading.IsGood)
        {
            return new DeskLook(document)
            {
                Faults = [.. reading.Faults],
                Views = last?.Views,
                Shape = last?.Shape,
                Month = last?.Month,
                MonthIsOld = true,
                Whole = last?.Whole,
                WholeIsOld = true,
                Report = last?.Report,
                Light = last?.Light,
                LightIsOld = true,
            };
        }

        var shape = DesignNumbers.Shape(design, last?.Shape);
        return new DeskLook(document)
        {
            Checked = design,
            Shape = shape,
            Views = new DesignViews(shape, onScreen: true),
            Month = last?.Month,
            MonthIsOld = true,
            Whole = last?.Whole,
            WholeIsOld = true,
            Report = last?.Report ?? CheckReport.Write(shape, []),
            Light = design.Design.Lamps.Count > 0 ? last?.Light : null,
            LightIsOld = true,
        };
    }

    /// <summary>
    /// What goes wrong is told on the desk, unless the next change is on its way, which is computed as ever.
    /// </summary>
    private void Failed(Step step, Exception trouble)
    {
        var fault = new TextFault(
            step.Look.Document.File,
            1,
            1,
            $"our program could not compute it ({trouble.Message})",
            "a number; undo goes back to a design that computes, please report this one"
        );
        if (!step.Cancel.IsCancellationRequested)
        {
            Tell(step.Look with { Faults = [fault] }, CancellationToken.None);
        }
    }

    /// <summary>A month of air and floor; under a hand on the map of light that map alone.</summary>
    private DeskLook Monthly(Step step)
    {
        var (look, isPassing, cancel) = step;
        look = Lit(look, cancel);
        if (isPassing && !look.LightIsOld)
        {
            return look;
        }

        var month = look.Shape!.Upto(Reach.Month);
        var report = CheckReport.Write(month, look.Whole?.Findings ?? []);
        Freshen(month, cancel);
        look = look with
        {
            Month = month,
            MonthIsOld = false,
            Views = new DesignViews(month, onScreen: true),
            Report = report,
        };
        Tell(look, cancel);
        return look;
    }

    /// <summary>The hand has moved on: its month, grey, is still nearer than the one before.</summary>
    private void Freshen(DesignNumbers month, CancellationToken cancel)
    {
        lock (gate)
        {
            if (!cancel.IsCancellationRequested || last is not { MonthIsOld: true, Checked: not null })
            {
                return;
            }

            last = last with { Month = month };
        }

        show(last);
    }

    private sealed record Step(DeskLook Look, bool IsPassing, CancellationToken Cancel);

    /// <summary>The map of light first, while it is looked at.</summary>
    private DeskLook Lit(DeskLook look, CancellationToken cancel)
    {
        if (!WantsLight || look.Shape is not { } shape || shape.Design.Design.Lamps.Count == 0)
        {
            return look;
        }

        look = look with { Light = shape.Upto(Reach.Whole).Light, LightIsOld = false };
        Tell(look, cancel);
        return look;
    }

    /// <summary>Everything, then what would fix each finding.</summary>
    private async Task WholeAsync(DeskLook look, CancellationToken cancel)
    {
        var whole = await Turns.OfMachine.RunAsync(
            WorkKind.Whole,
            () => DesignRun.Execute(look.Shape!.Upto(Reach.Whole), cancel),
            cancel
        );
        look = look with
        {
            Whole = whole,
            WholeIsOld = false,
            Views = new DesignViews(whole.Numbers, onScreen: true),
            Report = whole.Report,
            Light = whole.Numbers.Light,
            LightIsOld = false,
        };
        Tell(look, cancel);
        if (WantsFixes)
        {
            await SearchAsync(() => Fix(look, cancel), cancel);
        }
    }

    /// <summary>A search, one at a time of all desks.</summary>
    /// <param name="search">What is searched.</param>
    /// <param name="cancel">Ends the waiting.</param>
    internal static async Task SearchAsync(Action search, CancellationToken cancel)
    {
        await Searches.WaitAsync(cancel);
        try
        {
            search();
        }
        finally
        {
            Searches.Release();
        }
    }

    /// <summary>Checked fixes, shown as they are found: first what rules know, then levers.</summary>
    private void Fix(DeskLook look, CancellationToken cancel)
    {
        var search = new CheckedFixes(look.Whole!)
        {
            Between = () => Turns.OfMachine.StandBack(cancel),
            Cancel = cancel,
        };
        var told = Stopwatch.GetTimestamp();
        foreach (var fix in search.All())
        {
            look = look with { Fixes = look.Fixes.Add(fix) };
            if (Stopwatch.GetElapsedTime(told) > Often)
            {
                Tell(look, cancel);
                told = Stopwatch.GetTimestamp();
            }
        }

        Tell(look, cancel);
        var (whole, levers) = search.Levers();
        Tell(look with { Whole = whole, Fixes = look.Fixes.AddRange(levers), HasFixes = true }, cancel);
    }

    private void Tell(DeskLook look, CancellationToken cancel)
    {
        lock (gate)
        {
            cancel.ThrowIfCancellationRequested();
            last = look;
        }

        show(look);
    }
}
