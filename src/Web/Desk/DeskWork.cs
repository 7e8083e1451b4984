using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Store;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk;

/// <summary>
/// One person at one design: every change is a version at once, a drag when it ends. What others change
/// arrives by itself; a change made at the same time is kept beside theirs and told.
/// </summary>
public sealed partial class DeskWork : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    private readonly BenchStore store;
    private readonly BenchLibrary library;
    private readonly IDisposable watch;
    private readonly DeskRun run;
    private readonly Action changed;
    private StoredDesign stored;
    private DesignDocument document;
    private DesignDocument? kept;
    private readonly SemaphoreSlim saving = new(1);
    private readonly CancellationTokenSource leaving = new();
    private string? pending;
    private int writing;

    private DeskWork(BenchStore store, BenchLibrary library, StoredDesign stored, Action changed)
    {
        this.store = store;
        this.library = library;
        this.stored = stored;
        this.changed = changed;
        document = DesignReader.Read(stored.Name, stored.Text).Value!;
        run = new DeskRun(library, Computed);
        run.Begin(document);
        watch = store.Watch(Elsewhere);
        library.Changed += Anew;
    }

    /// <summary>What is shown.</summary>
    public DeskLook Look => run.Look!;

    /// <summary>True while the map of light is looked at.</summary>
    public bool WantsLight
    {
        get => run.WantsLight;
        set => run.WantsLight = value;
    }

    /// <summary>The design of the store.</summary>
    public Guid Id => stored.Id;

    /// <summary>The version worked on.</summary>
    public int Version => stored.Version;

    /// <summary>True where a version before this one is known.</summary>
    public bool CanUndo => stored.Parent > 0;

    /// <summary>True after an undo.</summary>
    public bool CanRedo { get; private set; }

    /// <summary>
    /// Somebody else's version beside which the last change was kept; null where there is none.
    /// </summary>
    public SaveOutcome? Conflict { get; private set; }

    /// <summary>True where a version of somebody else just came in.</summary>
    public bool CameFromElsewhere { get; private set; }

    /// <summary>The design as shown.</summary>
    public DesignDocument Document => document;

    /// <summary>
    /// Why what is shown is not saved yet, one clause; null where all is. It is tried again until it is.
    /// </summary>
    public string? Unsaved { get; private set; }

    /// <summary>A design that is tried beside the present one; null where none is.</summary>
    public DeskTrial? Trial { get; private set; }

    /// <summary>Sits down at a design; null where it is not there or cannot be read.</summary>
    public static async Task<DeskWork?> OpenAsync(
        BenchStore store,
        BenchLibrary library,
        Guid id,
        Action changed
    )
    {
        var found = await store.DesignAsync(id);
        return found is null || DesignReader.Read(found.Name, found.Text).Value is null
            ? null
            : new DeskWork(store, library, found, changed)
            {
                CanRedo = await store.LastChildAsync(id, found.Version) is not null,
            };
    }

    /// <summary>A change that is saved at once; its faults where it cannot be.</summary>
    /// <param name="edit">Gives the changed document.</param>
    /// <param name="note">What is changed, in words.</param>
    public async Task<ImmutableArray<TextFault>> ChangeAsync(
        Func<DesignDocument, Reading<DesignDocument>> edit,
        string note
    )
    {
        var reading = edit(kept ?? document);
        if (reading.Value is not { } next || !reading.IsGood)
        {
            return [.. reading.Faults];
        }

        kept = null;
        if (next.Text == stored.Text && pending is null)
        {
            return [];
        }

        // A design that came with faults is put right one value at a time.
        if (Look.Faults.IsEmpty && library.Check(next) is { IsGood: false } faulty)
        {
            return [.. faulty.Faults];
        }

        LeaveTried();
        document = next;
        run.Begin(next);
        changed();
        await SaveAsync(note);
        return [];
    }

    /// <summary>A passing change of a drag: shown, not saved.</summary>
    /// <param name="edit">Gives the changed document, from the one before the drag.</param>
    public void Pass(Func<DesignDocument, Reading<DesignDocument>> edit)
    {
        kept ??= document;
        var reading = edit(kept);
        if (reading.Value is { } next && reading.IsGood && library.Check(next).IsGood)
        {
            LeaveTried();
            document = next;
            run.Begin(next, isPassing: true);
            changed();
        }
    }

    /// <summary>Ends a drag: what is shown is saved.</summary>
    /// <param name="note">What was changed.</param>
    public async Task DropAsync(string note)
    {
        if (kept is null)
        {
            return;
        }

        kept = null;
        if (document.Text != stored.Text)
        {
            run.Begin(document);
            changed();
            await SaveAsync(note);
        }
    }

    /// <summary>Back to the version this one was made from.</summary>
    public async Task UndoAsync()
    {
        if (await IsSavedAsync() && stored.Parent > 0)
        {
            await GoToAsync(stored.Parent);
        }
    }

    /// <summary>Forth to the version made last from this one.</summary>
    public async Task RedoAsync()
    {
        if (await IsSavedAsync() && await store.LastChildAsync(Id, stored.Version) is { } child)
        {
            await GoToAsync(child);
        }
    }

    /// <summary>To any version.</summary>
    public async Task GoToAsync(int version)
    {
        writing++;
        try
        {
            if (await store.GoToAsync(Id, version) is { } there)
            {
                await TakeAsync(there);
            }
        }
        finally
        {
            writing--;
        }
    }

    /// <summary>Tries once more to save what is not; true where all is saved.</summary>
    public async Task<bool> IsSavedAsync()
    {
        await TrySaveAsync();
        return pending is null;
    }

    /// <summary>Stops what is computed while nobody looks.</summary>
    public void Pause()
    {
        run.Pause();
        Trial?.Pause();
    }

    /// <summary>Computes again where it was stopped.</summary>
    public void Resume()
    {
        run.Begin(document);
        changed();
    }

    /// <summary>Takes one side of a conflict: ours becomes the one worked on, or theirs stays.</summary>
    public async Task SettleAsync(bool ours)
    {
        if (Conflict is { } conflict)
        {
            Conflict = null;
            await GoToAsync(ours ? conflict.Saved.Version : conflict.Other!.Version);
        }
    }

    /// <summary>Tries a change beside the present design.</summary>
    public void Try(DesignDocument changedDocument, string note)
    {
        Trial?.Dispose();
        TriedChanges = [];
        Trial = new DeskTrial(library, changedDocument, (note, Look), changed);
        changed();
    }

    /// <summary>Keeps what is tried, or drops it.</summary>
    public async Task EndTrialAsync(bool keep)
    {
        var trial = Trial;
        Trial = null;
        TriedChanges = [];
        if (keep && trial is not null)
        {
            await ChangeAsync(_ => new Reading<DesignDocument>(trial.Look.Document, []), trial.Note);
        }

        trial?.Dispose();
        changed();
    }

    /// <summary>Waits until nothing is left to compute.</summary>
    public Task Settled => run.Done;

    /// <inheritdoc/>
    public void Dispose()
    {
        library.Changed -= Anew;
        making.Cancel();
        leaving.Cancel();
        watch.Dispose();
        run.Dispose();
        Trial?.Dispose();
    }

    /// <summary>The library has changed under the design.</summary>
    private void Anew(object? sender, EventArgs e)
    {
        run.Begin(document);
        changed();
    }

    private async Task SaveAsync(string note)
    {
        pending = pending is null ? note : $"{pending}; {note}";
        await TrySaveAsync();
        if (Unsaved is not null)
        {
            _ = AgainAsync();
        }
    }

    /// <summary>
    /// Saves what is shown, one change after the other. Where the disk does not take it, it stays as it is
    /// and is told.
    /// </summary>
    private async Task TrySaveAsync()
    {
        await saving.WaitAsync();
        writing++;
        try
        {
            if (pending is not { } note)
            {
                return;
            }

            var shown = kept ?? document;
            var outcome = await store.SaveAsync(Id, stored.Version, (shown.Design.Name, shown.Text, note));
            // What came in meanwhile waits for its own turn.
            pending = pending == note ? null : pending![note.Length..].TrimStart(';', ' ');
            stored = outcome.Saved;
            Unsaved = null;
            CanRedo = false;
            Conflict = outcome.Other is null ? null : outcome;
            CameFromElsewhere = false;
        }
        catch (Exception e) when (StoreTrouble.Words(e) is { } words)
        {
            Unsaved = words;
        }
        finally
        {
            writing--;
            saving.Release();
        }

        changed();
    }

    /// <summary>Every two seconds, until it is saved or the desk is left.</summary>
    private async Task AgainAsync()
    {
        while (Unsaved is not null && !leaving.IsCancellationRequested)
        {
            // Back on the desk's own line of work, where no change comes between two steps of a save.
            await Task.Delay(Patience, leaving.Token)
                .ConfigureAwait(
                    ConfigureAwaitOptions.SuppressThrowing | ConfigureAwaitOptions.ContinueOnCapturedContext
                );
            await TrySaveAsync();
        }
    }

    private async Task TakeAsync(StoredDesign there)
    {
        stored = there;
        kept = null;
        LeaveTried();
        document = DesignReader.Read(there.Name, there.Text).Value!;
        CanRedo = await store.LastChildAsync(Id, there.Version) is not null;
        run.Begin(document);
        changed();
    }

    /// <summary>
    /// Somebody changed this design: taken over, unless a hand drags or a conflict is open.
    /// </summary>
    private void Elsewhere(Guid id, int version)
    {
        var isFree = writing == 0 && pending is null && kept is null && Conflict is null;
        if (id == Id && isFree && version != stored.Version)
        {
            _ = FollowAsync(version);
        }
    }

    private async Task FollowAsync(int version)
    {
        try
        {
            if (await store.DesignAsync(Id) is { } there && there.Version != stored.Version)
            {
                CameFromElsewhere = true;
                await TakeAsync(there);
            }
        }
        catch (Exception e) when (StoreTrouble.Words(e) is not null)
        {
            // The next change of theirs, or of ours, brings it.
        }
    }

    private void Computed(DeskLook look)
    {
        // A verdict belongs to the text it was computed of; that text may not be saved yet.
        var (version, text) = (stored.Version, stored.Text);
        if (
            look is { Whole: { } whole, Fixes.IsEmpty: true, HasFixes: false, WholeIsOld: false }
            && look.Document.Text == text
        )
        {
            _ = JudgeAsync(version, Verdict.Of(whole, UnitPreferences.Metric));
        }

        changed();
    }

    /// <summary>The list's verdict; where it cannot be kept now, it is computed again some time.</summary>
    private async Task JudgeAsync(int version, string verdict)
    {
        try
        {
            await store.JudgeAsync(Id, version, verdict, leaving.Token);
        }
        catch (Exception e) when (e is OperationCanceledException || StoreTrouble.Words(e) is not null)
        {
            // Nothing is lost by it.
        }
    }
}

/// <summary>A design that is tried and computed beside the present one.</summary>
public sealed class DeskTrial : IDisposable
{
    private readonly DeskRun run;

    /// <summary>Begins to compute it.</summary>
    /// <param name="library">The library.</param>
    /// <param name="document">The changed design.</param>
    /// <param name="of">What it changes, in words, and the design it is tried beside.</param>
    /// <param name="changed">Called when something is ready.</param>
    public DeskTrial(
        BenchLibrary library,
        DesignDocument document,
        (string Note, DeskLook Beside) of,
        Action changed
    )
    {
        Note = of.Note;
        run = new DeskRun(library, _ => changed()) { WantsFixes = false, Beside = of.Beside };
        run.Begin(document);
    }

    /// <summary>What is tried, in words.</summary>
    public string Note { get; }

    /// <summary>What is computed of it so far.</summary>
    public DeskLook Look => run.Look!;

    /// <summary>Stops what is computed.</summary>
    public void Pause() => run.Pause();

    /// <inheritdoc/>
    public void Dispose() => run.Dispose();
}
