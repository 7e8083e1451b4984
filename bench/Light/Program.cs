using System.Globalization;
using BenchmarkDotNet.Running;
using Litterfall.Bench.Light;

var table = BenchmarkRunner.Run<LightRuns>();
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

var (lines, points) = LightRuns.WorstCells();
Console.WriteLine(
    string.Create(
        CultureInfo.InvariantCulture,
        $"worst cell, share of the mean: lines {lines:P2}, lattice {points:P2}"
    )
);
