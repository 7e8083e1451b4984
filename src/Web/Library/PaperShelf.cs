using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Judging.Levers;
using Litterfall.Store;
using Litterfall.Web.Sharing;

namespace Litterfall.Web.Library;

/// <summary>
/// Papers by what they are made from. Asking again for what has not changed gives the kept ones; papers of
/// the designs asked for longest ago go first.
/// </summary>
public sealed class PaperShelf(BenchPlace? place = null)
{
    private const int Most = 12;

    // What is computed before the first paper takes as long as so many papers.
    private const int First = 12;
    private readonly Lock gate = new();
    private readonly Dictionary<string, Job> kept = new(StringComparer.Ordinal);
    private readonly List<string> order = [];

    /// <summary>Where other machines reach the bench: a phone that scans a code opens the tank.</summary>
    private string Link => place?.Urls.FirstOrDefault() is { } url ? $"{url.TrimEnd('/')}/t/" : "";

    /// <summary>
    /// All papers of a design; null where it is not there or cannot be computed. Work that nobody waits for
    /// any more stops.
    /// </summary>
    /// <param name="id">The design.</param>
    /// <param name="wish">Sheet, and whether with the slips.</param>
    /// <param name="from">What papers are written from.</param>
    /// <param name="progress">Told how many of how many steps are done.</param>
    /// <param name="cancel">Who asked has left.</param>
    public async Task<PaperSet?> SetAsync(
        Guid id,
        (string? Sheet, bool Slips) wish,
        PaperSources from,
        IProgress<(int Done, int Of)>? progress = null,
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
            $"{today:O}|{id}|{size}|{wish.Slips}|{library.Mark}|{Link}|{DesignHash.Of(stored.Text)}"
        );
        var paper = new PaperWish(size, today, options.Version, false)
        {
            Slips = wish.Slips,
            Link = Link,
        };
        var job = Ask(key, (stop, told) => Written(design, paper, Fingerprint.Of(key)[..16], told, stop));
        job.Watch(progress);
        try
        {
            return await job.Papers.WaitAsync(cancel);
        }
        finally
        {
            job.Unwatch(progress);
            Leave(key, job);
        }
    }

    private static PaperSet Written(
        CheckedDesign design,
        PaperWish wish,
        string mark,
        Action<int, int> told,
        CancellationToken stop
    )
    {
        told(0, First + 1);
        var result = DesignRun.Execute(new DesignNumbers(design), stop);
        var settings = SettingsCard.Of(result.Numbers);
        stop.ThrowIfCancellationRequested();
        var papers = PaperList.Write(
            new PaperJob(result, wish, settings),
            (done, of) => told(First + done, First + of),
            stop
        );
        foreach (var paper in papers)
        {
            stop.ThrowIfCancellationRequested();

            // Written out here, in the turn of the machine that was asked for.
            _ = paper.Bytes;
        }

        return new(papers, mark, design.Design.Boxes, BatchRow.Of(result));
    }

    /// <summary>Asks for papers that are kept, on their way, or begun now.</summary>
    private Job Ask(string key, Func<CancellationToken, Action<int, int>, PaperSet> write)
    {
        lock (gate)
        {
            if (!kept.TryGetValue(key, out var job))
            {
                var made = job = new();
                job.Papers = Turns.OfMachine.RunAsync(
                    WorkKind.Whole,
                    () => write(made.Stop.Token, made.Tell),
                    made.Stop.Token
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

    private sealed class Job
    {
        private ImmutableList<IProgress<(int Done, int Of)>> watchers = [];

        public Task<PaperSet> Papers { get; set; } = null!;

        public CancellationTokenSource Stop { get; } = new();

        public int Askers { get; set; }

        public void Watch(IProgress<(int Done, int Of)>? watcher) =>
            ImmutableInterlocked.Update(ref watchers, all => watcher is null ? all : all.Add(watcher));

        public void Unwatch(IProgress<(int Done, int Of)>? watcher) =>
            ImmutableInterlocked.Update(ref watchers, all => watcher is null ? all : all.Remove(watcher));

        public void Tell(int done, int of)
        {
            foreach (var watcher in watchers)
            {
                watcher.Report((done, of));
            }
        }
    }
}
