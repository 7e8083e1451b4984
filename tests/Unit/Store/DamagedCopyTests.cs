using Litterfall.Store;
using Litterfall.Web.Library;
using Microsoft.Data.Sqlite;

namespace Litterfall.UnitTests.Store;

/// <summary>
/// Copies with bytes changed, cut off or taken out: each is refused, or it opens, lists, exports, takes a
/// change and is what was copied.
/// </summary>
public sealed class DamagedCopyTests : IDisposable
{
    private const int Seed = 20261130;
    private static readonly int Copies = LongRun.Cases(120, 50_000);

    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-damage").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string At(string name) => Path.Combine(folder, name);

    private static BenchStore StoreAt(string path) =>
        new(StoreFile.Contexts(path), new("1.0", "abc"), TimeProvider.System);

    private async Task<string> GoodAsync()
    {
        var store = StoreAt(At("good.db"));
        await store.OpenAsync(Stop);
        for (var i = 0; i < 4; i++)
        {
            var design = await store.AddAsync($"box {i}", Posed(i, 0), "begun", Stop);
            for (var v = 1; v < 5; v++)
            {
                await store.SaveAsync(design.Id, v, ($"box {i}", Posed(i, v), $"change {v}"), Stop);
            }
        }

        await store.AddEntryAsync("own-bark", "{\"key\": \"own-bark\"}", "weighed", Stop);
        await store.AddFileAsync("own.ies", [.. Enumerable.Range(0, 900).Select(i => (byte)i)], Stop);
        await store.ChooseAsync("unit.length", "in", Stop);
        var copy = At("good.copy");
        StoreFile.Backup(At("good.db"), copy);
        return copy;
    }

    private static string Posed(int box, int version) =>
        $"litterfall: 1\nname: box {box}\nbox: {{ inside: {{ length: {40 + box} cm, depth: 40 cm, "
        + "height: 40 cm } }\n"
        + $"floor: {{ soil: {{ recipe: ready-rainforest, depth: {5 + version} cm }} }}\n";

    [Fact]
    public async Task No_damaged_copy_is_taken_that_fails_later()
    {
        var good = await File.ReadAllBytesAsync(await GoodAsync(), Stop);
        var chance = new Random(Seed);
        var (taken, refused) = (0, 0);
        var path = At("damaged.copy");
        for (var i = 0; i < Copies; i++)
        {
            var bytes = Damaged(good, chance);
            await File.WriteAllBytesAsync(path, bytes, Stop);
            if (StoreFile.Trouble(path) is not null)
            {
                refused++;
                continue;
            }

            taken++;
            await WorksAsync(path, i);
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{taken} taken, {refused} refused of {Copies}");
        Assert.True(refused > Copies / 2, $"{taken} taken, {refused} refused");
    }

    /// <summary>What is taken holds what was copied, and goes on as a bench.</summary>
    private async Task WorksAsync(string copy, int round)
    {
        var path = At($"taken-{round}.db");
        StoreFile.Restore(path, copy, DateTimeOffset.UnixEpoch);
        var store = StoreAt(path);
        await store.OpenAsync(Stop);
        var designs = await store.DesignsAsync(Stop);
        Assert.Equal(4, designs.Count);
        foreach (var listed in designs)
        {
            var design = (await store.DesignAsync(listed.Id, Stop))!;
            Assert.Equal(5, design.Version);
            Assert.Equal(Posed(listed.Name[^1] - '0', 4), design.Text);
            Assert.Equal(5, (await store.VersionsAsync(listed.Id, Stop)).Count);
            var change = (design.Name, design.Text + "# more\n", "on");
            var saved = await store.SaveAsync(design.Id, 5, change, Stop);
            Assert.Equal(6, saved.Saved.Version);
        }

        Assert.Equal("in", (await store.ChoicesAsync(Stop))["unit.length"]);
        Assert.Equal(900, Assert.Single(await store.FilesAsync(Stop)).Bytes.Length);
        Assert.Single(await store.EntriesAsync(Stop));
        await store.AddEntryAsync("other", "{}", "why", Stop);
        await store.AddAsync("new", Posed(0, 0), "begun", Stop);
        Assert.NotEmpty(await BenchExport.WriteAsync(StoreFile.Contexts(path), Stop));
        Assert.Null(StoreFile.Trouble(path));
        SqliteConnection.ClearAllPools();
        File.Delete(path);
    }

    private static byte[] Damaged(byte[] good, Random chance)
    {
        var bytes = (byte[])good.Clone();
        switch (chance.Next(6))
        {
            case 0:
                bytes[chance.Next(bytes.Length)] ^= (byte)(1 << chance.Next(8));
                break;
            case 1:
                bytes[chance.Next(100)] = (byte)chance.Next(256);
                break;
            case 2:
                chance.NextBytes(bytes.AsSpan(chance.Next(bytes.Length - 64), 1 + chance.Next(63)));
                break;
            case 3:
                return bytes[..chance.Next(bytes.Length)];
            case 4:
                bytes.AsSpan(chance.Next(bytes.Length / 4096) * 4096, 4096).Clear();
                break;
            default:
                var (from, to) = (chance.Next(bytes.Length / 4096), chance.Next(bytes.Length / 4096));
                bytes.AsSpan(from * 4096, 4096).CopyTo(bytes.AsSpan(to * 4096));
                break;
        }

        return bytes;
    }

    /// <summary>A text changed by hand keeps its pages whole; its fingerprint tells.</summary>
    [Theory]
    [InlineData("UPDATE Versions SET Text = Text || ' ' WHERE Number = 2", "not as it was written")]
    [InlineData("UPDATE Designs SET Name = 'other'", "not as it was written")]
    [InlineData("UPDATE Designs SET Head = 99", "is not there")]
    [InlineData("UPDATE Designs SET ChangedTicks = 9223372036854775807", "another kind")]
    [InlineData("PRAGMA foreign_keys = OFF; UPDATE Designs SET Id = lower(Id)", "damaged")]
    [InlineData("PRAGMA foreign_keys = OFF; DELETE FROM Designs", "of no design")]
    [InlineData("UPDATE Entries SET Json = '{'", "does not read")]
    [InlineData("CREATE TRIGGER t AFTER INSERT ON Versions BEGIN DELETE FROM Versions; END", "tables")]
    public async Task What_was_changed_beside_the_bench_is_refused(string change, string words)
    {
        var copy = await GoodAsync();
        Run(copy, change);
        Assert.Contains(words, StoreFile.Trouble(copy), StringComparison.Ordinal);
        var refused = Assert.Throws<StoreRefusedException>(() =>
            StoreFile.Restore(At("good.db"), copy, DateTimeOffset.UnixEpoch)
        );
        Assert.Contains(words, refused.Message, StringComparison.Ordinal);
        Assert.Null(StoreFile.Trouble(At("good.db")));
    }

    [Fact]
    public async Task Of_a_damaged_copy_the_whole_versions_can_be_saved()
    {
        var copy = await GoodAsync();
        Run(copy, "UPDATE Versions SET Text = 'x' WHERE Number = 2");
        var sound = StoreCheck.Sound(copy);
        Assert.Equal(16, sound.Length);
        Assert.All(sound, v => Assert.NotEqual(2, v.Number));
    }

    [Fact]
    public async Task A_file_of_a_newer_program_is_refused_by_all()
    {
        var copy = await GoodAsync();
        Run(
            copy,
            "INSERT INTO __EFMigrationsHistory VALUES ('20990101000000_Later', '99'); "
                + "UPDATE Choices SET Value = '7.5' WHERE Key = 'store.writtenBy'"
        );
        const string words = "tables of 2099-01-01";
        Assert.Contains("Litterfall 7.5 or later", StoreFile.Trouble(copy), StringComparison.Ordinal);
        Assert.Contains(
            words,
            Assert
                .Throws<StoreRefusedException>(() =>
                    StoreFile.Restore(At("new.db"), copy, DateTimeOffset.UnixEpoch)
                )
                .Message,
            StringComparison.Ordinal
        );
        Assert.Throws<StoreRefusedException>(() => StoreFile.Backup(copy, At("again")));
        Assert.Throws<StoreRefusedException>(() => StoreSchema.RefuseNewer(copy));
        var opened = await Assert.ThrowsAsync<StoreRefusedException>(() => StoreAt(copy).OpenAsync(Stop));
        Assert.Equal("Litterfall 7.5 or later", opened.Expected);
    }

    [Fact]
    public async Task A_file_that_a_bench_has_open_is_not_restored()
    {
        var copy = await GoodAsync();
        using (StoreLock.Take(At("good.db")))
        {
            Assert.Null(StoreLock.Take(At("good.db")));
            Assert.True(StoreLock.IsHeld(At("good.db")));
            var refused = Assert.Throws<StoreRefusedException>(() =>
                StoreFile.Restore(At("good.db"), copy, DateTimeOffset.UnixEpoch)
            );
            Assert.Contains("has this file open", refused.Message, StringComparison.Ordinal);
            Assert.Throws<StoreRefusedException>(() => StoreFile.Backup(copy, At("good.db")));
        }

        Assert.False(StoreLock.IsHeld(At("good.db")));
        Assert.NotNull(StoreFile.Restore(At("good.db"), copy, DateTimeOffset.UnixEpoch));
        Assert.NotNull(StoreFile.Restore(At("good.db"), copy, DateTimeOffset.UnixEpoch));
    }

    private static void Run(string path, string sql)
    {
        using var db = new SqliteConnection($"Data Source={path};Pooling=False");
        db.Open();
        using var command = db.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
