using System.Globalization;
using BenchmarkDotNet.Running;
using Litterfall.Bench.Headspace;

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
