using System.Diagnostics;
using System.IO.Compression;
using Litterfall.Store;

namespace Litterfall.Tests.Bench;

/// <summary>Copy, bring back and hand out a bench from the command line, running or not.</summary>
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
            var onto = await RunAsync("restore", At("copy"), "--store", At("bench.db"));
            Assert.Equal(2, onto.Code);
            Assert.Contains("a bench has this file open", onto.Said, StringComparison.Ordinal);
            var second = await RunAsync("bench", "--listen", "127.0.0.1:0", "--store", At("bench.db"));
            Assert.Equal(2, second.Code);
            Assert.Contains("another bench has this file open", second.Said, StringComparison.Ordinal);
        }

        // The bench was killed; its lock went with it.
        Assert.Equal(0, (await RunAsync("restore", At("copy"), "--store", At("bench.db"))).Code);

        Assert.Null(StoreFile.Trouble(At("copy")));
        var (code, said) = await RunAsync("restore", At("copy"), "--store", At("other.db"));
        Assert.True(code == 0, said);
        Assert.Equal(0, (await RunAsync("export", At("all.zip"), "--store", At("other.db"))).Code);
        using var zip = ZipFile.OpenRead(At("all.zip"));
        // Seven designs of the demo's orders and drawings, the breeding tank, and the old show tank.
        Assert.Equal(
            9,
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
        // Addresses of RFC 5737 are nobody's.
        var foreign = await RunAsync(
            "bench",
            "--listen",
            "192.0.2.1:5322",
            "--open-network",
            "--store",
            bench.Store + "4"
        );
        Assert.Equal(2, foreign.Code);
        Assert.Contains("is no address of this machine", foreign.Said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", foreign.Said, StringComparison.Ordinal);
        var broken = await RunAsync("bench", "--listen", "127.0.0.1:0", "--store", bench.Store + "3");
        Assert.Equal(2, broken.Code);
        Assert.Contains("cannot be opened", broken.Said, StringComparison.Ordinal);
    }

    /// <summary>
    /// A restore killed at any moment leaves the bench as it was or as the copy is, and whole.
    /// </summary>
    [Fact]
    public async Task A_killed_restore_leaves_one_or_the_other()
    {
        var folder = Directory.CreateTempSubdirectory("litterfall-half").FullName;
        string At(string name) => Path.Combine(folder, name);
        await MadeAsync(At("old.db"), "old");
        await MadeAsync(At("new.db"), "new");
        StoreFile.Backup(At("old.db"), At("old"));
        StoreFile.Backup(At("new.db"), At("new"));
        var chance = new Random(7);
        var rounds = Environment.GetEnvironmentVariable("LITTERFALL_LONG") == "1" ? 200 : 3;
        for (var round = 0; round < rounds; round++)
        {
            File.Copy(At("old"), At("bench.db"), overwrite: true);
            using var process = Process.Start(Words("restore", At("new"), "--store", At("bench.db")))!;
            await Task.Delay(chance.Next(900), TestContext.Current.CancellationToken);
            process.Kill();
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.Null(StoreFile.Trouble(At("bench.db")));
            var store = new BenchStore(
                StoreFile.Contexts(At("bench.db")),
                new("t", "t"),
                TimeProvider.System
            );
            await store.OpenAsync(TestContext.Current.CancellationToken);
            var name = Assert.Single(await store.DesignsAsync(TestContext.Current.CancellationToken)).Name;
            Assert.Contains(name, new[] { "old", "new" });
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            File.Delete(At("bench.db-wal"));
        }

        Directory.Delete(folder, recursive: true);
    }

    private static async Task MadeAsync(string path, string name)
    {
        var store = new BenchStore(StoreFile.Contexts(path), new("t", "t"), TimeProvider.System);
        await store.OpenAsync();
        await store.AddAsync(name, $"litterfall: 1\nname: {name}\n", "begun");
    }

    private static ProcessStartInfo Words(params string[] words)
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

        return start;
    }

    private static async Task<(int Code, string Said)> RunAsync(params string[] words)
    {
        using var process = Process.Start(Words(words))!;
        var said = await Task.WhenAll(
            process.StandardOutput.ReadToEndAsync(),
            process.StandardError.ReadToEndAsync()
        );
        await process.WaitForExitAsync();
        return (process.ExitCode, string.Concat(said));
    }
}
