using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;

namespace Litterfall.Bench.Correct;

/// <summary>Designs of the samples, with the catalog as it lies in the checkout.</summary>
internal static class Designs
{
    /// <summary>
    /// The box of our own worked example of water: 45 × 45 × 60 cm, misted 180 mL a day, with air held at
    /// 24 °C and 92 % and changed twice an hour.
    /// </summary>
    public const string Reference = """
        litterfall: 1
        name: reference box
        planted: 2026-03-02
        box: { outside: { length: 45 cm, depth: 45 cm, height: 60 cm }, glass: { walls: 5 mm, base: 5 mm } }
        floor:
          drainage: { material: expanded-clay-8-16, depth: 5 cm }
          barrier: { material: plastic-fly-screen }
          soil: { recipe: ready-rainforest, depth: 7 cm, settling: 15 % }
          litter: { material: oak-leaves, depth: 3 cm }
        lid: { material: glass, thickness: 4 mm, gap: 2 mm }
        vents: [ { area: 40 cm2, height: 50 cm, mesh: steel-gauze-0.5 } ]
        drain: { kind: siphon }
        misting:
          nozzles: 2
          each: 90 mL/min
          times: [ { at: "07:30", for: 20 s }, { at: "12:30", for: 20 s }, { at: "18:30", for: 20 s } ]
        lamps: [ { lamp: led-bar-6500k, lumens: 1500, watts: 14, above: 3 cm, on: "08:00", off: "20:00" } ]
        room: { temperature: 21 C, humidity: 50 % }
        """;

    /// <summary>The same box with its air held.</summary>
    public const string Held =
        Reference + "\nheadspace: { hold: { air: 24 C, humidity: 92 %, airChanges: 2 } }\n";

    public static CheckedDesign Pose(string root, string text)
    {
        var document = DesignReader.Read("posed", text);
        if (!document.IsGood)
        {
            throw new InvalidOperationException(string.Join("; ", document.Faults));
        }

        return Checked(document.Value!, Catalog(root));
    }

    private static CheckedDesign Checked(DesignDocument document, TradeCatalog catalog)
    {
        var design = DesignChecker.Check(document, catalog);
        return design.Value ?? throw new InvalidOperationException(string.Join("; ", design.Faults));
    }

    private static TradeCatalog Catalog(string root)
    {
        var folder = Path.Combine(root, "catalog");
        return CatalogReader.Read([
            .. Directory
                .EnumerateFiles(folder, "*.json", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .Select(f => new CatalogFile(
                    "catalog/" + Path.GetRelativePath(folder, f).Replace('\\', '/'),
                    File.ReadAllText(f)
                )),
        ]);
    }

    public static CheckedDesign Read(string root, string sample)
    {
        var catalog = Catalog(root);
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

        return Checked(document, catalog);
    }
}
