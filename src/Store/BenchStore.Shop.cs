using System.Collections.Concurrent;
using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>Records, stock and issued papers of the workshop.</summary>
public sealed partial class BenchStore
{
    private const int MostRead = 20_000;

    private readonly ConcurrentDictionary<object, Action> shopWatchers = new();
    private readonly ConcurrentDictionary<int, object> readRows = new();

    /// <summary>Tells of every change of the workshop's records or stock, until it is disposed of.</summary>
    /// <param name="tell">Called on the thread of the change.</param>
    public IDisposable WatchShop(Action tell)
    {
        var watcher = new ShopWatcher(shopWatchers);
        shopWatchers[watcher] = tell;
        return watcher;
    }

    private sealed class ShopWatcher(ConcurrentDictionary<object, Action> all) : IDisposable
    {
        public void Dispose() => all.TryRemove(this, out _);
    }

    /// <summary>Records of a kind that count, by key.</summary>
    /// <typeparam name="T">A record of the workshop.</typeparam>
    public async Task<IReadOnlyList<Kept<T>>> RecordsAsync<T>(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var kind = TradeJson.KindOf<T>();
        var last = db.Records.Where(r => r.Kind == kind).GroupBy(r => r.Key).Select(g => g.Max(r => r.Id));
        var rows = await db
            .Records.AsNoTracking()
            .Where(r => last.Contains(r.Id) && r.Json != "")
            .OrderBy(r => r.Key)
            .ToListAsync(cancel);
        return rows.ConvertAll(Shown<T>);
    }

    /// <summary>Records of a kind whose key begins with a word, by key.</summary>
    /// <typeparam name="T">A record of the workshop.</typeparam>
    /// <param name="begin">How their keys begin.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<IReadOnlyList<Kept<T>>> RecordsBeginningAsync<T>(
        string begin,
        CancellationToken cancel = default
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var kind = TradeJson.KindOf<T>();
        var rows = await db
            .Records.AsNoTracking()
            .Where(r => r.Kind == kind && r.Key.StartsWith(begin))
            .OrderBy(r => r.Key)
            .ThenBy(r => r.Id)
            .ToListAsync(cancel);
        return
        [
            .. rows.GroupBy(r => r.Key, StringComparer.Ordinal)
                .Select(g => g.Last())
                .Where(r => r.Json.Length > 0)
                .Select(Shown<T>),
        ];
    }

    /// <summary>The record of a kind that was written last; null where there is none.</summary>
    /// <typeparam name="T">A record of the workshop.</typeparam>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<Kept<T>?> LastRecordAsync<T>(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var kind = TradeJson.KindOf<T>();
        var row = await db
            .Records.AsNoTracking()
            .Where(r => r.Kind == kind && r.Json != "")
            .OrderByDescending(r => r.Id)
            .FirstOrDefaultAsync(cancel);
        return row is null ? null : Shown<T>(row);
    }

    /// <summary>A record as it is now; null where there is none of that key.</summary>
    public async Task<Kept<T>?> RecordAsync<T>(string key, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var kind = TradeJson.KindOf<T>();
        var row = await db
            .Records.AsNoTracking()
            .Where(r => r.Kind == kind && r.Key == key)
            .OrderByDescending(r => r.Id)
            .FirstOrDefaultAsync(cancel);
        return row is null || row.Json.Length == 0 ? null : Shown<T>(row);
    }

    /// <summary>Rises with every change of prices and goods; 0 where the bench keeps none.</summary>
    public async Task<int> PriceMarkAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        string[] kinds = [TradeJson.KindOf<Offer>(), TradeJson.KindOf<Good>(), TradeJson.KindOf<ShopTerms>()];
        return await db.Records.Where(r => kinds.Contains(r.Kind)).MaxAsync(r => (int?)r.Id, cancel) ?? 0;
    }

    /// <summary>An order by its number; null where there is none.</summary>
    public Task<Kept<Order>?> OrderAsync(int number, CancellationToken cancel = default) =>
        RecordAsync<Order>(number.ToString(CultureInfo.InvariantCulture), cancel);

    /// <summary>All lots.</summary>
    public async Task<IReadOnlyList<Lot>> LotsAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var rows = await db.Lots.AsNoTracking().OrderBy(l => l.Ticks).ThenBy(l => l.Id).ToListAsync(cancel);
        return rows.ConvertAll(l => TradeJson.Read<Lot>(l.Json));
    }

    /// <summary>Lines of stock after one, in the order they were written.</summary>
    /// <param name="after">Number of the last line that is known; 0 for all.</param>
    /// <param name="cancel">Cancels the reading.</param>
    public async Task<IReadOnlyList<Movement>> MovementsAsync(int after, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var rows = await db
            .Movements.AsNoTracking()
            .Where(m => m.Id > after)
            .OrderBy(m => m.Id)
            .ToListAsync(cancel);
        return rows.ConvertAll(Line);
    }

    /// <summary>Quotes of an order, the last first.</summary>
    public async Task<IReadOnlyList<Quote>> QuotesAsync(int order, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var kind = nameof(IssuedKind.Quote);
        var rows = await db
            .Issued.AsNoTracking()
            .Where(i => i.Kind == kind && i.OrderNumber == order)
            .OrderByDescending(i => i.Number)
            .ToListAsync(cancel);
        return rows.ConvertAll(i => TradeJson.Read<Quote>(i.Json));
    }

    /// <summary>A quote by its running number; null where there is none.</summary>
    public async Task<Quote?> QuoteAsync(int number, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var row = await db
            .Issued.AsNoTracking()
            .FirstOrDefaultAsync(i => i.Kind == nameof(IssuedKind.Quote) && i.Number == number, cancel);
        return row is null ? null : TradeJson.Read<Quote>(row.Json);
    }

    /// <summary>Invoices, credits and delivery notes in the order they were issued.</summary>
    /// <param name="order">Those of one order; null for all.</param>
    /// <param name="cancel">Cancels the reading.</param>
    public async Task<IReadOnlyList<Invoice>> InvoicesAsync(int? order, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var rows = await db
            .Issued.AsNoTracking()
            .Where(i => i.Kind != nameof(IssuedKind.Quote) && (order == null || i.OrderNumber == order))
            .OrderBy(i => i.Ticks)
            .ThenBy(i => i.Kind)
            .ThenBy(i => i.Number)
            .ToListAsync(cancel);
        return rows.ConvertAll(i => TradeJson.Read<Invoice>(i.Json));
    }

    /// <summary>Writes a step of work whole, or nothing of it.</summary>
    /// <param name="change">The step.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    /// <exception cref="ShopRefusedException">Something of it cannot be taken; why, in one
    /// sentence.</exception>
    public async Task<ShopWritten> WriteAsync(ShopChange change, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        // Takes the file for writing at once: what is read in it stays true until it is written.
        await using var all = await db.Database.BeginTransactionAsync(cancel);
        var records = await WriteRecordsAsync(db, change, cancel);
        await WriteStockAsync(db, change, cancel);
        var papers = await WritePapersAsync(db, change, cancel);
        var tanks = await PutCareAsync(db, change.Care, cancel);
        await db.SaveChangesAsync(cancel);
        await all.CommitAsync(cancel);
        TellCare(tanks);
        foreach (var tell in shopWatchers.Values)
        {
            tell();
        }

        return new ShopWritten(records, papers);
    }

    private async Task<List<int>> WriteRecordsAsync(
        BenchContext db,
        ShopChange change,
        CancellationToken cancel
    )
    {
        var numbers = new List<int>();
        var given = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var part in change.Records)
        {
            var (key, number) = (part.Key, 0);
            if (key is null)
            {
                number = given.GetValueOrDefault(part.Kind);
                number = 1 + (number > 0 ? number : await LastNumberAsync(db, part.Kind, cancel));
                given[part.Kind] = number;
                numbers.Add(number);
                key = number.ToString(CultureInfo.InvariantCulture);
            }

            var version = await db
                .Records.Where(r => r.Kind == part.Kind && r.Key == key)
                .MaxAsync(r => (int?)r.Version, cancel)
                ?? 0;
            if (version > 0 && TradeJson.IsWrittenOnce(part.Kind))
            {
                throw new ShopRefusedException("Evidence is never changed; add another line to it.");
            }

            if (version != part.Basis)
            {
                throw new ShopRefusedException(
                    "This was changed in another window. Look at what is there now and try again."
                );
            }

            db.Records.Add(
                new RecordRow
                {
                    Kind = part.Kind,
                    Key = key,
                    Version = version + 1,
                    Json = part.Json(number),
                    Who = change.Who,
                    Note = part.Note,
                    Ticks = clock.GetUtcNow().UtcTicks,
                }
            );
        }

        return numbers;
    }

    private static async Task<int> LastNumberAsync(BenchContext db, string kind, CancellationToken cancel)
    {
        var keys = await db
            .Records.Where(r => r.Kind == kind)
            .Select(r => r.Key)
            .Distinct()
            .ToListAsync(cancel);
        return keys.Select(k =>
                int.TryParse(k, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 0
            )
            .DefaultIfEmpty()
            .Max();
    }

    private async Task WriteStockAsync(BenchContext db, ShopChange change, CancellationToken cancel)
    {
        var states = new Dictionary<string, LotState>(StringComparer.Ordinal);
        var lots = new Dictionary<string, Lot>(StringComparer.Ordinal);
        foreach (var lot in change.Lots)
        {
            if (!lots.TryAdd(lot.Id, lot) || await db.Lots.AnyAsync(l => l.Id == lot.Id, cancel))
            {
                throw new ShopRefusedException($"There is a lot {lot.Id} already. Give it another number.");
            }

            states[lot.Id] = default;
            db.Lots.Add(
                new LotRow
                {
                    Id = lot.Id,
                    Good = lot.Good,
                    Json = TradeJson.Write(lot),
                    Ticks = clock.GetUtcNow().UtcTicks,
                }
            );
        }

        var past = new Dictionary<string, List<Movement>>(StringComparer.Ordinal);
        foreach (var (line, mayGoBelow) in change.Lines)
        {
            if (!lots.TryGetValue(line.Lot, out var lot))
            {
                var row = await db.Lots.FindAsync([line.Lot], cancel)
                    ?? throw new ShopRefusedException($"There is no lot {line.Lot}.");
                lot = lots[line.Lot] = TradeJson.Read<Lot>(row.Json);
                var rows = await db
                    .Movements.AsNoTracking()
                    .Where(m => m.Lot == line.Lot)
                    .OrderBy(m => m.Id)
                    .ToListAsync(cancel);
                past[line.Lot] = rows.ConvertAll(Line);
                states[line.Lot] = past[line.Lot].Aggregate(default(LotState), (state, m) => state.After(m));
            }

            var known = past.TryGetValue(line.Lot, out var lines) ? lines : past[line.Lot] = [];
            var refusal = StockGate.RefusedReversal(known, line)
                ?? StockGate.Refusal(lot, states[line.Lot], line, mayGoBelow);
            if (refusal is not null)
            {
                throw new ShopRefusedException(refusal);
            }

            known.Add(line);
            states[line.Lot] = states[line.Lot].After(line);
            db.Movements.Add(Row(line));
        }
    }

    private async Task<List<int>> WritePapersAsync(
        BenchContext db,
        ShopChange change,
        CancellationToken cancel
    )
    {
        var numbers = new List<int>();
        var given = new Dictionary<IssuedKind, int>();
        foreach (var part in change.Papers)
        {
            var kind = part.Kind.ToString();
            if (!given.TryGetValue(part.Kind, out var last))
            {
                last = await db.Issued.Where(i => i.Kind == kind).MaxAsync(i => (int?)i.Number, cancel) ?? 0;
            }

            var number = given[part.Kind] = last + 1;
            var json = part.Json(number);
            db.Issued.Add(
                new IssuedRow
                {
                    Kind = kind,
                    Number = number,
                    OrderNumber = part.Order,
                    Json = json,
                    Hash = Fingerprint.Of(json),
                    Ticks = clock.GetUtcNow().UtcTicks,
                }
            );
            numbers.Add(number);
        }

        return numbers;
    }

    /// <summary>A row never changes once it is written, so it is read from its text once.</summary>
    private Kept<T> Shown<T>(RecordRow row)
    {
        if (readRows.Count > MostRead)
        {
            readRows.Clear();
        }

        return (Kept<T>)
            readRows.GetOrAdd(
                row.Id,
                static (_, r) =>
                    new Kept<T>(r.Key, r.Version, TradeJson.Read<T>(r.Json), At(r.Ticks), r.Who, r.Note),
                row
            );
    }

    private MovementRow Row(Movement line) =>
        new()
        {
            Lot = line.Lot,
            Kind = line.Kind.ToString(),
            Amount = line.Amount,
            Into = line.Into,
            Place = line.Place,
            Day = line.Day.DayNumber,
            Who = line.Who,
            Note = line.Note,
            Reverses = line.Reverses,
            Ticks = clock.GetUtcNow().UtcTicks,
        };

    private static Movement Line(MovementRow row) =>
        new()
        {
            Id = row.Id,
            Lot = row.Lot,
            Kind = Enum.Parse<MovementKind>(row.Kind),
            Amount = row.Amount,
            Into = row.Into,
            Place = row.Place,
            Day = DateOnly.FromDayNumber(row.Day),
            Who = row.Who,
            Note = row.Note,
            Reverses = row.Reverses,
        };
}
