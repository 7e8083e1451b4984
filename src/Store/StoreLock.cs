namespace Litterfall.Store;

/// <summary>
/// One bench at a time works on a file. The lock is the system's own on a small file beside it, so that it
/// ends with the process that holds it, however that ends; the small file stays.
/// </summary>
public sealed class StoreLock : IDisposable
{
    // A file that another process holds: Linux, macOS, Windows.
    private static readonly int[] HeldCodes = [11, 35, unchecked((int)0x80070020)];

    private readonly FileStream held;

    private StoreLock(FileStream held) => this.held = held;

    /// <summary>Takes the lock; null where another bench has it.</summary>
    /// <param name="path">The file of the bench; it need not be there yet.</param>
    /// <exception cref="IOException">The folder takes no file.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static StoreLock? Take(string path)
    {
        var real = Real(path);
        Directory.CreateDirectory(Path.GetDirectoryName(real)!);
        try
        {
            return new(
                new FileStream(real + ".lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None)
            );
        }
        catch (IOException e) when (HeldCodes.Contains(e.HResult))
        {
            return null;
        }
    }

    /// <summary>True where a bench has the file open.</summary>
    /// <param name="path">The file.</param>
    public static bool IsHeld(string path)
    {
        if (!File.Exists(Real(path) + ".lock"))
        {
            return false;
        }

        using var taken = Take(path);
        return taken is null;
    }

    /// <inheritdoc/>
    public void Dispose() => held.Dispose();

    /// <summary>The file itself where the path is a link to it.</summary>
    internal static string Real(string path)
    {
        var full = Path.GetFullPath(path);
        return File.Exists(full) && File.ResolveLinkTarget(full, returnFinalTarget: true) is { } target
            ? target.FullName
            : full;
    }
}
