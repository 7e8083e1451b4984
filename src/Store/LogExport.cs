using System.Globalization;
using System.IO.Compression;
using Litterfall.Domain.Tanks;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>Readings in an open format: one table for each place, and the files as they came.</summary>
public static class LogExport
{
    /// <summary>Puts all readings into a zip.</summary>
    /// <param name="zip">The zip.</param>
    /// <param name="db">The bench.</param>
    /// <param name="cancel">Cancels between tables.</param>
    public static async Task PutAsync(ZipArchive zip, BenchContext db, CancellationToken cancel)
    {
        var places = await db.LogBlocks.Select(b => b.Place).Distinct().ToListAsync(cancel);
        foreach (var place in places.Order(StringComparer.Ordinal))
        {
            var name = FileNames.Short(FileNames.Plain(place));
            var entry = zip.CreateEntry($"loggers/{name}.csv", CompressionLevel.Fastest);
            await using var table = new StreamWriter(await entry.OpenAsync(cancel));
            await table.WriteAsync("utc,quantity,value,unit,marks\n");
            var blocks = db
                .LogBlocks.AsNoTracking()
                .Where(b => b.Place == place)
                .OrderBy(b => b.Quantity)
                .ThenBy(b => b.FromTicks)
                .AsAsyncEnumerable();
            await foreach (var block in blocks.WithCancellation(cancel))
            {
                Write(table, block);
            }
        }

        foreach (
            var file in await db.LogFiles.AsNoTracking().Select(f => new { f.Id, f.Name }).ToListAsync(cancel)
        )
        {
            var name = FileNames.Short(FileNames.Plain(file.Name));
            var bytes = await db.LogFiles.Where(f => f.Id == file.Id).Select(f => f.Bytes).FirstAsync(cancel);
            var place = string.Create(
                CultureInfo.InvariantCulture,
                $"loggers/files/{file.Id:0000}-{name}.gz"
            );
            var entry = zip.CreateEntry(place, CompressionLevel.NoCompression);
            await using var into = await entry.OpenAsync(cancel);
            await into.WriteAsync(bytes, cancel);
        }
    }

    private static void Write(StreamWriter table, LogBlockRow block)
    {
        var read = new LogBlock.Unpacked();
        var unit = LogBlock.Unpack(block.Bytes, read);
        var plain = CultureInfo.InvariantCulture;
        for (var i = 0; i < read.Ticks.Count; i++)
        {
            table.Write(
                new DateTime(read.Ticks[i], DateTimeKind.Utc).ToString("yyyy-MM-dd'T'HH:mm:ss.FFF'Z'", plain)
            );
            var marks =
                read.Marks[i] == LogMarks.None
                    ? ""
                    : read.Marks[i].ToString().Replace(", ", " ", StringComparison.Ordinal);
            table.Write(string.Create(plain, $",{block.Quantity},{read.Values[i]:R},{unit},{marks}\n"));
        }
    }
}
