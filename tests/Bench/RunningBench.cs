using System.Diagnostics;
using System.Text.RegularExpressions;
using Litterfall.Store;
using Litterfall.Tests.Bench.Disk;

namespace Litterfall.Tests.Bench;

/// <summary>The bench as a process of its own, on a free port and a store of its own.</summary>
public sealed partial class RunningBench : IDisposable
{
    private readonly Process running;
    private readonly string? folder;

    private RunningBench(Process process, string url, string store, string? own)
    {
        running = process;
        folder = own;
        Url = url;
        Store = store;
    }

    /// <summary>A store with the demo in it, its verdicts computed; null until one was made.</summary>
    private static byte[]? demoStore;

    /// <summary>Where it answers.</summary>
    public string Url { get; }

    /// <summary>Its file.</summary>
    public string Store { get; }

    /// <summary>Starts it; on a store that is there already, or a new one.</summary>
    public static async Task<RunningBench> StartAsync(
        string? store = null,
        bool demo = false,
        int port = 0,
        WatchedDisk? disk = null,
        string address = "127.0.0.1"
    )
    {
        var own = store is null ? Directory.CreateTempSubdirectory("litterfall-bench").FullName : null;
        var file = store ?? Path.Combine(own!, "bench.db");
        if (demo && demoStore is { } made && !File.Exists(file))
        {
            await File.WriteAllBytesAsync(file, made);
        }

        var program = Path.Combine(AppContext.BaseDirectory, "litterfall.dll");
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        string[] words =
        [
            program,
            "bench",
            "--listen",
            $"{address}:{port}",
            "--store",
            file,
            .. demo ? ["--demo"] : Array.Empty<string>(),
        ];
        foreach (var word in words)
        {
            start.ArgumentList.Add(word);
        }

        var process = Process.Start(disk?.Watch(start) ?? start)!;
        for (var i = 0; i < 200; i++)
        {
            var line = await process.StandardOutput.ReadLineAsync();
            if (line is null)
            {
                break;
            }

            if (Address().Match(line) is { Success: true } found)
            {
                _ = process.StandardOutput.ReadToEndAsync();
                _ = process.StandardError.ReadToEndAsync();
                return new RunningBench(process, found.Value, file, own);
            }
        }

        throw new InvalidOperationException(await process.StandardError.ReadToEndAsync());
    }

    /// <summary>
    /// Keeps its store for benches that start with the demo later. Its verdicts are set, so that none of them
    /// computes what no test looks at.
    /// </summary>
    public async Task KeepAsDemoAsync()
    {
        var store = new BenchStore(StoreFile.Contexts(Store), new("test", "test"), TimeProvider.System);
        foreach (var design in await store.DesignsAsync())
        {
            await store.JudgeAsync(design.Id, design.Version, "Computed before.");
        }

        var copy = Store + ".demo";
        StoreFile.Backup(Store, copy);
        demoStore = await File.ReadAllBytesAsync(copy);
    }

    /// <summary>
    /// A copy of a design that is in its store; its page. Its verdict is set, so that the bench does not
    /// compute it meanwhile.
    /// </summary>
    /// <param name="name">Name of the design.</param>
    public async Task<string> CopyAsync(string name)
    {
        var store = new BenchStore(StoreFile.Contexts(Store), new("test", "test"), TimeProvider.System);
        var from = (await store.DesignsAsync()).Last(d => d.Name == name);
        var text = (await store.DesignAsync(from.Id, 1))!.Text;
        var copy = await store.AddAsync(name, text, "copied");
        await store.JudgeAsync(copy.Id, copy.Version, "Computed before.");
        return $"{Url}/design/{copy.Id}";
    }

    /// <summary>Processor time it has taken since it was started, s.</summary>
    public double Worked
    {
        get
        {
            running.Refresh();
            return running.TotalProcessorTime.TotalSeconds;
        }
    }

    /// <summary>Processor time it takes during a time, s.</summary>
    public async Task<double> WorkAsync(TimeSpan time)
    {
        var before = Worked;
        await Task.Delay(time);
        return Worked - before;
    }

    /// <summary>Kills it as a power cut would: nothing is flushed or said good-bye to.</summary>
    public void Kill()
    {
        running.Kill();
        running.WaitForExit();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!running.HasExited)
        {
            Kill();
        }

        running.Dispose();
        if (folder is not null)
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [GeneratedRegex(@"http://[0-9.:]+", RegexOptions.None, 1000)]
    private static partial Regex Address();
}
