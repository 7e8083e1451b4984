using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.Domain.Catalog;

/// <summary>
/// What the product knows of materials, species and packs, with the workshop's own entries on top.
/// </summary>
public sealed class TradeCatalog
{
    private readonly ImmutableDictionary<string, CatalogEntry> entries;

    /// <summary>
    /// From entries and sources; keys are matched without regard to case, blanks as hyphens.
    /// </summary>
    public TradeCatalog(
        IEnumerable<CatalogEntry> entries,
        IEnumerable<Source> sources,
        WorkshopFolder? workshop = null
    )
    {
        var all = ImmutableDictionary.CreateBuilder<string, CatalogEntry>(StringComparer.Ordinal);
        foreach (var entry in entries)
        {
            all[entry.Key] = entry;
        }

        Library = all.ToImmutable();
        foreach (var entry in workshop?.Entries ?? [])
        {
            all[entry.Key] =
                all.TryGetValue(entry.Key, out var known) && known.Kind == entry.Kind
                    ? Over(known, entry)
                    : entry;
        }

        this.entries = all.ToImmutable();
        Sources = sources
            .GroupBy(source => source.Key, StringComparer.Ordinal)
            .ToImmutableDictionary(group => group.Key, group => group.Last(), StringComparer.Ordinal);
        Workshop = workshop;
    }

    private TradeCatalog(TradeCatalog like, CatalogEntry entry)
    {
        entries = like.entries.SetItem(entry.Key, entry);
        Library = like.Library;
        Sources = like.Sources;
        Workshop = like.Workshop;
    }

    /// <summary>The same catalog with one entry in the place of that of its key.</summary>
    /// <param name="entry">The entry.</param>
    public TradeCatalog With(CatalogEntry entry) => new(this, entry);

    /// <summary>The same catalog with a workshop's entries, prices and sources on top.</summary>
    public TradeCatalog With(WorkshopFolder workshop) =>
        new(entries.Values, Sources.Values.Concat(workshop.Sources), workshop);

    /// <summary>Sources by key.</summary>
    public ImmutableDictionary<string, Source> Sources { get; }

    /// <summary>The workshop's own entries and prices, if a folder was named.</summary>
    public WorkshopFolder? Workshop { get; }

    /// <summary>The entries as they are without the workshop's own, by key.</summary>
    internal ImmutableDictionary<string, CatalogEntry> Library { get; }

    /// <summary>All entries, by kind and key.</summary>
    public IEnumerable<CatalogEntry> Entries =>
        entries.Values.OrderBy(e => e.Kind).ThenBy(e => e.Key, StringComparer.Ordinal);

    /// <summary>All entries of a kind, by key.</summary>
    public IEnumerable<T> Of<T>()
        where T : CatalogEntry => Entries.OfType<T>();

    /// <summary>The key in its canonical spelling: lower case, hyphens for blanks.</summary>
    public static string Canonical(string key) => key.Trim().ToLowerInvariant().Replace(' ', '-');

    /// <summary>The entry with this key, or null.</summary>
    public CatalogEntry? Find(string key) => entries.GetValueOrDefault(Canonical(key));

    /// <summary>The entry with this key, or null where there is none of the kind.</summary>
    public T? Find<T>(string key)
        where T : CatalogEntry => Find(key) as T;

    /// <summary>Packs that hold a material, largest first.</summary>
    public ImmutableArray<PackEntry> PacksOf(string material) =>
        [
            .. entries
                .Values.OfType<PackEntry>()
                .Where(e => e.Material == material)
                .OrderByDescending(e => e.LooseVolume?.Si ?? 0)
                .ThenBy(e => e.Key, StringComparer.Ordinal),
        ];

    /// <summary>Up to three keys of the kinds that look like what was typed.</summary>
    public ImmutableArray<string> Near(string typed, IReadOnlyCollection<EntryKind> kinds)
    {
        var key = Canonical(typed);
        return
        [
            .. entries
                .Values.Where(e => kinds.Contains(e.Kind))
                .Select(e =>
                    (e.Key, Distance: e.Synonyms.Any(s => Canonical(s) == key) ? 0 : Distance(key, e.Key))
                )
                .Where(pair =>
                    pair.Distance <= Math.Max(2, key.Length / 3)
                    || pair.Key.Contains(key, StringComparison.Ordinal)
                )
                .OrderBy(pair => pair.Distance)
                .ThenBy(pair => pair.Key, StringComparer.Ordinal)
                .Select(pair => pair.Key)
                .Take(3),
        ];
    }

    /// <summary>A workshop's entry replaces single values and keeps the rest.</summary>
    private static CatalogEntry Over(CatalogEntry known, CatalogEntry own)
    {
        var both = known with
        {
            Name = own.Name,
            Synonyms = own.Synonyms.IsDefaultOrEmpty ? known.Synonyms : own.Synonyms,
            Note = own.Note ?? known.Note,
            Values = [.. own.Values, .. known.Values.Where(v => own.Value(v.Name) is null)],
            Parts = own.Parts.IsDefaultOrEmpty ? known.Parts : own.Parts,
            PartsOrigin = own.Parts.IsDefaultOrEmpty ? known.PartsOrigin : own.PartsOrigin,
            IsWorkshops = true,
        };
        return both is PackEntry pack && own is PackEntry { Material: { } material }
            ? pack with
            {
                Material = material,
            }
            : both;
    }

    /// <summary>The word most like what was typed, or null when none is near.</summary>
    internal static string? Nearest(string typed, IEnumerable<string> words) =>
        words
            .Select(word =>
                (Word: word, Far: EditDistance(typed.ToLowerInvariant(), word.ToLowerInvariant()))
            )
            .Where(pair => pair.Far <= Math.Max(2, typed.Length / 3))
            .OrderBy(pair => pair.Far)
            .ThenBy(pair => pair.Word, StringComparer.Ordinal)
            .Select(pair => pair.Word)
            .FirstOrDefault();

    /// <summary>A genus alone, misspelled, is near to each of its species.</summary>
    private static int Distance(string typed, string key) =>
        typed.Length > 4
            ? Math.Min(EditDistance(typed, key), EditDistance(typed, key.Split('-')[0]))
            : EditDistance(typed, key);

    private static int EditDistance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                (diagonal, row[j]) = (
                    row[j],
                    Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), diagonal + cost)
                );
            }
        }

        return row[b.Length];
    }
}

/// <summary>A price the workshop pays for one pack, with quantity breaks.</summary>
/// <param name="Pack">Key of the pack.</param>
/// <param name="Breaks">Packs from which a price holds for all packs, lowest first.</param>
/// <param name="Place">File and row, shown when the price is asked where it comes from.</param>
public sealed record PackPrice(string Pack, ImmutableArray<PriceBreak> Breaks, string Place);

/// <summary>From this many packs on, each pack costs this.</summary>
public sealed record PriceBreak(int FromPacks, decimal Price);

/// <summary>A workshop's own folder: entries that add or override, prices, stock, currency.</summary>
public sealed record WorkshopFolder
{
    /// <summary>Its name or folder.</summary>
    public required string Name { get; init; }

    /// <summary>ISO 4217 code of its prices; null when the folder does not say.</summary>
    public string? Currency { get; init; }

    /// <summary>Own catalog entries.</summary>
    public ImmutableArray<CatalogEntry> Entries { get; init; } = [];

    /// <summary>Prices by pack key.</summary>
    public ImmutableDictionary<string, PackPrice> Prices { get; init; } =
        ImmutableDictionary<string, PackPrice>.Empty;

    /// <summary>Liters in stock by material key.</summary>
    public ImmutableDictionary<string, double> StockLiters { get; init; } =
        ImmutableDictionary<string, double>.Empty;

    /// <summary>Where entries, prices and stock stand, by what they are.</summary>
    internal ImmutableDictionary<string, EntryPlaces> Places { get; init; } =
        ImmutableDictionary<string, EntryPlaces>.Empty;

    /// <summary>Own sources.</summary>
    public ImmutableArray<Source> Sources { get; init; } = [];
}
