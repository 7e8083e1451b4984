namespace Litterfall.Web.Sharing;

/// <summary>What waits for a core, the most urgent first.</summary>
public enum WorkKind
{
    /// <summary>A month under a hand that drags or a change just made.</summary>
    Month,

    /// <summary>A whole check, or papers.</summary>
    Whole,

    /// <summary>What would fix findings.</summary>
    Search,
}

/// <summary>
/// Forecasts of all desks take turns, first come first served within their kind, on all cores but one: that
/// one stays with the drawings, which wait for nobody. Every fourth turn goes to what has waited behind
/// months. What nobody waits for any more leaves the queue at once.
/// </summary>
public sealed class Turns(int cores)
{
    private const int Share = 4;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);
    private readonly Lock gate = new();
    private readonly LinkedList<Turn>[] waiting = [new(), new(), new()];
    private int free = Math.Max(1, cores - 1);
    private int turns;

    /// <summary>The queue of this machine.</summary>
    public static Turns OfMachine { get; } = new(Environment.ProcessorCount);

    /// <summary>How much waits.</summary>
    public int Waiting
    {
        get
        {
            lock (gate)
            {
                return waiting.Sum(w => w.Count);
            }
        }
    }

    /// <summary>Holds the thread of a search while others wait for a month or a check.</summary>
    /// <param name="cancel">Ends the search.</param>
    public void StandBack(CancellationToken cancel)
    {
        while (Waiting > 0)
        {
            cancel.ThrowIfCancellationRequested();
            cancel.WaitHandle.WaitOne(Pause);
        }
    }

    /// <summary>Waits for a turn and does the work in it, away from the thread of the caller.</summary>
    /// <param name="kind">How urgent.</param>
    /// <param name="work">The work.</param>
    /// <param name="cancel">Gives the turn up while it waits.</param>
    public async Task<T> RunAsync<T>(WorkKind kind, Func<T> work, CancellationToken cancel)
    {
        await TakeAsync(kind, cancel);
        try
        {
            cancel.ThrowIfCancellationRequested();
            return await Task.Run(work, CancellationToken.None);
        }
        finally
        {
            Give();
        }
    }

    private async Task TakeAsync(WorkKind kind, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        Turn turn;
        lock (gate)
        {
            if (free > 0)
            {
                free--;
                return;
            }

            turn = new(new(TaskCreationOptions.RunContinuationsAsynchronously));
            turn.Place = waiting[(int)kind].AddLast(turn);
        }

        await using var leave = cancel.Register(() => Leave(kind, turn, cancel));
        await turn.Come.Task;
    }

    private void Leave(WorkKind kind, Turn turn, CancellationToken cancel)
    {
        lock (gate)
        {
            if (turn.Place is null)
            {
                return;
            }

            waiting[(int)kind].Remove(turn.Place);
            turn.Place = null;
        }

        turn.Come.TrySetCanceled(cancel);
    }

    private void Give()
    {
        Turn? next;
        lock (gate)
        {
            next = Next();
            if (next is null)
            {
                free++;
                return;
            }

            next.Place = null;
        }

        next.Come.TrySetResult();
    }

    private Turn? Next()
    {
        turns++;
        var order = turns % Share == 0 ? new[] { 1, 2, 0 } : [0, 1, 2];
        foreach (var kind in order)
        {
            if (waiting[kind].First is { } first)
            {
                waiting[kind].RemoveFirst();
                return first.Value;
            }
        }

        return null;
    }

    private sealed class Turn(TaskCompletionSource come)
    {
        public TaskCompletionSource Come { get; } = come;

        public LinkedListNode<Turn>? Place { get; set; }
    }
}
