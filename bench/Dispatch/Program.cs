using System.Collections.Immutable;
using System.Diagnostics;
using Litterfall.Bench.Dispatch;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Catalog;

// A parcel with 500 journeys and the search for a way of packing on one day, and the week of ten orders.
var root = args.Length > 0 ? args[0] : Path.Combine("catalog");
var catalog = CatalogReader.Read([
    .. Directory
        .EnumerateFiles(root, "*.json", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal)
        .Select(f => new CatalogFile(Path.GetRelativePath(root, f).Replace('\\', '/'), File.ReadAllText(f))),
]);
foreach (var (name, low, high) in new[] { ("mild", 16, 22), ("cold", 5, 10), ("warm", 20, 29) })
{
    var day = MadeUpOrders.Order(catalog, 0, low, high) with { Days = 1 };
    Tell($"one day, {name}", Times(20, () => WeekJudge.Judge(day, CancellationToken.None)));
}

ImmutableArray<WeekTask> ten =
[
    .. Enumerable.Range(0, 10).Select(i => MadeUpOrders.Order(catalog, i, 4 + (2 * i), 11 + (2 * i))),
];
Tell("week of ten orders", Times(9, () => WeekJudge.Judge(ten, CancellationToken.None)));

static List<double> Times(int count, Func<object> work)
{
    GC.KeepAlive(work());
    var times = new List<double>();
    for (var i = 0; i < count; i++)
    {
        var watch = Stopwatch.StartNew();
        GC.KeepAlive(work());
        times.Add(watch.Elapsed.TotalMilliseconds);
    }

    times.Sort();
    return times;
}

static void Tell(string what, List<double> times) =>
    Console.WriteLine(
        FormattableString.Invariant(
            $"{what}: median {times[times.Count / 2]:0.0} ms, longest {times[^1]:0.0} ms"
        )
    );
