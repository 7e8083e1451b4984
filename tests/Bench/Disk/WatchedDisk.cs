using System.Diagnostics;

namespace Litterfall.Tests.Bench.Disk;

/// <summary>
/// A folder whose every change is written down while a program works in it, and that has no room when it is
/// told so. It is made with the compiler of C of this machine.
/// </summary>
public sealed class WatchedDisk : IDisposable
{
    private readonly string aside = Directory.CreateTempSubdirectory("litterfall-watch").FullName;

    private WatchedDisk() { }

    /// <summary>The watched folder.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("litterfall-disk").FullName;

    /// <summary>A file in it.</summary>
    public string At(string name) => Path.Combine(Folder, name);

    /// <summary>How much has been written down, bytes.</summary>
    public long Mark => File.Exists(Log) ? new FileInfo(Log).Length : 0;

    private string Log => Path.Combine(aside, "log");

    private string Full => Path.Combine(aside, "full");

    /// <summary>True while nothing that grows a file has room.</summary>
    public bool IsFull
    {
        get => File.Exists(Full);
        set
        {
            if (value)
            {
                File.WriteAllText(Full, "");
            }
            else
            {
                File.Delete(Full);
            }
        }
    }

    /// <summary>A new one; the test is skipped where there is no compiler.</summary>
    public static async Task<WatchedDisk> MakeAsync()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && File.Exists("/usr/bin/gcc"), "gcc is not installed");
        var disk = new WatchedDisk();
        var source = Path.Combine(AppContext.BaseDirectory, "Disk", "watched-disk.c");
        string[] words =
        [
            "-shared",
            "-fPIC",
            "-O1",
            "-o",
            Path.Combine(disk.aside, "watched.so"),
            source,
            "-ldl",
        ];
        using var gcc = Process.Start(new ProcessStartInfo("/usr/bin/gcc", words))!;
        await gcc.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, gcc.ExitCode);
        return disk;
    }

    /// <summary>Lets a program that is about to start work in the folder under watch.</summary>
    public ProcessStartInfo Watch(ProcessStartInfo start)
    {
        File.Delete(Log);
        start.Environment["LD_PRELOAD"] = Path.Combine(aside, "watched.so");
        start.Environment["DISK_UNDER"] = Folder;
        start.Environment["DISK_LOG"] = Log;
        start.Environment["DISK_FULL"] = Full;
        return start;
    }

    /// <summary>What was done since the last program was started.</summary>
    public IReadOnlyList<DiskOp> Done() => DiskOp.Read(Log);

    /// <summary>
    /// Empties the folder and puts these files there; what processes share only while they run is left out.
    /// </summary>
    public void Become(IReadOnlyDictionary<string, byte[]> files)
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(Folder, recursive: true);
        Directory.CreateDirectory(Folder);
        foreach (var (path, bytes) in files.Where(f => !f.Key.EndsWith("-shm", StringComparison.Ordinal)))
        {
            File.WriteAllBytes(path, bytes);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(Folder, recursive: true);
        Directory.Delete(aside, recursive: true);
    }
}
