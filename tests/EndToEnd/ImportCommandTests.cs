namespace Litterfall.Tests.EndToEnd;

/// <summary><c>import</c>: logger files on the command line. The samples are short files of the invented
/// room, 24 rows each from midnight of 15 February 2026 by its clock: own worked example.</summary>
public sealed class ImportCommandTests
{
    private static readonly string[] Names =
    [
        "A3.csv",
        "A7.csv",
        "B2.csv",
        "B6.csv",
        "C1.txt",
        "C5.csv",
        "room.csv",
    ];

    [Fact]
    public void Every_style_of_the_samples_gives_the_same_times()
    {
        var rows = Path.GetTempFileName();
        var ended = Cli.Run(["import", .. Names.Select(Sample), "--json", "--zone", "Europe/Berlin", "--rows", rows]);
        Assert.Equal(0, ended.Code);
        var files = ended.Json["files"]!.AsArray();
        Assert.Equal(Names.Length, files.Count);
        foreach (var file in files)
        {
            Assert.Equal(24, file!["kept"]!.GetValue<int>());
            Assert.Equal("2026-02-14T23:00:00Z", file["from"]!.GetValue<string>());
            Assert.Equal("2026-02-15T02:50:00Z", file["to"]!.GetValue<string>());
            Assert.Empty(file["gaps"]!.AsArray());
            Assert.Contains(file["channels"]!.AsArray(), c => c!["quantity"]!.GetValue<string>() == "temperature");
            Assert.Contains(file["channels"]!.AsArray(), c => c!["quantity"]!.GetValue<string>() == "humidity");
        }

        // Seven files of 24 rows with two channels; one has the dew point besides, one a second thermometer.
        Assert.Equal(24 * 16, File.ReadLines(rows).Count());
        File.Delete(rows);
    }

    [Fact]
    public void What_cannot_be_read_ends_with_2_and_writes_nothing()
    {
        var file = Path.GetTempFileName();
        var rows = file + ".jsonl";
        File.WriteAllText(file, "Time,Temp\n2026-02-15 00:00,21\n2026-02-15 00:10,2x1\n2026-02-15 00:20,21\n");
        var ended = Cli.Run(["import", file, Sample("A3.csv"), "--json", "--rows", rows]);
        Assert.Equal(2, ended.Code);
        var error = Assert.Single(ended.Json["errors"]!.AsArray())!;
        Assert.Equal(3, error["line"]!.GetValue<int>());
        Assert.False(File.Exists(rows));
        Assert.Equal(2, Cli.Run(["import", file, "--zone", "Nowhere/Land"]).Code);
        Assert.Equal(2, Cli.Run(["import", "no-such-file.csv", "--json"]).Code);
        File.Delete(file);
    }

    private static string Sample(string name) => Path.Combine(Cli.Root, "samples", "loggers", name);
}
