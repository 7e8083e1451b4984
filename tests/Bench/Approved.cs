namespace Litterfall.Tests.Bench;

/// <summary>Pictures that were looked at and approved, compared region by region.</summary>
internal static class Approved
{
    /// <summary>Every region of the picture looks as in the approved one.</summary>
    /// <param name="png">The picture now.</param>
    /// <param name="name">File of the approved one.</param>
    public static void Check(byte[] png, string name)
    {
        if (Environment.GetEnvironmentVariable("LITTERFALL_APPROVE") == "1")
        {
            File.WriteAllBytes(Path.Combine(Source(), "Approved", name), png);
        }

        var differences = Pictures.Differences(Read(name), png);
        if (differences.Count > 0)
        {
            File.WriteAllBytes(Path.Combine(Path.GetTempPath(), $"now-{name}"), png);
        }

        Assert.True(
            differences.Count == 0,
            $"{name} differs, see {Path.GetTempPath()}now-{name}: {string.Join("; ", differences)}"
        );
    }

    /// <summary>An approved picture.</summary>
    public static byte[] Read(string name) => File.ReadAllBytes(Path.Combine(Source(), "Approved", name));

    private static string Source()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Tests.Bench.csproj")))
        {
            folder = folder.Parent;
        }

        return folder!.FullName;
    }
}
