using System.Globalization;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Judging.Levers;
using Litterfall.Web.Sharing;

namespace Litterfall.Web.Library;

/// <summary>
/// Papers by what they are made from. Asking again for what has not changed gives the kept ones; papers of
/// the designs asked for longest ago go first.
/// </summary>
public sealed class PaperShelf
{
    private const int Most = 12;
    private readonly Lock gate = new();
    private readonly Dictionary<string, Job> kept = new(StringComparer.Ordinal);
    private readonly List<string> order = [];

    /// <summary>
    /// All papers of a design; null where it is not there or cannot be computed. Work that nobody waits for
    /// any more stops.
    /// </summary>
    /// <param name="id">The design.</param>
    /// <param name="wish">Sheet, and whether with the slips.</param>
    /// <param name="from">What papers are written from.</param>
    /// <param name="cancel">Who asked has left.</param>
    public async Task<IReadOnlyList<PaperFile>?> FilesAsync(
        Guid id,
        (string? Sheet, bool Slips) wish,
        PaperSources from,
        CancellationToken cancel = default
    )
    {
        var (store, library, options, _) = from;
        if (
            await store.DesignAsync(id, cancel) is not { } stored
            || DesignReader.Read(stored.Name, stored.Text).Value is not { } document
            || library.Check(document) is not { Value: { } design, IsGood: true }
        )
        {
            return null;
        }

        var size = wish.Sheet == "letter" ? PaperSize.Letter : PaperSize.A4;
        // Papers of a tank in service count from the day they are made.
        DateOnly? today = design.Design.Start is null
            ? null
            : DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date);
        var key = string.Create(
            CultureInfo.InvariantCulture,
            $"{today:O}|{id}|{size}|{wish.Slips}|{design.Catalog.GetHashCode()}|{DesignHash.Of(stored.Text)}"
        );
        var paper = new PaperWish(size, today, options.Version, false) { Slips = wish.Slips };
        var job = Ask(key, stop => Written(design, paper, stop));
        try
        {
            return await job.Papers.WaitAsync(cancel);
        }
        finally
        {
            Leave(key, job);
        }
    }

    private static IReadOnlyList<PaperFile> Written(
        CheckedDesign design,
        PaperWish wish,
        CancellationToken stop
    )
    {
        var result = DesignRun.Execute(new DesignNumbers(design), stop);
        var settings = SettingsCard.Of(result.Numbers);
        stop.ThrowIfCancellationRequested();
        var papers = PaperList.Write(new PaperJob(result, wish, settings), stop);
        foreach (var paper in papers)
        {
            stop.ThrowIfCancellationRequested();

            // Written out here, in the turn of the machine that was asked for.
            _ = paper.Bytes;
        }

        return papers;
    }

    /// <summary>Asks for papers that are kept, on their way, or begun now.</summary>
    private Job Ask(string key, Func<CancellationToken, IReadOnlyList<PaperFile>> write)
    {
        lock (gate)
        {
            if (!kept.TryGetValue(key, out var job))
            {
                var stop = new CancellationTokenSource();
                job = new(
                    Turns.OfMachine.RunAsync(WorkKind.Whole, () => write(stop.Token), stop.Token),
                    stop
                );
                kept[key] = job;
                order.Add(key);
            }

            job.Askers++;
            while (order.Count > Most && order.FirstOrDefault(k => kept[k].Papers.IsCompleted) is { } oldest)
            {
                order.Remove(oldest);
                kept.Remove(oldest);
            }

            return job;
        }
    }

    /// <summary>The last who asked stops what is not done; what went wrong is not kept.</summary>
    private void Leave(string key, Job job)
    {
        lock (gate)
        {
            job.Askers--;
            var isLeft = job.Askers == 0 && !job.Papers.IsCompleted;
            if (isLeft)
            {
                job.Stop.Cancel();
            }

            var isNothing = isLeft || job.Papers.IsFaulted || job.Papers.IsCanceled;
            if (isNothing && kept.GetValueOrDefault(key) == job)
            {
                kept.Remove(key);
                order.Remove(key);
            }
        }
    }

    private sealed class Job(Task<IReadOnlyList<PaperFile>> papers, CancellationTokenSource stop)
    {
        public Task<IReadOnlyList<PaperFile>> Papers { get; } = papers;

        public CancellationTokenSource Stop { get; } = stop;

        public int Askers { get; set; }
    }
}
