using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Litterfall.Store;

/// <summary>What is on the disk when a call returns, so that a power cut takes none of it.</summary>
internal static partial class Disk
{
    /// <summary>The bytes of a file.</summary>
    public static void Keep(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite);
        file.Flush(flushToDisk: true);
    }

    /// <summary>
    /// Puts a file that is on the disk in the place of another, and the new name on the disk. Windows keeps
    /// the order of names by itself and offers no such call.
    /// </summary>
    public static void Replace(string from, string to)
    {
        File.Move(from, to, overwrite: true);
        if (!OperatingSystem.IsWindows() && Path.GetDirectoryName(Path.GetFullPath(to)) is { } folder)
        {
            using var opened = new SafeFileHandle(Open(folder, 0), ownsHandle: true);
            if (!opened.IsInvalid)
            {
                RandomAccess.FlushToDisk(opened);
            }
        }
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);
}
