using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Trees;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Catalog;

/// <summary>One file of a catalog or workshop folder.</summary>
public sealed record CatalogFile(string Path, string Text);

/// <summary>Reads catalog files (JSON).</summary>
public static class CatalogReader
{
    private const string SourcesFile = "sources.json";
    private const string EntryForm = "a JSON list of entries";
    private const int LongestKey = 100;
    private const int MostEntries = 20_000;
    private const int MostTexts = 100;

    /// <summary>No value of the trade is larger in the unit it is written in.</summary>
    private static readonly NumberRange Number = NumberRange.Within(1e12);

    private static readonly NumberRange Share = NumberRange.Positive(1e6);

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
            : throw new InvalidDataException(faults[0].ToString());
    }

    /// <summary>True for a list of sources.</summary>
    public static bool IsSources(CatalogFile file) =>
        file.Path.EndsWith(SourcesFile, StringComparison.Ordinal);

    /// <summary>Sources of a file.</summary>
    public static ImmutableArray<Source> ReadSources(CatalogFile file, ICollection<TextFault> faults)
    {
        var of = new TreeFaults(file.Path);
        var sources = ImmutableArray.CreateBuilder<Source>();
        foreach (var form in Forms(file, of))
        {
            var before = of.Count;
            var (key, title) = (form.Text("key"), form.Text("title"));
            var year = form.OptionalNumber("year", NumberRange.UpTo(9999));
            if (year is { } number && number != Math.Floor(number))
            {
                form.Refuse("year", "the year is not a whole number", "a year, or null");
            }

            var (kind, read) = (form.OptionalText("kind") ?? "", form.OptionalText("read") ?? "");
            if (of.Count == before)
            {
                sources.Add(new(key!, title!, (int?)year, kind, read));
            }
        }

        AddTo(faults, of);
        return sources.ToImmutable();
    }

    /// <summary>Entries of a file; faults are collected, the faulty entry is left out.</summary>
    public static ImmutableArray<CatalogEntry> ReadEntries(
        CatalogFile file,
        bool workshops,
        ICollection<TextFault> faults
    ) => [.. ReadPlaced(file, workshops, faults).Select(placed => placed.Entry)];

    /// <summary>Entries of a file, each with the places of its values by their names.</summary>
    internal static ImmutableArray<(CatalogEntry Entry, EntryPlaces Places)> ReadPlaced(
        CatalogFile file,
        bool workshops,
        ICollection<TextFault> faults
    )
    {
        var of = new TreeFaults(file.Path);
        var entries = ImmutableArray.CreateBuilder<(CatalogEntry, EntryPlaces)>();
        foreach (var form in Forms(file, of))
        {
            var before = of.Count;
            if (ReadEntry(file, form, workshops) is { } entry && of.Count == before)
            {
                entries.Add((entry, new EntryPlaces(file.Path, form.Span, Spans(form))));
            }
        }

        AddTo(faults, of);
        return entries.ToImmutable();
    }

    /// <summary>The key of one entry in braces, or what is wrong with its text.</summary>
    /// <param name="file">Name used in messages.</param>
    /// <param name="text">The entry as JSON.</param>
    public static Reading<string> ReadKey(string file, string text)
    {
        var faults = new TreeFaults(file);
        var key =
            JsonTree.Read(text, faults) is { } top && TreeForm.Top(top, faults, "the entry") is { } form
                ? Key(form)
                : null;
        return faults.IsEmpty ? new(key, []) : new(null, faults.ToSeq());
    }

    /// <summary>The entries of a list; those that are no objects are faults.</summary>
    internal static ImmutableArray<TreeForm> Forms(CatalogFile file, TreeFaults faults) =>
        JsonTree.Read(file.Text, faults) is { } top
            ? TreeForm.Each(top, faults, "the entry", (EntryForm, MostEntries))
            : [];

    private static void AddTo(ICollection<TextFault> faults, TreeFaults of)
    {
        foreach (var fault in of.ToSeq())
        {
            faults.Add(fault);
        }
    }

    private static ImmutableDictionary<string, TextSpan> Spans(TreeForm form) =>
        form.OptionalObject("values", "the values") is { } values
            ? values.Keys.ToImmutableDictionary(k => k.Text, k => k.Span, StringComparer.Ordinal)
            : ImmutableDictionary<string, TextSpan>.Empty;

    private static string? Key(TreeForm form)
    {
        if (form.Text("key") is not { } key)
        {
            return null;
        }

        if (TradeCatalog.Canonical(key).Length is > 0 and <= LongestKey && !key.Any(char.IsControl))
        {
            return key;
        }

        form.Refuse("key", $"'{TreeNode.Shown(key)}' is no key", $"1 to {LongestKey} letters and hyphens");
        return null;
    }

    private static CatalogEntry? ReadEntry(CatalogFile file, TreeForm form, bool workshops)
    {
        if (Key(form) is not { } key)
        {
            return null;
        }

        form.Call(key);
        var (kind, name) = (Kind(form), form.Text("name"));
        if (name is { Length: 0 or > 500 })
        {
            form.Refuse("name", $"the name of '{key}' is empty or too long", "1 to 500 characters");
        }

        if (kind is null || name is null)
        {
            return null;
        }

        var entry = BlankEntries.Of(kind.Value) with
        {
            Key = TradeCatalog.Canonical(key),
            Name = name,
            Synonyms = form.OptionalTexts("synonyms", MostTexts),
            Note = form.OptionalText("note"),
            Values = Values(file, form, (key, kind.Value, workshops)),
            Parts = Parts(form),
            PartsOrigin =
                form.OptionalObject("partsSource", "the source of the parts") is { } origin
                    ? ReadOrigin(file, origin, (key, "partsSource", workshops))
                : workshops ? new Citation("workshop", $"{file.Path}, {key}, parts", Provenance.Entered)
                : null,
            IsWorkshops = workshops,
        };
        var material = form.OptionalText("material");
        return entry is PackEntry pack ? pack with { Material = material } : entry;
    }

    private static EntryKind? Kind(TreeForm form)
    {
        if (form.Text("kind") is not { } word)
        {
            return null;
        }

        if (EntryKinds.Find(word) is { } kind)
        {
            return kind;
        }

        var words = EntryKinds.All.Select(known => known.Word());
        var near = TradeCatalog.Nearest(word, words);
        form.Refuse(
            "kind",
            $"the library has no kind '{TreeNode.Shown(word)}'" + (near is null ? "" : $", perhaps {near}"),
            near ?? $"one of {string.Join(", ", words)}"
        );
        return null;
    }

    private static ImmutableArray<CatalogValue> Values(
        CatalogFile file,
        TreeForm form,
        (string Key, EntryKind Kind, bool Workshops) of
    )
    {
        if (form.OptionalObject("values", "the values") is not { } values)
        {
            return [];
        }

        values.Call(of.Key);
        var read = ImmutableArray.CreateBuilder<CatalogValue>();
        foreach (var name in values.Keys.Select(key => key.Text))
        {
            if (
                IsKnown(values, name, of.Kind)
                && values.Object(name, "a value") is { } value
                && ReadValue(file, value, (of.Key, name, of.Workshops)) is { } one
                && IsOfItsForm(values, one, of.Kind)
            )
            {
                read.Add(one);
            }
        }

        return read.ToImmutable();
    }

    /// <summary>False for a value nothing reads.</summary>
    private static bool IsKnown(TreeForm values, string name, EntryKind kind)
    {
        if (EntryMembers.Find(kind, name) is not null)
        {
            return true;
        }

        var names = EntryMembers.Of(kind).Select(known => known.Name);
        values.Refuse(
            name,
            $"'{values.Name}' has a value {TreeNode.Shown(name)}, which the kind {kind.Word()} does not know",
            TradeCatalog.Nearest(name, names) is { } near
                ? $"perhaps {near}"
                : $"one of {string.Join(", ", names)}"
        );
        return false;
    }

    /// <summary>False for a number where a text is read, and for a text where a number is.</summary>
    private static bool IsOfItsForm(TreeForm values, CatalogValue value, EntryKind kind)
    {
        var isText = EntryMembers.Find(kind, value.Name)!.IsText;
        if (isText == value.Text is not null)
        {
            return true;
        }

        values.Refuse(
            value.Name,
            $"{value.Name} is a {(isText ? "number" : "text")}",
            isText ? "a text" : "a number with its unit"
        );
        return false;
    }

    private static CatalogValue? ReadValue(
        CatalogFile file,
        TreeForm form,
        (string Key, string Name, bool Workshops) of
    )
    {
        var number = form.OptionalNumber("value", Number);
        var (text, symbol) = (form.OptionalText("text"), form.OptionalText("unit"));
        var unit = symbol is null ? null : Unit.Find(symbol);
        var (low, high) = (form.OptionalNumber("low", Number), form.OptionalNumber("high", Number));
        var origin = ReadOrigin(file, form, of);
        if (number is null == text is null || (number is not null && unit is null))
        {
            form.Refuse(
                unit is null && symbol is not null ? "unit" : "value",
                $"{of.Name} has no number with a known unit, and no text",
                "such as { \"value\": 12, \"unit\": \"mm\" }, or { \"text\": \"loam\" }"
            );
            return null;
        }

        if (low > high)
        {
            form.Refuse("low", $"the low end of {of.Name} lies above its high end", "low first");
        }

        return origin is null
            ? null
            : new CatalogValue
            {
                Name = of.Name,
                Number = number,
                Text = text,
                Unit = unit,
                Low = low,
                High = high,
                Origin = origin,
            };
    }

    private static Citation? ReadOrigin(
        CatalogFile file,
        TreeForm form,
        (string Key, string Name, bool Workshops) of
    )
    {
        var (source, place) = (form.OptionalText("source"), form.OptionalText("place") ?? "");
        var provenance = ProvenanceWords.Find(form.OptionalText("provenance") ?? "");
        if (source is not null && provenance is { } known)
        {
            return new Citation(source, place, known);
        }

        if (of.Workshops)
        {
            return new Citation(
                "workshop",
                $"{file.Path}, {of.Key}, {of.Name}",
                provenance ?? Provenance.Entered
            );
        }

        form.Refuse($"{of.Name} gives no source or provenance", "source, place and provenance");
        return null;
    }

    private static ImmutableArray<RecipePart> Parts(TreeForm form) =>
        [
            .. form.OptionalObjects("parts", "a part", MostTexts)
                .Select(part => (Material: part.Text("material"), Parts: part.Number("parts", Share)))
                .Where(part => part.Material is not null)
                .Select(part => new RecipePart(TradeCatalog.Canonical(part.Material!), part.Parts)),
        ];
}
