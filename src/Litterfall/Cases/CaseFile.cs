using Litterfall.Domain.Designs;

namespace Litterfall.App.Cases;

/// <summary>The edge where a case file becomes a checked case.</summary>
public static class CaseFile
{
    /// <summary>Reads a file and builds a case from it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="build">Makes the case; may return anything once there is a fault.</param>
    public static Reading<T> Read<T>(string path, Func<CaseValue, T?> build)
        where T : class
    {
        if (!File.Exists(path))
        {
            string message = Directory.Exists(path) ? "this is a folder" : "there is no such file";
            return new(null, [new TextFault(path, 1, 1, message, "a case file such as case.json")]);
        }

        return Read(path, Shop.Bytes(path, CaseParser.LargestFile), build);
    }

    /// <summary>Builds a case from the bytes of a file.</summary>
    /// <param name="name">Name of the file in messages.</param>
    /// <param name="bytes">The whole file, or its beginning when it is too large.</param>
    /// <param name="build">Makes the case; may return anything once there is a fault.</param>
    public static Reading<T> Read<T>(string name, byte[] bytes, Func<CaseValue, T?> build)
        where T : class
    {
        var faults = new CaseFaults(name);
        var whole = CaseParser.Read(bytes, faults);
        var built = whole is null ? null : build(whole);
        return faults.IsEmpty && built is not null ? new(built, []) : new(null, faults.All);
    }
}
