using System.Collections.Concurrent;
using System.Globalization;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.DesignFile;
using Litterfall.Judging;
using Litterfall.Judging.Levers;

namespace Litterfall.Web.Library;

/// <summary>
/// Papers by what they are made from. Asking again for what has not changed gives the kept ones; papers of
/// the designs asked for longest ago go first.
/// </summary>
public sealed class PaperShelf
{
    private const int Most = 12;
    private readonly ConcurrentDictionary<string, Lazy<Task<IReadOnlyList<PaperFile>>>> kept = new(
        StringComparer.Ordinal
    );
    private readonly ConcurrentQueue<string> order = new();

    /// <summary>All papers of a design; null where it is not there or cannot be computed.</summary>
    /// <param name="id">The design.</param>
    /// <param name="wish">Sheet, and whether with the slips.</param>
    /// <param name="from">What papers are written from.</param>
    public async Task<IReadOnlyList<PaperFile>?> FilesAsync(
        Guid id,
        (string? Sheet, bool Slips) wish,
        PaperSources from
    )
    {
        var (store, library, options, _) = from;
        if (
            await store.DesignAsync(id) is not { } stored
            || DesignReader.Read(stored.Name, stored.Text).Value is not { } document
            || library.Check(document) is not { Value: { } design, IsGood: true }
        )
        {
            return null;
        }

        var size = wish.Sheet == "letter" ? PaperSize.Letter : PaperSize.A4;
        var key = string.Create(
            CultureInfo.InvariantCulture,
            $"{id}|{size}|{wish.Slips}|{design.Catalog.GetHashCode()}|{DesignHash.Of(stored.Text)}"
        );
        var papers = kept.GetOrAdd(key, k =>
        {
            order.Enqueue(k);
            return new(() =>
                Task.Run<IReadOnlyList<PaperFile>>(() =>
                {
                    var result = DesignRun.Execute(design);
                    var paper = new PaperWish(size, null, options.Version, false) { Slips = wish.Slips };
                    var job = new PaperJob(result, paper, SettingsCard.Of(result.Numbers));
                    return [.. PaperList.Write(job)];
                })
            );
        });
        while (kept.Count > Most && order.TryDequeue(out var oldest))
        {
            kept.TryRemove(oldest, out _);
        }

        try
        {
            return await papers.Value;
        }
        catch
        {
            kept.TryRemove(key, out _);
            throw;
        }
    }
}
