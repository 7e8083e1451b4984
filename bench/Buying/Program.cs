using System.Diagnostics;
using System.Globalization;
using Litterfall.Bench.Buying;
using Litterfall.Workshop.Buying;

// Purchases of made-up cases: time to the proof, and how much dearer the lowest price by the liter is.
var count = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 20;
PurchasePlanner.Find(Cases.Draw(0, 3, 2, 1));
foreach (
    var (goods, sellers, scale) in new[]
    {
        (5, 3, 1.0),
        (20, 4, 1.0),
        (60, 4, 1.0),
        (60, 4, 4.0),
        (60, 4, 10.0),
        (60, 4, 30.0),
        (60, 0, 0.0),
    }
)
{
    var times = new List<double>();
    var ratios = new List<double>();
    var missed = 0;
    var open = 0;
    for (var seed = 1; seed <= count; seed++)
    {
        var asked = sellers == 0 ? Cases.DrawAlike(seed) : Cases.Draw(seed, goods, sellers, scale);
        var watch = Stopwatch.StartNew();
        using var end = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        var (plan, _) = PurchasePlanner.Find(asked, end.Token);
        times.Add(watch.Elapsed.TotalMilliseconds);
        open += plan is { IsProved: true } ? 0 : 1;
        if (Cases.PerLiter(asked) is { } rule && plan is not null)
        {
            ratios.Add((double)rule / plan.TotalCents);
        }
        else
        {
            missed++;
        }
    }

    times.Sort();
    ratios.Sort();
    Console.WriteLine(
        FormattableString.Invariant($"{goods} goods x {sellers} suppliers, sums x {scale}: median ")
            + FormattableString.Invariant(
                $"{times[times.Count / 2]:0} ms, longest {times[^1]:0} ms, {open} not proved; "
            )
            + FormattableString.Invariant(
                $"by the liter {missed} of {count} miss a minimum order, the others pay "
            )
            + (
                ratios.Count == 0
                    ? "–"
                    : FormattableString.Invariant(
                        $"{ratios[ratios.Count / 2]:0.000} (up to {ratios[^1]:0.000})"
                    )
            )
    );
}
