using System.Reflection;
using System.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Laboratory.Cases;

namespace Litterfall.App.Files;

/// <summary>
/// The edge where files become text: the embedded catalog, design files and workshop folders.
/// </summary>
public static class Shop
{
    private const long LargestWorkshopFile = 4 * 1024 * 1024;
    private static readonly Lazy<TradeCatalog> Read = new(() => CatalogReader.Read(CatalogFiles()));

    /// <summary>Files of the catalog embedded at build.</summary>
    public static IReadOnlyCollection<CatalogFile> CatalogFiles()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return
        [
            .. assembly
                .GetManifestResourceNames()
                .Where(n => n.StartsWith("catalog/", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(name =>
                {
                    using var reader = new StreamReader(
                        assembly.GetManifestResourceStream(name)!,
                        Encoding.UTF8
                    );
                    return new CatalogFile(name, reader.ReadToEnd());
                }),
        ];
    }

    /// <summary>The embedded catalog; read once, for nothing in it changes.</summary>
    public static TradeCatalog Embedded() => Read.Value;

    /// <summary>The catalog, with a workshop's folder on top when one is named.</summary>
    public static Reading<TradeCatalog> Catalog(string? folder) => Catalog(folder, Embedded);

    private static Reading<TradeCatalog> Catalog(string? folder, Func<TradeCatalog> embedded)
    {
        if (folder is null)
        {
            return new(embedded(), []);
        }

        var files = WorkshopFiles(folder);
        if (!files.IsGood)
        {
            return new(null, files.Faults);
        }

        var workshop = WorkshopReader.Read(Path.GetFileName(Path.GetFullPath(folder)), files.Value!);
        if (!workshop.IsGood)
        {
            return new(null, workshop.Faults);
        }

        var catalog = embedded().With(workshop.Value!);
        var unknown = WorkshopReader.Unknown(catalog, folder);
        return unknown.Count > 0 ? new(null, unknown) : new(catalog, []);
    }

    /// <summary>The files of a workshop's folder, or what is wrong with it.</summary>
    /// <param name="folder">The folder.</param>
    public static Reading<IReadOnlyList<CatalogFile>> WorkshopFiles(string folder)
    {
        if (!Directory.Exists(folder))
        {
            return new(
                null,
                [new TextFault(folder, 1, 1, "there is no such folder", "a workshop folder with JSON files")]
            );
        }

        var files = new List<CatalogFile>();
        foreach (var path in Directory.EnumerateFiles(folder, "*.json").Order(StringComparer.Ordinal))
        {
            if (new FileInfo(path).Length > LargestWorkshopFile)
            {
                return new(null, [new TextFault(path, 1, 1, "the file is too large", "at most 4 MB")]);
            }

            files.Add(new CatalogFile(path, File.ReadAllText(path)));
        }

        return new(files, []);
    }

    /// <summary>A checked design from a file.</summary>
    /// <param name="path">The design file.</param>
    /// <param name="workshop">Folder from the command line; it wins over the one named in the design.</param>
    public static Reading<CheckedDesign> Design(string path, string? workshop)
    {
        if (!File.Exists(path))
        {
            return new(
                null,
                [
                    new TextFault(
                        path,
                        1,
                        1,
                        Directory.Exists(path) ? "this is a folder" : "there is no such file",
                        "a design file such as tank.viv.yaml"
                    ),
                ]
            );
        }

        // The catalog is read on the second core while the design is read on the first.
        var embedded = Task.Run(Embedded);
        var reading = DesignReader.Read(path, BoundedFile.Bytes(path, DesignReader.LargestFile));
        if (reading.Value is not { } document || !reading.IsGood)
        {
            return new(null, reading.Faults);
        }

        var folder = workshop ?? Beside(path, document.Design.Workshop);
        var catalog = Catalog(folder, () => embedded.GetAwaiter().GetResult());
        if (!catalog.IsGood)
        {
            return new(
                null,
                workshop is null && !Directory.Exists(folder)
                    ?
                    [
                        document.Fault(
                            "workshop",
                            $"there is no folder '{document.Design.Workshop}'",
                            "a folder seen from the design file, or none"
                        ),
                    ]
                    : catalog.Faults
            );
        }

        var files = DesignFilesReader.Read(document, (name, largest) =>
            Beside(path, name) is { } file && File.Exists(file) ? BoundedFile.Bytes(file, largest) : null
        );
        return files.IsGood
            ? DesignChecker.Check(document, catalog.Value!, files.Value)
            : new(null, files.Faults);
    }

    /// <summary>Writes a new file whole or not at all.</summary>
    public static void WriteWhole(string path, string text) =>
        WriteWhole(path, new UTF8Encoding(false).GetBytes(text));

    /// <summary>Writes a file whole or not at all; its folder must be there.</summary>
    public static void WriteWhole(string path, byte[] bytes)
    {
        var aside = $"{path}.{Environment.ProcessId}.part";
        try
        {
            File.WriteAllBytes(aside, bytes);
            File.Move(aside, path, overwrite: true);
        }
        finally
        {
            File.Delete(aside);
        }
    }

    internal static string? Beside(string path, string? folder) =>
        folder is null ? null : Path.Combine(Path.GetDirectoryName(path) ?? "", folder);
}
