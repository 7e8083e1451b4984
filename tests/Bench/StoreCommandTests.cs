using System.Diagnostics;
using System.IO.Compression;
using Litterfall.Store;

namespace Litterfall.Tests.Bench;

/// <summary>Copy, bring back and hand out a bench from the command line, running or not.</summary>
[Collection("one bench at a time")]
public sealed class StoreCommandTests
{
    [Fact]
    public async Task A_running_bench_is_copied_brought_back_and_handed_out()
    {
        var folder = Directory.CreateTempSubdirectory("litterfall-copy").FullName;
        string At(string name) => Path.Combine(folder, name);
        using (await RunningBench.StartAsync(At("bench.db"), demo: true))
        {
            Assert.Equal(0, (await RunAsync("backup", At("copy"), "--store", At("bench.db"))).Code);
        }

        Assert.Null(StoreFile.Trouble(At("copy")));
        var (code, said) = await RunAsync("restore", At("copy"), "--store", At("other.db"));
        Assert.True(code == 0, said);
        Assert.Equal(0, (await RunAsync("export", At("all.zip"), "--store", At("other.db"))).Code);
        using var zip = ZipFile.OpenRead(At("all.zip"));
        Assert.Equal(
            7,
            zip.Entries.Count(e => e.FullName.EndsWith("0001.viv.yaml", StringComparison.Ordinal))
        );
        await File.WriteAllTextAsync(At("letter"), "no copy", TestContext.Current.CancellationToken);
        var refused = await RunAsync("restore", At("letter"), "--store", At("other.db"));
        Assert.Equal(2, refused.Code);
        Assert.Contains("no copy of a bench", refused.Said, StringComparison.Ordinal);
        Assert.Equal(2, (await RunAsync("backup", At("x"), "--store", At("none.db"))).Code);
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("bench", "--listen", "nonsense", "no address with a port")]
    [InlineData("bench", "--workshop", "/no/such/folder", "no such folder")]
    public async Task A_wrong_wish_gets_one_sentence(
        string command,
        string option,
        string value,
        string words
    )
    {
        var (code, said) = await RunAsync(command, option, value);
        Assert.Equal(2, code);
        Assert.Contains(words, said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_port_in_use_and_a_broken_file_are_told_plainly()
    {
        using var bench = await RunningBench.StartAsync();
        var (code, said) = await RunAsync(
            "bench",
            "--listen",
            $"127.0.0.1:{new Uri(bench.Url).Port}",
            "--store",
            bench.Store + "2"
        );
        Assert.Equal(2, code);
        Assert.Contains("answers at", said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
        await File.WriteAllTextAsync(
            bench.Store + "3",
            "a letter, not a bench",
            TestContext.Current.CancellationToken
        );
        var broken = await RunAsync("bench", "--listen", "127.0.0.1:0", "--store", bench.Store + "3");
        Assert.Equal(2, broken.Code);
        Assert.Contains("cannot be opened", broken.Said, StringComparison.Ordinal);
    }

    private static async Task<(int Code, string Said)> RunAsync(params string[] words)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "litterfall.dll"));
        foreach (var word in words)
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        var said = await Task.WhenAll(
            process.StandardOutput.ReadToEndAsync(),
            process.StandardError.ReadToEndAsync()
        );
        await process.WaitForExitAsync();
        return (process.ExitCode, string.Concat(said));
    }
}
