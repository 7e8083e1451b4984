using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Designs;
using Litterfall.Store;

namespace Litterfall.Web;

/// <summary>The library with the workshop's own entries on top.</summary>
public sealed class BenchLibrary(BenchOptions options, BenchStore store)
{
    private volatile TradeCatalog? with;

    /// <summary>An own entry came in or was taken back.</summary>
    public event EventHandler? Changed;

    /// <summary>The library as it counts now.</summary>
    public TradeCatalog Catalog => with ?? options.Catalog;

    /// <summary>Titles of sources by key.</summary>
    public IReadOnlyDictionary<string, string> Titles =>
        Catalog.Sources.ToDictionary(s => s.Key, s => s.Value.Title, StringComparer.Ordinal);

    /// <summary>Reads the own entries of the store.</summary>
    public async Task LoadAsync(CancellationToken cancel = default)
    {
        var entries = await store.EntriesAsync(cancel);
        var reading = Read(entries.Select(e => e.Json));
        with = reading.Value is { } workshop ? options.Catalog.With(workshop) : options.Catalog;
    }

    /// <summary>Adds an entry or a measured value; tells what is wrong with it instead.</summary>
    /// <param name="key">Key of the entry.</param>
    /// <param name="json">The entry.</param>
    /// <param name="note">Why.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    public async Task<ImmutableArray<TextFault>> AddAsync(
        string key,
        string json,
        string note,
        CancellationToken cancel = default
    )
    {
        var others = (await store.EntriesAsync(cancel)).Where(e => e.Key != key).Select(e => e.Json);
        var reading = Read(json.Length > 0 ? others.Append(json) : others);
        if (!reading.IsGood)
        {
            return [.. reading.Faults];
        }

        var catalog = options.Catalog.With(reading.Value!);
        var unknown = WorkshopReader.Unknown(catalog, "own library");
        if (unknown.Count > 0)
        {
            return [.. unknown];
        }

        await store.AddEntryAsync(key, json, note, cancel);
        with = catalog;
        Changed?.Invoke(this, EventArgs.Empty);
        return [];
    }

    /// <summary>A design that can be computed, or its faults.</summary>
    public Reading<CheckedDesign> Check(DesignDocument document) => DesignChecker.Check(document, Catalog);

    /// <summary>The workshop's folder with the own entries of the bench on top.</summary>
    private Reading<Workshop> Read(IEnumerable<string> entries) =>
        WorkshopReader.Read(
            "workshop",
            [
                .. options.Workshop,
                .. entries.Select(
                    (json, i) => new CatalogFile(FormattableString.Invariant($"own-{i}.json"), $"[{json}]")
                ),
            ]
        );
}
