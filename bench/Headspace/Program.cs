using System.Globalization;
using BenchmarkDotNet.Running;
using Litterfall.Bench.Headspace;
using Litterfall.Physics.Air;

// FILE KELVIN GRAMS: the peer's reference at full hours, and the errors of its timed run; ours is timed at
// the loosest tolerance that is within both.
if (args.Length == 3)
{
    var culture = CultureInfo.InvariantCulture;
    var exact = File.ReadLines(args[0])
        .Select(line => line.Split(' '))
        .Select(cells => (Air: double.Parse(cells[0], culture), Film: double.Parse(cells[1], culture)))
        .ToList();
    var (mostKelvin, mostGrams) = (double.Parse(args[1], culture), double.Parse(args[2], culture));
    var chosen = 0.0;
    foreach (var tolerance in new[] { 0.1, 0.05, 0.02, 0.01, 5e-3, 2e-3, 1e-3, 1e-4, 1e-5 })
    {
        var (kelvin, grams) = Error(HeadspaceRuns.By(tolerance), exact);
        Told($"tolerance {tolerance} K", kelvin, grams);
        chosen = chosen == 0.0 && kelvin <= mostKelvin && grams <= mostGrams ? tolerance : chosen;
    }

    var minutes = Error(HeadspaceControl.Even(60.0), exact);
    Told("even steps of a minute", minutes.Kelvin, minutes.Grams);
    Console.WriteLine(string.Create(culture, $"chosen {chosen}"));
    HeadspaceRuns.Tolerance = chosen;
}

var table = BenchmarkRunner.Run<HeadspaceRuns>();
foreach (var report in table.Reports)
{
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"median {report.BenchmarkCase.Descriptor.WorkloadMethod.Name} ms "
                + $"{report.ResultStatistics!.Median / 1e6:F2} best {report.ResultStatistics.Min / 1e6:F2}"
        )
    );
}

static (double Kelvin, double Grams) Error(HeadspaceControl control, List<(double Air, double Film)> exact)
{
    var hours = new List<(double Air, double Film)>();
    HeadspaceRuns.Cube(control, hours);
    return (
        exact.Zip(hours).Max(h => Math.Abs(h.First.Air - h.Second.Air)),
        exact.Zip(hours).Max(h => 1e3 * Math.Abs(h.First.Film - h.Second.Film))
    );
}

static void Told(string what, double kelvin, double grams) =>
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"ours {what} air {kelvin:0.0e+0} K film {grams:0.0e+0} g"
        )
    );
