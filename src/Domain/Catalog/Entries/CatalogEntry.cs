using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>A published or other source.</summary>
/// <param name="Key">Short name used by values.</param>
/// <param name="Title">Full citation.</param>
/// <param name="Year">Year of publication, if any.</param>
/// <param name="Kind">journal, standard, handbook, dataset, law, web page, common practice or own.</param>
/// <param name="Read">How much of it was read: whole, abstract, data, excerpt, title or none.</param>
public sealed record Source(string Key, string Title, int? Year, string Kind, string Read);

/// <summary>One value of a catalog entry: a number with unit, or a text, with its citation.</summary>
public sealed record CatalogValue
{
    /// <summary>Name of the value, e.g. "bulkDensity".</summary>
    public required string Name { get; init; }

    /// <summary>The number in <see cref="Unit"/>; null for a text.</summary>
    public double? Number { get; init; }

    /// <summary>Lower end of its band.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end of its band.</summary>
    public double? High { get; init; }

    /// <summary>Unit of the number.</summary>
    public Unit? Unit { get; init; }

    /// <summary>The text; null for a number.</summary>
    public string? Text { get; init; }

    /// <summary>Where it stands.</summary>
    public required Citation Origin { get; init; }
}

/// <summary>One ingredient of a recipe by loose volume.</summary>
public sealed record RecipePart(string Material, double Parts);

/// <summary>A text of a catalog entry and where it stands.</summary>
/// <param name="Text">The text.</param>
/// <param name="Origin">Where it stands.</param>
public sealed record CatalogText(string Text, Citation Origin);

/// <summary>
/// A material, recipe, animal, plant, crew animal, lamp or pack. Each kind is a record of its own with a
/// member for every value it may have.
/// </summary>
public abstract record CatalogEntry
{
    private readonly ImmutableDictionary<string, CatalogValue> byName = ImmutableDictionary<
        string,
        CatalogValue
    >.Empty;

    /// <summary>Key used in design files.</summary>
    public required string Key { get; init; }

    /// <summary>Its kind.</summary>
    public abstract EntryKind Kind { get; }

    /// <summary>Name on screens.</summary>
    public required string Name { get; init; }

    /// <summary>"white springtail (Folsomia candida)": the common name first, where it has both.</summary>
    public string CommonFirst =>
        Name.Split(" (", 2) is [var science, var common] && IsSpecies(science, common)
            ? $"{common.TrimEnd(')')} ({science})"
            : Name;

    /// <summary>
    /// "Jewel orchids (Macodes, Ludisia)" and "Neoregelia, small kinds (N. ampullacea, …)" name several in
    /// the brackets: there the first words are what people say.
    /// </summary>
    private static bool IsSpecies(string science, string common)
    {
        var comma = common.IndexOf(", ", StringComparison.Ordinal);
        return !science.Contains(',') && (comma < 0 || !char.IsUpper(common[comma + 2]));
    }

    /// <summary>Words people also use for it.</summary>
    public ImmutableArray<string> Synonyms { get; init; } = [];

    /// <summary>A remark.</summary>
    public string? Note { get; init; }

    /// <summary>All its values in the order of their names, as lists and tables show them.</summary>
    public required ImmutableArray<CatalogValue> Values
    {
        get;
        init
        {
            field = [.. value.OrderBy(v => v.Name, StringComparer.Ordinal)];
            byName = field.ToImmutableDictionary(v => v.Name, StringComparer.Ordinal);
        }
    }

    /// <summary>Ingredients of a recipe.</summary>
    public ImmutableArray<RecipePart> Parts { get; init; } = [];

    /// <summary>Where the ingredients stand.</summary>
    public Citation? PartsOrigin { get; init; }

    /// <summary>True when it came from the workshop's own folder.</summary>
    public bool IsWorkshops { get; init; }

    /// <summary>Hears which values the members ask for; null but where the members are listed.</summary>
    internal Action<string, bool>? Asked { get; init; }

    /// <summary>One of its <see cref="Values"/> as a figure; null for a text.</summary>
    /// <param name="value">The value.</param>
    public Figure? FigureOf(CatalogValue value) => Number(value.Name);

    /// <summary>The same entry with one value put in the place of the one of its name.</summary>
    /// <param name="value">The value.</param>
    public CatalogEntry With(CatalogValue value) =>
        this with
        {
            Values = [.. Values.Where(v => v.Name != value.Name), value],
        };

    /// <summary>The value of this name, or null.</summary>
    internal CatalogValue? Value(string name) => byName.GetValueOrDefault(name);

    /// <summary>The text value, or null when the entry does not have it.</summary>
    /// <param name="name">Its name in the file.</param>
    protected CatalogText? Text(string name)
    {
        Asked?.Invoke(name, true);
        return Value(name) is { Text: { } text } value ? new(text, value.Origin) : null;
    }

    /// <summary>The numeric value as a figure, or null when the entry does not have it.</summary>
    /// <param name="name">Its name in the file.</param>
    protected Figure? Number(string name)
    {
        Asked?.Invoke(name, false);
        return Value(name) is { Number: { } number, Unit: { } unit } value
            ? Figure.Printed($"{Words(name)} of {Name}", number, unit, value.Origin)
            : null;
    }

    /// <summary>The lower and upper end of a value's band, or null when it has none.</summary>
    /// <param name="name">Its name in the file.</param>
    protected (Figure Low, Figure High)? Band(string name)
    {
        Asked?.Invoke(name, false);
        return Value(name) is { Low: { } low, High: { } high, Unit: { } unit } value
            ? (
                Figure.Printed($"least {Words(name)} of {Name}", low, unit, value.Origin),
                Figure.Printed($"largest {Words(name)} of {Name}", high, unit, value.Origin)
            )
            : null;
    }

    /// <summary>Names that are symbols in their sources.</summary>
    private static readonly ImmutableDictionary<string, string> Symbols = ImmutableDictionary.CreateRange<
        string,
        string
    >([
        new("T0", "temperature below which nothing develops"),
        new("KE", "warmth from egg to hatching"),
        new("KJ", "warmth from hatching to the first eggs"),
    ]);

    /// <summary>"bulkDensityDry" as "bulk density dry", "decayAt24C" as "decay at 24 °C".</summary>
    internal static string Words(string name)
    {
        if (Symbols.TryGetValue(name, out var symbol))
        {
            return symbol;
        }

        var words = new System.Text.StringBuilder(name.Length + 4);
        var before = ' ';
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && char.IsAsciiDigit(before))
            {
                words.Append(letter == 'C' ? " °C" : $" {char.ToLowerInvariant(letter)}");
            }
            else if (char.IsUpper(letter) || (char.IsAsciiDigit(letter) && char.IsLetter(before)))
            {
                words.Append(' ').Append(char.ToLowerInvariant(letter));
            }
            else
            {
                words.Append(letter);
            }

            before = letter;
        }

        return words.ToString();
    }
}
