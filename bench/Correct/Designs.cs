using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;

namespace Litterfall.Bench.Correct;

/// <summary>Designs of the samples, with the catalog as it lies in the checkout.</summary>
internal static class Designs
{
    public static CheckedDesign Read(string root, string sample)
    {
        var folder = Path.Combine(root, "catalog");
        var catalog = CatalogReader.Read([
            .. Directory
                .EnumerateFiles(folder, "*.json", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .Select(f => new CatalogFile(
                    "catalog/" + Path.GetRelativePath(folder, f).Replace('\\', '/'),
                    File.ReadAllText(f)
                )),
        ]);
        var path = Path.Combine(root, "samples", sample);
        var document = DesignReader.Read(path, File.ReadAllBytes(path)).Value!;
        if (document.Design.Workshop is { } name)
        {
            var shop = Path.Combine(root, "samples", name);
            var files = Directory
                .EnumerateFiles(shop, "*.json")
                .Order(StringComparer.Ordinal)
                .Select(f => new CatalogFile(f, File.ReadAllText(f)))
                .ToList();
            catalog = catalog.With(WorkshopReader.Read(name, files).Value!);
        }

        return DesignChecker.Check(document, catalog).Value
            ?? throw new InvalidOperationException($"{sample} does not check");
    }
}
