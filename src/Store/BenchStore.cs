using System.Collections.Concurrent;
using Litterfall.Domain.DesignFile;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>What stamps each version.</summary>
/// <param name="Engine">Version of the engine.</param>
/// <param name="Library">Fingerprint of the library.</param>
public sealed record StoreMarks(string Engine, string Library);

/// <summary>A design with the version that is worked on.</summary>
/// <param name="Id">Number of the design.</param>
/// <param name="Name">Its name.</param>
/// <param name="Version">The version.</param>
/// <param name="Parent">Version it was made from; 0 for the first.</param>
/// <param name="Text">The design file.</param>
public sealed record StoredDesign(Guid Id, string Name, int Version, int Parent, string Text);

/// <summary>A line of the list of designs.</summary>
/// <param name="Id">Number of the design.</param>
/// <param name="Name">Its name.</param>
/// <param name="Version">The version that is worked on.</param>
/// <param name="Changed">When it was last changed, UTC.</param>
/// <param name="Verdict">Its verdict; null until it was computed.</param>
public sealed record ListedDesign(Guid Id, string Name, int Version, DateTime Changed, string? Verdict)
{
    /// <summary>Whom it is for and how far it is.</summary>
    public DesignOrder Order { get; init; } = DesignOrder.None;

    /// <summary>Number of the order it is in; null while it is in none.</summary>
    public int? OrderNumber { get; init; }
}

/// <summary>A version as the history shows it.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Parent">Version it was made from.</param>
/// <param name="Note">What was changed.</param>
/// <param name="When">When, UTC.</param>
/// <param name="Hash">Fingerprint of its text.</param>
/// <param name="Engine">Version of the engine.</param>
public sealed record ListedVersion(
    int Number,
    int Parent,
    string Note,
    DateTime When,
    string Hash,
    string Engine
);

/// <summary>What became of a change.</summary>
/// <param name="Saved">The version it was saved as; it is saved in any case.</param>
/// <param name="Other">The version somebody else made meanwhile; null where nobody did.</param>
public sealed record SaveOutcome(StoredDesign Saved, StoredDesign? Other);

/// <summary>
/// Everything the bench keeps, by task. Each task is one transaction on disk before it returns.
/// </summary>
public sealed partial class BenchStore(
    IDbContextFactory<BenchContext> contexts,
    StoreMarks marks,
    TimeProvider clock
)
{
    private const int BusyRetries = 5;

    private readonly ConcurrentDictionary<object, Action<Guid, int>> watchers = new();

    /// <summary>Tells of every changed design and its new version, until it is disposed of.</summary>
    /// <param name="tell">Called on the thread of the change.</param>
    public IDisposable Watch(Action<Guid, int> tell) => new Watcher(watchers, tell);

    private void Tell(Guid id, int version)
    {
        foreach (var tell in watchers.Values)
        {
            tell(id, version);
        }
    }

    private sealed class Watcher : IDisposable
    {
        private readonly ConcurrentDictionary<object, Action<Guid, int>> all;

        public Watcher(ConcurrentDictionary<object, Action<Guid, int>> all, Action<Guid, int> tell)
        {
            this.all = all;
            all[this] = tell;
        }

        public void Dispose() => all.TryRemove(this, out _);
    }

    /// <summary>Brings the file up to the tables of this program; a new file is made.</summary>
    /// <param name="cancel">Cancels between steps.</param>
    /// <exception cref="StoreRefusedException">A newer program has written it.</exception>
    public async Task OpenAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        StoreSchema.RefuseNewer(db.Database.GetDbConnection().DataSource);
        if ((await db.Database.GetPendingMigrationsAsync(cancel)).Any())
        {
            await MigrateAsync(db, cancel);
        }

        // A write-ahead file lets readers go on while one writes; a full sync outlives a power cut.
        await db.Database.ExecuteSqlRawAsync("PRAGMA journal_mode=WAL", cancel);
        await db.Choices.Where(c => c.Key == StoreSchema.Sum).ExecuteDeleteAsync(cancel);
    }

    /// <summary>
    /// A program that ended amid this step left a mark by which the next would wait for ever.
    /// </summary>
    private async Task MigrateAsync(BenchContext db, CancellationToken cancel)
    {
        const string mark = "__EFMigrationsLock";
        if (
            await db
                .Database.SqlQuery<int>($"SELECT COUNT(*) AS Value FROM sqlite_master WHERE name = {mark}")
                .SingleAsync(cancel) > 0
        )
        {
            await db.Database.ExecuteSqlRawAsync("DELETE FROM __EFMigrationsLock", cancel);
        }

        await db.Database.MigrateAsync(cancel);
        await ChooseAsync(StoreSchema.WrittenBy, marks.Engine, cancel);
    }

    /// <summary>A new design.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="text">The design file.</param>
    /// <param name="note">Where it comes from.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    public async Task<StoredDesign> AddAsync(
        string name,
        string text,
        string note,
        CancellationToken cancel = default
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var now = clock.GetUtcNow().UtcTicks;
        var row = new DesignRow
        {
            Id = Guid.CreateVersion7(clock.GetUtcNow()),
            Name = name,
            Head = 1,
            CreatedTicks = now,
            ChangedTicks = now,
        };
        db.Designs.Add(row);
        db.Versions.Add(Version(row.Id, (1, 0), text, note));
        await db.SaveChangesAsync(cancel);
        Tell(row.Id, 1);
        return new StoredDesign(row.Id, name, 1, 0, text);
    }

    /// <summary>
    /// The design with the version that is worked on; null where there is none of that number.
    /// </summary>
    public async Task<StoredDesign?> DesignAsync(Guid id, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var row = await db.Designs.AsNoTracking().FirstOrDefaultAsync(d => d.Id == id, cancel);
        return row is null ? null : await Of(db, row, row.Head, cancel);
    }

    /// <summary>An older version; null where there is none of that number.</summary>
    public async Task<StoredDesign?> DesignAsync(Guid id, int version, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var row = await db.Designs.AsNoTracking().FirstOrDefaultAsync(d => d.Id == id, cancel);
        return row is null ? null : await Of(db, row, version, cancel);
    }

    /// <summary>All versions, the last first.</summary>
    public async Task<IReadOnlyList<ListedVersion>> VersionsAsync(Guid id, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var rows = await db
            .Versions.AsNoTracking()
            .Where(v => v.DesignId == id)
            .OrderByDescending(v => v.Number)
            .Select(v => new
            {
                v.Number,
                v.Parent,
                v.Note,
                v.Ticks,
                v.Hash,
                v.Engine,
            })
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(v => new ListedVersion(v.Number, v.Parent, v.Note, At(v.Ticks), v.Hash, v.Engine)),
        ];
    }

    /// <summary>
    /// Saves a change as a new version. Where somebody else changed the design since, the version is kept
    /// beside theirs and theirs stays the one that is worked on.
    /// </summary>
    /// <param name="id">The design.</param>
    /// <param name="basis">Version the change was made on.</param>
    /// <param name="change">New text, its name, and what was changed.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    /// <exception cref="InvalidOperationException">There is no such design.</exception>
    public async Task<SaveOutcome> SaveAsync(
        Guid id,
        int basis,
        (string Name, string Text, string Note) change,
        CancellationToken cancel = default
    )
    {
        for (var attempt = 0; ; attempt++)
        {
            try
            {
                return await Saved(id, basis, change, cancel);
            }
            catch (Exception e) when (attempt < BusyRetries && StoreTrouble.IsRace(e))
            {
                // Somebody was quicker with this number: look again at what is there.
            }
        }
    }

    /// <summary>Goes to another version: undo, redo, or back to an old one. Nothing is lost.</summary>
    /// <param name="id">The design.</param>
    /// <param name="version">The version to work on.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    public async Task<StoredDesign?> GoToAsync(Guid id, int version, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var row = await db.Designs.FirstOrDefaultAsync(d => d.Id == id, cancel);
        if (row is null || await Of(db, row, version, cancel) is not { } there)
        {
            return null;
        }

        row.Head = version;
        row.Stamp++;
        row.Name = NameIn(there.Text) ?? row.Name;
        row.ChangedTicks = clock.GetUtcNow().UtcTicks;
        await db.SaveChangesAsync(cancel);
        Tell(id, version);
        return there with { Name = row.Name };
    }

    /// <summary>The version that was made last from a version, for redo; null where there is none.</summary>
    public async Task<int?> LastChildAsync(Guid id, int version, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        return await db
            .Versions.Where(v => v.DesignId == id && v.Parent == version)
            .MaxAsync(v => (int?)v.Number, cancel);
    }

    /// <summary>Keeps the verdict of a version for the list, if it is still the one worked on.</summary>
    public async Task JudgeAsync(Guid id, int version, string verdict, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await db
            .Designs.Where(d => d.Id == id && d.Head == version)
            .ExecuteUpdateAsync(s => s.SetProperty(d => d.Verdict, verdict), cancel);
        Tell(id, version);
    }

    /// <summary>The workshop's own entries that count, by key.</summary>
    public async Task<IReadOnlyList<EntryRow>> EntriesAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var rows = await db.Entries.AsNoTracking().OrderBy(e => e.Id).ToListAsync(cancel);
        return [.. rows.GroupBy(e => e.Key).Select(g => g.Last()).Where(e => e.Json.Length > 0)];
    }

    /// <summary>Adds an entry, or a newer state of one; empty JSON takes it back.</summary>
    public async Task AddEntryAsync(string key, string json, string note, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        db.Entries.Add(
            new EntryRow
            {
                Key = key,
                Json = json,
                Note = note,
                Ticks = clock.GetUtcNow().UtcTicks,
            }
        );
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>The last state of a file; null where there is none of that name.</summary>
    public async Task<byte[]?> FileAsync(string name, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        return await db
            .Files.AsNoTracking()
            .Where(f => f.Name == name)
            .OrderByDescending(f => f.Id)
            .Select(f => f.Bytes)
            .FirstOrDefaultAsync(cancel);
    }

    /// <summary>The files that count, by name, without pictures and evidence.</summary>
    public async Task<IReadOnlyList<FileRow>> FilesAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var last = db
            .Files.Where(f =>
                !EF.Functions.Like(f.Name, "photo-%.jpg") && !EF.Functions.Like(f.Name, "evidence-%.bin")
            )
            .GroupBy(f => f.Name)
            .Select(g => g.Max(f => f.Id));
        return await db
            .Files.AsNoTracking()
            .Where(f => last.Contains(f.Id))
            .OrderBy(f => f.Name)
            .ToListAsync(cancel);
    }

    /// <summary>Adds a file, or a newer state of one.</summary>
    /// <param name="name">Name without folders.</param>
    /// <param name="bytes">What is in it.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    public async Task AddFileAsync(string name, byte[] bytes, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        db.Files.Add(
            new FileRow
            {
                Name = name,
                Bytes = bytes,
                Ticks = clock.GetUtcNow().UtcTicks,
            }
        );
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>All choices.</summary>
    public async Task<IReadOnlyDictionary<string, string>> ChoicesAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        return await db.Choices.AsNoTracking().ToDictionaryAsync(c => c.Key, c => c.Value, cancel);
    }

    /// <summary>Remembers a choice.</summary>
    public async Task ChooseAsync(string key, string value, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        if (await db.Choices.FindAsync([key], cancel) is { } row)
        {
            row.Value = value;
        }
        else
        {
            db.Choices.Add(new ChoiceRow { Key = key, Value = value });
        }

        await db.SaveChangesAsync(cancel);
    }

    private async Task<SaveOutcome> Saved(
        Guid id,
        int basis,
        (string Name, string Text, string Note) change,
        CancellationToken cancel
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var row = await db.Designs.FirstOrDefaultAsync(d => d.Id == id, cancel)
            ?? throw new InvalidOperationException($"There is no design {id}.");
        var last = await db.Versions.Where(v => v.DesignId == id).MaxAsync(v => v.Number, cancel);
        var isFirst = row.Head == basis;
        db.Versions.Add(Version(id, (last + 1, basis), change.Text, change.Note));
        if (isFirst)
        {
            row.Head = last + 1;
            row.Name = change.Name;
            row.Verdict = null;
        }

        row.Stamp++;
        row.ChangedTicks = clock.GetUtcNow().UtcTicks;
        await db.SaveChangesAsync(cancel);
        var saved = new StoredDesign(id, change.Name, last + 1, basis, change.Text);
        var other = isFirst ? null : await Of(db, row, row.Head, cancel);
        if (isFirst)
        {
            Tell(id, last + 1);
        }

        return new SaveOutcome(saved, other);
    }

    private VersionRow Version(Guid id, (int Number, int Parent) place, string text, string note) =>
        new()
        {
            DesignId = id,
            Number = place.Number,
            Parent = place.Parent,
            Text = text,
            Hash = Fingerprint.Of(text),
            Note = note,
            Engine = marks.Engine,
            Library = marks.Library,
            Ticks = clock.GetUtcNow().UtcTicks,
        };

    private static async Task<StoredDesign?> Of(
        BenchContext db,
        DesignRow row,
        int version,
        CancellationToken cancel
    )
    {
        var one = await db
            .Versions.AsNoTracking()
            .FirstOrDefaultAsync(v => v.DesignId == row.Id && v.Number == version, cancel);
        return one is null ? null : new StoredDesign(row.Id, row.Name, one.Number, one.Parent, one.Text);
    }

    private static string? NameIn(string text) => DesignReader.Read("stored", text).Value?.Design.Name;

    private static DateTime At(long ticks) => new(ticks, DateTimeKind.Utc);
}
