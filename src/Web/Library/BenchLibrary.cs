using System.Collections.Immutable;
using System.Security.Cryptography;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Photometry;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Goods;

namespace Litterfall.Web.Library;

/// <summary>The library with the workshop's own entries on top.</summary>
public sealed class BenchLibrary(BenchOptions options, BenchStore store)
{
    /// <summary>Largest file that is taken, bytes.</summary>
    public const int LargestFile = 8 * 1024 * 1024;

    private volatile TradeCatalog? with;
    private volatile bool hasFiles;
    private volatile string? loaded;
    private volatile ImmutableHashSet<string> own = [];
    private ImmutableArray<CatalogFile> prices = [];
    private ImmutableDictionary<string, byte[]> files = ImmutableDictionary<string, byte[]>.Empty;

    /// <summary>An own entry came in or was taken back.</summary>
    public event EventHandler? Changed;

    /// <summary>The library as it counts now.</summary>
    public TradeCatalog Catalog => with ?? options.Catalog;

    /// <summary>Titles of sources by key.</summary>
    public IReadOnlyDictionary<string, string> Titles =>
        Catalog.Sources.ToDictionary(s => s.Key, s => s.Value.Title, StringComparer.Ordinal);

    /// <summary>
    /// Changes with what designs are computed from beside their own text: entries and files.
    /// </summary>
    public string Mark { get; private set; } = "";

    /// <summary>Reads the own entries of the store; what is there already stays the same object.</summary>
    public async Task LoadAsync(CancellationToken cancel = default)
    {
        var entries = await store.EntriesAsync(cancel);
        var told = string.Join('\n', entries.Select(e => $"{e.Id} {e.Key}"));
        if (await store.PriceMarkAsync(cancel) is var mark && mark > 0)
        {
            told += FormattableString.Invariant($"\nprices {mark}");
        }

        if (told != loaded)
        {
            await LoadPricesAsync(cancel);
            var reading = Read(entries.Select(e => e.Json));
            with = reading.Value is { } workshop ? options.Catalog.With(workshop) : options.Catalog;
            loaded = told;
            own = [.. entries.Select(e => e.Key)];
            Stamp();
        }

        if (!hasFiles)
        {
            files = (await store.FilesAsync(cancel)).ToImmutableDictionary(f => f.Name, f => f.Bytes);
            hasFiles = true;
            Stamp();
        }
    }

    /// <summary>True for an entry of the workshop's own made at the bench.</summary>
    /// <param name="key">Key of the entry.</param>
    public bool IsOwn(string key) => own.Contains(key);

    /// <summary>True for an entry that came with the program.</summary>
    /// <param name="key">Key of the entry.</param>
    public bool IsOurs(string key) => options.Catalog.Find(key)?.Key == key;

    /// <summary>A key like a word that no entry has.</summary>
    /// <param name="word">Letters, digits and hyphens.</param>
    public string FreeKey(string word)
    {
        var key = word;
        for (var i = 2; Catalog.Find(key) is not null; i++)
        {
            key = FormattableString.Invariant($"{word}-{i}");
        }

        return key;
    }

    /// <summary>An own entry as it was saved; null where there is none.</summary>
    /// <param name="key">Key of the entry.</param>
    public async Task<string?> OwnTextAsync(string key) =>
        (await store.EntriesAsync()).FirstOrDefault(e => e.Key == key)?.Json;

    /// <summary>Names of designs that name an entry.</summary>
    /// <param name="key">Key of the entry.</param>
    public async Task<List<string>> UsersAsync(string key)
    {
        var names = new List<string>();
        foreach (var design in await store.DesignsAsync())
        {
            if (
                await store.DesignAsync(design.Id) is { } stored
                && stored
                    .Text.Split([' ', ',', ':', '[', ']', '{', '}', '"', '\'', '\n', '\r', '\t'])
                    .Contains(key, StringComparer.Ordinal)
            )
            {
                names.Add(design.Name);
            }
        }

        return names;
    }

    /// <summary>Takes an own entry back; one sentence where another one rests on it.</summary>
    /// <param name="key">Key of the entry.</param>
    public async Task<string?> RemoveAsync(string key)
    {
        var faults = await AddAsync(key, "", "deleted");
        return faults.IsEmpty ? null : $"Another entry of yours rests on it: {faults[0].Message}.";
    }

    private void Stamp() =>
        Mark = Fingerprint.Of(
            string.Join(
                '\n',
                files
                    .OrderBy(f => f.Key, StringComparer.Ordinal)
                    .Select(f => $"{f.Key} {Convert.ToHexStringLower(SHA256.HashData(f.Value))}")
                    .Prepend(loaded ?? "")
            )
        )[..16];

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
        loaded = null;
        await LoadAsync(cancel);
        Changed?.Invoke(this, EventArgs.Empty);
        return [];
    }

    /// <summary>Names of the files that designs can name.</summary>
    public IEnumerable<string> Files => files.Keys.Order(StringComparer.Ordinal);

    /// <summary>Takes a file that designs can name; one sentence where it does not read.</summary>
    /// <param name="name">Its name; folders are left off.</param>
    /// <param name="bytes">What is in it.</param>
    public async Task<string?> AddFileAsync(string name, byte[] bytes)
    {
        var plain = FileNames.Plain(name);
        if (plain.Length > FileNames.Most)
        {
            return $"The name of {FileNames.Short(plain)} has {plain.Length} characters; expected at most "
                + $"{FileNames.Most}.";
        }

        if (bytes.Length > LargestFile)
        {
            return $"{plain} is too large; expected at most {LargestFile / 1024 / 1024} MB.";
        }

        if (FileTrouble(plain, bytes) is { } fault)
        {
            return $"{plain}, line {fault.Line}: {fault.Message}; expected {fault.Expected}.";
        }

        await store.AddFileAsync(plain, bytes);
        files = files.SetItem(plain, bytes);
        Stamp();
        Changed?.Invoke(this, EventArgs.Empty);
        return null;
    }

    /// <summary>A design that can be computed, or its faults.</summary>
    public Reading<CheckedDesign> Check(DesignDocument document)
    {
        if (!DesignFilesReader.Names(document.Design).Any())
        {
            return DesignChecker.Check(document, Catalog);
        }

        var named = DesignFilesReader.Read(document, (name, _) =>
            files.GetValueOrDefault(FileNames.Plain(name))
        );
        return named.IsGood
            ? DesignChecker.Check(document, Catalog, named.Value)
            : new(
                null,
                [
                    .. named.Faults.Select(f =>
                        f.Message.StartsWith("there is no file", StringComparison.Ordinal)
                            ? f with
                            {
                                Expected = "a file brought on the library page",
                            }
                            : f
                    ),
                ]
            );
    }

    /// <summary>What is wrong with a luminaire file or a spectrum; logs are read with their design.</summary>
    private static TextFault? FileTrouble(string name, byte[] bytes) =>
        Path.GetExtension(name).ToLowerInvariant() switch
        {
            ".ies" or ".ldt" => LampFile.Read(name, bytes).Faults is [var first, ..] ? first : null,
            _ => null,
        };

    /// <summary>Takes prices that were changed; desks that are open price anew.</summary>
    public async Task LoadPricesAgainAsync()
    {
        await LoadAsync();
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Prices kept at the bench; they count instead of those of a folder.</summary>
    private async Task LoadPricesAsync(CancellationToken cancel)
    {
        var offers = await store.RecordsAsync<Offer>(cancel);
        if (offers.Count == 0)
        {
            prices = [];
            return;
        }

        var terms = await store.RecordAsync<ShopTerms>(ShopTerms.Key, cancel);
        var goods = await store.RecordsAsync<Good>(cancel);
        prices = ShopFiles.Write(
            terms?.Value ?? new ShopTerms { Name = "workshop" },
            [.. goods.Select(g => g.Value)],
            [.. offers.Select(o => o.Value)],
            options.Catalog
        );
    }

    /// <summary>
    /// The workshop's folder, then prices and own entries of the bench on top.
    /// </summary>
    private Reading<WorkshopFolder> Read(IEnumerable<string> entries) =>
        WorkshopReader.Read(
            "workshop",
            [
                .. options.Workshop,
                .. prices,
                .. entries.Select(
                    (json, i) => new CatalogFile(FormattableString.Invariant($"own-{i}.json"), $"[{json}]")
                ),
            ]
        );
}
