using BenchmarkDotNet.Attributes;
using Litterfall.Physics.Soil;

namespace Litterfall.Bench.Column;

/// <summary>A column of 53 nodes through 90 days with 166 mistings and one flood, warm.</summary>
[MemoryDiagnoser]
[InProcess]
[WarmupCount(15)]
[IterationCount(15)]
public class ColumnRuns
{
    private ColumnCase column = null!;
    private ColumnCase flood = null!;

    /// <summary>The ways time is cut.</summary>
    internal static readonly (string Name, StepControl Control)[] Controls =
    [
        ("planning", StepControl.Planning),
        ("default", new StepControl()),
    ];

    /// <summary>Reads both cases and makes the tables of their materials.</summary>
    [GlobalSetup]
    public void Read()
    {
        column = ColumnCase.Read(PathOf("v90.case"));
        flood = ColumnCase.Read(PathOf("flood.case"));
    }

    /// <summary>90 days, cut as for planning.</summary>
    [Benchmark(Baseline = true)]
    public int Planning() => Run(column, StepControl.Planning).Steps;

    /// <summary>90 days, cut as for checks.</summary>
    [Benchmark]
    public int Default() => Run(column, new StepControl()).Steps;

    /// <summary>Three floods over a closed base, cut as for planning.</summary>
    [Benchmark]
    public int Flood() => Run(flood, StepControl.Planning).Steps;

    /// <summary>The file and the tables of three materials, which the others leave out.</summary>
    [Benchmark]
    public int ReadingAndTables() => ColumnCase.Read(PathOf("v90.case")).Columns.Nodes;

    /// <summary>One run of a case.</summary>
    /// <param name="file">Its file.</param>
    /// <param name="control">How time is cut.</param>
    internal static ColumnResult Run(string file, StepControl control) =>
        Run(ColumnCase.Read(PathOf(file)), control);

    private static ColumnResult Run(ColumnCase c, StepControl control) =>
        Richards.Run(c.Columns, c.Boundaries, c.Start, c.Spans, control);

    private static string PathOf(string file) =>
        Path.Combine(
            Environment.GetEnvironmentVariable("COLUMN_CASES")
                ?? throw new InvalidOperationException("set COLUMN_CASES to the folder of the cases"),
            file
        );
}
