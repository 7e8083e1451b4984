namespace Litterfall.Laboratory.Cases;

/// <summary>Files are read up to a size, so that a huge one costs nothing.</summary>
public static class BoundedFile
{
    /// <summary>At most one byte more than a file may have.</summary>
    /// <param name="path">The file.</param>
    /// <param name="largest">Largest size, bytes.</param>
    public static byte[] Bytes(string path, int largest)
    {
        using var file = File.OpenRead(path);
        var buffer = new byte[Math.Min(file.CanSeek ? file.Length : largest, largest) + 1];
        var read = file.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        return buffer[..read];
    }
}
