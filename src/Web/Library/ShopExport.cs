using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using Litterfall.Documents.Tables;
using Litterfall.Store;
using Microsoft.EntityFrameworkCore;

namespace Litterfall.Web.Library;

/// <summary>The workshop's book in open formats: records and papers as JSON, stock as tables.</summary>
internal static class ShopExport
{
    private static readonly string[] LotColumns = ["lot", "good", "written", "record"];

    private static readonly string[] LineColumns =
    [
        "line",
        "lot",
        "kind",
        "amount",
        "into",
        "place",
        "day",
        "who",
        "note",
        "takes back",
    ];

    /// <summary>Puts everything the workshop keeps into a zip.</summary>
    /// <param name="zip">The zip.</param>
    /// <param name="db">The bench.</param>
    /// <param name="cancel">Cancels between files.</param>
    public static async Task PutAsync(ZipArchive zip, BenchContext db, CancellationToken cancel)
    {
        var records = db.Records.AsNoTracking().OrderBy(r => r.Id).AsAsyncEnumerable();
        await foreach (var record in records.WithCancellation(cancel))
        {
            var name = FileNames.Short(FileNames.Plain(record.Key));
            Text(zip, $"workshop/{record.Kind}/{name}/{record.Version:0000}.json", record.Json);
        }

        foreach (var paper in await db.Issued.AsNoTracking().ToListAsync(cancel))
        {
            Text(
                zip,
                $"workshop/issued/{paper.Kind.ToLowerInvariant()}-{paper.Number:0000}.json",
                paper.Json
            );
        }

        var lots = await db.Lots.AsNoTracking().OrderBy(l => l.Id).ToListAsync(cancel);
        BenchExport.Put(
            zip,
            "workshop/lots.csv",
            CsvTable.Write(LotColumns, lots.Select(l => Row(l.Id, l.Good, When(l.Ticks), l.Json)))
        );
        var lines = await db.Movements.AsNoTracking().OrderBy(m => m.Id).ToListAsync(cancel);
        BenchExport.Put(zip, "workshop/stock.csv", CsvTable.Write(LineColumns, lines.Select(Line)));
        await LogExport.PutAsync(zip, db, cancel);
    }

    private static ImmutableArray<CsvCell> Line(MovementRow line) =>
        [
            CsvCell.Of(line.Id),
            CsvCell.Of(line.Lot),
            CsvCell.Of(line.Kind),
            CsvCell.Of(line.Amount),
            CsvCell.Of(line.Into ?? ""),
            CsvCell.Of(line.Place ?? ""),
            CsvCell.Of(DateOnly.FromDayNumber(line.Day)),
            CsvCell.Of(line.Who),
            CsvCell.Of(line.Note),
            CsvCell.Of(line.Reverses),
        ];

    private static ImmutableArray<CsvCell> Row(params string[] cells) =>
        [.. cells.Select(c => CsvCell.Of(c))];

    private static string When(long ticks) =>
        new DateTime(ticks, DateTimeKind.Utc).ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture);

    private static void Text(ZipArchive zip, string name, string text) =>
        BenchExport.Put(zip, name, Encoding.UTF8.GetBytes(text));
}
