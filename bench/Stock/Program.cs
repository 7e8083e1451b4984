using System.Diagnostics;
using Litterfall.Bench.Stock;
using Litterfall.Workshop.Stock;

// A book of 10,000 lots and 100,000 lines: read whole, grown by one line, traced both ways; beside it the
// same question by reading all lines until nothing new comes.
var (lots, lines) = MadeUpBook.Draw(10_000, 100_000, 7);
var cold = Stopwatch.StartNew();
var book = StockBook.Empty.With(lots, lines);
Console.WriteLine(FormattableString.Invariant($"read whole, cold: {cold.Elapsed.TotalMilliseconds:0} ms"));
Tell("read whole", Times(5, _ => StockBook.Empty.With(lots, lines)));
var less = StockBook.Empty.With(lots, lines.Take(lines.Count - 1));
Tell("one line more", Times(200, _ => less.With([], lines.Skip(lines.Count - 1))));
var dice = new Random(1);
var asked = Enumerable.Range(0, 60).Select(_ => MadeUpBook.Name(dice.Next(0, 6_000))).ToList();
var forward = Times(asked.Count, i => Recall.Trace(book, asked[i]));
var backward = Times(asked.Count, i => Genealogy.Ancestors(book, MadeUpBook.Name(9_999 - i)));
Tell("recall forward, with orders", forward);
Tell("backward", backward);
var brute = Times(asked.Count, i => MadeUpBook.ByBruteForce(lines, asked[i]));
Tell("forward by brute force", brute);
foreach (var lot in asked)
{
    if (!MadeUpBook.ByBruteForce(lines, lot).SetEquals(Genealogy.Descendants(book, lot)))
    {
        throw new InvalidOperationException($"{lot} is traced wrongly.");
    }
}

Console.WriteLine(
    FormattableString.Invariant(
        $"brute force over recall: {brute[brute.Count / 2] / forward[forward.Count / 2]:0.0}"
    )
);

static List<double> Times(int count, Func<int, object?> work)
{
    work(0);
    var times = new List<double>();
    for (var i = 0; i < count; i++)
    {
        var watch = Stopwatch.StartNew();
        GC.KeepAlive(work(i));
        times.Add(watch.Elapsed.TotalMilliseconds);
    }

    times.Sort();
    return times;
}

static void Tell(string what, List<double> times) =>
    Console.WriteLine(
        FormattableString.Invariant(
            $"{what}: median {times[times.Count / 2]:0.000} ms, longest {times[^1]:0.000} ms"
        )
    );
