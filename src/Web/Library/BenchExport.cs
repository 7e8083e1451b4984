using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using Litterfall.Documents.Tables;
using Litterfall.Store;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.Web.Library;

/// <summary>Everything the bench keeps, in open formats.</summary>
public static class BenchExport
{
    private static readonly string[] Columns =
    [
        "design",
        "name",
        "version",
        "parent",
        "worked on",
        "time",
        "engine",
        "library",
        "hash",
        "note",
    ];

    private static readonly string[] OrderColumns =
    [
        "design",
        "name",
        "archived",
        "status",
        "customer",
        "due",
    ];

    /// <summary>A zip of design files, their versions as a table, own files, entries and choices.</summary>
    /// <param name="contexts">The bench.</param>
    /// <param name="cancel">Cancels between files.</param>
    public static async Task<byte[]> WriteAsync(
        IDbContextFactory<BenchContext> contexts,
        CancellationToken cancel = default
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            var designs = await db.Designs.AsNoTracking().OrderBy(d => d.CreatedTicks).ToListAsync(cancel);
            var rows = new List<ImmutableArray<CsvCell>>();
            foreach (var design in designs)
            {
                var versions = db.Versions.AsNoTracking().Where(v => v.DesignId == design.Id);
                await foreach (
                    var v in versions.OrderBy(v => v.Number).AsAsyncEnumerable().WithCancellation(cancel)
                )
                {
                    Put(zip, $"designs/{design.Id}/{v.Number:0000}.viv.yaml", Encoding.UTF8.GetBytes(v.Text));
                    rows.Add(Row(design, v));
                }
            }

            await FilesAsync(zip, db, cancel);
            await ShopExport.PutAsync(zip, db, cancel);
            Put(zip, "versions.csv", CsvTable.Write(Columns, rows));
            Put(zip, "orders.csv", CsvTable.Write(OrderColumns, await OrdersAsync(db, designs, cancel)));
            Put(
                zip,
                "entries.json",
                JsonSerializer.SerializeToUtf8Bytes(await db.Entries.AsNoTracking().ToListAsync(cancel))
            );
            Put(
                zip,
                "choices.json",
                JsonSerializer.SerializeToUtf8Bytes(await db.Choices.AsNoTracking().ToListAsync(cancel))
            );
        }

        return bytes.ToArray();
    }

    /// <summary>A zip of the versions that a damaged file still gives whole.</summary>
    /// <param name="sound">The versions.</param>
    public static byte[] Rescued(IEnumerable<SoundVersion> sound)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var v in sound)
            {
                Put(zip, $"designs/{v.Design}/{v.Number:0000}.viv.yaml", Encoding.UTF8.GetBytes(v.Text));
            }
        }

        return bytes.ToArray();
    }

    private static ImmutableArray<CsvCell> Row(DesignRow design, VersionRow v) =>
        [
            CsvCell.Of($"{design.Id}"),
            CsvCell.Of(design.Name),
            CsvCell.Of(v.Number),
            CsvCell.Of(v.Parent),
            CsvCell.Of(v.Number == design.Head ? "yes" : ""),
            CsvCell.Of(
                new DateTime(v.Ticks, DateTimeKind.Utc).ToString(
                    "yyyy-MM-ddTHH:mm:ssZ",
                    CultureInfo.InvariantCulture
                )
            ),
            CsvCell.Of(v.Engine),
            CsvCell.Of(v.Library),
            CsvCell.Of(v.Hash),
            CsvCell.Of(v.Note),
        ];

    private static async Task<List<ImmutableArray<CsvCell>>> OrdersAsync(
        BenchContext db,
        List<DesignRow> designs,
        CancellationToken cancel
    )
    {
        var orders = await db.Orders.AsNoTracking().ToDictionaryAsync(o => o.DesignId, cancel);
        return
        [
            .. designs.Select(d =>
            {
                var order = orders.GetValueOrDefault(d.Id);
                return ImmutableArray.Create(
                    CsvCell.Of($"{d.Id}"),
                    CsvCell.Of(d.Name),
                    CsvCell.Of(d.IsAway ? "yes" : ""),
                    CsvCell.Of(order?.Status ?? ""),
                    CsvCell.Of(order?.Customer ?? ""),
                    CsvCell.Of(
                        order?.DueDay is { } day
                            ? DateOnly.FromDayNumber(day).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
                            : ""
                    )
                );
            }),
        ];
    }

    private static async Task FilesAsync(ZipArchive zip, BenchContext db, CancellationToken cancel)
    {
        var files = db.Files.AsNoTracking().OrderBy(f => f.Id).AsAsyncEnumerable();
        await foreach (var file in files.WithCancellation(cancel))
        {
            Put(zip, $"files/{file.Id:0000}-{FileNames.Short(file.Name)}", file.Bytes);
        }
    }

    internal static void Put(ZipArchive zip, string name, byte[] content)
    {
        using var file = zip.CreateEntry(name, CompressionLevel.Fastest).Open();
        file.Write(content);
    }
}
