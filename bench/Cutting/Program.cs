using System.Diagnostics;
using System.Globalization;
using Litterfall.Bench.Cutting;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting;

// Published instances against the values known for them: CuttingBench FOLDER [seconds] [words that a row
// contains].
// With a folder of ws-*.json: cases of a workshop.
if (args.Length > 0 && Directory.GetFiles(args[0], "ws-*.json").Length > 0)
{
    Workshops.Run(args[0], args.Length > 1 ? double.Parse(args[1], CultureInfo.InvariantCulture) : 20);
    return 0;
}

if (args.Length == 0 || !File.Exists(Path.Combine(args[0], "answers.csv")))
{
    Console.Error.WriteLine("CuttingBench takes the folder of instances: it holds answers.csv and data/.");
    return 2;
}

var seconds = args.Length > 1 ? double.Parse(args[1], CultureInfo.InvariantCulture) : 30;
var (proved, exact, count, longest) = (0, 0, 0, 0.0);
foreach (
    var answer in Answers
        .Read(args[0])
        .Where(a => args.Skip(2).All(w => a.Line.Contains(w, StringComparison.Ordinal)))
)
{
    var task = answer.Task(args[0]);
    var watch = Stopwatch.StartNew();
    var first = 0.0;
    var plan = CuttingTable.Solve(
        task,
        new()
        {
            Limit = TimeSpan.FromSeconds(seconds),
            Found = _ => first = first == 0 ? watch.Elapsed.TotalSeconds : first,
        },
        CancellationToken.None
    )!;
    var took = watch.Elapsed.TotalSeconds;
    (count, longest) = (count + 1, Math.Max(longest, took));
    proved += plan.IsProved ? 1 : 0;
    exact += plan.Value == answer.Best ? 1 : 0;
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"{answer.Name, -34} known {answer.Best, 10} (bound {answer.Bound}) got {plan.Value, 10} "
                + $"bound {plan.Bound:0.##} {(plan.IsProved ? "proved" : "found")} "
                + $"{took:0.00} s, first {first:0.00} s"
        )
    );
}

Console.WriteLine(
    string.Create(
        CultureInfo.InvariantCulture,
        $"{count} instances: {exact} at the known value, {proved} proved, longest {longest:0.0} s"
    )
);
return 0;
