using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Packs;

namespace Litterfall.Instructions.Buying;

/// <summary>What kind of thing a shopping line is.</summary>
public enum ShoppingKind
{
    /// <summary>Taken from the workshop's own stock; nothing to buy.</summary>
    FromStock,

    /// <summary>Packs of aggregate, soil parts, moss or leaves.</summary>
    Bulk,

    /// <summary>Mesh or grid to cut from.</summary>
    Mesh,

    /// <summary>Glass or plastic panes.</summary>
    Pane,

    /// <summary>Background panels.</summary>
    Background,

    /// <summary>Silicone and foam.</summary>
    Sealant,

    /// <summary>Wood and stone.</summary>
    Hardscape,

    /// <summary>The box itself.</summary>
    Box,

    /// <summary>Drain fittings, nozzles, pumps, tracks, clips.</summary>
    Fitting,

    /// <summary>Heating, fans, timers, plugs and what protects them.</summary>
    Electric,

    /// <summary>Lamps.</summary>
    Lamp,

    /// <summary>Pins, cups, labels, bleach, gloves.</summary>
    Supply,

    /// <summary>Plants.</summary>
    Plant,

    /// <summary>Crew starters.</summary>
    Crew,
}

/// <summary>
/// One line to buy for all boxes of a design. Each measure has a column of its own; a measure that a line
/// does not have is null, so a column never mixes units.
/// </summary>
public sealed record ShoppingLine
{
    /// <summary>Kind.</summary>
    public required ShoppingKind Kind { get; init; }

    /// <summary>Catalog key of the pack or material, or a plain word for goods without an entry.</summary>
    public required string Key { get; init; }

    /// <summary>What it is.</summary>
    public required string Item { get; init; }

    /// <summary>Packs or pieces for all boxes; null where only liters are taken.</summary>
    public Figure? Pieces { get; init; }

    /// <summary>Liters in one pack.</summary>
    public Figure? LitersEach { get; init; }

    /// <summary>Liters in all packs, or taken from stock.</summary>
    public Figure? Liters { get; init; }

    /// <summary>Length of one piece.</summary>
    public Figure? Length { get; init; }

    /// <summary>Width of one piece.</summary>
    public Figure? Width { get; init; }

    /// <summary>Height of a box.</summary>
    public Figure? Height { get; init; }

    /// <summary>Thickness.</summary>
    public Figure? Thickness { get; init; }

    /// <summary>Area of all pieces, before waste.</summary>
    public Figure? Area { get; init; }

    /// <summary>Mass of all pieces.</summary>
    public Figure? Mass { get; init; }

    /// <summary>Price of one; null when the workshop has none.</summary>
    public Figure? PriceEach { get; init; }

    /// <summary>Price of all; null when the workshop has none.</summary>
    public Figure? Price { get; init; }

    /// <summary>Key of the design it is for, such as "floor.soil".</summary>
    public required string Where { get; init; }

    /// <summary>What the buyer should know.</summary>
    public string Note { get; init; } = "";

    /// <summary>What equipment is for; empty for anything else.</summary>
    public string Use { get; init; } = "";
}

/// <summary>What to buy for all boxes of a design.</summary>
/// <param name="Lines">In the order of a trip: bulk, cut goods, fittings, living things.</param>
/// <param name="Total">Price of the lines that have one; null when none has.</param>
/// <param name="Unpriced">Lines to buy that have no price.</param>
/// <param name="Currency">ISO 4217 code; null when the workshop names none.</param>
public sealed record ShoppingList(
    ImmutableArray<ShoppingLine> Lines,
    Figure? Total,
    int Unpriced,
    string? Currency
)
{
    /// <summary>Writes the list.</summary>
    public static ShoppingList Of(DesignNumbers numbers)
    {
        var lines = ImmutableArray.CreateBuilder<ShoppingLine>();
        foreach (var need in numbers.Packs)
        {
            lines.AddRange(Bulk(numbers, need));
        }

        lines.AddRange(numbers.Cuts.Select(part => Cut(numbers, part)));
        lines.AddRange(ShoppingParts.Of(numbers));
        var priced = lines.Where(l => l.Price is not null).Select(l => l.Price!).ToArray();
        return new ShoppingList(
            lines.ToImmutable(),
            priced.Length == 0
                ? null
                : Figure.Total(priced, Unit.Money.Dimension).As("price of all priced lines", Unit.Money),
            lines.Count(l => l.Kind != ShoppingKind.FromStock && l.Price is null),
            numbers.Design.Catalog.Workshop?.Currency
        );
    }

    private static IEnumerable<ShoppingLine> Bulk(DesignNumbers numbers, PackNeed need)
    {
        var where = Where(numbers, need.Material.Key);
        var used = Figure.Min(need.Need, need.Stock).As($"{need.Material.Name} from stock", Unit.Liter);
        if (used.Si > 0)
        {
            yield return new ShoppingLine
            {
                Kind = ShoppingKind.FromStock,
                Key = need.Material.Key,
                Item = need.Material.Name,
                Liters = used,
                Where = where,
                Note = need.Net.Si > 0 ? "all there is; the rest is bought" : "covered by stock",
            };
        }

        foreach (var pack in need.Packs)
        {
            yield return new ShoppingLine
            {
                Kind = ShoppingKind.Bulk,
                Key = pack.Pack.Key,
                Item = pack.Pack.Name,
                Pieces = pack.Count,
                LitersEach = pack.Pack.LooseVolume,
                Liters = pack.Liters,
                PriceEach = pack.Price is { } all
                    ? (all / pack.Count).As($"price of one {pack.Pack.Name}", Unit.Money)
                    : null,
                Price = pack.Price,
                Where = where,
                Note = need.Note,
            };
        }

        if (need.Packs.Length == 0 && need.Net.Si > 0)
        {
            yield return new ShoppingLine
            {
                Kind = ShoppingKind.Bulk,
                Key = need.Material.Key,
                Item = need.Material.Name,
                Liters = need.Net,
                Where = where,
                Note = need.Note,
            };
        }
    }

    /// <summary>The layer a material is for; the soil where it is a component.</summary>
    private static string Where(DesignNumbers numbers, string material)
    {
        var layer = numbers.Layers.FirstOrDefault(l =>
            l.Material?.Key == material || l.Components.Any(c => c.Material.Key == material)
        );
        return $"floor.{layer?.Layer ?? "soil"}";
    }

    private static ShoppingLine Cut(DesignNumbers numbers, CutPart part)
    {
        var entry = numbers.Design.Catalog.Find(part.Material);
        return new ShoppingLine
        {
            Kind = part.Part switch
            {
                "background" => ShoppingKind.Background,
                "grid" => ShoppingKind.Mesh,
                _ => entry is MeshEntry ? ShoppingKind.Mesh : ShoppingKind.Pane,
            },
            Key = part.Material,
            Item = $"{entry?.Name ?? part.Material}, {part.Part.Replace('-', ' ')}",
            Pieces = part.Count,
            Length = part.Length,
            Width = part.Width,
            Thickness = part.Thickness,
            Area = (part.Count * part.Length * part.Width).As(
                $"area of {part.Part}, all boxes",
                Unit.SquareMeter
            ),
            Where = CutWhere(part.Part),
            Note = $"cut size; {part.Note}",
        };
    }

    private static string CutWhere(string part) =>
        part switch
        {
            "barrier" => "floor.barrier",
            "grid" => "floor.drainage.grid",
            "vent-mesh" => "vents",
            "background" => "background",
            "door" => "box.doors",
            _ when part.StartsWith("ledge", StringComparison.Ordinal) => "lid.rests",
            _ when part.StartsWith("vent-strip", StringComparison.Ordinal) => "vents",
            _ when part.StartsWith("pane-", StringComparison.Ordinal) => "box",
            _ when part.StartsWith("shelf", StringComparison.Ordinal) => "shelves",
            _ => "lid",
        };
}
