using System.Collections.Immutable;
using System.Text.Json;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Catalog;

/// <summary>One file of a catalog or workshop folder.</summary>
public sealed record CatalogFile(string Path, string Text);

/// <summary>Reads catalog files (JSON).</summary>
public static class CatalogReader
{
    private const string SourcesFile = "sources.json";

    /// <summary>
    /// The embedded catalog; a fault in it is our own mistake.
    /// </summary>
    /// <exception cref="InvalidDataException">The embedded catalog is not well formed.</exception>
    public static TradeCatalog Read(IReadOnlyCollection<CatalogFile> files)
    {
        var faults = new List<TextFault>();
        var sources = files.Where(IsSources).SelectMany(file => ReadSources(file, faults)).ToList();
        var entries = files
            .Where(file => !IsSources(file))
            .SelectMany(file => ReadEntries(file, false, faults))
            .ToList();
        return faults.Count == 0
            ? new TradeCatalog(entries, sources)
            : throw new InvalidDataException($"{faults[0].File}: {faults[0].Message}");
    }

    /// <summary>True for a list of sources.</summary>
    public static bool IsSources(CatalogFile file) =>
        file.Path.EndsWith(SourcesFile, StringComparison.Ordinal);

    /// <summary>Sources of a file.</summary>
    public static ImmutableArray<Source> ReadSources(CatalogFile file, ICollection<TextFault> faults)
    {
        var sources = ImmutableArray.CreateBuilder<Source>();
        foreach (var item in Items(file, faults))
        {
            if (Text(item, "key") is { } key && Text(item, "title") is { } title && Year(item, out var year))
            {
                sources.Add(new(key, title, year, Text(item, "kind") ?? "", Text(item, "read") ?? ""));
            }
            else
            {
                faults.Add(
                    new TextFault(
                        file.Path,
                        1,
                        1,
                        $"a source '{Text(item, "key")}' is not complete",
                        "sources with key, title and, where known, a whole year"
                    )
                );
            }
        }

        return sources.ToImmutable();
    }

    /// <summary>False for a year that is not a whole number; none or null is fine.</summary>
    private static bool Year(JsonElement item, out int? year)
    {
        year = null;
        if (!item.TryGetProperty("year", out var value) || value.ValueKind == JsonValueKind.Null)
        {
            return true;
        }

        var whole = 0;
        var read = value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out whole);
        year = read ? whole : null;
        return read;
    }

    /// <summary>Entries of a file; faults are collected, the faulty entry is left out.</summary>
    public static ImmutableArray<CatalogEntry> ReadEntries(
        CatalogFile file,
        bool workshops,
        ICollection<TextFault> faults
    )
    {
        var entries = ImmutableArray.CreateBuilder<CatalogEntry>();
        foreach (var item in Items(file, faults))
        {
            try
            {
                var entry = ReadEntry(file, item, workshops);
                var strange = entry.Values.Select(value => Strange(file, entry, value)).OfType<TextFault>();
                var before = faults.Count;
                foreach (var fault in strange)
                {
                    faults.Add(fault);
                }

                if (faults.Count == before)
                {
                    entries.Add(entry);
                }
            }
            catch (FormatException e)
            {
                faults.Add(
                    new TextFault(file.Path, 1, 1, e.Message, "an entry with key, kind, name and values")
                );
            }
        }

        return entries.ToImmutable();
    }

    private static IEnumerable<JsonElement> Items(CatalogFile file, ICollection<TextFault> faults)
    {
        try
        {
            var root = JsonDocument.Parse(file.Text).RootElement;
            if (root.ValueKind == JsonValueKind.Array)
            {
                return root.EnumerateArray();
            }

            faults.Add(new TextFault(file.Path, 1, 1, "the file is not a list", "a JSON list of entries"));
        }
        catch (JsonException e)
        {
            faults.Add(
                new TextFault(
                    file.Path,
                    (int)(e.LineNumber ?? 0) + 1,
                    (int)(e.BytePositionInLine ?? 0) + 1,
                    "the file is not JSON",
                    "a JSON list of entries"
                )
            );
        }

        return [];
    }

    /// <summary>What is wrong with the name of a value: nothing reads it, or not in this form.</summary>
    private static TextFault? Strange(CatalogFile file, CatalogEntry entry, CatalogValue value)
    {
        var member = EntryMembers.Find(entry.Kind, value.Name);
        if (member is null)
        {
            var names = EntryMembers.Of(entry.Kind).Select(known => known.Name);
            return new TextFault(
                file.Path,
                1,
                1,
                $"'{entry.Key}' has a value {value.Name}, which the kind {entry.Kind.Word()} does not know",
                TradeCatalog.Nearest(value.Name, names) is { } near
                    ? $"perhaps {near}"
                    : $"one of {string.Join(", ", names)}"
            );
        }

        return member.IsText == value.Text is not null
            ? null
            : new TextFault(
                file.Path,
                1,
                1,
                $"{value.Name} of '{entry.Key}' is a {(member.IsText ? "number" : "text")}",
                member.IsText ? "a text" : "a number with its unit"
            );
    }

    private static EntryKind KindOf(JsonElement item, string key)
    {
        var word = Text(item, "kind") ?? throw new FormatException($"'{key}' has no kind");
        if (EntryKinds.Find(word) is { } kind)
        {
            return kind;
        }

        var words = EntryKinds.All.Select(known => known.Word());
        throw new FormatException(
            $"'{key}' is of the kind '{word}', which the library does not have: "
                + (
                    TradeCatalog.Nearest(word, words) is { } near
                        ? $"perhaps {near}"
                        : string.Join(", ", words)
                )
        );
    }

    private static CatalogEntry ReadEntry(CatalogFile file, JsonElement item, bool workshops)
    {
        var key = Text(item, "key") ?? throw new FormatException("an entry has no key");
        var values = ImmutableDictionary.CreateBuilder<string, CatalogValue>(StringComparer.Ordinal);
        if (item.TryGetProperty("values", out var all))
        {
            if (all.ValueKind != JsonValueKind.Object)
            {
                throw new FormatException($"'{key}' needs its values as an object");
            }

            foreach (var value in all.EnumerateObject())
            {
                values[value.Name] = ReadValue(file, key, value, workshops);
            }
        }

        var entry = BlankEntries.Of(KindOf(item, key)) with
        {
            Key = TradeCatalog.Canonical(key),
            Name = Text(item, "name") ?? throw new FormatException($"'{key}' has no name"),
            Synonyms = Texts(item, "synonyms"),
            Note = Text(item, "note"),
            Values = [.. values.Values],
            Parts = Parts(item, key),
            PartsOrigin =
                item.TryGetProperty("partsSource", out var origin)
                    ? ReadOrigin(file, key, "partsSource", origin, workshops)
                : workshops ? new Citation("workshop", $"{file.Path}, {key}, parts", Provenance.Entered)
                : null,
            IsWorkshops = workshops,
        };
        return entry is PackEntry pack ? pack with { Material = Text(item, "material") } : entry;
    }

    private static CatalogValue ReadValue(CatalogFile file, string key, JsonProperty value, bool workshops)
    {
        if (value.Value.ValueKind != JsonValueKind.Object)
        {
            throw new FormatException($"'{key}' has a bare {value.Name}; write value and unit");
        }

        var number = OptionalNumber(value.Value, "value", key);
        var text = Text(value.Value, "text");
        var symbol = Text(value.Value, "unit");
        var unit = symbol is null ? null : Unit.Find(symbol);
        if (number is null == text is null || (number is not null && unit is null))
        {
            throw new FormatException(
                $"'{key}' needs for {value.Name} a number with a known unit, or a text"
            );
        }

        return new CatalogValue
        {
            Name = value.Name,
            Number = number,
            Text = text,
            Unit = unit,
            Low = OptionalNumber(value.Value, "low", key),
            High = OptionalNumber(value.Value, "high", key),
            Origin = ReadOrigin(file, key, value.Name, value.Value, workshops),
        };
    }

    private static Citation ReadOrigin(
        CatalogFile file,
        string key,
        string name,
        JsonElement value,
        bool workshops
    )
    {
        var source = Text(value, "source");
        var provenance = ProvenanceWords.Find(Text(value, "provenance") ?? "");
        if (source is not null && provenance is { } known)
        {
            return new Citation(source, Text(value, "place") ?? "", known);
        }

        return workshops
            ? new Citation("workshop", $"{file.Path}, {key}, {name}", provenance ?? Provenance.Entered)
            : throw new FormatException($"'{key}' gives no source or provenance for {name}");
    }

    private static ImmutableArray<RecipePart> Parts(JsonElement item, string key)
    {
        if (!item.TryGetProperty("parts", out var parts))
        {
            return [];
        }

        if (parts.ValueKind != JsonValueKind.Array)
        {
            throw new FormatException($"'{key}' needs its parts as a list");
        }

        return
        [
            .. parts
                .EnumerateArray()
                .Select(part => new RecipePart(
                    TradeCatalog.Canonical(
                        Text(part, "material")
                            ?? throw new FormatException($"a part of '{key}' names no material")
                    ),
                    OptionalNumber(part, "parts", key) is { } n and > 0
                        ? n
                        : throw new FormatException($"a part of '{key}' needs a number of parts above 0")
                )),
        ];
    }

    private static double? OptionalNumber(JsonElement item, string name, string key)
    {
        if (!item.TryGetProperty(name, out var value) || value.ValueKind == JsonValueKind.Null)
        {
            return null;
        }

        return
            value.ValueKind == JsonValueKind.Number
            && value.TryGetDouble(out var number)
            && double.IsFinite(number)
            ? number
            : throw new FormatException($"'{key}' has a {name} that is not a number");
    }

    private static string? Text(JsonElement item, string name) =>
        item.ValueKind == JsonValueKind.Object
        && item.TryGetProperty(name, out var value)
        && value.ValueKind == JsonValueKind.String
            ? value.GetString()
            : null;

    private static ImmutableArray<string> Texts(JsonElement item, string name) =>
        item.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Array
            ?
            [
                .. value
                    .EnumerateArray()
                    .Where(v => v.ValueKind == JsonValueKind.String)
                    .Select(v => v.GetString()!),
            ]
            : [];
}
