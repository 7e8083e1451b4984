namespace Litterfall.UnitTests.House;

/// <summary>The checkout these tests were built from.</summary>
internal static class SourceTree
{
    private static readonly string[] Skipped = [".git", "bin", "obj", "out", "TestResults", "node_modules"];

    public static string Root { get; } = FindRoot();

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    public static string Relative(string path) =>
        System.IO.Path.GetRelativePath(Root, path).Replace('\\', '/');

    public static string Text(string relative) => File.ReadAllText(Path(relative));

    /// <summary>
    /// Files below folders of the checkout, with one of the endings, build output left out.
    /// </summary>
    public static IEnumerable<string> Files(string[] folders, params string[] endings) =>
        folders
            .Select(folder => Path(folder))
            .Where(Directory.Exists)
            .SelectMany(Below)
            .Where(file =>
                endings.Length == 0 || endings.Any(e => file.EndsWith(e, StringComparison.Ordinal))
            )
            .Order(StringComparer.Ordinal);

    private static IEnumerable<string> Below(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(folder))
        {
            yield return file;
        }

        foreach (var inner in Directory.EnumerateDirectories(folder))
        {
            if (Skipped.Contains(System.IO.Path.GetFileName(inner)))
            {
                continue;
            }

            foreach (var file in Below(inner))
            {
                yield return file;
            }
        }
    }

    private static string FindRoot()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(at.FullName, "Litterfall.slnx")))
            {
                return at.FullName;
            }
        }

        throw new InvalidOperationException("These tests read the checkout they were built in.");
    }
}
