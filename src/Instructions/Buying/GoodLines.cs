using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Buying;

/// <summary>Equipment to buy: which, for what part of the design, how many or how long.</summary>
/// <param name="Key">Key of the library's equipment, or a plain word where it has none.</param>
/// <param name="Where">Key of the design.</param>
internal sealed record Good(string Key, string Where)
{
    /// <summary>Name where the library has no entry.</summary>
    public string? Item { get; init; }

    /// <summary>Pieces for all boxes.</summary>
    public required Figure Pieces { get; init; }

    /// <summary>Length of each piece, for what is cut.</summary>
    public Figure? Length { get; init; }

    /// <summary>Volume of all, for liquids and loose goods.</summary>
    public Figure? Liters { get; init; }

    /// <summary>What the buyer should know.</summary>
    public string Note { get; init; } = "";

    /// <summary>What kind of line it is.</summary>
    public ShoppingKind Kind { get; init; } = ShoppingKind.Fitting;
}

/// <summary>Lines of equipment, and prices of the workshop.</summary>
internal static class GoodLines
{
    /// <summary>The line of one good, named, explained and priced by its entry.</summary>
    public static ShoppingLine Line(DesignNumbers numbers, Good good)
    {
        var entry = numbers.Design.Catalog.Find<EquipmentEntry>(good.Key);
        var line = new ShoppingLine
        {
            Kind = good.Kind,
            Key = good.Key,
            Item = entry?.Name ?? good.Item ?? good.Key.Replace('-', ' '),
            Pieces = good.Pieces,
            Length = good.Length,
            Liters = good.Liters,
            Where = good.Where,
            Note = good.Note,
            Use = entry?.Use?.Text ?? "",
        };
        return Priced(numbers, good.Key, line);
    }

    /// <summary>The line as a catalog entry with the workshop's price, where it has one.</summary>
    public static ShoppingLine Priced(DesignNumbers numbers, string key, ShoppingLine line)
    {
        if (numbers.Design.Catalog.Find(key) is not { } entry)
        {
            return line;
        }

        line = line with { Key = entry.Key, Item = entry.Name };
        if (
            line.Pieces is not { } pieces
            || numbers.Design.Catalog.Workshop?.Prices.GetValueOrDefault(entry.Key) is not { } price
        )
        {
            return line;
        }

        var tier = price.Breaks.LastOrDefault(b => b.FromPacks <= pieces.Si) ?? price.Breaks[0];
        var each = Figure.Given(
            $"price of {entry.Name}",
            (double)tier.Price,
            Unit.Money,
            new Citation("workshop", price.Place, Provenance.Entered)
        );
        return entry is EquipmentEntry { Sold: not null } && line.Length is { } length
            ? ByLength(line, length, each)
            : line with
            {
                PriceEach = each,
                Price = (pieces * each).As($"price of all {entry.Name}", Unit.Money),
            };
    }

    /// <summary>What is sold by length is priced by the meter.</summary>
    private static ShoppingLine ByLength(ShoppingLine line, Figure length, Figure each)
    {
        var meters = (length / OneMeter).As($"meters of one {line.Item}", Unit.One);
        var piece = (meters * each).As($"price of one {line.Item}", Unit.Money);
        return line with
        {
            PriceEach = piece,
            Price = (line.Pieces! * piece).As($"price of all {line.Item}", Unit.Money),
        };
    }

    private static readonly Figure OneMeter = Figure.Choice(
        "length a price is for",
        1,
        Unit.Meter,
        "what is sold by length is priced by the meter"
    );

    /// <summary>"; switches up to 1800 W" of the library's timer or thermostat.</summary>
    public static string Switches(DesignNumbers numbers, string key) =>
        numbers.Design.Catalog.Find<EquipmentEntry>(key)?.Load is { } load
            ? $"; usual ones switch {NumberText.Of(load)}"
            : "";

    /// <summary>So many for each box, for all boxes.</summary>
    public static Figure Each(DesignNumbers numbers, string name, Figure perBox) =>
        (perBox * numbers.Design.Count("boxes", "number of boxes", numbers.Design.Design.Boxes)).As(
            name,
            Unit.One
        );

    /// <summary>One for each box, for all boxes.</summary>
    public static Figure Each(DesignNumbers numbers, string name, int perBox = 1) =>
        Each(numbers, name, Figure.Number(perBox));

    /// <summary>Spirit for the joints of all boxes.</summary>
    public static Figure Spirit(DesignNumbers numbers) =>
        (
            EquipmentPolicy.SpiritEach
            * numbers.Design.Count("boxes", "number of boxes", numbers.Design.Design.Boxes)
        ).As("spirit for the joints", Unit.Milliliter);

    /// <summary>One for each place: a bench of planted boxes, or each kit.</summary>
    public static Figure Places(DesignNumbers numbers, string name) =>
        numbers.Design.Design.Form == Domain.BuildForm.Kit
            ? Each(numbers, name)
            : Figure.Choice(name, 1, Unit.One, "boxes on one bench share it");
}
