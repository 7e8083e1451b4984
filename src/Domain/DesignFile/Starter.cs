using System.Globalization;
using System.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.DesignFile;

/// <summary>What a starter design is wanted for.</summary>
/// <param name="Box">Outside size as typed, or null.</param>
/// <param name="Inside">Inside size as typed, or null.</param>
/// <param name="Glass">Glass thickness as typed, or null.</param>
/// <param name="Animal">Catalog key of an animal, or null.</param>
public sealed record StarterWish(string? Box, string? Inside, string? Glass, string? Animal);

/// <summary>Writes a commented design to start from.</summary>
public static class Starter
{
    private const string Place = "command line";
    private const string SizeForm =
        "length x depth x height with a unit, such as \"45 x 45 x 60 cm\" or \"24 x 18 x 18 in\"";

    /// <summary>The text of a design that checks without faults, or what is wrong with the wish.</summary>
    public static Reading<string> Write(StarterWish wish, TradeCatalog catalog, string name)
    {
        var faults = new List<TextFault>();
        if (wish.Box is null == wish.Inside is null)
        {
            faults.Add(new(Place, 1, 1, "the size of the box is not clear", "either --box or --inside"));
            return new(null, [.. faults]);
        }

        var edges = Edges(wish.Box ?? wish.Inside!, faults);
        CheckGlass(wish, faults);
        var animal = Animal(wish, catalog, faults);
        return faults.Count > 0 ? new(null, [.. faults]) : new(Text(wish, edges!, catalog, animal, name), []);
    }

    private static string[]? Edges(string size, List<TextFault> faults)
    {
        var parts = size.ToLowerInvariant().Split(['x', '×', '*', 'X'], StringSplitOptions.TrimEntries);
        if (parts.Length != 3)
        {
            faults.Add(new(Place, 1, 1, $"'{size}' does not have three edges", SizeForm));
            return null;
        }

        var unit = UnitOf(parts[2]);
        var edges = parts
            .Select(part => UnitOf(part).Length > 0 || unit.Length == 0 ? part : $"{part} {unit}")
            .ToArray();
        foreach (var edge in edges)
        {
            if (!QuantityText.TryParse<Length>(edge, out var length, out var problem) || length.Si <= 0)
            {
                faults.Add(
                    new(
                        Place,
                        1,
                        1,
                        problem.Length > 0 ? $"{size}: {problem}" : $"{size}: an edge is zero",
                        SizeForm
                    )
                );
                return null;
            }
        }

        return edges;
    }

    private static string UnitOf(string edge) =>
        edge.TrimStart("0123456789.,/ -½¼¾⅛⅜⅝⅞".ToCharArray()).Trim();

    private static void CheckGlass(StarterWish wish, List<TextFault> faults)
    {
        if (wish.Inside is not null && wish.Glass is not null)
        {
            faults.Add(new(Place, 1, 1, "--glass goes with --box", "--inside without --glass"));
        }
        else if (wish.Inside is null && wish.Glass is null)
        {
            faults.Add(
                new(
                    Place,
                    1,
                    1,
                    "the outside alone does not tell the inside",
                    "--glass, such as --glass \"5 mm\""
                )
            );
        }
        else if (wish.Glass is { } glass)
        {
            var reads = QuantityText.TryParse<Length>(glass, out var thickness, out var problem);
            if (!reads || thickness.Si <= 0)
            {
                faults.Add(
                    new(
                        Place,
                        1,
                        1,
                        $"--glass: {(reads ? "it is zero" : problem)}",
                        "a thickness such as 5 mm"
                    )
                );
            }
        }
    }

    private static AnimalEntry? Animal(StarterWish wish, TradeCatalog catalog, List<TextFault> faults)
    {
        if (wish.Animal is null)
        {
            return null;
        }

        var entry = catalog.Find<AnimalEntry>(wish.Animal);
        if (entry is not null)
        {
            return entry;
        }

        var near = catalog.Near(wish.Animal, [EntryKind.Animal]);
        faults.Add(
            new(
                Place,
                1,
                1,
                $"the library has no animal '{wish.Animal}'",
                near.Length > 0
                    ? $"perhaps {string.Join(", ", near)}"
                    : "a key of `litterfall library animal`"
            )
        );
        return null;
    }

    private static string Text(
        StarterWish wish,
        string[] edges,
        TradeCatalog catalog,
        AnimalEntry? animal,
        string name
    )
    {
        var e = edges.Select(edge => YamlText.Scalar(edge)).ToArray();
        var which = wish.Inside is null ? "outside" : "inside";
        var advice = wish.Inside is null
            ? "Outside edges. Measure each three times and enter all: [45 cm, 448 mm, 45 cm]."
            : "Inside edges.";
        var text = new StringBuilder(Head)
            .Append("name: ")
            .Append(YamlText.Scalar(name, YamlText.ReadsAsOther(name)))
            .Append('\n');
        text.Append("form: planted                       # or kit\nbox:\n  # ").Append(advice).Append('\n');
        text.Append("  ")
            .Append(which)
            .Append(": { length: ")
            .Append(e[0])
            .Append(", depth: ")
            .Append(e[1])
            .Append(", height: ")
            .Append(e[2])
            .Append(" }\n");
        if (wish.Glass is { } thickness)
        {
            var glass = YamlText.Scalar(thickness);
            text.Append("  glass: { walls: ").Append(glass).Append(", base: ").Append(glass).Append(" }\n");
        }

        return text.Append(Rest).Append(Crew(edges, catalog)).Append(Animals(animal)).ToString();
    }

    /// <summary>Springtails and dwarf isopods at the library's seeding density over the floor.</summary>
    private static string Crew(string[] edges, TradeCatalog catalog)
    {
        var floor = Meters(edges[0]) * Meters(edges[1]);
        var items = new[] { "folsomia-candida", "trichorhina-tomentosa" }
            .Select(key => (Key: key, Density: catalog.Find<CrewEntry>(key)?.SeedDensity?.Si ?? 0))
            .Where(crew => crew.Density > 0)
            .Select(crew =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{{ animal: {crew.Key}, count: {Math.Ceiling(crew.Density * floor):0} }}"
                )
            )
            .ToArray();
        return items.Length == 0 ? "" : $"crew: [ {string.Join(", ", items)} ]\n";
    }

    private static double Meters(string edge) =>
        QuantityText.TryParse<Length>(edge, out var length, out _) ? length.Si : 0;

    private static string Animals(AnimalEntry? animal)
    {
        var count = Math.Max(1, animal?.SmallestBoxCount?.Value ?? 2);
        var item = string.Create(
            CultureInfo.InvariantCulture,
            $"animals: [ {{ animal: {animal?.Key ?? "dendrobates-auratus"}, count: {count:0} }} ]"
        );
        return animal is null
            ? $"# {item}   # quarantined, captive bred, papers at hand\n"
            : $"# {animal.Name}: quarantined, captive bred, papers at hand.\n{item}\n";
    }

    private const string Head = """
        # A starter design. Every quantity is a number with its unit: 45 cm, 17 3/4 in, 8 dry qt.
        # `litterfall library` lists what can be named; `litterfall check` says what to buy and cut.
        litterfall: 1

        """;

    private const string Rest = """
          opening: top                      # or front, with sill: 5 cm
        floor:
          drainage: { material: expanded-clay-8-16, depth: 5 cm }   # or none; or { raised: 5 cm }
          barrier: { material: plastic-fly-screen, upturn: 15 mm }  # never metal under wet soil
          soil: { recipe: standard-rainforest, front: 5 cm, back: 9 cm }   # finished depth; or depth: 7 cm
          moss: { material: long-fibre-sphagnum, depth: 1 cm, cover: 30 % }
          litter: { material: oak-leaves, depth: 3 cm }             # loose; boil or bake the leaves first
        hardscape: [ { material: cork-bark, mass: 0.5 kg } ]
        lid: { material: glass, thickness: 4 mm, gap: 2 mm, rests: ledges, strip: 30 mm, latched: true }
        drain: { kind: siphon }
        # misting: { nozzles: 2, each: 90 mL/min, times: [ { at: "07:30", for: 20 s } ] }
        room: { temperature: 22 C, humidity: 45 % }
        # shelf: { rated: 60 kg }                                   # what the shelf's maker allows
        # hygiene: { bleach: 6 % }                                  # strength on the label, for the plant dip

        """;
}
