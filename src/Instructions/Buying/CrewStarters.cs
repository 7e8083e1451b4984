using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;

namespace Litterfall.Instructions.Buying;

/// <summary>Culture cups that seed one kind of crew.</summary>
/// <param name="Crew">The animal.</param>
/// <param name="CountPerBox">Animals to seed in one box.</param>
/// <param name="Pack">The cup; null when the library knows none.</param>
/// <param name="CupsPerBox">Whole cups for one box; 0 when the library knows no cup.</param>
/// <param name="Cups">Whole cups for all boxes.</param>
/// <param name="Key">Key of the design.</param>
public sealed record CrewStarter(
    CrewEntry Crew,
    Figure CountPerBox,
    PackEntry? Pack,
    Figure CupsPerBox,
    Figure Cups,
    string Key
);

/// <summary>
/// Cups from the counts of the design. Each kit gets cups of its own; boxes planted on one bench share them.
/// </summary>
public static class CrewStarters
{
    /// <summary>One row for each crew animal with a count above 0.</summary>
    public static ImmutableArray<CrewStarter> Of(DesignNumbers numbers)
    {
        var rows = ImmutableArray.CreateBuilder<CrewStarter>();
        for (var i = 0; i < numbers.Design.Design.Crew.Count; i++)
        {
            if (numbers.Design.Design.Crew[i].Count > 0)
            {
                rows.Add(One(numbers, string.Create(CultureInfo.InvariantCulture, $"crew[{i}]"), i));
            }
        }

        return rows.ToImmutable();
    }

    private static CrewStarter One(DesignNumbers numbers, string key, int i)
    {
        var design = numbers.Design;
        var entry = design.Entry<CrewEntry>($"{key}.animal");
        var count = design.Count($"{key}.count", $"{entry.Name} for one box", design.Design.Crew[i].Count);
        var isKit = design.Design.Form == BuildForm.Kit;
        var boxes = design.Count("boxes", "number of boxes", design.Design.Boxes);
        var all = (count * boxes).As($"{entry.Name} for all boxes", Unit.One);
        var pack = Cup(design.Catalog, entry.Key, isKit ? count : all);
        if (pack?.Pieces is not { } pieces)
        {
            var none = Figure.Choice("culture cups", 0, Unit.One, "the library knows no cup of it");
            return new CrewStarter(entry, count, null, none, none, key);
        }

        var perBox = Whole($"cups of {entry.Name} for one box", count, pieces);
        return new CrewStarter(
            entry,
            count,
            pack,
            perBox,
            isKit
                ? (perBox * boxes).As($"cups of {entry.Name} for all kits", Unit.One)
                : Whole($"cups of {entry.Name} for all boxes", all, pieces),
            key
        );
    }

    /// <summary>The smallest cup that holds them, or the largest there is.</summary>
    private static PackEntry? Cup(TradeCatalog catalog, string crew, Figure count)
    {
        var cups = catalog
            .Of<PackEntry>()
            .Where(e => e.Material == crew && e.Pieces is { Si: > 0 })
            .OrderBy(e => e.Pieces!.Si)
            .ThenBy(e => e.Key, StringComparer.Ordinal)
            .ToArray();
        return cups.FirstOrDefault(e => e.Pieces!.Si >= count.Si) ?? cups.LastOrDefault();
    }

    private static Figure Whole(string name, Figure count, Figure pieces) =>
        Figure
            .Computed(
                $"{count.Name} ÷ {pieces.Name}, rounded up",
                Math.Ceiling(count.Si / pieces.Si - 1e-9),
                Dimension.None,
                count,
                pieces
            )
            .As(name, Unit.One);
}
