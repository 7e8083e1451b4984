using System.Globalization;
using System.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Quantities;

namespace Litterfall.Domain.Designs;

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
        var glass = Glass(wish, faults);
        var animal = Animal(wish, catalog, faults);
        return faults.Count > 0 ? new(null, [.. faults]) : new(Text(wish, edges!, glass, animal, name), []);
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

    private static string? Glass(StarterWish wish, List<TextFault> faults)
    {
        if (wish.Inside is not null)
        {
            if (wish.Glass is not null)
            {
                faults.Add(new(Place, 1, 1, "--glass goes with --box", "--inside without --glass"));
            }

            return null;
        }

        if (wish.Glass is null)
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
        else if (!QuantityText.TryParse<Length>(wish.Glass, out var glass, out var problem) || glass.Si <= 0)
        {
            faults.Add(
                new(
                    Place,
                    1,
                    1,
                    $"--glass: {(problem.Length > 0 ? problem : "it is zero")}",
                    "a thickness such as 5 mm"
                )
            );
        }

        return wish.Glass;
    }

    private static CatalogEntry? Animal(StarterWish wish, TradeCatalog catalog, List<TextFault> faults)
    {
        if (wish.Animal is null)
        {
            return null;
        }

        var entry = catalog.Find(wish.Animal);
        if (entry?.Kind == "animal")
        {
            return entry;
        }

        var near = catalog.Near(wish.Animal, ["animal"]);
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
        string? glass,
        CatalogEntry? animal,
        string name
    )
    {
        var e = edges.Select(edge => YamlText.Scalar(edge)).ToArray();
        var text = new StringBuilder();
        text.Append(
                CultureInfo.InvariantCulture,
                $$"""
                # A starter design. Every quantity is a number with its unit: 45 cm, 17 3/4 in, 8 dry qt.
                # `litterfall library` lists what can be named; `litterfall check` says what to buy and cut.
                litterfall: 1
                name: {{YamlText.Scalar(name)}}
                form: planted                       # or kit
                box:
                  # {{(
                    wish.Inside is null
                        ? "Outside edges. Measure each three times and enter all: [45 cm, 448 mm, 45 cm]."
                        : "Inside edges."
                )}}
                  {{(wish.Inside is null ? "outside" : "inside")}}: { length: {{e[0]}}, depth: {{e[
                    1
                ]}}, height: {{e[2]}} }
                """
            )
            .Append('\n');
        if (glass is not null)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"  glass: {{ walls: {YamlText.Scalar(glass)}, base: {YamlText.Scalar(glass)} }}\n"
            );
        }

        text.Append(Rest)
            .Append(
                animal is null
                    ? "# animals: [ { animal: dendrobates-auratus, count: 2 } ]   # quarantined, "
                        + "captive bred, papers at hand\n"
                    : $"animals: [ "
                        + $"{{ animal: {animal.Key}, count: {animal.Figure("minTankCount")?.Value ?? 2:0} }} "
                        + $"]"
                        + $"   # {animal.Name}; quarantined, captive bred, papers at hand\n"
            );
        return text.ToString();
    }

    private const string Rest = """
          opening: top                      # or front, with sill: 5 cm
        floor:
          drainage: { material: expanded-clay-8-16, depth: 5 cm }   # or none; or { raised: 5 cm }
          barrier: { material: plastic-fly-screen, upturn: 15 mm }  # never metal under wet soil
          soil: { recipe: standard-rainforest, front: 5 cm, back: 9 cm }   # finished depth; or depth: 7 cm
          moss: { material: long-fibre-sphagnum, depth: 1 cm, cover: 30 % }
          litter: { material: oak-leaves, depth: 3 cm }             # loose; boil or bake the leaves first
        hardscape: [ { material: cork-bark, mass: 0.5 kg } ]
        lid: { material: glass, thickness: 4 mm, gap: 2 mm }   # or { material: steel-gauze-0.5, share: 15 % }
        drain: { kind: siphon }
        # misting: { nozzles: 2, each: 90 mL/min, times: [ { at: "07:30", for: 20 s } ] }
        crew: [ { animal: folsomia-candida, count: 400 }, { animal: trichorhina-tomentosa, count: 30 } ]
        room: { temperature: 22 C, humidity: 45 % }
        # shelf: { rated: 60 kg }                                   # what the shelf's maker allows
        # hygiene: { bleach: 6 % }                                  # strength on the label, for the plant dip

        """;
}
