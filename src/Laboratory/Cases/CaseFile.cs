using Litterfall.Domain.Faults;
using Litterfall.Domain.Trees;

namespace Litterfall.Laboratory.Cases;

/// <summary>The edge where a case file becomes a form to read from.</summary>
public static class CaseFile
{
    /// <summary>Largest case file, bytes.</summary>
    public const int LargestFile = 4 * 1024 * 1024;

    /// <summary>Reads a case from a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="read">Reads the top object; null, or faults on the form, when it cannot be used.</param>
    /// <param name="largest">Largest file, bytes.</param>
    public static Reading<T> Read<T>(string path, Func<TreeForm, T?> read, int largest = LargestFile)
        where T : class =>
        File.Exists(path)
            ? Read(path, BoundedFile.Bytes(path, largest), read, largest)
            : new(
                null,
                [
                    new TextFault(
                        path,
                        1,
                        1,
                        Directory.Exists(path) ? "this is a folder" : "there is no such file",
                        "a case file such as case.json"
                    ),
                ]
            );

    /// <summary>Reads a case from the bytes of a file.</summary>
    /// <param name="path">Its name, for messages.</param>
    /// <param name="bytes">Its bytes, one more than the largest file if it is larger.</param>
    /// <param name="read">Reads the top object.</param>
    /// <param name="largest">Largest file, bytes.</param>
    public static Reading<T> Read<T>(
        string path,
        ReadOnlySpan<byte> bytes,
        Func<TreeForm, T?> read,
        int largest = LargestFile
    )
        where T : class
    {
        var faults = new TreeFaults(path);
        if (bytes.Length > largest)
        {
            faults.Add(
                "the file is too large",
                FormattableString.Invariant($"at most {largest / (1024 * 1024)} MB")
            );
        }
        else if (JsonTree.Read(bytes, faults) is { } top && faults.IsEmpty)
        {
            var form = TreeForm.Top(top, faults);
            var value = form is null ? null : read(form);
            return faults.IsEmpty ? new(value, []) : new(null, faults.ToSeq());
        }

        return new(null, faults.ToSeq());
    }
}
