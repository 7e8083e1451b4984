using System.Security.Cryptography;

namespace Litterfall.Store;

/// <summary>
/// The secret by which a bench knows the devices it has paired. It lies beside the file of the bench, not in
/// it: a copy of the file lets nobody in.
/// </summary>
public static class DeviceKey
{
    private const int Length = 32;

    /// <summary>The secret of a bench; the first time it is made, readable by its user alone.</summary>
    /// <param name="path">The file of the bench.</param>
    /// <exception cref="IOException">The folder takes no file.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static byte[] Of(string path)
    {
        var file = StoreLock.Real(path) + ".devices";
        if (File.Exists(file) && File.ReadAllBytes(file) is { Length: Length } known)
        {
            return known;
        }

        // One that was cut short is no secret any more: devices are paired anew.
        File.Delete(file);
        var made = RandomNumberGenerator.GetBytes(Length);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using var stream = new FileStream(file, options);
        stream.Write(made);
        stream.Flush(flushToDisk: true);
        return made;
    }
}
