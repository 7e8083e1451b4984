namespace Litterfall.Store;

/// <summary>
/// Somebody's file as it may be opened without a byte of theirs changing: as it lies, or, where a journal
/// must be played back or a log is part of it, a private copy of all of it. SQLite plays a journal back
/// into the file it belongs to, and lays files beside one with a log, when it is only to be read, too.
/// </summary>
internal sealed class LookedAt : IDisposable
{
    private static readonly string[] Parts = ["-journal", "-wal"];
    private readonly string? made;

    private LookedAt(string path, string? made) => (Path, this.made) = (path, made);

    /// <summary>What to open.</summary>
    public string Path { get; }

    /// <summary>True where it is a copy of ours, and may be written to.</summary>
    public bool IsOurs => made is not null;

    /// <summary>A file to look at.</summary>
    /// <param name="file">The file; where there is none, it stays as named.</param>
    /// <exception cref="IOException">It cannot be read, or there is no room for a copy.</exception>
    public static LookedAt Of(string file)
    {
        if (!File.Exists(file) || !(HasLog(file) || Parts.Any(part => File.Exists(file + part))))
        {
            return new LookedAt(file, null);
        }

        var aside = Directory.CreateTempSubdirectory("litterfall-look").FullName;
        try
        {
            var own = System.IO.Path.Combine(aside, "copy.db");
            // The journal first: while it is there, the file can be put back to what it was at its start.
            foreach (var part in Parts.Append("").Where(part => File.Exists(file + part)))
            {
                File.Copy(file + part, own + part);
                File.SetAttributes(own + part, FileAttributes.Normal);
            }

            return new LookedAt(own, aside);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Directory.Delete(aside, recursive: true);
            throw;
        }
    }

    /// <summary>Both versions of the form are 1 for a journal and 2 for a log.</summary>
    private static bool HasLog(string file)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        Span<byte> head = stackalloc byte[20];
        return stream.ReadAtLeast(head, head.Length, false) == head.Length
            && (head[18] == 2 || head[19] == 2);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (made is not null)
        {
            Directory.Delete(made, recursive: true);
        }
    }
}
