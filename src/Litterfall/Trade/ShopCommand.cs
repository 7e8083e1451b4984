using System.CommandLine;
using System.Text.Json;
using Litterfall.App.Commands;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Workshop.Goods;

namespace Litterfall.App.Trade;

/// <summary><c>litterfall shop FOLDER</c>: takes a workshop's folder over into the bench.</summary>
internal static class ShopCommand
{
    private const string Who = "workshop folder";

    public static Command Create()
    {
        var folder = new Argument<string>("FOLDER") { Description = "A workshop's folder with JSON files." };
        var store = StoreCommands.Store();
        var command = new Command(
            "shop",
            "Takes prices, stock and own entries of a workshop's folder over into the bench."
        )
        {
            folder,
            store,
        };
        command.SetAction(
            (parsed, cancel) =>
                RunAsync(parsed.GetValue(folder)!, parsed.GetValue(store) ?? StoreFile.Usual, cancel)
        );
        return command;
    }

    private static async Task<int> RunAsync(string folder, string path, CancellationToken cancel)
    {
        var catalog = Files.Shop.Catalog(folder);
        if (!catalog.IsGood)
        {
            return Exit.Unusable(false, [.. catalog.Faults]);
        }

        using var taken = StoreLock.Take(path);
        if (taken is null)
        {
            return Exit.Unusable(
                false,
                new TextFault(path, 1, 1, "a bench has this file open", "a bench that is not running")
            );
        }

        var bench = new BenchStore(StoreFile.Contexts(path), new StoreMarks("shop", ""), TimeProvider.System);
        await bench.OpenAsync(cancel);
        var today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date);
        var terms = await bench.RecordAsync<ShopTerms>(ShopTerms.Key, cancel);
        var records = FolderRecords.Read(
            catalog.Value!,
            terms?.Value ?? new ShopTerms { Name = Path.GetFileName(Path.GetFullPath(folder)) },
            today
        );
        try
        {
            await bench.WriteAsync(await ChangeAsync(bench, records, terms?.Version ?? 0, today), cancel);
        }
        catch (ShopRefusedException refused)
        {
            return Exit.Unusable(
                false,
                new TextFault(folder, 1, 1, refused.Message, "a folder not taken over yet")
            );
        }

        var entries = await EntriesAsync(bench, folder, cancel);
        Console.Out.WriteLine(
            $"Took over {records.Offers.Length} prices, {records.Lots.Length} goods in stock and {entries} "
                + $"own entries of {folder} into {path}. Suppliers, terms and hours are entered on the page "
                + "Workshop."
        );
        return Exit.Done;
    }

    private static async Task<ShopChange> ChangeAsync(
        BenchStore bench,
        FolderRecords records,
        int version,
        DateOnly today
    )
    {
        var change = new ShopChange(Who).Keep(ShopTerms.Key, version, records.Terms, "taken over");
        await KeepAsync(bench, change, [records.Supplier], s => s.Key);
        await KeepAsync(bench, change, records.Goods, g => g.Key);
        await KeepAsync(bench, change, records.Offers, o => o.Key);
        foreach (var lot in records.Lots)
        {
            change
                .Add(lot)
                .Add(
                    new Movement
                    {
                        Lot = lot.Id,
                        Kind = MovementKind.Received,
                        Amount = lot.Amount,
                        Day = today,
                        Who = Who,
                        Note = lot.Note,
                    }
                );
        }

        return change;
    }

    private static async Task KeepAsync<T>(
        BenchStore bench,
        ShopChange change,
        IEnumerable<T> records,
        Func<T, string> key
    )
    {
        var known = (await bench.RecordsAsync<T>()).ToDictionary(
            r => r.Key,
            r => r.Version,
            StringComparer.Ordinal
        );
        foreach (var record in records)
        {
            change.Keep(key(record), known.GetValueOrDefault(key(record)), record, "taken over");
        }
    }

    /// <summary>Own entries as they stand in the files; each keeps its own text.</summary>
    private static async Task<int> EntriesAsync(BenchStore bench, string folder, CancellationToken cancel)
    {
        var count = 0;
        foreach (var file in Files.Shop.WorkshopFiles(folder).Value!.Where(IsOfEntries))
        {
            using var read = JsonDocument.Parse(file.Text);
            foreach (var entry in read.RootElement.EnumerateArray())
            {
                var key = TradeCatalog.Canonical(entry.GetProperty("key").GetString()!);
                await bench.AddEntryAsync(key, entry.GetRawText(), "taken over", cancel);
                count++;
            }
        }

        return count;
    }

    private static bool IsOfEntries(CatalogFile file) =>
        Path.GetFileName(file.Path)
            is not ("workshop.json" or "prices.json" or "stock.json" or "sources.json");
}
