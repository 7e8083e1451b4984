using System.Globalization;
using BenchmarkDotNet.Running;
using Litterfall.Bench.Column;
using Litterfall.Physics.Soil;

if (args is ["figures"])
{
    foreach (var (name, control) in ColumnRuns.Controls)
    {
        Print("V90 " + name, ColumnRuns.Run("v90.case", control));
        Print("flood " + name, ColumnRuns.Run("flood.case", control));
    }

    return 0;
}

if (args is ["once"])
{
    Print("once", ColumnRuns.Run("v90.case", StepControl.Planning));
    return 0;
}

var table = BenchmarkRunner.Run<ColumnRuns>();
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

return 0;

static void Print(string name, ColumnResult run) =>
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"{name} outflow {run.Totals.OutMeters * 100:F5} uptake {run.Totals.TranspiredMeters * 100:F5} "
                + $"balance {run.BalanceErrorMeters * 100:0.0e+0} steps {run.Steps} "
                + $"iterations {run.Iterations} "
                + $"failed {run.FailedSteps} aborted {(run.StoppedEarly is null ? 0 : 1)}"
        )
    );
